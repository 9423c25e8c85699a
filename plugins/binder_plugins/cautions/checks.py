"""A design to findings about what this tool must leave to others."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import CautionFact, Design, Diagnostic, Part
from binder_plugins.cautions.codes import NOT_AT_HOME, PRESSURE_NEEDS_INSPECTOR
from binder_plugins.cautions.facts import caution_table
from binder_plugins.cautions.signs import SignKind
from binder_plugins.cautions.words import phrases

PRESSURE = "pressure"


def check_pressure(design: Design) -> Iterator[Diagnostic]:
    """A caution at each made or bought thing whose name says that it holds pressure."""
    words = _pressure_words()
    for item in (*design.parts.values(), *design.fabrications.values(), *design.bought.values()):
        is_for_looks = isinstance(item, Part) and item.is_dummy
        met = sorted((phrases(item.name) | phrases(item.title)) & words)
        if met and not is_for_looks:
            yield PRESSURE_NEEDS_INSPECTOR.at(
                item.at,
                f"'{item.name}' may hold pressure ({met[0]})",
                help="let a boiler inspector see the design first; nothing is reckoned here",
            )


def check_trades(design: Design) -> Iterator[Diagnostic]:
    """Work that is not done at home, at each item that calls for it."""
    rows = {row.id: row for row in caution_table().cautions if row.is_elsewhere}
    for fact in design.facts.all(CautionFact):
        row = rows.get(fact.subject)
        for name in fact.where if row is not None else ():
            item = design.item(name)
            if item is not None:
                yield NOT_AT_HOME.at(
                    item.at,
                    f"'{name}': {fact.title.lower()} is no work for a home workshop",
                    help=f"leave it to {fact.asks}; or do without, as its caution says",
                )


def _pressure_words() -> frozenset[str]:
    rows = (row for row in caution_table().cautions if row.id == PRESSURE)
    return frozenset().union(*(row.triggers[SignKind.WORDS] for row in rows))
