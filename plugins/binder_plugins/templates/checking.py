"""The lines on a sheet that tell whether it was printed at full size."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import DrawnLabel, DrawnShape, Line, Stroke

MM_LINE = 100.0
INCH_LINE = 4 * 25.4
_TICK = 1.5
_SMALL = 2.5


def check_lines(width: float, height: float) -> Iterator[DrawnShape]:
    """100 mm and 4 in across the foot of a sheet, and 100 mm up its right side."""
    for long, up, words in ((MM_LINE, 9.0, "100 mm"), (INCH_LINE, 3.0, "4 in = 101.6 mm")):
        y = height - up
        yield Line(1.0, y, 1.0 + long, y, Stroke.THIN)
        for x in (1.0, 1.0 + long):
            yield Line(x, y - _TICK, x, y + _TICK, Stroke.THIN)
        yield DrawnLabel(1.0 + long + 3.0, y + _SMALL / 2, words, _SMALL)
    x, low = width - 2.0, height - 9.0
    yield Line(x, low - MM_LINE, x, low, Stroke.THIN)
    for y in (low - MM_LINE, low):
        yield Line(x - _TICK, y, x + _TICK, y, Stroke.THIN)
    yield DrawnLabel(x - 1.5, low - MM_LINE / 2, "100 mm", _SMALL, turn=90.0)
