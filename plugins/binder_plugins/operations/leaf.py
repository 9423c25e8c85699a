"""Routes to the operations on each part's leaf: one table, a heading and a sketch a set-up."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import (
    Block,
    Column,
    Design,
    Diagnostic,
    Drawing,
    Group,
    Inset,
    Link,
    Paragraph,
    Picture,
    SmallWork,
    Strong,
    Subheading,
    Table,
    Text,
    TickBox,
)
from binder_plugins.operations.cautioned import cautioned
from binder_plugins.operations.facts import Act, Route, SetUp
from binder_plugins.operations.minutes import route_text, setup_minutes
from binder_plugins.operations.room import PAGE, lines_of
from binder_plugins.operations.second_grip import STUB
from binder_plugins.operations.sketch import sketch
from binder_plugins.operations.told import minded, turns
from binder_plugins.operations.uncut import uncut_in
from binder_plugins.operations.wet import said
from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    Drawn = Callable[[SetUp], Drawing | None]

# A stand-out is printed in whole mm, and never less than it is.
_WHOLE = 0.05
# Of a shorter grip each tenth of a millimetre counts; common practice, no source.
_SHORT_GRIP_MM = 5.0
_COLUMNS = (
    Column("", 0.5),
    Column("Do", 6.8),
    Column("With", 3.4),
    Column("r/min", 1.1, is_figure=True),
    Column("Feed", 1.3, is_figure=True),
    Column("Gauge", 2.6),
)


def operation_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Inset]:
    """The operations of every part and fabrication."""
    for route in design.facts.all(Route):
        if route.setups and route.subject not in design.tasks:
            yield Inset(f"part-{route.subject}", tuple(_blocks(route, design)), is_foot=True)


def _blocks(route: Route, design: Design) -> Iterator[Block]:
    off = f", {route.count} off" if route.count > 1 else ""
    yield Subheading(f"Operations: {route_text(route, design.workshop)}{off}")
    if route.left:
        yield Paragraph((Strong("Left for its joint: "), *_left(route)))
    yield operations(route, design)


def operations(route: Route, design: Design, drawn: Drawn | None = None) -> Table:
    """Ticked rows under a heading for each set-up, with its cautions and its grip as `drawn`."""
    form = design.facts.about(FormFact, route.subject)
    stub = _stub(route, design)
    draw = drawn or (lambda setup: sketch(setup, form, uncut_in(route, setup), stub))
    rows = tuple(_row(act) for setup in route.setups for act in setup.acts)
    groups = tuple(
        _group(setup, caution, route.count, draw(setup), design)
        for setup, caution in cautioned(route, design)
    )
    # What no page holds is not kept whole: its heading would be left alone at a foot.
    return Table(_COLUMNS, rows, groups=groups, is_whole=lines_of(rows, groups) <= PAGE)


def _stub(route: Route, design: Design) -> float:
    """How thick the bar is of the screwed stub that a part is held on, in mm; 0 where none is."""
    works = (one for one in design.facts.all(SmallWork) if one.subject.startswith(STUB))
    mine = (one for one in works if one.section and route.title in one.of.split("; "))
    return next((float(one.section[0]) for one in mine), 0.0)


def _group(
    setup: SetUp, caution: Text, count: int, drawing: Drawing | None, design: Design
) -> Group:
    picture = None
    if drawing is not None:
        picture = Picture(drawing, f"how it is gripped in set-up {setup.number}")
    words = (*_heading(setup, count, design), *((" ", *caution) if caution else ()))
    return Group(words, len(setup.acts), picture)


def _left(route: Route) -> Iterator[Link | str]:
    for number, one in enumerate(route.left):
        yield f"{'; ' if number else ''}{one.said}, see "
        yield Link(one.title, one.leaf)
    yield "."


def _heading(setup: SetUp, count: int, design: Design) -> Iterator[Strong | str]:
    where = setup.machine or {"saw": "saw", "bench": "bench"}.get(setup.place, "bench")
    yield Strong(f"Set-up {setup.number}, {where}")
    yield f": {', '.join(_held(setup))}. "
    if setup.is_stick:
        yield f"{count} in a stick: set the stop once, part off, draw the bar out, and again. "
    if setup.datum:
        yield f"Datum: {setup.datum}. "
    if setup.true:
        yield f"True: {setup.true}. "
    if wet := said(setup):
        yield f"{wet}. "
    if setup.until:
        yield Strong(f"Do not disturb until {setup.until}. ")
    yield _minutes(setup, count, design.workshop.pace_at(setup.machine))


def _minutes(setup: SetUp, count: int, pace: float) -> str:
    """`30 min.`, and of several what the first and what all of them take."""
    first, whole = (setup_minutes(setup, off, pace) for off in (1, count))
    if round(whole) == round(first):
        return f"{whole:.0f} min{' for all' if count > 1 else ''}."
    return f"{first:.0f} min the first, {whole:.0f} min all {count}."


def _held(setup: SetUp) -> Iterator[str]:
    grip = setup.grip
    yield f"{grip.holder}, {_on(grip.on)}" if grip.holder else _on(grip.on)
    # On a mandrel the work stands off the jaws by the mandrel, not by its own length.
    if setup.place == "lathe" and grip.stand_out and grip.kind != "mandrel":
        tenths = 10 if grip.long < _SHORT_GRIP_MM else 1
        out = math.ceil((grip.stand_out - _WHOLE) * tenths) / tenths
        is_on_stub = STUB in grip.on
        yield f"the end of the work {out:g} mm out" if is_on_stub else f"{out:g} mm out of the jaws"
    if grip.support:
        yield f"carried by the {grip.support}"


def _on(words: str) -> str:
    return f"on {words}" if words and not words.startswith("by ") else words


def _row(act: Act) -> tuple[Text, ...]:
    said = act.what[0].upper() + act.what[1:]
    what: Text = (Strong(said) if act.lower is not None else said, minded(act))
    return ((TickBox(act.id),), what, (act.tool,), (turns(act),), (act.feed,), (act.measure,))
