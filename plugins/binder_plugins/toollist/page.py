"""A design's workshop to the tool list."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import chain

from binder.api import (
    Block,
    Column,
    Design,
    Diagnostic,
    Facts,
    Model,
    Paragraph,
    Place,
    Section,
    Subheading,
    Table,
)
from binder_plugins.toollist.said import said, told
from binder_plugins.toollist.sets import cutting_sets, threads
from binder_plugins.toollist.shelf import stock

INTRO = (
    "This binder was worked out for these machines and tools. In another workshop other drills, "
    "speeds and substitutes would be chosen: name its file and compile again."
)


def workshop_pages(design: Design, findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One section: machines, holding, cutters, measuring tools, and stock on the shelf."""
    workshop = design.workshop
    blocks = chain(
        _head(design),
        _machines(design),
        _group("Holding", workshop.entry.holding),
        cutting_sets(design),
        threads(design),
        _group("Cutters", workshop.entry.cutters),
        _named("Measuring tools", workshop.entry.measuring),
        _listed("Hand tools", workshop.entry.hand_tools),
        stock(design),
    )
    yield Section("workshop", "The workshop", Place.WORKSHOP, tuple(blocks), starts_page=False)


def _head(design: Design) -> Iterator[Block]:
    entry = design.workshop.entry
    pairs = {"Workshop": entry.name, "Tools mostly in": entry.units, "An evening": entry.evening}
    yield Paragraph((INTRO,))
    yield _facts({**pairs, "Times are those usual, times": entry.pace, "Note": entry.note})


def _machines(design: Design) -> Iterator[Block]:
    machines = design.workshop.entry.machines
    kinds: tuple[tuple[str, Mapping[str, Model]], ...] = (
        ("Lathe", machines.lathes),
        ("Mill", machines.mills),
        ("Drilling machine", machines.drilling_machines),
    )
    for kind, owned in kinds:
        for name, machine in owned.items():
            yield Subheading(f"{kind}: {name}")
            yield _facts(dict(told(machine)))
    yield from _named("Saws", machines.saws)
    yield from _named("Other machines", machines.others)


def _facts(pairs: Mapping[str, object]) -> Facts:
    return Facts(tuple((_capital(name), (said(one) or "yes",)) for name, one in told(pairs)))


def _named(heading: str, things: Mapping[str, object]) -> Iterator[Block]:
    """A table of things by name."""
    if things:
        yield Subheading(heading)
        yield Table(
            (Column("Name", 2), Column("What is known of it", 5)),
            tuple(((name,), (said(thing),)) for name, thing in things.items()),
        )


def _listed(heading: str, things: Sequence[object]) -> Iterator[Block]:
    """What is told in plain words alone."""
    if things:
        yield Subheading(heading)
        yield Paragraph((said(things),))


def _group(heading: str, model: Model) -> Iterator[Block]:
    """A table of all that one model holds: kind, name where there is one, and what it is."""
    rows = tuple(((kind,), (name,), (words,)) for kind, name, words in _members(model))
    if rows:
        yield Subheading(heading)
        columns = (Column("Kind", 2), Column("Name", 2), Column("What is known of it", 5))
        yield Table(columns, rows)


def _members(model: Model) -> Iterator[tuple[str, str, str]]:
    for kind, value in told(model):
        if isinstance(value, Mapping):
            yield from ((_capital(kind), name, said(one)) for name, one in value.items())
        elif isinstance(value, Sequence) and any(isinstance(one, Model) for one in value):
            yield from ((_capital(kind), "", said(one)) for one in value)
        else:
            yield _capital(kind), "", said(value)


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]
