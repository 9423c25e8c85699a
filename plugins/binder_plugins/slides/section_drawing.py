"""Turns a slide into the drawing of its section: tail, slot, gib and the pins that measure."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder.api import (
    Anchor,
    Drawing,
    DrawnDisc,
    DrawnLabel,
    Line,
    Polyline,
    Stroke,
    exact,
    shown_length,
)
from binder_trade.slides import Dovetail, Half, OverPins

_WIDTH = 170.0
_ROOM = 70.0  # across, for the drawing itself
_HIGH = 26.0
_HEAD = 14.0  # above the drawing, for a dimension and its figure
_SHAPES = Line | Polyline | DrawnDisc | DrawnLabel


def section_of(slide: Dovetail, pins: OverPins | None, units: str, side: str = "") -> Drawing:
    """Tail on the left, slot on the right, both with their pins; not to be scaled from.

    `side` is that of the slot's part on which the gib lies, where it is known.
    """
    widest = max(slide.male.wide_mm, slide.female.wide_mm)
    over = pins.male_over_mm if pins is not None else widest
    deepest = max(slide.female.depth_mm, slide.male.depth_mm)
    scale = min(_ROOM / max(widest, over), _HIGH / deepest)
    floor = _HEAD + deepest * scale
    shapes: list[_SHAPES] = []
    shapes += _tail(slide, pins, scale, (43.0, floor), units)
    shapes += _slot(slide, pins, scale, (127.0, floor), units)
    if side:
        shapes.append(DrawnLabel(_WIDTH - 1, floor - 2, side, 3.0, Anchor.END))
    return Drawing(_WIDTH, floor + 28, tuple(shapes))


def _tail(
    slide: Dovetail, pins: OverPins | None, scale: float, at: tuple[float, float], units: str
) -> Iterator[_SHAPES]:
    """Standing on its flats; `at` is the middle of its root, y grows downwards."""
    x, flats = at
    half = slide.male
    narrow, wide = half.narrow_mm * scale / 2, half.wide_mm * scale / 2
    top = flats - half.depth_mm * scale
    points = ((x - 42, flats), (x - narrow, flats), (x - wide, top))
    mirrored = ((x + wide, top), (x + narrow, flats), (x + 42, flats))
    yield Polyline((*points, *mirrored))
    yield from _across(x, narrow, flats + 8, shown_length(exact(half.narrow_mm), units))
    yield from _across(x, wide, top - 6, shown_length(exact(half.wide_mm), units))
    yield DrawnLabel(x, flats + 25, "tail", 3.5, Anchor.MIDDLE)
    if pins is not None:
        radius = pins.pin_mm * scale / 2
        reach = pins.male_over_mm * scale / 2
        yield from _pins(x, reach - radius, flats - radius, radius)
        size = shown_length(exact(pins.male_over_mm), units)
        yield from _across(x, reach, flats + 16, f"{size} over pins")


def _slot(
    slide: Dovetail, pins: OverPins | None, scale: float, at: tuple[float, float], units: str
) -> Iterator[_SHAPES]:
    """Open downwards, as it lies on the tail: its floor is above, `at` the middle of its mouth."""
    x, flats = at
    half: Half = slide.female
    narrow, wide = half.narrow_mm * scale / 2, half.wide_mm * scale / 2
    floor = flats - half.depth_mm * scale
    points = ((x - 42, flats), (x - narrow, flats), (x - wide, floor))
    mirrored = ((x + wide, floor), (x + narrow, flats), (x + 42, flats))
    yield Polyline((*points, *mirrored))
    yield from _across(x, narrow, flats + 8, shown_length(exact(half.narrow_mm), units))
    yield from _across(x, wide, floor - 6, shown_length(exact(half.wide_mm), units))
    yield DrawnLabel(x, flats + 25, "slot", 3.5, Anchor.MIDDLE)
    if slide.gib_mm:
        yield from _gib(slide, scale, (x + narrow, flats), floor)
    if pins is not None:
        radius = pins.pin_mm * scale / 2
        reach = pins.female_between_mm * scale / 2
        yield from _pins(x, reach + radius, floor + radius, radius)
        size = shown_length(exact(pins.female_between_mm), units)
        yield from _across(x, reach, flats + 16, f"{size} between pins")


def _gib(
    slide: Dovetail, scale: float, mouth: tuple[float, float], floor: float
) -> Iterator[_SHAPES]:
    """The strip against the right flank, by its inner face."""
    right, flats = mouth
    lean = (flats - floor) / math.tan(math.radians(slide.angle_deg))
    strip = slide.gib_width_mm * scale
    yield Line(right - strip, flats, right + lean - strip, floor, Stroke.THIN)


def _pins(x: float, out: float, y: float, radius: float) -> Iterator[_SHAPES]:
    for centre in (x - out, x + out):
        yield DrawnDisc(centre, y, radius, 0.12, Stroke.THIN)


def _across(x: float, half: float, y: float, text: str) -> Iterator[_SHAPES]:
    """A dimension line over a width, its figure above it."""
    yield Line(x, y, x - half, y, Stroke.ARROW)
    yield Line(x, y, x + half, y, Stroke.ARROW)
    yield DrawnLabel(x, y - 1.2, text, 3.0, Anchor.MIDDLE)
