"""The middle line of a coil as points in space."""

from __future__ import annotations

import math

from .forms import Coil, Vector
from .space import placed

STEPS = 24  # points in a turn: a smooth line through them errs by 1e-5 of the radius
_RAMP = 0.5  # of a turn, in which the pitch grows from closed to open
_APART = 1.02  # closed turns lie a hair apart, so that the solid does not touch itself


def coil_points(coil: Coil) -> tuple[Vector, ...]:
    """Gives points along the middle of the wire, from the frame's x round its z."""
    count = max(2, math.ceil(coil.turns * STEPS))
    hand = -1.0 if coil.is_left_hand else 1.0
    return tuple(
        placed(_point(coil, coil.turns * n / count, hand), coil.frame) for n in range(count + 1)
    )


def _point(coil: Coil, turn: float, hand: float) -> Vector:
    angle = hand * math.tau * turn
    return (
        coil.radius * math.cos(angle),
        coil.radius * math.sin(angle),
        _rise(coil, turn),
    )


def _rise(coil: Coil, turn: float) -> float:
    """Adds up the pitch from the start: closed, growing, open, shrinking, closed."""
    if not coil.closed:
        return coil.pitch * turn
    shut = min(coil.wire * _APART, coil.pitch)
    growth = (coil.pitch - shut) * (
        _grown(turn - coil.closed) - _grown(turn - (coil.turns - coil.closed))
    )
    return shut * turn + growth


def _grown(turn: float) -> float:
    """The integral of a step of height 1 at 0, spread over the ramp."""
    half = _RAMP / 2.0
    if turn <= -half:
        return 0.0
    return turn if turn >= half else (turn + half) ** 2 / (2.0 * _RAMP)
