"""Pixels measured on a picture to a length with its error."""

from __future__ import annotations

import math
from fractions import Fraction

from binder.parameters.environment import KnownLength
from binder.units import NUMBER, Quantity

LEAST_PIXELS = 200
LEAST_SHARE = Fraction(1, 4)


def measured(pixels: Fraction, known: KnownLength, reading: str) -> Quantity:
    """The length of so many pixels, in the plane of the known length and square-on.

    size = pixels * known / known pixels. First-order standard uncertainties, relative to
    the size: root 2 * pixel error / pixels for the two ends of this reading; the same over
    the known pixels; 1 - cos(tilt); depth offset / distance; and what the known length
    itself has (JCGM 100:2008, 5.1.2; tilt and depth by plane geometry). The ends and the
    depth are errors of this reading alone, named by `reading`; the known length and the
    tilt are common to all that is measured on the picture.
    """
    size = known.length * Quantity(pixels / known.pixels, NUMBER)
    length = float(size.amount)
    ends = math.sqrt(2) * float(known.pixel_error)
    shares = (
        (f"ends of {reading}", ends / float(pixels)),
        ("ends of the known length", -ends / float(known.pixels)),
        ("tilt of the picture", 1 - math.cos(math.radians(float(known.tilt)))),
        (f"depth of {reading}", float(known.depth)),
    )
    for source, share in shares:
        size = size.with_error(source, length * share)
    return size


def is_too_long_for(pixels: Fraction, known: KnownLength) -> bool:
    """Whether the known length is under a quarter of so many pixels."""
    return known.pixels < LEAST_SHARE * pixels
