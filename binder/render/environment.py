"""The package's templates to a jinja2 environment that escapes everything."""

from __future__ import annotations

from functools import cache

from jinja2 import Environment, PackageLoader, StrictUndefined

from binder.pages import Block, Column, Run, Table, text_of
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
    made.filters.update(kind=kind, key=safe_key, words=text_of)
    made.globals.update(shares=shares, row_ids=row_ids, trusted=trusted)
    return made


def kind(noun: Block | Run) -> str:
    """The name of the macro that prints a block or run."""
    return type(noun).__name__.lower()


def shares(columns: tuple[Column, ...]) -> tuple[str, ...]:
    """Each column's share of the table's width, in percent as CSS writes it."""
    whole = sum(column.share for column in columns)
    return tuple(f"{100 * column.share / whole:.3f}%" for column in columns)


def row_ids(table: Table) -> tuple[str, ...]:
    """One id for each row, '' where it has none."""
    return table.ids or ("",) * len(table.rows)
