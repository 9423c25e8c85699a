"""A shaft in two bearings with its loads to bearing loads, bending moment and deflection."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, amount, not_negative, positive, within
from binder_trade.fits.printed import figures
from binder_trade.shafting.line import Line, Piece
from binder_trade.shafting.twist import STEEL_E

BENDING: Final = "y'' = −M / E I, integrated piece by piece; strength of materials"
STATICS: Final = "moments about the other bearing"


@dataclass(frozen=True, slots=True)
class Load:
    """A force in N across the shaft at a place in mm from its left end; down is above nothing."""

    at_mm: float
    force_n: float


@dataclass(frozen=True, slots=True)
class Bent:
    """What two bearings carry in N, the greatest moment in N mm, deflections in mm, slopes in rad.

    `at_loads_mm` are the deflections under the loads, in their order; down is above nothing.
    """

    bearings_n: tuple[float, float]
    moment_nmm: float
    moment_at_mm: float
    deflection_mm: float
    deflection_at_mm: float
    slopes_rad: tuple[float, float]
    at_loads_mm: tuple[float, ...]
    steps: tuple[Step, ...]


def spread(force_n: float, from_mm: float, to_mm: float, parts: int = 40) -> tuple[Load, ...]:
    """A force spread evenly over a length, as equal loads close together; N, mm.

    With 40 parts the deflection of a beam under its own weight is right to a thousandth.
    """
    within(force_n, -1e9, 1e9, "a force in N")
    start, end = not_negative(from_mm, "a place"), positive(to_mm, "a place")
    if end <= start:
        raise NotDefined("the load is spread over no length", "give its two ends in order")
    each = (end - start) / parts
    return tuple(Load(start + each * (n + 0.5), force_n / parts) for n in range(parts))


def bend(
    pieces: Sequence[Piece],
    bearings_mm: tuple[float, float],
    loads: Sequence[Load],
    modulus_mpa: float = STEEL_E,
) -> Bent:
    """A shaft in two short bearings, which hold no slope; loads between or beyond them.

    Places in mm from the left end. Raises NotDefined. Source: `STATICS`, `BENDING`.
    """
    line, ends, carried = held_line(pieces, bearings_mm, loads, modulus_mpa)
    return _bent(line, carried, ends, loads)


def held_line(
    pieces: Sequence[Piece],
    bearings_mm: tuple[float, float],
    loads: Sequence[Load],
    modulus_mpa: float = STEEL_E,
) -> tuple[Line, tuple[float, float], tuple[float, float]]:
    """The bent line of a shaft, where its two bearings stand in mm, and what they carry in N.

    Raises NotDefined. Source: `STATICS`, `BENDING`.
    """
    _beside(pieces, loads)
    left, right = _bearings(pieces, bearings_mm)
    carried = _carried(left, right, loads)
    forces = [(load.at_mm, load.force_n) for load in loads]
    forces += [(left, -carried[0]), (right, -carried[1])]
    line = Line.of(pieces, forces, amount(modulus_mpa, "the modulus")).held(left, right)
    return line, (left, right), carried


def bend_overhung(
    pieces: Sequence[Piece], loads: Sequence[Load], modulus_mpa: float = STEEL_E
) -> Bent:
    """A shaft that stands out of one long bearing, which holds its slope; from the bearing on.

    `bearings_n` is the whole load and nothing; the bearing bears `moment_nmm` besides. Raises
    NotDefined. Source: `BENDING`.
    """
    _beside(pieces, loads)
    total = sum(load.force_n for load in loads)
    start = -sum(load.force_n * load.at_mm for load in loads)
    forces = [(load.at_mm, load.force_n) for load in loads] + [(0.0, -total)]
    line = Line.of(pieces, forces, amount(modulus_mpa, "the modulus"), start)
    return _bent(line, (total, 0.0), (0.0, line.end), loads)


def both_planes(one: Bent, two: Bent) -> tuple[float, float]:
    """The bearing loads in N of two planes square to one another, together."""
    first, second = zip(one.bearings_n, two.bearings_n, strict=True)
    return math.hypot(*first), math.hypot(*second)


def _bent(
    line: Line,
    carried: tuple[float, float],
    ends: tuple[float, float],
    loads: Sequence[Load],
) -> Bent:
    moment_at, moment = max(line.moments, key=lambda each: abs(each[1]))
    at, most = max(line.samples(), key=lambda each: abs(each[1]))
    steps = (
        Step("left bearing", STATICS, figures(carried[0], "N"), STATICS),
        Step("right bearing", "sum of the loads − left", figures(carried[1], "N"), STATICS),
        Step("greatest moment", f"at {moment_at:.1f} mm", figures(abs(moment), "N mm"), STATICS),
        Step("deflection", f"at {at:.1f} mm", f"{most:.4f} mm", BENDING),
    )
    return Bent(
        carried,
        abs(moment),
        moment_at,
        most,
        at,
        (line.slope(ends[0]), line.slope(ends[1])),
        tuple(line.deflection(load.at_mm) for load in loads),
        steps,
    )


def _beside(pieces: Sequence[Piece], loads: Sequence[Load]) -> None:
    total = sum(positive(piece.length_mm, "a length of shaft") for piece in pieces)
    for piece in pieces:
        amount(piece.inertia_mm4, "the second moment")
    for load in loads:
        within(load.force_n, -1e9, 1e9, "a force in N")
        if not -1e-9 <= load.at_mm <= total + 1e-9:
            raise NotDefined(f"a load at {load.at_mm:g} mm is beside the shaft", "move it")


def _bearings(pieces: Sequence[Piece], bearings_mm: tuple[float, float]) -> tuple[float, float]:
    left, right = sorted(bearings_mm)
    total = sum(piece.length_mm for piece in pieces)
    if not (math.isfinite(left) and math.isfinite(right)) or right - left < 1e-6:
        raise NotDefined("both bearings stand at one place", "set them apart")
    if left < -1e-9 or right > total + 1e-9:
        raise NotDefined("a bearing stands beside the shaft", "move it, or lengthen the shaft")
    return left, right


def _carried(left: float, right: float, loads: Sequence[Load]) -> tuple[float, float]:
    total = sum(load.force_n for load in loads)
    second = sum(load.force_n * (load.at_mm - left) for load in loads) / (right - left)
    return total - second, second
