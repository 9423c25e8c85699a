"""A shaft in two bearings with its loads to bearing loads, bending moment and deflection."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from binder_trade.explained import NotDefined, Step, amount, not_negative, positive, within
from binder_trade.fits.printed import figures
from binder_trade.shafting.twist import STEEL_E

BENDING: Final = "y'' = −M / E I, integrated piece by piece; strength of materials"
STATICS: Final = "moments about the other bearing"
_SAMPLES: Final = 24


@dataclass(frozen=True, slots=True)
class Load:
    """A force in N across the shaft at a place in mm from its left end; down is above nothing."""

    at_mm: float
    force_n: float


@dataclass(frozen=True, slots=True)
class Piece:
    """A length of the shaft from its left end on, and its second moment of area; mm, mm⁴."""

    length_mm: float
    inertia_mm4: float


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


def round_piece(length_mm: float, diameter_mm: float, bore_mm: float = 0.0) -> Piece:
    """A round length of shaft; mm."""
    size, bore = positive(diameter_mm, "the diameter"), not_negative(bore_mm, "the bore")
    if bore >= size:
        raise NotDefined("the bore is as large as the shaft", "give a smaller bore")
    return Piece(positive(length_mm, "the length"), math.pi / 64 * (size**4 - bore**4))


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
    _beside(pieces, loads)
    left, right = _bearings(pieces, bearings_mm)
    carried = _carried(left, right, loads)
    forces = [(load.at_mm, load.force_n) for load in loads]
    forces += [(left, -carried[0]), (right, -carried[1])]
    line = _Line.of(pieces, forces, amount(modulus_mpa, "the modulus")).held(left, right)
    return _bent(line, carried, (left, right), loads)


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
    line = _Line.of(pieces, forces, amount(modulus_mpa, "the modulus"), start)
    return _bent(line, (total, 0.0), (0.0, line.end), loads)


def both_planes(one: Bent, two: Bent) -> tuple[float, float]:
    """The bearing loads in N of two planes square to one another, together."""
    first, second = zip(one.bearings_n, two.bearings_n, strict=True)
    return math.hypot(*first), math.hypot(*second)


def _bent(
    line: _Line,
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


@dataclass(frozen=True, slots=True)
class _Knot:
    """The state at the left end of a stretch in which nothing changes but by its polynomial."""

    at: float
    moment: float
    shear: float
    stiffness: float
    slope: float
    sag: float

    def after(self, along: float) -> tuple[float, float, float]:
        """Moment, slope and deflection at a distance from the knot."""
        moment = self.moment + self.shear * along
        turned = (self.moment * along + self.shear * along**2 / 2) / self.stiffness
        sunk = (self.moment * along**2 / 2 + self.shear * along**3 / 6) / self.stiffness
        return moment, self.slope - turned, self.sag + self.slope * along - sunk


@dataclass(frozen=True, slots=True)
class _Line:
    """The bent line as knots; `tilt` and `shift` set it on its bearings."""

    knots: tuple[_Knot, ...]
    end: float
    tilt: float = 0.0
    shift: float = 0.0

    @classmethod
    def of(
        cls,
        pieces: Sequence[Piece],
        forces: Sequence[tuple[float, float]],
        modulus: float,
        moment: float = 0.0,
    ) -> _Line:
        ends = [0.0]
        for piece in pieces:
            ends.append(ends[-1] + piece.length_mm)
        places = sorted({*ends, *(min(max(at, 0.0), ends[-1]) for at, _ in forces)})
        knots: list[_Knot] = []
        shear = slope = sag = 0.0
        for start, stop in pairwise(places):
            shear -= sum(force for at, force in forces if min(max(at, 0.0), ends[-1]) == start)
            here = (start + stop) / 2
            inertia = next(
                p.inertia_mm4
                for p, low, high in zip(pieces, ends, ends[1:], strict=False)
                if low <= here <= high
            )
            knots.append(_Knot(start, moment, shear, modulus * inertia, slope, sag))
            moment, slope, sag = knots[-1].after(stop - start)
        return cls(tuple(knots), ends[-1])

    def held(self, left: float, right: float) -> _Line:
        low, high = self.deflection(left), self.deflection(right)
        tilt = -(high - low) / (right - left)
        return _Line(self.knots, self.end, tilt, -low - tilt * left)

    @property
    def moments(self) -> tuple[tuple[float, float], ...]:
        return tuple((knot.at, knot.moment) for knot in self.knots)

    def deflection(self, at: float) -> float:
        knot = self._before(at)
        return knot.after(at - knot.at)[2] + self.shift + self.tilt * at

    def slope(self, at: float) -> float:
        knot = self._before(at)
        return knot.after(at - knot.at)[1] + self.tilt

    def samples(self) -> tuple[tuple[float, float], ...]:
        stops = [knot.at for knot in self.knots[1:]] + [self.end]
        places = [
            knot.at + (stop - knot.at) * each / _SAMPLES
            for knot, stop in zip(self.knots, stops, strict=True)
            for each in range(_SAMPLES + 1)
        ]
        return tuple((at, self.deflection(at)) for at in places)

    def _before(self, at: float) -> _Knot:
        return max((knot for knot in self.knots if knot.at <= max(at, 0.0)), key=lambda k: k.at)
