"""Slots that run out of their part at both ends: along which axis, and how long that is."""

from __future__ import annotations

from collections.abc import Sequence

from .along_axes import spans_of
from .facts import Located

_SLOTS = frozenset({"slotted", "t_slotted", "dovetailed", "keywayed"})
_SQUARE = 0.9


def open_along(one: Located, size: Sequence[float]) -> int | None:
    """The axis of a single slot that begins before its part and ends behind it.

    `size` is the part's, in mm, its least corner at the origin. None for a tail, which is what
    two cuts leave, and for what opens on neither or on one side alone.
    """
    if one.kind not in _SLOTS or len(one.tools) != 1 or len(one.spots) != 1:
        return None
    spans = spans_of(one.tools[0])
    if spans is None:
        return None
    through = [
        axis
        for axis, (low, high) in enumerate(spans)
        if low <= 0.0 and high >= size[axis] and abs(one.frame.z[axis]) < _SQUARE
    ]
    return through[0] if len(through) == 1 else None
