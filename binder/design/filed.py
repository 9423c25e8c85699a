"""What is filed along a part: from where to where, as its words and its place tell."""

from __future__ import annotations

from fractions import Fraction

from binder.design.items import Feature
from binder.spec.values import Position, Size

_ENDS = ("left", "right")


def filed_stretch(feature: Feature) -> tuple[Fraction, Fraction, str] | None:
    """Where a filed shape begins and ends, exact mm from an end of its part, `left` or `right`.

    From its middle where its place tells that, else from the end that it is on; None where its
    `length:` or its place is not told.
    """
    entry = feature.entry
    long, at = getattr(entry, "length", None), getattr(entry, "at", None)
    if feature.kind != "filed" or not isinstance(long, Size):
        return None
    for one in at.all if isinstance(at, Position) else ():
        end = one.rest.removeprefix("from ")
        if one.distance is not None and end in _ENDS:
            half = long.exact / 2
            return one.distance.exact - half, one.distance.exact + half, end
    on = str(getattr(entry, "on", None) or "")
    return (Fraction(0), long.exact, on) if on in _ENDS else None
