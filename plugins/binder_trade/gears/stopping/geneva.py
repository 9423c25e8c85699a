"""A Geneva wheel with slots outside: centres, radii, slot, and when it moves."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive, within

GEOMETRY: Final = "the pin enters the slot along it, at a right angle to the crank"


@dataclass(frozen=True, slots=True)
class Geneva:
    """A Geneva wheel and its crank; mm, degrees.

    `slot_mm` is the depth from the wheel's rim; `most_crank_shaft_mm` and
    `most_wheel_shaft_mm` what passes without striking; `moving_deg` the crank's turn while the
    wheel moves; `top_speed` the wheel's greatest speed for a crank of one.
    """

    slots: int
    crank_mm: float
    pin_mm: float
    centres_mm: float
    wheel_mm: float
    slot_mm: float
    locking_mm: float
    moving_deg: float
    resting_deg: float
    step_deg: float
    top_speed: float
    most_crank_shaft_mm: float
    most_wheel_shaft_mm: float
    steps: tuple[Step, ...]


def geneva(slots: int, crank_mm: float, pin_mm: float, play_mm: float = 0.1) -> Geneva:
    """A Geneva wheel from its slots, the crank's radius and the pin; mm.

    Raises NotDefined for pins that leave no metal between slots.
    Source: a = r / sin (180° / n).
    """
    within(slots, 3, 48, "a number of slots")
    crank, pin = positive(crank_mm, "a crank"), positive(pin_mm, "a pin")
    half = math.pi / slots
    centres = crank / math.sin(half)
    rim = centres * math.cos(half)
    inner = centres - crank - pin / 2 - play_mm
    between = 2 * (centres - crank) * math.sin(half) - pin
    if inner <= 0 or between < 0.25 * pin:
        raise NotDefined(
            "the slots run into one another at the wheel's middle", "take a thinner pin"
        )
    locking = crank - 1.5 * pin
    if locking <= 0:
        raise NotDefined("the pin leaves no locking disc on the crank", "take a thinner pin")
    top = math.sin(half) / (1 - math.sin(half))
    moving = 180 - math.degrees(2 * half)
    return Geneva(
        slots,
        crank,
        pin,
        centres,
        2 * math.hypot(rim, pin / 2),
        rim - inner,
        locking,
        moving,
        360 - moving,
        360 / slots,
        top,
        2 * (centres - rim),
        2 * inner,
        (
            Step("centres", "r / sin (180° / n)", mm(centres), GEOMETRY),
            Step("wheel's radius", "a cos (180° / n)", mm(rim), GEOMETRY),
            Step("depth of slot", "r + radius − a + pin / 2 + play", mm(rim - inner), GEOMETRY),
            Step("crank's turn while it moves", "180° − 360° / n", f"{moving:.2f}°", GEOMETRY),
            Step("greatest speed", "sin / (1 − sin)", f"{top:.3f} × the crank's", GEOMETRY),
        ),
    )


def position(slots: int, crank_deg: float) -> float:
    """How far the wheel has turned from mid-step, in degrees, for the crank's turn from there.

    Source: tan φ = sin θ / (1 / sin (180° / n) − cos θ); at rest outside the step.
    """
    within(slots, 3, 48, "a number of slots")
    within(crank_deg, -1e6, 1e6, "the crank's turn", "°")
    half = math.pi / slots
    end = math.pi / 2 - half
    turn = math.remainder(math.radians(crank_deg), 2 * math.pi)
    if abs(turn) >= end:
        return math.copysign(math.degrees(half), turn)
    far = 1 / math.sin(half)
    return math.degrees(math.atan2(math.sin(turn), far - math.cos(turn)))


def speed(slots: int, crank_deg: float) -> float:
    """The wheel's speed over the crank's, for the crank's turn from mid-step in degrees.

    The derivative of `position`; nothing while the wheel rests.
    """
    within(slots, 3, 48, "a number of slots")
    within(crank_deg, -1e6, 1e6, "the crank's turn", "°")
    half = math.pi / slots
    turn = math.remainder(math.radians(crank_deg), 2 * math.pi)
    if abs(turn) >= math.pi / 2 - half:
        return 0.0
    share, cosine = math.sin(half), math.cos(turn)
    return share * (cosine - share) / (1 - 2 * share * cosine + share**2)
