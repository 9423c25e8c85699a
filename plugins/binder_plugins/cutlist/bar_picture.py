"""A bar with its pieces to a picture to scale, in which every piece has its name or its mark."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import count, groupby
from string import ascii_lowercase

from binder.api import (
    Anchor,
    BarCut,
    BarPlan,
    Design,
    Drawing,
    DrawnBox,
    DrawnLabel,
    ItemNumber,
    Line,
    Stroke,
    text_width,
)

WIDTH = 176.0
_TOP = 1.0
_HIGH = 8.0
_LETTER = 2.5
# How far under the bar its marks stand, and how far apart.
_UNDER = 5.6
_APART = 1.5
_Shape = DrawnBox | DrawnLabel | Line


@dataclass(frozen=True, slots=True)
class _Mark:
    """Words under the bar, and the ends of the piece or row of pieces that they are of."""

    words: str
    left: float
    right: float

    @property
    def middle(self) -> float:
        return (self.left + self.right) / 2

    @property
    def width(self) -> float:
        return text_width(self.words, _LETTER)


def marks_of(plan: BarPlan, design: Design) -> dict[str, str]:
    """The mark of each piece: its item number, or a letter where it is no item of the model."""
    letters = (
        f"{ascii_lowercase[n % 26]}{n // 26 if n >= len(ascii_lowercase) else ''}" for n in count()
    )
    found: dict[str, str] = {}
    for piece in plan.pieces:
        number = design.facts.about(ItemNumber, piece.item)
        found[piece.item] = str(number.number) if number is not None else next(letters)
    return found


def bar_drawing(bar: BarCut, marks: Mapping[str, str], design: Design) -> Drawing:
    """The bar to scale over the width of the page; what has no room in its piece stands under."""
    scale = WIDTH / float(bar.length)
    shapes: list[_Shape] = [DrawnBox(0, _TOP, WIDTH, _HIGH, tint=0.0, stroke=Stroke.OUTLINE)]
    under: list[_Mark] = []
    for item, row in groupby(bar.pieces, key=lambda piece: piece.item):
        ends = [(float(one.start) * scale, float(one.end) * scale) for one in row]
        names = [_fitting(item, marks[item], right - left, design) for left, right in ends]
        for (left, right), words in zip(ends, names, strict=True):
            shapes += _piece(left, right, words)
        if not all(names):
            several = f"{marks[item]} ({len(ends)} off)" if len(ends) > 1 else marks[item]
            under.append(_Mark(several, ends[0][0], ends[-1][1]))
    shapes += _led(under)
    tall = _TOP + _HIGH + 1.0
    return Drawing(WIDTH, tall + (_UNDER if under else 0.0), tuple(shapes))


def _piece(left: float, right: float, words: str) -> Iterator[_Shape]:
    yield DrawnBox(left, _TOP, right - left, _HIGH, tint=0.12, stroke=Stroke.THIN)
    if words:
        middle = _TOP + _HIGH / 2 + _LETTER / 2
        yield DrawnLabel((left + right) / 2, middle, words, _LETTER, Anchor.MIDDLE)


def _fitting(name: str, mark: str, width: float, design: Design) -> str:
    """The longest name of a piece that its box holds: title with its mark, the mark, or nothing."""
    item = design.item(name)
    title = item.title if item is not None else name
    for words in (f"{mark} {title}", mark):
        if text_width(words, _LETTER) < width - 1:
            return words
    return ""


def _led(marks: list[_Mark]) -> Iterator[_Shape]:
    """The marks in a row under the bar, side by side, each with a line to its pieces."""
    bottom = _TOP + _HIGH
    for mark, x in zip(marks, _spread(marks), strict=True):
        foot = bottom + 0.8
        yield Line(mark.left + 0.2, foot, mark.right - 0.2, foot, Stroke.THIN)
        yield Line(mark.middle, foot, x, bottom + _UNDER - _LETTER - 0.2, Stroke.THIN)
        yield DrawnLabel(x, bottom + _UNDER, mark.words, _LETTER, Anchor.MIDDLE)


def _spread(marks: list[_Mark]) -> list[float]:
    """The middles of the words, as near to their pieces as they stand clear of one another."""
    found: list[float] = []
    edge = 0.0
    for mark in marks:
        found.append(max(mark.middle, edge + mark.width / 2))
        edge = found[-1] + mark.width / 2 + _APART
    edge = WIDTH
    for number in range(len(marks) - 1, -1, -1):
        half = marks[number].width / 2
        found[number] = min(found[number], edge - half)
        edge = found[number] - half - _APART
    return found
