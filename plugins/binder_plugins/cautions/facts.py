"""A design to the facts about its cautions."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

from binder.api import CautionFact, Contribution, Design, load_data
from binder_plugins.cautions.matching import Applied, Unanswered, applied, unanswered
from binder_plugins.cautions.reading import signs_of
from binder_plugins.cautions.table import CautionTable, read_table

UNKNOWN = "unknown"


@cache
def caution_table() -> CautionTable:
    """The table of this plugin, read once."""
    return read_table(load_data("binder_plugins.cautions", "cautions.yaml"))


def state_cautions(design: Design) -> Contribution:
    """A fact for each caution that applies, and for each thing of which none is known."""
    return Contribution(facts=tuple(_facts(design)))


def _facts(design: Design) -> Iterator[CautionFact]:
    table = caution_table()
    signs = tuple(signs_of(design))
    for one in applied(table, signs):
        yield _fact(one)
    for nothing in unanswered(table, signs):
        yield _silence(nothing, table)


def _fact(one: Applied) -> CautionFact:
    caution = one.caution
    return CautionFact(
        subject=caution.id,
        hazard=caution.hazard,
        title=caution.title,
        text=caution.printed_text,
        source=caution.printed_source,
        where=one.items,
        short=caution.short,
        at=caution.at,
        asks=caution.defers_to,
    )


def _silence(nothing: Unanswered, table: CautionTable) -> CautionFact:
    return CautionFact(
        subject=f"{UNKNOWN} {nothing.title}",
        hazard=UNKNOWN,
        title=nothing.title,
        text=table.unknown,
        source="not in this tool's table",
        where=nothing.items,
    )
