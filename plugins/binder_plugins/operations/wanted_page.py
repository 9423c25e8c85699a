"""The tools that the operations name: what is owned, what is made first, what is to be had."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from binder.api import (
    Block,
    Column,
    Design,
    Diagnostic,
    Link,
    Paragraph,
    Place,
    Section,
    Subheading,
    Table,
    Text,
)
from binder_plugins.operations.aids.facts import Tool, ToolsFact, Whose
from binder_plugins.operations.jobs import piece_id
from binder_plugins.operations.planning import WorkPlan

if TYPE_CHECKING:
    from collections.abc import Iterator

MADE_SECTION = "tools-to-make"
_COLUMNS = (Column("Tool", 4), Column("First wanted for", 5), Column("Set-ups", is_figure=True))
_INTRO = (
    "Every tool, fixture and gauge that a leaf names stands here once. What the workshop file "
    "does not list is taken as not owned: write it there, under hand_tools: or fixtures:, and it "
    "moves up. Adhesives, solders, fluxes and oils stand under To buy and to find."
)
# A size is not parted from its unit at the end of a line.
_SIZE, _UNBROKEN = re.compile(r"(?<=\d) (?=(?:mm|in)\b)"), "\u00a0"
_WORDS = {
    Whose.OWNED: ("You own", ""),
    Whose.MADE: (
        "Make first",
        "Their stock is in the cut list, to be bought or in the scrap box, as each tells.",
    ),
    Whose.HAD: ("Buy or borrow", "The workshop file does not list them."),
}


def wanted_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One section in three groups; nothing where no tool is named."""
    fact = design.facts.about(ToolsFact, "")
    if fact is None or not fact.tools:
        return
    blocks: list[Block] = [Paragraph((_INTRO,))]
    turns = _turns(design)
    for whose in (Whose.HAD, Whose.MADE, Whose.OWNED):
        tools = [one for one in fact.tools if one.whose is whose]
        if tools:
            blocks += _group(whose, sorted(tools, key=lambda one: one.name.lower()), turns)
    yield Section(
        "tools-wanted", "Tools for the work", Place.SHOPPING, tuple(blocks), starts_page=False
    )


def _turns(design: Design) -> dict[str, int]:
    """The turn of each piece of work in the evenings."""
    plan = design.facts.about(WorkPlan, "")
    jobs = (job for one in (plan.evenings if plan is not None else ()) for job in one.jobs)
    return {name: turn for turn, name in enumerate(dict.fromkeys(piece_id(job) for job in jobs))}


def _group(whose: Whose, tools: list[Tool], turns: dict[str, int]) -> Iterator[Block]:
    title, words = _WORDS[whose]
    yield Subheading(title)
    if words and whose is Whose.MADE:
        yield Paragraph((f"{words} How each is made: ", Link("Tools to make", MADE_SECTION), "."))
    elif words:
        yield Paragraph((words,))
    if whose is Whose.OWNED:
        names = "; ".join(one.name for one in tools)
        yield Paragraph((f"{_SIZE.sub(_UNBROKEN, names)}.",))
    else:
        yield Table(_COLUMNS, tuple(_row(one, turns) for one in tools))


def _row(one: Tool, turns: dict[str, int]) -> tuple[Text, ...]:
    first = min(one.uses, key=lambda use: turns.get(use[0], len(turns)))
    return ((one.name,), (first[1],), (str(len(one.uses)),))
