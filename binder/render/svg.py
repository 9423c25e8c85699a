"""A drawing to inline SVG at true size: 1 unit is 1 mm of paper."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from html import escape
from itertools import groupby
from math import ceil, cos, hypot, isfinite, radians, sin

from binder.pages import (
    Anchor,
    Arc,
    Area,
    Box,
    Disc,
    Drawing,
    Label,
    Line,
    Polyline,
    Shape,
    Stroke,
)
from binder.pages.font_metrics import font_size

# ISO 128-2:2020 lines 01.2, 01.1, 02.1, 04.1, 05.1 and 04.2 in a 0.5 mm line group, symbols at
# 0.35; dashes are 12 and 24 line widths, gaps 3, dots half a width.
_PENS = {
    Stroke.OUTLINE: 'stroke-width=".5" stroke-linecap="round" stroke-linejoin="round"',
    Stroke.THIN: 'stroke-width=".25"',
    Stroke.HIDDEN: 'stroke-width=".25" stroke-dasharray="3 .75"',
    Stroke.CENTRE: 'stroke-width=".25" stroke-dasharray="6 .75 .125 .75"',
    Stroke.PHANTOM: 'stroke-width=".25" stroke-dasharray="6 .75 .125 .75 .125 .75"',
    Stroke.CUTTING: 'stroke-width=".5" stroke-dasharray="12 1.5 .25 1.5"',
    Stroke.SYMBOL: 'stroke-width=".35"',
    Stroke.ARROW: 'stroke-width=".25"',
}
_INK = "#111"
_ACCENT = "#8f2d12"

# A filled head ten narrow lines long: common practice, no source.
_HEAD_LENGTH = 2.5
_HEAD_HALF_WIDTH = 0.42

# WeasyPrint draws one longer than this wrong.
_LONGEST_BOW = 60

Href = Callable[[str], str]
Point = tuple[float, float]


def svg_of(drawing: Drawing, description: str, href: Href) -> str:
    """One `svg` element; `href` turns a label's target into `#id`, or '' for no link.

    Raises ValueError for a coordinate that is no finite number.
    """
    width, height = _number(drawing.width), _number(drawing.height)
    body = "".join(_parts(drawing.shapes, href))
    role = "group" if "<a " in body else "img"
    return (
        f'<svg role="{role}" width="{width}mm" height="{height}mm" '
        f'viewBox="0 0 {width} {height}" fill="none" stroke="{_INK}">'
        f"<title>{escape(description)}</title>{body}</svg>"
    )


def _parts(shapes: tuple[Shape, ...], href: Href) -> Iterator[str]:
    for stroke, group in groupby(shapes, key=_pen):
        if stroke is None:
            yield from (_label(shape, href) for shape in group if isinstance(shape, Label))
        else:
            yield f"<g {_PENS[stroke]}>{''.join(_strokes(tuple(group)))}</g>"


def _pen(shape: Shape) -> Stroke | None:
    if isinstance(shape, Area):
        return Stroke.THIN
    return None if isinstance(shape, Label) else shape.stroke


def _strokes(shapes: tuple[Shape, ...]) -> Iterator[str]:
    for kind, group in groupby(shapes, key=_family):
        if kind == "chain":
            yield from _paths([_points(shape) for shape in group], shapes[0])
        elif kind == "bow":
            yield f'<path d="{"".join(_bow(shape) for shape in group if isinstance(shape, Arc))}"/>'
        else:
            yield from map(_area, group)


def _family(shape: Shape) -> str:
    if isinstance(shape, Arc):
        return "bow"
    return "chain" if isinstance(shape, Line | Polyline) else "area"


def _paths(chains: list[tuple[Point, ...]], first: Shape) -> Iterator[str]:
    lines = [chain for chain in chains if len(chain) > 1]
    if _pen(first) is not Stroke.ARROW:
        yield _path(lines)
        return
    heads = [_head(chain[-2], chain[-1]) for chain in lines]
    yield _path([(*chain[:-1], head[3]) for chain, head in zip(lines, heads, strict=True)])
    yield f'<path fill="{_INK}" stroke="none" d="{"".join(_moves(head[:3]) for head in heads)}"/>'


def _path(chains: list[tuple[Point, ...]]) -> str:
    return f'<path d="{"".join(map(_moves, chains))}"/>'


def _bow(arc: Arc) -> str:
    turn = arc.end - arc.start
    pieces = max(1, ceil(turn / _LONGEST_BOW))
    joints = [_on(arc, arc.start + turn * n / pieces) for n in range(pieces + 1)]
    radius = _number(arc.radius)
    first = f"M{_number(joints[0][0])} {_number(joints[0][1])}"
    return first + "".join(
        f"A{radius} {radius} 0 0 0 {_number(x)} {_number(y)}" for x, y in joints[1:]
    )


def _on(arc: Arc, degrees: float) -> Point:
    turn = radians(degrees)
    return (arc.x + arc.radius * cos(turn), arc.y - arc.radius * sin(turn))


def _moves(points: tuple[Point, ...]) -> str:
    return "M" + "L".join(f"{_number(x)} {_number(y)}" for x, y in points)


def _points(shape: Shape) -> tuple[Point, ...]:
    if isinstance(shape, Line):
        return ((shape.x1, shape.y1), (shape.x2, shape.y2))
    return shape.points if isinstance(shape, Polyline) else ()


def _head(tail: Point, tip: Point) -> tuple[Point, Point, Point, Point]:
    """Tip and two barbs of a head, and the middle of its base where the line ends."""
    across, down = tip[0] - tail[0], tip[1] - tail[1]
    run = hypot(across, down)
    if run == 0:
        return (tip, tip, tip, tip)
    length = min(_HEAD_LENGTH, run)
    base = (tip[0] - across / run * length, tip[1] - down / run * length)
    aside = (-down / run * _HEAD_HALF_WIDTH, across / run * _HEAD_HALF_WIDTH)
    left = (base[0] + aside[0], base[1] + aside[1])
    right = (base[0] - aside[0], base[1] - aside[1])
    return (tip, left, right, base)


def _area(shape: Shape) -> str:
    if isinstance(shape, Area):
        body = "".join(_moves(chain) + "Z" for chain in shape.chains)
        return f'<path fill-rule="evenodd" stroke="none"{_fill(shape.tint)} d="{body}"/>'
    if isinstance(shape, Box):
        sizes = zip(
            ("x", "y", "width", "height"),
            (shape.x, shape.y, shape.width, shape.height),
            strict=True,
        )
        return f"<rect {_attributes(sizes)}{_fill(shape.tint)}/>"
    if isinstance(shape, Disc):
        sizes = zip(("cx", "cy", "r"), (shape.x, shape.y, shape.radius), strict=True)
        return f"<circle {_attributes(sizes)}{_fill(shape.tint)}/>"
    raise TypeError(f"no way to draw {type(shape).__name__}")


def _attributes(sizes: Iterator[tuple[str, float]]) -> str:
    return " ".join(f'{name}="{_number(value)}"' for name, value in sizes)


def _fill(tint: float) -> str:
    if tint <= 0:
        return ""
    grey = round(255 * (1 - min(tint, 1.0)))
    return f' fill="#{grey:02x}{grey:02x}{grey:02x}"'


def _label(label: Label, href: Href) -> str:
    target = href(label.target)
    anchor = "" if label.anchor is Anchor.START else f' text-anchor="{label.anchor.value}"'
    x, y = _number(label.x), _number(label.y)
    turn = f' transform="rotate({_number(-label.turn)} {x} {y})"' if label.turn else ""
    words = (
        f'<text x="{x}" y="{y}"{anchor}{turn} '
        f'font-family="Binder Sans, sans-serif" font-size="{_number(font_size(label.height))}" '
        f'stroke="none" fill="{_ACCENT if target else _INK}">{escape(label.text)}</text>'
    )
    return f'<a href="{escape(target)}">{words}</a>' if target else words


def _number(value: float) -> str:
    if not isfinite(value):
        raise ValueError(f"a drawing has {value} for a size")
    text = f"{value:.3f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
