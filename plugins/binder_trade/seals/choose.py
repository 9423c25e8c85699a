"""Chooses, among the rings that are kept or owned, the one that suits a bore or a rod."""

from __future__ import annotations

from collections.abc import Iterable

from binder_trade.explained import NotDefined, positive
from binder_trade.seals.groove import Groove, piston_groove, rod_groove
from binder_trade.seals.housing import Duty
from binder_trade.seals.rings import Ring, rings

# The stretch that suits best, per cent: snug on a piston, about free on a rod.
_SNUG = {"piston": 2.0, "rod": 0.5}


def for_bore(
    bore_mm: float, duty: Duty = "moving", owned: Iterable[Ring] | None = None
) -> tuple[Groove, ...]:
    """Grooves in a piston for this bore whose rings are all in range, the snuggest first; mm.

    Raises NotDefined where none suits. Source: `housing`, `ranges`.
    """
    bore = positive(bore_mm, "the bore")
    found = [_piston(each, bore, duty) for each in (rings() if owned is None else owned)]
    return _ranked("piston", f"a bore of {bore:g} mm", found)


def for_rod(
    rod_mm: float, duty: Duty = "moving", owned: Iterable[Ring] | None = None
) -> tuple[Groove, ...]:
    """Grooves in a gland for this rod whose rings are all in range, the snuggest first; mm."""
    rod = positive(rod_mm, "the rod")
    found = [_rod(each, rod, duty) for each in (rings() if owned is None else owned)]
    return _ranked("rod", f"a rod of {rod:g} mm", found)


def _piston(ring: Ring, bore: float, duty: Duty) -> Groove | None:
    try:
        return piston_groove(ring, bore, duty)
    except NotDefined:
        return None


def _rod(ring: Ring, rod: float, duty: Duty) -> Groove | None:
    try:
        return rod_groove(ring, rod, duty)
    except NotDefined:
        return None


def _ranked(place: str, where: str, found: Iterable[Groove | None]) -> tuple[Groove, ...]:
    suited = [each for each in found if each is not None and not each.remarks]
    if not suited:
        raise NotDefined(
            f"no ring that is kept suits {where}", "another size of it, or packing in a gland"
        )
    best = _SNUG[place]
    return tuple(sorted(suited, key=lambda each: (abs(each.stretch - best), each.ring.cord_mm)))
