"""A bent shaft as a line: pieces and forces to its moments, slopes and deflections."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from binder_trade.explained import NotDefined, not_negative, positive

_SAMPLES: Final = 24


@dataclass(frozen=True, slots=True)
class Piece:
    """A length of the shaft from its left end on, and its second moment of area; mm, mm⁴."""

    length_mm: float
    inertia_mm4: float


def round_piece(length_mm: float, diameter_mm: float, bore_mm: float = 0.0) -> Piece:
    """A round length of shaft; mm."""
    size, bore = positive(diameter_mm, "the diameter"), not_negative(bore_mm, "the bore")
    if bore >= size:
        raise NotDefined("the bore is as large as the shaft", "give a smaller bore")
    return Piece(positive(length_mm, "the length"), math.pi / 64 * (size**4 - bore**4))


@dataclass(frozen=True, slots=True)
class Knot:
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
class Line:
    """The bent line as knots; `tilt` and `shift` set it on its bearings."""

    knots: tuple[Knot, ...]
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
    ) -> Line:
        """The line as it is bent by (place, force) in mm and N, from a level left end on."""
        ends = [0.0]
        for piece in pieces:
            ends.append(ends[-1] + piece.length_mm)
        places = sorted({*ends, *(min(max(at, 0.0), ends[-1]) for at, _ in forces)})
        knots: list[Knot] = []
        shear = slope = sag = 0.0
        for start, stop in pairwise(places):
            shear -= sum(force for at, force in forces if min(max(at, 0.0), ends[-1]) == start)
            here = (start + stop) / 2
            inertia = next(
                p.inertia_mm4
                for p, low, high in zip(pieces, ends, ends[1:], strict=False)
                if low <= here <= high
            )
            knots.append(Knot(start, moment, shear, modulus * inertia, slope, sag))
            moment, slope, sag = knots[-1].after(stop - start)
        return cls(tuple(knots), ends[-1])

    def held(self, left: float, right: float) -> Line:
        """The same line with nothing of deflection at two places."""
        low, high = self.deflection(left), self.deflection(right)
        tilt = -(high - low) / (right - left)
        return Line(self.knots, self.end, tilt, -low - tilt * left)

    @property
    def moments(self) -> tuple[tuple[float, float], ...]:
        """Places in mm and the moments there in N mm."""
        return tuple((knot.at, knot.moment) for knot in self.knots)

    def moment(self, at: float) -> float:
        """The bending moment in N mm at a place."""
        knot = self._before(at)
        return knot.after(at - knot.at)[0]

    def deflection(self, at: float) -> float:
        """The deflection in mm at a place."""
        knot = self._before(at)
        return knot.after(at - knot.at)[2] + self.shift + self.tilt * at

    def slope(self, at: float) -> float:
        """The slope in rad at a place."""
        knot = self._before(at)
        return knot.after(at - knot.at)[1] + self.tilt

    def samples(self) -> tuple[tuple[float, float], ...]:
        """Places in mm close together and the deflections there."""
        stops = [knot.at for knot in self.knots[1:]] + [self.end]
        places = [
            knot.at + (stop - knot.at) * each / _SAMPLES
            for knot, stop in zip(self.knots, stops, strict=True)
            for each in range(_SAMPLES + 1)
        ]
        return tuple((at, self.deflection(at)) for at in places)

    def _before(self, at: float) -> Knot:
        return max((knot for knot in self.knots if knot.at <= max(at, 0.0)), key=lambda k: k.at)
