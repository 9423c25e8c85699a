"""Sizes that found no room on the views to a table beside them, each under an index letter."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Line, Stroke
from binder_drafting.paper import Paper
from binder_drafting.plane import Point, Rectangle
from binder_drafting.sizes import Across, Along, AngleOf, Around, Note, Radius, Size
from binder_drafting.words import Words, lines_of_words, size_words, wrapped

_LETTER_COLUMN = 11.0
_PAD = 1.5


def index_letter(place: int) -> str:
    """A, B ... Z, AA, AB ... without I and O, which are read as figures."""
    letters = "ABCDEFGHJKLMNPQRSTUVWXYZ"
    before, last = divmod(place, len(letters))
    return (index_letter(before - 1) if before else "") + letters[last]


def sign_of(size: Size, letter: str) -> Note:
    """The letter that stands on the view in place of the size."""
    if isinstance(size, Along | Across):
        at, radius = size.end, 0.0
    elif isinstance(size, AngleOf):
        at, radius = size.apex, 0.0
    elif isinstance(size, Note):
        at, radius = size.at, size.radius
    elif isinstance(size, Around):
        at, radius = size.centre, size.diameter / 2
    else:
        at, radius = size.centre, size.radius
    return Note("", size.view, at, (letter,), radius=radius)


def draw_table(sizes: Sequence[Size], room: float) -> Paper:
    """A table of letters and sizes, as many columns as a width takes."""
    paper = Paper()
    rows = [(index_letter(n), size, _words(size, room)) for n, size in enumerate(sizes)]
    if not rows:
        return paper
    wide = _LETTER_COLUMN + max(words.width for _, _, words in rows) + 2 * _PAD
    columns = max(1, int(room // wide))
    tall = -(-len(rows) // columns)
    tops = [0.0] * columns
    for n, (letter, size, words) in enumerate(rows):
        column = n // tall
        top = tops[column]
        tops[column] = _draw_row(paper, (column * wide, top, wide), letter, size, words)
    return paper


def _words(size: Size, room: float) -> Words:
    if isinstance(size, Note):
        return lines_of_words(wrapped(size.lines, room - _LETTER_COLUMN - 2 * _PAD), size.tier)
    if isinstance(size, AngleOf | Radius):
        return size_words(size.text, (), size.tier)
    text = size.text
    if isinstance(size, Along):
        text += (" ↔" if size.direction == "u" else " ↕") + f" {size.datum}" * bool(size.datum)
    return size_words(text, size.limits, size.tier)


def _draw_row(
    paper: Paper, place: tuple[float, float, float], letter: str, size: Size, words: Words
) -> float:
    """Draws one row and gives its bottom."""
    left, top, wide = place
    bottom = top + words.height + 2 * _PAD
    _frame(paper, Rectangle(left, top, left + wide, bottom))
    paper.draw(Line(left + _LETTER_COLUMN, top, left + _LETTER_COLUMN, bottom, Stroke.THIN))
    base = bottom - _PAD - words.drop
    paper.write(lines_of_words((letter,)), (left + _PAD, base))
    paper.write(words, (left + _LETTER_COLUMN + _PAD, base), size.id)
    return bottom


def _frame(paper: Paper, box: Rectangle) -> None:
    corners: tuple[Point, ...] = (
        (box.left, box.top),
        (box.right, box.top),
        (box.right, box.bottom),
        (box.left, box.bottom),
    )
    for one, two in zip(corners, (*corners[1:], corners[0]), strict=True):
        paper.draw(Line(*one, *two, Stroke.THIN))
    paper.reach(box)
