"""The space that a fly cutter is ground to: enlarged, with the sizes that a template is made by."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import (
    Beside,
    Block,
    Column,
    Drawing,
    Line,
    Picture,
    Polyline,
    Size,
    Stroke,
    Subheading,
    Table,
    exact,
    shown_length,
)
from binder_solid.gears import Gear
from binder_solid.tooth_space import Space, space_of

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Part, SmallWork

_CUTTER = "fly cutter"
_INCH, _ANGLE = 25.4, 20.0
# Enlarged so many times, the largest that stays in so many mm of paper.
_SCALES, _ROOM = (20, 10, 5, 2, 1), 55.0
_EDGE = 6.0
_COLUMNS = (Column("Of the space", 4), Column("On the wheel", is_figure=True))


def space_pictures(works: tuple[SmallWork, ...], design: Design) -> Iterator[Block]:
    """A picture and the sizes for each gear that a fly cutter is made for."""
    wanted = {title for work in works if work.subject.startswith(_CUTTER)
              for title in work.of.split("; ")}  # fmt: skip
    for part in design.parts.values():
        gear = _gear(part) if part.title in wanted else None
        if gear is not None:
            space = space_of(gear)
            scale = _scale(space)
            picture = Picture(
                _drawn(space, scale),
                f"the space between two teeth of the {part.title}, {scale} times enlarged: the "
                "form of the fly cutter; the line across it is the pitch line",
            )
            yield Subheading(f"The space of the {part.title}, {scale} : 1; dashed: the pitch line")
            yield Beside(_sizes(space, scale, design.units), picture)


def _gear(part: Part) -> Gear | None:
    """The external gear that a part is; None where it is none, or its mate tells its module."""
    shape = part.shape
    module, dp = getattr(shape, "module", None), getattr(shape, "dp", None)
    size = module.mm if isinstance(module, Size) else _INCH / float(dp.exact) if dp else 0.0
    teeth = getattr(shape, "teeth", None)
    if not size or not isinstance(teeth, int) or getattr(shape, "internal", False):
        return None
    angle, backlash = getattr(shape, "pressure_angle", None), getattr(shape, "backlash", None)
    return Gear(
        size,
        teeth,
        float(angle.exact) if isinstance(angle, Size) else _ANGLE,
        backlash=backlash.mm if isinstance(backlash, Size) else 0.0,
    )


def _scale(space: Space) -> int:
    most = max(space.at_tip, space.depth)
    return next((one for one in _SCALES if most * one <= _ROOM), 1)


def _drawn(space: Space, scale: int) -> Drawing:
    """Both flanks, the bottom between them, the tips of the teeth and the pitch line."""
    middle = space.at_tip / 2 * scale + 2 * _EDGE
    top = min(y for _, y in space.flank)
    width, height = 2 * middle, (space.depth + space.flank[-1][1] - top) * scale + 2 * _EDGE

    def at(point: tuple[float, float], side: int) -> tuple[float, float]:
        return middle + side * point[0] * scale, _EDGE + (point[1] - top) * scale

    left = [at(point, -1) for point in reversed(space.flank)]
    right = [at(point, 1) for point in space.flank]
    high = left[0][1]
    line = high + space.pitch_below * scale
    outline = ((_EDGE, high), *left, *right, (width - _EDGE, high))
    return Drawing(
        width,
        height,
        (
            Polyline(outline),
            Line(_EDGE, line, width - _EDGE, line, Stroke.HIDDEN),
            Line(middle, 1.0, middle, height - 1.0, Stroke.CENTRE),
        ),
    )


def _sizes(space: Space, scale: int, units: str) -> Table:
    rows = (
        ("wide at the tips", space.at_tip),
        ("wide at the pitch line", space.at_pitch),
        ("pitch line below the tips", space.pitch_below),
        ("wide at the bottom", space.at_root),
        ("deep", space.depth),
        ("radius of each flank of the cutter, hollow, about", space.radius),
        ("corners of the bottom rounded, at the most", space.fillet),
    )
    return Table(
        (*_COLUMNS, Column(f"In the picture, {scale} : 1", is_figure=True)),
        tuple(((name,), (_mm(size, units),), (_mm(size * scale, units),)) for name, size in rows),
    )


def _mm(size: float, units: str) -> str:
    return shown_length(exact(round(size, 3)), units)
