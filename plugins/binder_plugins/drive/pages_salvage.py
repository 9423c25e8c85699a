"""Gears of the scrap box to their table: what each may be, and what to measure next."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Block,
    Column,
    Design,
    Paragraph,
    Subheading,
    Table,
    Text,
    exact,
    shown_length,
)
from binder_plugins.drive.pairs.facts import FoundFact
from binder_trade.gears.candidates import Candidate

_MOST = 4


def salvage_blocks(design: Design) -> Iterator[Block]:
    """A table for each gear, likeliest first."""
    for found in design.facts.all(FoundFact):
        if found.identified is None:
            continue
        item = design.item(found.subject)
        title = item.title if item is not None else found.subject
        yield Subheading(f"Salvaged gear: {title}")
        yield Paragraph((_words(found, design),))
        rows = [_row(one, found, design) for one in found.identified.candidates[:_MOST]]
        yield Table(_columns(found), tuple(rows))
        for measure in found.identified.measure_next[:2]:
            readings = "; ".join(
                f"{name}: {_size(value, design)}" for name, value in measure.readings
            )
            yield Paragraph((f"Measure {measure.what}, {measure.how}: {readings}.",))


def _words(found: FoundFact, design: Design) -> str:
    said = f"{found.teeth} teeth, {_size(found.outside, design)} outside."
    if found.identified is not None and found.identified.is_settled:
        return f"{said} The first stands clear of the others."
    return f"{said} More than one is near: measure before its mate is cut."


def _columns(found: FoundFact) -> tuple[Column, ...]:
    mate = (Column(f"Centres with {found.mate} teeth", 2.4, is_figure=True),) if found.mate else ()
    return (
        Column("It may be", 3),
        Column("Outside off by", 2, is_figure=True),
        Column("Span as it would be", 3, is_figure=True),
        *mate,
    )


def _row(one: Candidate, found: FoundFact, design: Design) -> tuple[Text, ...]:
    span = f"{_size(one.span_mm, design)} over {one.across}" if one.span_mm is not None else ""
    cells: list[Text] = [(one.name,), (_size(one.outside_off_mm, design, 2),), (span,)]
    if found.mate:
        cells.append((_size(one.centres_mm(found.mate), design),))
    return tuple(cells)


def _size(mm: float, design: Design, places: int = 3) -> str:
    return shown_length(exact(round(mm, places)), design.units)
