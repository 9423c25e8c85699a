"""What a bearing of a shaft carries, against the metal that it is made of."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import Design, FitFact, MaterialFact
from binder_plugins.drive.carrying.facts import Bearing
from binder_plugins.drive.carrying.line import Bush
from binder_trade.explained import NotDefined
from binder_trade.fits.bearings import Wear, bush_material, wear

_MOST_WORDS = 3
_UM = 1000.0
_LEAST_N = 1e-3


def bearing_of(
    bush: Bush, long: float, cases: Sequence[tuple[float, float, float]], design: Design
) -> Bearing:
    """A bearing under the worst of its cases: load in N, lean in rad and speed in r/min of each."""
    item = design.item(bush.item)
    fit = design.facts.about(FitFact, bush.joint)
    worn, refusal = _worn(bush, long, cases, design)
    return Bearing(
        item=bush.item,
        title=item.title if item is not None else bush.item,
        joint=bush.joint,
        load=max((load for load, _, _ in cases), default=0.0),
        lean=max((lean for _, lean, _ in cases), default=0.0),
        long=long,
        clearance=max(0.0, fit.clearance_min_um) / _UM if fit is not None else None,
        wear=worn,
        refusal=refusal,
        is_half=long < bush.high - bush.low,
    )


def _worn(
    bush: Bush, long: float, cases: Sequence[tuple[float, float, float]], design: Design
) -> tuple[Wear | None, str]:
    """The case that uses most of what the metal bears, or why there is none."""
    if is_rolling(bush.item, design):
        return None, ""
    metal = metal_of(bush.metal, design)
    running = [case for case in cases if case[2]]
    if metal is None or not bush.across or long <= 0 or not running:
        return None, ""
    try:
        found = [
            wear(max(load, _LEAST_N), bush.across, long, speed, metal) for load, _, speed in running
        ]
    except NotDefined as said:
        return None, f"{said.reason}; {said.way_out}"
    return max(found, key=_most), ""


def _most(one: Wear) -> tuple[float, float]:
    """What it uses of its metal; where speed alone tells that, the hardest pressed of its cases."""
    most = max(use or 0.0 for use in (one.pressure_use, one.speed_use, one.pv_use))
    return most, one.pressure_mpa


def is_rolling(item: str, design: Design) -> bool:
    """Whether it is bought as a ball or roller bearing, for which its maker's tables stand."""
    bought = design.bought.get(item)
    return bought is not None and any(word in bought.what.lower() for word in ("ball", "roller"))


def metal_of(item: str, design: Design) -> str | None:
    """What the piece runs as, by a name that the table of bushes knows; None for none of them."""
    for name in _names(item, design):
        try:
            return bush_material(name).material
        except NotDefined:
            continue
    return None


def _names(item: str, design: Design) -> Iterator[str]:
    """The metal's names, from the most exact; for what is bought, the words that tell it."""
    metal = design.facts.about(MaterialFact, item)
    if metal is not None:
        yield from (metal.designation, metal.id.replace("-", " "), metal.group)
        yield from reversed(metal.group.split())
    part = design.parts.get(item)
    if part is not None and part.material:
        yield str(part.material)
    bought = design.bought.get(item)
    words = bought.what.lower().replace(",", " ").split() if bought is not None else []
    for count in range(_MOST_WORDS, 0, -1):
        for start in range(len(words) - count + 1):
            yield " ".join(words[start : start + count])
