"""How the holes were placed turned into whether all screws will start."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from binder_trade.explained import NotDefined, not_negative, positive
from binder_trade.fastening.steps import mm, step
from binder_trade.fastening.verdict import Verdict, at_least

BY_HAND: Final = "marked out by hand"
BY_COORDINATES: Final = "drilled to coordinates"
SPOTTED: Final = "spotted through"
# How far a hole of one half may stand from that of the other, in mm; common practice, no source.
_ERROR_MM: Final[Mapping[str, float]] = {
    BY_HAND: 0.25,
    BY_COORDINATES: 0.05,
    SPOTTED: 0.0,
    "drilled together": 0.0,
    "reamed in line": 0.0,
    "lapped together": 0.0,
}


def placing_error(how: str) -> float:
    """How far two halves' holes stand apart when made so, in mm; raises NotDefined."""
    if how not in _ERROR_MM:
        raise NotDefined(
            f"how far holes stray that are {how[:40]} is not known",
            f"say one of: {', '.join(_ERROR_MM)}",
        )
    return _ERROR_MM[how]


def holes_line_up(
    count: int, first_hole_mm: float, screw_mm: float, how: str, second_hole_mm: float | None = None
) -> Verdict:
    """Whether the clearance swallows the error of a pattern; mm; raises NotDefined.

    Each hole may stand off by the error to any side, so the diametral clearance must be twice
    that. `second_hole_mm` is the clearance hole of the other half where a bolt passes both,
    None where that half is tapped. One screw alone always finds its hole.
    """
    screw = positive(screw_mm, "a screw")
    holes = [first_hole_mm] + ([] if second_hole_mm is None else [second_hole_mm])
    for hole in holes:
        if positive(hole, "a hole") < screw:
            raise NotDefined(f"a {mm(screw)} screw does not pass {mm(hole)}", "drill it larger")
    clearance = sum(not_negative(hole - screw, "a clearance") for hole in holes)
    needs = 2 * placing_error(how) if count > 1 else 0.0
    return at_least(
        "the clearance of the holes",
        clearance,
        needs,
        step("clearance that lets all start", f"2 × error of holes {how}", mm(needs)),
        ("spot one half through the other", f"drill {mm(screw + needs)} clearance", "slot a hole"),
    )
