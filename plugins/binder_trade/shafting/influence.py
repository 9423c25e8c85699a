"""Pushes from all sides on a shaft in two bearings to what the bearings carry and how it bends."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import within
from binder_trade.shafting.beam import Load, held_line
from binder_trade.shafting.line import Line, Piece
from binder_trade.shafting.twist import STEEL_E

SUPERPOSED: Final = (
    "each push by itself, added as arrows; those of unknown direction by their size (the worst)"
)
_MOST_N: Final = 1e9
_CLOSE_MM: Final = 0.05


@dataclass(frozen=True, slots=True)
class Push:
    """A force in N across the shaft at a place in mm from its left end.

    `across` are its shares in two planes square to one another; one figure alone is the size of
    a force whose direction is not known. With a `lever_mm` the force acts along the shaft, so
    far out from its axis on the side that `across` tells: a couple, which tilts it.
    """

    at_mm: float
    across: tuple[float, float] | float
    lever_mm: float = 0.0

    @property
    def size_n(self) -> float:
        """How strong it is."""
        return abs(self.across) if isinstance(self.across, float) else math.hypot(*self.across)

    @property
    def loads(self) -> tuple[Load, ...]:
        """A newton of it as loads across the shaft; a couple as two close together."""
        if not self.lever_mm:
            return (Load(self.at_mm, 1.0),)
        each = self.lever_mm / (2 * _CLOSE_MM)
        return Load(self.at_mm - _CLOSE_MM, each), Load(self.at_mm + _CLOSE_MM, -each)


@dataclass(frozen=True, slots=True)
class Borne:
    """What the bearings carry in N and how the shaft bends: mm, rad, N mm; sizes all.

    `sags_mm` and `slopes_rad` are those at the places asked for, in their order; `leans_rad`
    the slopes in the two bearings; `moment_nmm` the greatest.
    """

    bearings_n: tuple[float, float]
    leans_rad: tuple[float, float]
    sags_mm: tuple[float, ...]
    slopes_rad: tuple[float, ...]
    moment_nmm: float


def borne(
    pieces: Sequence[Piece],
    bearings_mm: tuple[float, float],
    pushes: Sequence[Push],
    places_mm: Sequence[float],
    modulus_mpa: float = STEEL_E,
) -> Borne:
    """A shaft in two short bearings under pushes from all sides, looked at in some places.

    Raises NotDefined. Source: `SUPERPOSED`; each push by the beam's own sum.
    """
    low, high = sorted(bearings_mm)
    singles = [_single(pieces, (low, high), push, modulus_mpa) for push in pushes]
    lines = [line for line, _ in singles]
    knots = [low, high, *(load.at_mm for push in pushes for load in push.loads)]
    return Borne(
        (
            _together(pushes, [carried[0] for _, carried in singles]),
            _together(pushes, [carried[1] for _, carried in singles]),
        ),
        (
            _together(pushes, [line.slope(low) for line in lines]),
            _together(pushes, [line.slope(high) for line in lines]),
        ),
        tuple(_together(pushes, [line.deflection(at) for line in lines]) for at in places_mm),
        tuple(_together(pushes, [line.slope(at) for line in lines]) for at in places_mm),
        max((_together(pushes, [line.moment(at) for line in lines]) for at in knots), default=0.0),
    )


def _single(
    pieces: Sequence[Piece], bearings: tuple[float, float], push: Push, modulus: float
) -> tuple[Line, tuple[float, float]]:
    """A newton where the push is."""
    within(push.size_n, 0, _MOST_N, "a force in N")
    line, _, carried = held_line(pieces, bearings, push.loads, modulus)
    return line, carried


def _together(pushes: Sequence[Push], per_newton: Sequence[float]) -> float:
    """What all pushes make together of something of which each newton makes so much."""
    one = other = loose = 0.0
    for push, share in zip(pushes, per_newton, strict=True):
        if isinstance(push.across, float):
            loose += abs(push.across * share)
        else:
            one += push.across[0] * share
            other += push.across[1] * share
    return math.hypot(one, other) + loose
