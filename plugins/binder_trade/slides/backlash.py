"""Turns the gap between screw and nut into the play along the axis and on the handwheel."""

from __future__ import annotations

import math
from dataclasses import dataclass

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, mm, not_negative
from binder_trade.slides.dovetail import GEOMETRY
from binder_trade.slides.leadscrew import Leadscrew


@dataclass(frozen=True, slots=True)
class Backlash:
    """Play of a nut on its screw: along the axis in mm, on the handwheel in degrees."""

    axial_mm: float
    wheel_deg: float
    steps: tuple[Step, ...]


def backlash(screw: Leadscrew, gap_mm: float) -> Backlash:
    """The play that follows from the gap between the two pitch diameters (on diameter); mm.

    Raises NotDefined for a square thread. Source: geometry, axial play = gap · tan β, β from
    the flank to a plane square to the axis.
    """
    if screw.flank_deg == 0:
        raise NotDefined(
            "the flanks of a square thread do not slope",
            "its play is the width of the groove less the width of the thread: measure it",
        )
    gap = not_negative(gap_mm, "the gap between the pitch diameters")
    return axial_backlash(screw, gap * math.tan(math.radians(screw.flank_deg)))


def axial_backlash(screw: Leadscrew, axial_mm: float) -> Backlash:
    """The play on the handwheel that follows from a play along the axis; mm, degrees."""
    axial = not_negative(axial_mm, "the play along the axis")
    wheel = axial / screw.lead_mm * 360
    return Backlash(
        axial,
        wheel,
        (
            Step("play along the axis", "gap · tan β", mm(axial), GEOMETRY),
            Step("play on the wheel", "360° · play / lead", f"{wheel:.1f}°", GEOMETRY),
        ),
    )


def least_gap(pitch_mm: float) -> float:
    """The least gap between the pitch diameters of a Tr screw 7e and nut 7H; mm.

    Raises NotDefined for a pitch that is not in the table. Source: ISO 2903, position e.
    """
    rows = load_data("binder_trade.slides", "trapezoidal.yaml")["deviation_e"]["rows"]
    if pitch_mm in rows:
        return float(rows[pitch_mm])
    listed = ", ".join(f"{each:g}" for each in rows)
    raise NotDefined(
        f"no deviation e is kept here for a pitch of {pitch_mm:g} mm", f"listed: {listed} mm"
    )
