"""Rows of operations to about how many lines they take on a page."""

from __future__ import annotations

from math import ceil
from typing import TYPE_CHECKING

from binder.api import text_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder.api import Group, Text

# Measured on the printed leaves, in the type of a grouped table: characters to a line of what is
# done, of the tool and of a heading without and with a grip beside it; lines that rules add.
_DONE, _TOOL, _HEADING, _BESIDE = 46, 22, 100, 78
_ROW, _GROUP, _SKETCH = 0.25, 0.5, 3
PAGE = 58.0
"""Lines that surely go on one page, of some 64."""


def lines_of(rows: Sequence[tuple[Text, ...]], groups: Sequence[Group]) -> float:
    """The lines that a table of operations takes, tick boxes in its first column."""
    done = sum(max(_lines(row[1], _DONE), _lines(row[2], _TOOL)) + _ROW for row in rows)
    return done + sum(_heading(one) + _GROUP for one in groups)


def _heading(group: Group) -> int:
    if group.picture is None:
        return _lines(group.title, _HEADING)
    return max(_lines(group.title, _BESIDE), _SKETCH)


def _lines(text: Text, width: int) -> int:
    return max(1, ceil(len(text_of(text)) / width))
