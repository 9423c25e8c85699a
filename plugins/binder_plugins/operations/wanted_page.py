"""The tools that the operations name: what is owned, what is made first, what is to be had."""

from __future__ import annotations

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

if TYPE_CHECKING:
    from collections.abc import Iterator

MADE_SECTION = "tools-to-make"
_COLUMNS = (Column("Tool", 4), Column("First wanted for", 5), Column("Set-ups", is_figure=True))
_INTRO = (
    "Every tool, fixture and gauge that a leaf names stands here once. What the workshop file "
    "does not list is taken as not owned: write it there, under hand_tools: or fixtures:, and it "
    "moves up. Adhesives, solders and fluxes stand under To buy and to find."
)
_WORDS = {
    Whose.OWNED: ("You own", ""),
    Whose.MADE: (
        "Make first",
        "Their stock is in the cut list, their minutes in the evening where each is first wanted.",
    ),
    Whose.HAD: ("Buy or borrow", "The workshop file does not list them."),
}


def wanted_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One section in three groups; nothing where no tool is named."""
    fact = design.facts.about(ToolsFact, "")
    if fact is None or not fact.tools:
        return
    blocks: list[Block] = [Paragraph((_INTRO,))]
    for whose in (Whose.HAD, Whose.MADE, Whose.OWNED):
        tools = [one for one in fact.tools if one.whose is whose]
        if tools:
            blocks += _group(whose, sorted(tools, key=lambda one: one.name.lower()))
    yield Section(
        "tools-wanted", "Tools for the work", Place.SHOPPING, tuple(blocks), starts_page=False
    )


def _group(whose: Whose, tools: list[Tool]) -> Iterator[Block]:
    title, words = _WORDS[whose]
    yield Subheading(title)
    if words and whose is Whose.MADE:
        yield Paragraph((f"{words} How each is made: ", Link("Tools to make", MADE_SECTION), "."))
    elif words:
        yield Paragraph((words,))
    if whose is Whose.OWNED:
        yield Paragraph((f"{'; '.join(one.name for one in tools)}.",))
    else:
        yield Table(_COLUMNS, tuple(_row(one) for one in tools))


def _row(one: Tool) -> tuple[Text, ...]:
    return ((one.name,), (one.uses[0][1],), (str(len(one.uses)),))
