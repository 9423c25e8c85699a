"""The fields of a sheet to its title block (ISO 7200)."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from binder.api import Line, Stroke
from binder_drafting.paper import Paper
from binder_drafting.plane import Rectangle
from binder_drafting.request import Fields
from binder_drafting.symbols import projection_symbol, symbol_width
from binder_drafting.words import SMALL, lines_of_words, wrapped

_PAD = 1.5
_TITLE = 4.0
_VALUE = 3.0
_SYMBOL = 5.5
_LEAST = 8.0
_FULL_ROW = 11.0
_LEGEND = "◆ fits here; holes as the tool leaves; else free"


@dataclass(frozen=True, slots=True)
class _Cell:
    """A caption, what is written under it, its share of the row, and the letters' height.

    The cell with neither holds the symbol of projection, which needs no words.
    """

    caption: str
    value: str
    share: float
    height: float = _VALUE


def title_block(fields: Fields, scale: str, width: float, *, first_angle: bool) -> Paper:
    """The block, `width` mm wide, its upper left corner at 0,0; empty fields are left out."""
    paper = Paper()
    bottom = 0.0
    for row in _shown(_rows(fields, scale)):
        bottom = _draw_row(paper, row, bottom, width, first_angle=first_angle)
    frame = Rectangle(0.0, 0.0, width, bottom)
    for x in (0.0, width):
        paper.draw(Line(x, 0.0, x, bottom, Stroke.OUTLINE))
    paper.draw(Line(0, 0, width, 0, Stroke.OUTLINE), Line(0, bottom, width, bottom, Stroke.OUTLINE))
    paper.reach(frame)
    return paper


def _shown(rows: Sequence[Sequence[_Cell]]) -> list[list[_Cell]]:
    """The rows without their empty cells; two rows that fit into one are one."""
    head, *others = [[cell for cell in row if cell.value or not cell.caption] for row in rows]
    together = [cell for row in others for cell in row]
    if sum(cell.share for cell in together) <= _FULL_ROW:
        return [head, together]
    return [head, *others]


def _rows(fields: Fields, scale: str) -> tuple[tuple[_Cell, ...], ...]:
    return (
        (
            _Cell("Title", fields.title, 5, _TITLE),
            _Cell("Item", fields.item, 1.1, _TITLE),
            _Cell("Off", fields.number_off, 1.1, _TITLE),
            _Cell("Scale", scale, 1.3),
            _Cell("Issue", fields.issue, 1, _TITLE),
            _Cell("", "", 1.7),
        ),
        (
            _Cell("Material", fields.material, 3.2),
            _Cell("Stock", fields.stock, 4.2),
            _Cell("Mass", fields.mass, 1.5),
            _Cell("Units", fields.units, 1),
        ),
        (
            _Cell("General tolerance", fields.tolerance, 2.4),
            _Cell("Hand", fields.hand, 3.4),
            _Cell("Edges", fields.edges, 2.1),
            _Cell("Finish", fields.finish, 2.1),
            _Cell("Date", fields.date, 2.4),
            _Cell("Sizes", _LEGEND, 4.6),
        ),
    )


def _draw_row(
    paper: Paper, cells: Sequence[_Cell], top: float, width: float, *, first_angle: bool
) -> float:
    """Draws a row and gives its bottom: as low as its fullest cell needs."""
    total = sum(cell.share for cell in cells)
    widths = [width * cell.share / total for cell in cells]
    filled = [
        lines_of_words(wrapped([cell.value], wide - 2 * _PAD, cell.height), height=cell.height)
        for cell, wide in zip(cells, widths, strict=True)
    ]
    head = 0.8 + SMALL + 0.8
    bottom = top + max(_LEAST, *(head + words.height + 1.0 for words in filled))
    left = 0.0
    for cell, wide, words in zip(cells, widths, filled, strict=True):
        if cell.caption:
            caption = lines_of_words([cell.caption], height=SMALL)
            paper.write(caption, (left + _PAD, top + 0.8 + SMALL))
            paper.write(words, (left + _PAD, top + head - words.extent.top))
        else:
            at = (left + (wide - symbol_width(_SYMBOL)) / 2, (top + bottom) / 2)
            paper.draw(*projection_symbol(at, _SYMBOL, first_angle=first_angle))
        left += wide
        if left < width - 1e-6:
            paper.draw(Line(left, top, left, bottom, Stroke.THIN))
    if top:
        paper.draw(Line(0.0, top, width, top, Stroke.THIN))
    return bottom
