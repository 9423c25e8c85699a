"""A reamed hole to what is left for the reamer, and the drill that leaves it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from binder_trade.drills.drill import Drill, NoDrill, hole_size
from binder_trade.explained import Step

_SOURCE = "shop guidance as published, no standard; lists differ by a factor of 2 below 5 mm"
# Hole up to and including this, then the least, usual and most to leave on the diameter, in mm.
_ALLOWANCES = (
    (1.5, 0.04, 0.05, 0.1),
    (3.0, 0.08, 0.1, 0.2),
    (5.0, 0.1, 0.15, 0.2),
    (10.0, 0.2, 0.2, 0.3),
    (20.0, 0.2, 0.25, 0.3),
    (50.0, 0.3, 0.4, 0.5),
)
_SAME_MM = 1e-6


@dataclass(frozen=True, slots=True)
class Allowance:
    """What a reamer is left to take, in mm on the diameter: the least, the usual, the most."""

    hole_mm: float
    least_mm: float
    usual_mm: float
    most_mm: float
    source: str


@dataclass(frozen=True, slots=True)
class ReamingDrill:
    """The drill before a reamer; `left_mm` is what it leaves on the diameter.

    `others` are the next drills that leave enough and not too much, best first.
    """

    drill: Drill
    hole_mm: float
    left_mm: float
    allowance: Allowance
    why: str
    others: tuple[Drill, ...]
    steps: tuple[Step, ...]


def allowance(hole_mm: float) -> Allowance:
    """What to leave for a machine reamer in a hole of this nominal diameter in mm.

    Raises `NoDrill` over 50 mm. Source: published shop guidance, which is no standard; below
    1.5 mm from memory.
    """
    for most, *amounts in _ALLOWANCES:
        if hole_size(hole_mm) <= most:
            return Allowance(hole_mm, amounts[0], amounts[1], amounts[2], _SOURCE)
    raise NoDrill(f"no allowance is kept for reaming {hole_mm:g} mm", "bore it, or ream to 50 mm")


def reaming_drill(hole_mm: float, drills: Iterable[Drill]) -> ReamingDrill:
    """The best of the drills before a reamer of this nominal diameter in mm.

    Raises `NoDrill` where none leaves enough and not too much. Source: as `allowance`.
    """
    left = allowance(hole_mm)
    wanted = hole_mm - left.usual_mm
    fitting = [
        drill
        for drill in drills
        if left.least_mm - _SAME_MM <= hole_mm - drill.mm <= left.most_mm + _SAME_MM
    ]
    best = sorted(fitting, key=lambda drill: (round(abs(drill.mm - wanted), 6), drill.mm))
    if not best:
        low, high = hole_mm - left.most_mm, hole_mm - left.least_mm
        raise NoDrill(
            f"none of the drills leaves {left.least_mm:g} to {left.most_mm:g} mm to ream",
            f"drill {low:.3g} to {high:.3g} mm, or drill smaller and bore",
        )
    return _result(best, left)


def _result(best: list[Drill], left: Allowance) -> ReamingDrill:
    drill, hole = best[0], left.hole_mm
    over = hole - drill.mm
    wanted = hole - left.usual_mm
    steps = (
        Step("left to ream", "by the size of the hole", f"{left.usual_mm:g} mm", left.source),
        Step("drill wanted", "hole − left to ream", f"{wanted:.4g} mm", "calculation"),
        Step("drill chosen", "the nearest of the drills", drill.name, "calculation"),
    )
    why = f"{drill.name} leaves {over:.2f} mm on the diameter for the reamer"
    return ReamingDrill(drill, hole, over, left, why, tuple(best[1:4]), steps)
