"""The package's templates to a jinja2 environment that escapes everything."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from itertools import islice

from jinja2 import Environment, PackageLoader, StrictUndefined

from binder.pages import Block, Column, Group, Run, Table, Text, TickBox, text_of
from binder.render import trusted
from binder.render.anchors import safe_key


@cache
def environment() -> Environment:
    """Read once: autoescape on for every name, an unknown variable is an error."""
    made = Environment(
        loader=PackageLoader("binder.render", "templates"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    made.filters.update(kind=kind, key=safe_key, words=text_of, breakable=trusted.breakable)
    made.globals.update(shares=shares, grouped=grouped, has_ticks=has_ticks, trusted=trusted)
    return made


def kind(noun: Block | Run) -> str:
    """The name of the macro that prints a block or run."""
    return type(noun).__name__.lower()


def shares(columns: tuple[Column, ...]) -> tuple[str, ...]:
    """Each column's share of the table's width, in percent as CSS writes it."""
    whole = sum(column.share for column in columns)
    return tuple(f"{100 * column.share / whole:.3f}%" for column in columns)


def has_ticks(table: Table) -> bool:
    """Whether the rows of a table begin with boxes to tick."""
    return any(isinstance(run, TickBox) for row in table.rows for run in row[0])


def grouped(table: Table) -> Iterator[tuple[Group | None, list[tuple[tuple[Text, ...], str]]]]:
    """Each group with its rows, all rows under none where there are no groups; a row with its id.

    Rows that no group counted come last, under none.
    """
    rows = zip(table.rows, table.ids or ("",) * len(table.rows), strict=True)
    for group in table.groups:
        yield group, list(islice(rows, group.count))
    left = list(rows)
    if left or not table.groups:
        yield None, left
