"""Lines that follow one another made into a closed polygon."""

from __future__ import annotations

import math
from collections.abc import Sequence

from .forms import Point
from .views import Line, points_of


def closed_polygon(lines: Sequence[Line], step: float = 5.0) -> tuple[Point, ...]:
    """Strings lines together in their order, each turned as it fits; the end is not repeated."""
    runs = [points_of(line, step) for line in lines]
    chain = list(runs[0])
    if len(runs) > 1 and _gap(chain[0], runs[1]) < _gap(chain[-1], runs[1]):
        chain.reverse()
    for run in runs[1:]:
        is_forward = math.dist(chain[-1], run[0]) <= math.dist(chain[-1], run[-1])
        chain.extend((run if is_forward else run[::-1])[1:])
    return tuple(chain[:-1])


def _gap(point: Point, run: tuple[Point, ...]) -> float:
    return min(math.dist(point, run[0]), math.dist(point, run[-1]))
