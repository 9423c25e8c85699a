"""Holes of a face to their table: X and Y from the datum, and the turns of the maker's screws."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import Block, Column, Design, Paragraph, Table, Text, exact, shown_length
from binder_plugins.templates.lettering import datum_words
from binder_plugins.templates.machines import Screws, screws_of
from binder_solid.flats import Flat
from binder_solid.forms import Point
from binder_trade.setting_out import Wound, chord, wound

_HAIR = 1e-6


def tables_of(flat: Flat, design: Design) -> Iterator[Block]:
    """The places, what dividers are set to by eye, and a table of turns for each machine."""
    places = tuple(flat.datum.told(hole.at) for hole in flat.holes)
    for circle in flat.circles:
        far = shown_length(exact(round(chord(circle.diameter, circle.count), 1)), design.units)
        across = shown_length(exact(circle.diameter), design.units)
        words = f"{circle.count} holes evenly on ⌀{across}: dividers at about {far}, hole to hole."
        yield Paragraph((words,))
    machines = tuple(screws_of(design.workshop))
    yield _places(flat, places, next(iter(machines), None), design)
    for screws in machines[1:]:
        yield _turns(flat, places, screws)


Cells = tuple[Text, ...]


def _places(flat: Flat, places: Sequence[Point], screws: Screws | None, design: Design) -> Table:
    """Each hole with its place and, where a machine is known, its turns."""
    columns: tuple[Column, ...] = (
        Column("No.", 0.6, is_figure=True),
        Column("Hole", 3),
        Column("X", 1.3, is_figure=True),
        Column("Y", 1.3, is_figure=True),
    )
    rows: list[Cells] = [
        ((str(number),), (hole.words,), (_length(x, design),), (_length(y, design),))
        for number, (hole, (x, y)) in enumerate(zip(flat.holes, places, strict=True), 1)
    ]
    caption = f"From {_the(datum_words(flat))}"
    if screws is not None:
        columns = (*columns, *_TURNS)
        turns = _wound_all(places, screws)
        rows = [(*row, *more) for row, more in zip(rows, turns, strict=True)]
        caption = f"{caption}. {_caption(screws, places)}"
    return Table(columns, tuple(rows), caption=caption)


def _turns(flat: Flat, places: Sequence[Point], screws: Screws) -> Table:
    """The turns of a further machine."""
    columns = (Column("No.", 0.6, is_figure=True), Column("Hole", 5.6), *_TURNS)
    rows = tuple(
        ((str(number),), (hole.words,), *turns)
        for number, (hole, turns) in enumerate(
            zip(flat.holes, _wound_all(places, screws), strict=True), 1
        )
    )
    return Table(columns, rows, caption=_caption(screws, places))


_TURNS = (
    Column("X, turns + lines", 1.3, is_figure=True),
    Column("Y, turns + lines", 1.3, is_figure=True),
    Column("Run past", 0.9),
)


def _wound_all(places: Sequence[Point], screws: Screws) -> Iterator[Cells]:
    before = (0.0, 0.0)
    for place in places:
        x, y = (wound(far, *dial) for far, dial in zip(place, screws.dials, strict=True))
        yield (_wound(x),), (_wound(y),), (_past(before, place),)
        before = place


def _caption(screws: Screws, places: Sequence[Point]) -> str:
    furthest = max(
        abs(wound(far, *dial).left_mm)
        for place in places
        for far, dial in zip(place, screws.dials, strict=True)
    )
    near = "" if furthest < 0.0005 else f"; to half a line, so out by {furthest:.3f} mm at most"
    return f"On the {screws.name}: {screws.words}{near}"


def _the(words: str) -> str:
    return words if words.startswith("hole ") else f"the {words}"


def _length(mm: float, design: Design) -> str:
    return shown_length(exact(round(mm, 3) + 0.0), design.units).replace("-", "−")


def _wound(one: Wound) -> str:
    """`3 + 12.5`, from nought; in brackets with its sign where the place lies before it."""
    words = f"{one.turns} + {one.divisions:g}"
    return f"−({words})" if one.is_back else words


def _past(before: Point, place: Point) -> str:
    """The screws that would arrive from the wrong side."""
    back = [name for name, a, b in zip("XY", before, place, strict=True) if b < a - _HAIR]
    return " and ".join(back)
