"""Tools that the operations name and the workshop does not have: a list to buy or borrow."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Column, Design, Diagnostic, Paragraph, Place, Section, Table
from binder_plugins.operations.facts import Route
from binder_plugins.operations.hole_tools import NOT_OWNED

if TYPE_CHECKING:
    from collections.abc import Iterator

_COLUMNS = (Column("Tool", 4), Column("For", 6))


def wanted_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One table, each tool once, with all that it is wanted for; nothing where all are owned."""
    wanted: dict[str, list[str]] = {}
    for route in design.facts.all(Route):
        for act in route.acts:
            if act.tool.endswith(NOT_OWNED):
                tool = act.tool.removesuffix(NOT_OWNED).rstrip(", ")
                where = f"{route.title}, {act.feature.replace('_', ' ') or act.act}"
                uses = wanted.setdefault(tool, [])
                uses += [where] if where not in uses else []
    if wanted:
        words = "The operations ask for these, and the workshop file does not list them."
        rows = tuple(((tool,), ("; ".join(uses),)) for tool, uses in wanted.items())
        yield Section(
            "tools-wanted",
            "Tools to buy or borrow",
            Place.SHOPPING,
            (Paragraph((words,)), Table(_COLUMNS, rows)),
            starts_page=False,
        )
