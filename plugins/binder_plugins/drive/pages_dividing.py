"""Teeth that are divided by a dial to the table of their places, for the gear's leaf."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Block, Column, Paragraph, Subheading, Table, Text, Workshop
from binder_trade.gears.dividing.dial import Setting
from binder_trade.gears.dividing.owned import dial_for, minutes_text

_SETS = 3
_MOST_TEETH = 144
_HEADS = (("No.", 0.8), ("Angle", 1.6), ("Turns", 1.1), ("Marks", 1.1))


def dial_blocks(teeth: int, workshop: Workshop) -> Iterator[Block]:
    """The places of all teeth, each from the first; nothing where holes or plates have them."""
    found = dial_for(teeth, workshop.dividers()) if teeth <= _MOST_TEETH else None
    if found is None:
        return
    device, made = found
    off = f"; the worst is {made.worst_deg * 60:.2g}′ off" if made.worst_deg else ""
    words = (
        f"On the {device.name}, {made.mark_deg:g}° to a mark. Each place is counted from the "
        f"first{off}. Come up to each from the same side."
    )
    yield Subheading("Places of the teeth")
    yield Paragraph((words,))
    yield _table(made.settings)


def _table(settings: tuple[Setting, ...]) -> Table:
    """Sets beside one another, each read downwards."""
    columns = tuple(Column(name, wide, is_figure=True) for name, wide in _HEADS * _SETS)
    high = -(-len(settings) // _SETS)
    rows: list[tuple[Text, ...]] = []
    for row in range(high):
        cells: list[Text] = []
        for number in range(row, high * _SETS, high):
            cells += _cells(settings[number]) if number < len(settings) else [("",)] * len(_HEADS)
        rows.append(tuple(cells))
    return Table(columns, tuple(rows))


def _cells(one: Setting) -> list[Text]:
    return [
        (str(one.number),),
        (minutes_text(one.angle_deg),),
        (str(one.turns),),
        (str(one.marks),),
    ]
