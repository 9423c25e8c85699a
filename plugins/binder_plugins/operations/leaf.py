"""Routes to the operations on each part's leaf: a heading, a sketch and ticked rows a set-up."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import (
    Block,
    Column,
    Design,
    Diagnostic,
    Inset,
    Link,
    Paragraph,
    Picture,
    Strong,
    Subheading,
    Table,
    Text,
    TickBox,
)
from binder_plugins.operations.facts import Act, Route, SetUp
from binder_plugins.operations.minutes import route_text, setup_minutes
from binder_plugins.operations.sketch import strip
from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from collections.abc import Iterator

_COLUMNS = (
    Column("", 0.45),
    Column("Do", 6.2),
    Column("With", 3.6),
    Column("r/min", 1.3, is_figure=True),
    Column("Feed", 1.4, is_figure=True),
    Column("Gauge", 2.4),
)
_BARE = tuple(replace(one, title="") for one in _COLUMNS)


def operation_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Inset]:
    """The operations of every part and fabrication."""
    for route in design.facts.all(Route):
        if route.setups and route.subject not in design.tasks:
            yield Inset(f"part-{route.subject}", tuple(_blocks(route, design)))


def _blocks(route: Route, design: Design) -> Iterator[Block]:
    off = f", {route.count} off" if route.count > 1 else ""
    yield Subheading(f"Operations: {route_text(route)}{off}")
    form = design.facts.about(FormFact, route.subject)
    drawing = strip(route.setups, form)
    if drawing is not None:
        yield Picture(drawing, "how it is gripped, by the number of the set-up")
    yield from operations(route)
    if route.left:
        yield Paragraph((Strong("Left for its joint: "), *_left(route)))


def operations(route: Route) -> Iterator[Block]:
    """A heading and ticked rows for each set-up."""
    for setup in route.setups:
        yield Paragraph(tuple(_heading(setup, route.count)))
        columns = _COLUMNS if setup is route.setups[0] else _BARE
        yield Table(columns, tuple(_row(act) for act in setup.acts))


def _left(route: Route) -> Iterator[Link | str]:
    for number, one in enumerate(route.left):
        yield f"{'; ' if number else ''}{one.said}, see "
        yield Link(one.title, one.leaf)
    yield "."


def _heading(setup: SetUp, count: int) -> Iterator[Strong | str]:
    where = setup.machine or {"saw": "saw", "bench": "bench"}.get(setup.place, "bench")
    yield Strong(f"Set-up {setup.number}, {where}")
    yield f": {', '.join(_held(setup))}. "
    if setup.is_stick:
        yield f"{count} in a stick: set the stop once, part off, draw the bar out, and again. "
    if setup.datum:
        yield f"Datum: {setup.datum}. "
    if setup.true:
        yield f"True: {setup.true}. "
    if setup.until:
        yield Strong(f"Do not disturb until {setup.until}. ")
    yield f"{setup_minutes(setup):.0f} min."


def _held(setup: SetUp) -> Iterator[str]:
    grip = setup.grip
    yield f"{grip.holder}, {_on(grip.on)}" if grip.holder else _on(grip.on)
    if setup.place == "lathe" and grip.stand_out:
        yield f"{grip.stand_out:.0f} mm out of the jaws"
    if grip.support:
        yield f"carried by the {grip.support}"


def _on(words: str) -> str:
    return f"on {words}" if words and not words.startswith("by ") else words


def _row(act: Act) -> tuple[Text, ...]:
    what: Text = (act.what[0].upper() + act.what[1:],)
    if act.lower is not None:
        what = (Strong(act.what[0].upper() + act.what[1:]),)
    return ((TickBox(act.id),), what, (act.tool,), (act.speed,), (act.feed,), (act.measure,))
