"""Measures off a picture: one known length, pixels, and a first-order budget of errors.

length = known × pixels / known pixels. Each count of pixels has the pixel error at both of
its ends, so its standard uncertainty is √2 × pixel error; those of the known length are
common to all measures of the picture. Tilt shortens what it lies along by 1 - cos(tilt), and
a depth offset d at distance z scales it by d / z: both are taken as standard uncertainties
of the scale of each measure by itself (JCGM 100:2008, 5.1.2, first order; the sizes of tilt
and depth: projective geometry).
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from binder.parameters import codes
from binder.parameters.faults import ExpressionFault
from binder.units import ANGLE, LENGTH, Quantity

LEAST_PIXELS = 200
LEAST_SHARE = Fraction(1, 4)
ROOT_TWO = math.sqrt(2)


@dataclass(frozen=True, slots=True)
class KnownLength:
    """The known length and what spoils the picture; `tilt` in degrees, `depth` a ratio."""

    size: Quantity
    pixels: Fraction
    pixel_error: float = 1.0
    tilt: float = 0.0
    depth: float = 0.0

    def measured(self, pixels: Fraction, source: str) -> Quantity:
        """The length that so many pixels stand for; `source` tells this count from others."""
        ratio = Quantity(pixels / self.pixels, _NUMBER)
        length = self.size * ratio
        mm = float(length.amount)
        own = mm * ROOT_TWO * self.pixel_error / float(pixels)
        common = -mm * ROOT_TWO * self.pixel_error / float(self.pixels)
        found = length.with_error(f"pixels {source}", own).with_error("known length", common)
        tilt = mm * (1 - math.cos(math.radians(self.tilt)))
        found = found.with_error(f"tilt {source}", tilt) if tilt else found
        deep = mm * self.depth
        return found.with_error(f"depth {source}", deep) if deep else found

    def is_short_for(self, pixels: Fraction) -> bool:
        """Whether the known length is under a quarter of what is measured by it."""
        return self.pixels < pixels * LEAST_SHARE


_NUMBER = Quantity(Fraction(1), LENGTH).dimension.over(LENGTH)

Read = Mapping[str, Quantity]


def known_length(values: Read) -> KnownLength:
    """The picture from its evaluated entries; raises ExpressionFault where they make no sense."""
    size = values["is"]
    pixels = values["pixels"].amount
    if size.dimension != LENGTH or size.amount <= 0 or pixels <= 0:
        raise ExpressionFault(
            codes.PICTURE_KNOWN, "the known length must be a length over so many pixels"
        )
    tilt = values.get("tilt")
    if tilt is not None and (tilt.dimension != ANGLE or not 0 <= tilt.amount < 90):  # noqa: PLR2004
        raise ExpressionFault(codes.PICTURE_KNOWN, "a tilt is an angle under 90 degrees")
    return KnownLength(
        size,
        pixels,
        float(values["pixel_error"].amount) if "pixel_error" in values else 1.0,
        float(tilt.amount) if tilt is not None else 0.0,
        _depth(values),
    )


def _depth(values: Read) -> float:
    if "offset" not in values or "distance" not in values:
        return 0.0
    offset, distance = values["offset"], values["distance"]
    if offset.dimension != LENGTH or distance.dimension != LENGTH or distance.amount <= 0:
        raise ExpressionFault(codes.PICTURE_KNOWN, "a depth is an offset and a distance")
    return float(abs(offset.amount) / distance.amount)
