"""A thread with all its basic sizes, and what is raised for a thread that nobody makes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from binder_trade.threads.form import Form

# Forms of screws that move a load: no list holds them, each is worked out from its size.
MOVING: Final = ("Tr", "square", "Acme")


@dataclass(frozen=True, slots=True)
class Thread:
    """A thread with its basic sizes in mm, before any tolerance.

    `effective_mm` is the basic pitch diameter and `minor_internal_mm` D1, the bore of the
    nut. `minor_external_mm` is the bottom of the screw's groove at design depth: d3 to the
    rounded root of ISO 68-1 for metric and unified (d - 1.226869 P; newer unified tables
    print d - 1.190785 P for the UNR root instead), the core diameter for the others, where
    it equals D1. `depth_mm` is the depth of the external thread as cut, and `stress_area_mm2`
    the area that a screw pulls with. `is_coarse` says that the pitch is the usual one of this
    diameter in its family. `standard` names where the series is listed. `starts` is how many
    threads run beside one another, each of them at `starts` times the pitch.
    """

    designation: str
    family: str
    form: Form
    major_mm: float
    pitch_mm: float
    tpi: int | None
    effective_mm: float
    minor_internal_mm: float
    minor_external_mm: float
    depth_mm: float
    stress_area_mm2: float
    is_left_hand: bool
    is_coarse: bool
    standard: str
    starts: int = 1


class NotMade(ValueError):
    """A thread that nobody makes: `reason` says why, `way_out` names the nearest that is made."""

    def __init__(self, reason: str, way_out: str) -> None:
        super().__init__(f"{reason}; {way_out}")
        self.reason = reason
        self.way_out = way_out
