"""What is written on a template: which part, how large, and what each number stands for."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby

from binder.api import Design, ItemNumber, NumberOff, exact, shown_length, text_width
from binder_plugins.templates.wanted import Template
from binder_solid.flats import Flat
from binder_solid.lines import whole_circle

LARGE = 3.5
# Fewer holes than these are measured from an edge as quickly as a table is read.
MANY = 3
SMALL = 2.5


def title_of(one: Template, design: Design) -> str:
    """`7  foot plate, 2 off`."""
    number = design.facts.about(ItemNumber, one.part.name)
    off = design.facts.about(NumberOff, one.part.name)
    words = [one.part.title, one.face, f"{off.count} off" if off else ""]
    return f"{number.number if number else ''}  {', '.join(filter(None, words))}".strip()


def words_of(one: Template, design: Design) -> Iterator[str]:
    """The lines under the title."""
    yield _size(one.flat, design.units)
    if one.part.handed:
        yield "as drawn, and opposite hand: turn the paper over"
    for bend in one.flat.bends:
        near = shown_length(exact(bend.middle), design.units)
        yield f"{bend.words}: bend line {near} from left"
    yield from hole_words(one.flat)
    if len(one.flat.holes) >= MANY:
        yield f"datum: {datum_words(one.flat)}"


def _size(flat: Flat, units: str) -> str:
    long, wide, thick = (
        shown_length(exact(round(size, 3)), units) for size in (*flat.size, flat.thickness)
    )
    if flat.bends:
        return f"blank {long} × {wide}, {thick} thick"
    if whole_circle(flat.outline):
        return f"⌀{long} over all, {thick} thick"
    return f"{long} × {wide} over all, {thick} thick"


def hole_words(flat: Flat) -> Iterator[str]:
    """`1–4: drill ⌀3.6 mm, through`, for each run of holes that are alike."""
    numbered = enumerate(flat.holes, 1)
    for words, run in groupby(numbered, key=lambda one: one[1].words):
        numbers = [number for number, _ in run]
        last = f"–{numbers[-1]}" if len(numbers) > 1 else ""
        yield f"{numbers[0]}{last}: {words}"


def datum_words(flat: Flat) -> str:
    """What the coordinates start from, a hole by its number."""
    for number, hole in enumerate(flat.holes, 1):
        if hole.at == flat.datum.at:
            return f"hole {number}"
    return flat.datum.words


def wrapped(text: str, height: float, room: float) -> Iterator[str]:
    """Lines that are no wider than there is room, where their words let them be."""
    line = ""
    for word in text.split():
        longer = f"{line} {word}".strip()
        if line and text_width(longer, height) > room:
            yield line
            longer = f"  {word}"
        line = longer
    if line:
        yield line
