"""Data that no dimension can show, in a table beside the views: captions and figures."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Line, Stroke
from binder_drafting.block import Block
from binder_drafting.paper import Paper
from binder_drafting.plane import Rectangle
from binder_drafting.request import Datum
from binder_drafting.views import View
from binder_drafting.words import FIGURE, Words, lines_of_words

_PAD = 1.5
_ROW = 6.6
_BASE = 4.9


def data_block(data: Sequence[Datum]) -> Block:
    """The table as a block that stands where there is room."""
    paper = Paper()
    rows = [(lines_of_words((one.caption,)), lines_of_words((one.text,))) for one in data]
    first, second = (_width([row[n] for row in rows]) for n in (0, 1))
    wide, tall = first + second, _ROW * len(rows)
    for n, (one, (caption, text)) in enumerate(zip(data, rows, strict=True)):
        base = n * _ROW + _BASE
        paper.write(caption, (_PAD, base))
        paper.write(text, (first + _PAD, base), one.id)
        if n:
            paper.draw(Line(0.0, n * _ROW, wide, n * _ROW, Stroke.THIN))
    for x in (0.0, first, wide):
        paper.draw(Line(x, 0.0, x, tall, Stroke.THIN))
    for y in (0.0, tall):
        paper.draw(Line(0.0, y, wide, y, Stroke.THIN))
    box = Rectangle(0.0, 0.0, wide, tall)
    paper.reach(box)
    return Block(View("data", ()), 1.0, box, paper)


def _width(words: Sequence[Words]) -> float:
    return max((one.width for one in words), default=FIGURE) + 2 * _PAD
