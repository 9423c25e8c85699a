"""A shaft with what sits on it to the speeds at which it whirls."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from binder.api import Design, MaterialFact
from binder_plugins.drive.carrying.line import Line
from binder_plugins.drive.carrying.weights import Weighed
from binder_trade.explained import NotDefined
from binder_trade.shafting.critical import Critical, Mass, critical_speeds, shaft_masses
from binder_trade.shafting.line import Piece
from binder_trade.shafting.twist import STEEL_E

# A plain shaft cut into three whirls within a hundredth of what it does whole.
_PARTS = 3
_STEEL = 7850.0


def whirl_of(
    line: Line,
    bearings: tuple[float, float],
    pieces: Sequence[Piece],
    left: float,
    weighed: Mapping[str, Weighed | None],
    design: Design,
) -> tuple[Critical | None, tuple[str, ...]]:
    """The whirling speeds, None where they are out of reach, and what is not weighed."""
    metal = design.facts.about(MaterialFact, line.shaft)
    density = metal.density * 1000 if metal is not None and metal.density else _STEEL
    modulus = metal.modulus * 1000 if metal is not None and metal.modulus else STEEL_E
    long = sum(piece.length_mm for piece in pieces)
    masses = [
        Mass(one.at_mm + left, one.mass_kg) for one in shaft_masses(line.steps, density, _PARTS)
    ]
    for item, reach in line.stands.items():
        weight = weighed.get(item) if item != line.shaft else None
        at = (reach[0] + reach[1]) / 2 + left
        if weight is not None and weight.mass > 0 and 0 <= at <= long:
            masses.append(Mass(at, weight.mass))
    unweighed = tuple(name for name, weight in weighed.items() if weight is None)
    if line.is_bored:
        return None, unweighed
    try:
        return critical_speeds(pieces, bearings, masses, modulus), unweighed
    except NotDefined:
        return None, unweighed
