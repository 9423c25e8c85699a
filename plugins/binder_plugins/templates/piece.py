"""A face to what is printed of it at full size: lines, centre marks, numbers, datum and grain.

x runs to the right and y upwards in mm; a long face is turned on its side.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from binder.api import DrawnLabel, Line, Stroke, text_width
from binder_drafting import Bow, Chain, Edge, Rectangle
from binder_plugins.templates.clearest import Ground, clearest, ground_of
from binder_plugins.templates.lettering import MANY, SMALL, datum_words
from binder_plugins.templates.marking import BEND, HOLE, MARK, OUTLINE
from binder_plugins.templates.squares import Squares
from binder_solid.flats import Flat
from binder_solid.forms import Point
from binder_solid.lines import whole_circle

# Round the outline: room for the arrows of the datum, and for what stands at an edge.
PAD = 5.5
_ARM = 2.0
_ARROW = 12.0
_BEYOND = 2.5
_ASIDE = 3.2
STROKES = {
    OUTLINE: Stroke.THIN,
    HOLE: Stroke.THIN,
    MARK: Stroke.THIN,
    BEND: Stroke.PHANTOM,
    "cross": Stroke.THIN,
    "arrow": Stroke.ARROW,
}


@dataclass(frozen=True, slots=True)
class Letters:
    """Words at a point of the face, read from below or, where `is_upright`, from the right."""

    at: Point
    text: str
    is_upright: bool = False


@dataclass(frozen=True, slots=True)
class Piece:
    """Lines and words of a face with its margins; least corner at 0, 0."""

    size: Point
    edges: tuple[Edge, ...]
    letters: tuple[Letters, ...]


def piece_of(flat: Flat, edges: tuple[Edge, ...], *, is_turned: bool = False) -> Piece:
    """The face as it is printed; `is_turned` lays its x upwards."""
    marks = (*edges, *_crosses(flat), *_arrows(flat))
    grain, words = _grain(flat, ground_of(marks))
    marks, words = (*marks, *grain), (*words, *_words(flat))
    holes = [(hole.at, hole.diameter / 2.0) for hole in flat.holes]
    long, wide = flat.size
    if is_turned:
        marks = tuple(_turned_edge(edge, wide) for edge in marks)
        words = tuple(_turned_words(one, wide) for one in words)
        holes = [(_turned(at, wide), radius) for at, radius in holes]
        long, wide = wide, long
    letters = (*words, *_numbers(holes, ground_of(marks)))
    return Piece(
        (long + 2 * PAD, wide + 2 * PAD),
        tuple(_moved(edge) for edge in marks),
        tuple(Letters(_in(one.at), one.text, one.is_upright) for one in letters),
    )


def _in(at: Point) -> Point:
    return (at[0] + PAD, at[1] + PAD)


def _moved(edge: Edge) -> Edge:
    if isinstance(edge, Chain):
        return Chain(tuple(_in(point) for point in edge.points), edge.kind)
    return Bow(_in(edge.centre), edge.radius, edge.start, edge.end, edge.kind)


def _turned(at: Point, wide: float) -> Point:
    """A quarter turn anticlockwise, and back to where all is over nothing."""
    return (wide - at[1], at[0])


def _turned_edge(edge: Edge, wide: float) -> Edge:
    if isinstance(edge, Chain):
        return Chain(tuple(_turned(point, wide) for point in edge.points), edge.kind)
    centre = _turned(edge.centre, wide)
    return Bow(centre, edge.radius, edge.start + 90.0, edge.end + 90.0, edge.kind)


def _turned_words(one: Letters, wide: float) -> Letters:
    """What read from below reads from the right, and the other way about."""
    x, y = one.at
    if not one.is_upright:
        return Letters((wide - y, x), one.text, is_upright=True)
    return Letters((wide - y - text_width(one.text, SMALL), x - SMALL), one.text)


def _crosses(flat: Flat) -> Iterator[Edge]:
    """Two lines through each centre, for the point of a punch."""
    for hole in flat.holes:
        x, y = hole.at
        arm = hole.diameter / 2.0 + _ARM
        yield Chain(((x - arm, y), (x + arm, y)), "cross")
        yield Chain(((x, y - arm), (x, y + arm)), "cross")


def _arrows(flat: Flat) -> Iterator[Edge]:
    """From a datum corner the ways that count upwards, outside the outline."""
    if _is_from_corner(flat):
        (x, y), (across, up) = flat.datum.at, flat.datum.ways
        low, left = y - _ASIDE * up, x - _ASIDE * across
        long, high = _arms(flat)
        yield Chain(((x, low), (x + long * across, low)), "arrow")
        yield Chain(((left, y), (left, y + high * up)), "arrow")


def _arms(flat: Flat) -> Point:
    """How long the arrows are: none reaches past the face, for its letter stands beyond it."""
    return (min(_ARROW, flat.size[0]), min(_ARROW, flat.size[1]))


def _is_from_corner(flat: Flat) -> bool:
    return (
        len(flat.holes) >= MANY
        and datum_words(flat) == flat.datum.words
        and not (whole_circle(flat.outline))
    )


def _grain(flat: Flat, ground: Ground) -> tuple[tuple[Edge, ...], tuple[Letters, ...]]:
    """A double arrow with its word, where the fewest lines run through it."""
    if not flat.grain:
        return (), ()
    wide = text_width(flat.grain, SMALL)
    reach = min(12.0, flat.size[0] / 3.0)
    places = [
        (flat.size[0] * across, flat.size[1] * up)
        for up in (0.15, 0.75, 0.4, 0.6)
        for across in (0.5, 0.25, 0.75)
    ]
    boxes = [Rectangle(x - reach, y - 1.0, x + reach, y + 1.0 + SMALL) for x, y in places]
    best = clearest(boxes, ground)
    x, y = best.middle[0], best.top + 1.0
    arrows = (Chain(((x, y), (x + way * reach, y)), "arrow") for way in (-1.0, 1.0))
    return tuple(arrows), (Letters((x - wide / 2.0, y + 0.8), flat.grain),)


def _words(flat: Flat) -> Iterator[Letters]:
    if _is_from_corner(flat):
        (x, y), (across, up) = flat.datum.at, flat.datum.ways
        long, high = (arm + _BEYOND for arm in _arms(flat))
        yield Letters((x + long * across - 1.0, y - _ASIDE * up - SMALL / 2), "X")
        yield Letters((x - _ASIDE * across - 1.0, y + high * up - SMALL / 2), "Y")
    for bend in flat.bends:
        if text_width(bend.words, SMALL) < flat.size[1]:
            yield Letters((bend.middle - 0.8, 1.0), bend.words, is_upright=True)


def _numbers(holes: Sequence[tuple[Point, float]], ground: Ground) -> Iterator[Letters]:
    """The number of each hole beside it, where the fewest lines run through it."""
    taken: Squares[Rectangle] = Squares()
    for number, (at, radius) in enumerate(holes, 1):
        boxes = [
            box
            for box in _beside(at, radius, text_width(str(number), SMALL))
            if not any(taken.near(box))
        ]
        if boxes:
            best = clearest(boxes, ground)
            taken.add(best, best)
            yield Letters((best.left, best.top), str(number))


def _beside(at: Point, radius: float, wide: float) -> Iterator[Rectangle]:
    """Where a number so wide may stand: at the four corners of a hole, near and less near."""
    for gap in (0.7, 2.0):
        reach = radius * math.sqrt(0.5) + gap
        for across, up in ((1, 1), (-1, 1), (1, -1), (-1, -1)):
            left = at[0] + (reach if across > 0 else -reach - wide)
            low = at[1] + (reach if up > 0 else -reach - SMALL)
            yield Rectangle(left, low, left + wide, low + SMALL)


def drawn_letters(one: Letters, at: Point) -> DrawnLabel:
    """Words at a point of the paper."""
    return DrawnLabel(at[0], at[1], one.text, SMALL, turn=90.0 if one.is_upright else 0.0)


def cross_at(at: Point, arm: float = 3.0) -> tuple[Line, Line]:
    """A cross on the paper, to lay one sheet over another by."""
    x, y = at
    return (
        Line(x - arm, y, x + arm, y, Stroke.THIN),
        Line(x, y - arm, x, y + arm, Stroke.THIN),
    )
