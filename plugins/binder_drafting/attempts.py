"""Rooms and scales in the order in which they are tried: small sheets first, large scales first."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder_drafting.arrange import least_size
from binder_drafting.breaks import shortened
from binder_drafting.lines import outline_of
from binder_drafting.plane import Rectangle
from binder_drafting.request import Request, Room
from binder_drafting.scales import PREFERRED
from binder_drafting.sizes import Along
from binder_drafting.views import View

# A part drawn larger than life gets no longer than this, and a view that comes out smaller
# than that waits for a larger room. Common practice.
_LONGEST_ENLARGED = 125.0
_SHORTEST = 90.0
# A small room is left for the next one rather than draw so small what would do this large.
_SMALL = 30.0
_LARGE = 95.0
_ENLARGED_ENOUGH = 5.0
_LEAST = 25.0
_TIER = 11.0


def attempts(request: Request) -> Iterator[tuple[Room, float]]:
    """Rooms and scales at which the bare outlines fit."""
    views = [view for view in request.views if not view.is_picture]
    margins = _margins(request)
    for n, room in enumerate(request.rooms):
        is_last = n == len(request.rooms) - 1
        for scale in request.scales or PREFERRED:
            outlines = outlines_at(views, scale)
            wide, tall = least_size(views, outlines, first_angle=request.first_angle)
            longest = max((max(one.width, one.height) for one in outlines), default=0.0)
            if not request.scales:
                if scale > 1 and longest > _LONGEST_ENLARGED:
                    continue
                least = _LEAST if is_last else _SHORTEST
                if scale < 1 and longest < least:
                    break
                if not is_last and _is_small(longest, scale):
                    break
            if wide + margins[0] <= room[0] and tall + margins[1] <= room[1]:
                yield (room, scale)


def _is_small(longest: float, scale: float) -> bool:
    """Whether the next larger scale would do better, and not make a giant of it."""
    if scale >= _ENLARGED_ENOUGH:
        return False
    return longest < _SMALL and longest * _next(scale) <= _LARGE


def _next(scale: float) -> float:
    """By how much the next larger of the preferred scales is larger."""
    return min((one / scale for one in PREFERRED if one > scale), default=1.0)


def _margins(request: Request) -> tuple[float, float]:
    """What dimension lines need at least, across and down, beside the bare outlines."""
    directions = {size.direction for size in request.sizes if isinstance(size, Along)}
    return (_TIER * ("v" in directions), _TIER * ("u" in directions))


def outlines_at(views: Sequence[View], scale: float) -> list[Rectangle]:
    """What the lines of each view will fill."""
    return [
        outline_of(shortened(view, (), scale)[0] if view.breaks else view, scale) for view in views
    ]
