"""Stock on the shelf and stock that is sold here to their tables."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from binder.api import Block, Column, Design, Facts, Model, Paragraph, Subheading, Table
from binder_plugins.toollist.said import said

_COLUMNS = (
    Column("Stock", 3),
    Column("Material", 2),
    Column("Length", is_figure=True),
    Column("Width", is_figure=True),
    Column("Price", is_figure=True),
    Column("Note", 2),
)
_KEYS = ("stock", "material", "length", "width", "price", "note")


def stock(design: Design) -> Iterator[Block]:
    """What lies on the shelf, what is sold and at which price, and what cutting loses."""
    entry = design.workshop.entry
    yield Subheading("On the shelf")
    if entry.shelf:
        columns = (Column("Pieces", is_figure=True), *_COLUMNS)
        yield Table(columns, tuple(((said(one.quantity),), *_cells(one)) for one in entry.shelf))
    else:
        yield Paragraph(("No stock is listed.",))
    if entry.buying.prices:
        yield Subheading("Sold here")
        yield Table(_COLUMNS, tuple(_cells(one) for one in entry.buying.prices))
    yield from _allowances(design)


def _cells(piece: Model) -> tuple[tuple[str], ...]:
    return tuple((said(getattr(piece, key)),) for key in _KEYS)


def _allowances(design: Design) -> Iterator[Block]:
    entry = design.workshop.entry
    pairs: Mapping[str, object] = {
        "Prices in": entry.buying.currency,
        "Bars are sold in": entry.buying.bar_lengths,
        "Lost in facing each end": entry.allowances.facing,
        "Held and lost, once for each bar": entry.allowances.holding,
    }
    words = tuple((name, (said(one),)) for name, one in pairs.items() if said(one))
    if words:
        yield Subheading("Buying and cutting stock")
        yield Facts(words)
