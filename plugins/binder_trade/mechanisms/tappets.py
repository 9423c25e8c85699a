"""Tappets on a shaft and the tail of a helve to the lift, the fall, and the most speed."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, amount, mm, positive, within

TRIP: Final = "geometry of two circles: tappet tip about its shaft, tail about its pivot"
FALL: Final = "free fall, h = g t² / 2, with the share of gravity that is left"
# The hammer must have landed, and come to rest, before the next tappet takes it.
MARGIN: Final = 1.2
MARGIN_SOURCE: Final = "common practice, no source"
_G: Final = 9806.65


@dataclass(frozen=True, slots=True)
class Trip:
    """What one tappet does: lift of the head along its arc in mm, angles in rad.

    `shaft_rad` is the angle of the shaft from taking the tail to letting it go, `helve_rad`
    the angle of the helve.
    """

    tip_mm: float
    tail_mm: float
    overlap_mm: float
    helve_rad: float
    head_lift_mm: float
    shaft_rad: float
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Blows:
    """Blows a minute at a speed: times in s, speeds in r/min.

    `lands` says that the head lands before the next tappet; `most_rpm` is the speed at which
    the time is just enough with the margin.
    """

    blows_per_minute: float
    free_s: float
    fall_s: float
    lands: bool
    most_rpm: float
    impact_ms: float
    steps: tuple[Step, ...]


def trip(
    centres_mm: float, tip_mm: float, tail_mm: float, head_mm: float, rest_deg: float | None = None
) -> Trip:
    """Tappets with radial faces under a helve's tail; mm, lengths from each pivot.

    `rest_deg` is how far the resting tail stands before the line of both centres; without it,
    as far as it is let go behind. Raises NotDefined where the tappet misses the tail or
    never lets go. Source: `TRIP`.
    """
    apart, tip = (
        positive(centres_mm, "the centre distance"),
        positive(tip_mm, "the tappet's radius"),
    )
    tail, head = positive(tail_mm, "the tail"), positive(head_mm, "the arm of the head")
    overlap = tip + tail - apart
    if overlap <= 0:
        raise NotDefined(
            f"the tappet misses the tail by {-overlap:g} mm", "lengthen tail or tappet"
        )
    if abs(tip - tail) >= apart:
        raise NotDefined("the tappet never lets the tail go", "shorten the tappet or the tail")
    goes = math.acos((tail**2 + apart**2 - tip**2) / (2 * tail * apart))
    after = math.acos((tip**2 + apart**2 - tail**2) / (2 * tip * apart))
    rests = goes if rest_deg is None else math.radians(within(rest_deg, -180, 180, "the rest", "°"))
    if not -goes < rests <= goes + 1e-12:
        raise NotDefined(
            f"the tail rests outside the tappets' circle at {math.degrees(rests):.1f}°",
            f"let it rest at {math.degrees(goes):.1f}° or less before the line of centres",
        )
    before = math.atan2(tail * math.sin(rests), apart - tail * math.cos(rests))
    steps = (
        Step("overlap", "tip + tail − centres", mm(overlap), TRIP),
        Step("helve swings", "rest + release", f"{math.degrees(rests + goes):.2f}°", TRIP),
        Step("lift of the head", "arm × angle", mm(head * (rests + goes)), TRIP),
        Step(
            "shaft turns meanwhile",
            "take-up + release",
            f"{math.degrees(before + after):.2f}°",
            TRIP,
        ),
    )
    return Trip(tip, tail, overlap, rests + goes, head * (rests + goes), before + after, steps)


def blows(
    rpm: float,
    tappets: int,
    lift_mm: float,
    lifting_rad: float,
    gravity_share: float = 1.0,
) -> Blows:
    """Whether the head lands before the next tappet; lift in mm, lifting angle of the shaft in rad.

    `gravity_share` is the head's own acceleration over gravity (`gravity_share_of`). Friction
    is left out, so allow the margin. Raises NotDefined. Source: `FALL`, `MARGIN_SOURCE`.
    """
    speed = amount(rpm, "the speed in r/min")
    count = int(within(tappets, 1, 60, "the number of tappets"))
    pitch = 2 * math.pi / count
    lifting = within(lifting_rad, 0, 2 * math.pi, "the lifting angle in rad")
    if lifting >= pitch:
        raise NotDefined(
            f"the next of {count} tappets takes the tail before it is let go",
            "take fewer tappets or a smaller lift",
        )
    pull = _G * within(gravity_share, 0.01, 3, "the share of gravity")
    fall = math.sqrt(2 * positive(lift_mm, "the lift") / pull)
    free = (pitch - lifting) * 30 / (math.pi * speed)
    most = (pitch - lifting) * 30 / (math.pi * fall * MARGIN)
    steps = (
        Step("time to the next tappet", "(2π/n − lifting angle) / ω", f"{free:.3f} s", FALL),
        Step("time to fall", "√(2 h / g)", f"{fall:.3f} s", FALL),
        Step("most speed", f"with {MARGIN:g} × the fall", f"{most:.0f} r/min", MARGIN_SOURCE),
    )
    return Blows(
        speed * count, free, fall, free >= fall, most, math.sqrt(2 * pull * lift_mm) / 1000, steps
    )


def gravity_share_of(
    head_kg: float, head_mm: float, helve_kg: float, helve_middle_mm: float, helve_long_mm: float
) -> float:
    """How much of gravity's pull the head falls with, for a head on a helve that lies level.

    The helve's middle lies `helve_middle_mm` from the pivot toward the head (below nothing: on
    the tail's side). Source: angular acceleration = moment of weights / inertia, slender rod.
    """
    head, arm = amount(head_kg, "the head's mass in kg"), positive(head_mm, "the arm of the head")
    helve, long = amount(helve_kg, "the helve's mass in kg"), positive(helve_long_mm, "the helve")
    middle = within(helve_middle_mm, -long, long, "the middle of the helve in mm")
    inertia = head * arm**2 + helve * (long**2 / 12 + middle**2)
    moment = head * arm + helve * middle
    if moment <= 0:
        raise NotDefined("the tail outweighs the head: it does not fall", "lighten the tail")
    return moment * arm / inertia


def blow_energy_nmm(head_kg: float, lift_mm: float) -> float:
    """The energy of a blow in N mm: the head's weight times its lift, friction left out."""
    return amount(head_kg, "the head's mass in kg") * _G / 1000 * positive(lift_mm, "the lift")
