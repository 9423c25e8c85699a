"""Belts to their table: the run on every step, the wraps, what it is cut to."""

from __future__ import annotations

from collections.abc import Iterator
from math import degrees

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
from binder_plugins.drive.pairs.facts import BeltFact


def belt_blocks(design: Design) -> Iterator[Block]:
    """A table for each belt of the model."""
    for belt in design.facts.all(BeltFact):
        if belt.runs:
            yield Subheading(f"Belt: {belt.subject}")
            yield Paragraph((_words(belt, design),))
            yield _table(belt, design)


def _size(mm: float, design: Design, places: int = 2) -> str:
    return shown_length(exact(round(mm, places)), design.units)


def _words(belt: BeltFact, design: Design) -> str:
    kind = (
        f"{_size(belt.section, design)} {belt.belt} belt" if belt.section else f"{belt.belt} belt"
    )
    words = [f"A {kind}, {_size(belt.centres, design)} between the shafts."]
    if len(belt.runs) > 1:
        words.append(f"Its length differs by {_size(belt.apart, design, 3)} from step to step.")
    if belt.free is not None:
        words.append(
            f"Cut the cord to {_size(belt.free, design, 1)}, square, and weld it: it is put on "
            "stretched by a tenth."
        )
    return " ".join(words)


def _table(belt: BeltFact, design: Design) -> Table:
    columns = (
        Column("Step", 1),
        Column("Driving", 2, is_figure=True),
        Column("Driven", 2, is_figure=True),
        Column("Run of the belt", 2.4, is_figure=True),
        Column("On the small pulley", 2, is_figure=True),
        Column("Driven, for one belt", 2.4, is_figure=True),
    )
    rows: list[tuple[Text, ...]] = []
    for number, run in enumerate(belt.runs, 1):
        suited = belt.suited[number - 1] if number <= len(belt.suited) else None
        rows.append((
            (str(number),),
            (_size(run.first_mm, design),),
            (_size(run.second_mm, design),),
            (_size(run.length_mm, design, 3),),
            (f"{degrees(run.least_wrap_rad):.0f}°",),
            (_size(suited, design, 3) if suited is not None else "",),
        ))  # fmt: skip
    return Table(columns, tuple(rows))
