"""The facts about cautions to the page that is read before any work."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Block,
    CautionFact,
    Design,
    Diagnostic,
    Notice,
    NoticeKind,
    Paragraph,
    Place,
    Section,
    Strong,
    Subheading,
)
from binder_plugins.cautions.facts import caution_table

# So many are named, and the rest counted where that spares more than two names.
MOST_NAMED, LEAST_COUNTED = 6, 3
GENERAL = "general"
HEADLINE = (
    "Usual published cautions; they do not replace the machine's manual, the data sheet, local "
    "codes or a competent person."
)
DEFERENCE = (
    "Local law and codes come before anything in this binder. Pressure, gas, electricity and "
    "lifting belong to a competent person, with a licence where the law asks for one: no "
    "procedure for them is given here. This binder comes without any warranty of fitness."
)
ADDED_TITLE = "Added by the author of the spec"
ADDED_NOTE = (
    "These words are not this tool's. Where somebody else wrote the spec, check before you cut "
    "or heat."
)


def caution_pages(design: Design, findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One section: general cautions, those by hazard, the maker's own, and who comes first."""
    facts = design.facts.all(CautionFact)
    blocks: list[Block] = [Paragraph((Strong(HEADLINE),))]
    for hazard, heading in caution_table().hazards.items():
        notices = [_notice(fact, design) for fact in facts if fact.hazard == hazard]
        if notices:
            blocks += [Subheading(heading), *notices]
    blocks += _added(design)
    blocks.append(
        Notice(
            NoticeKind.CAUTION,
            "Local law first; a competent person for pressure, gas, electricity and lifting",
            (Strong(DEFERENCE),),
        )
    )
    yield Section("cautions", "Cautions that apply", Place.CAUTIONS, tuple(blocks))


def _notice(fact: CautionFact, design: Design) -> Notice:
    if fact.hazard == GENERAL:
        return Notice(NoticeKind.CAUTION, fact.title, (fact.text,), fact.source)
    text = (fact.text, f" Applies to: {_where(fact.where, design)}.")
    return Notice(NoticeKind.CAUTION, fact.title, text, fact.source)


def _where(names: tuple[str, ...], design: Design) -> str:
    """The titles of the items and tasks, the first few where they are many."""
    if not names:
        return "the whole model"
    more = len(names) - MOST_NAMED
    is_counted = more >= LEAST_COUNTED
    titles = [_title(name, design) for name in (names[:MOST_NAMED] if is_counted else names)]
    return "; ".join(titles) + (f" and {more} more" if is_counted else "")


def _title(name: str, design: Design) -> str:
    """As the other pages call it: work on several parts together by its task."""
    item = design.item(name)
    if item is not None:
        return item.title
    task = design.tasks.get(name)
    return f"'{task.title}'" if task is not None else name


def _added(design: Design) -> Iterator[Block]:
    written = getattr(design.spec.written, "cautions", None) or ()
    if written:
        yield Subheading(ADDED_TITLE)
        yield Paragraph((ADDED_NOTE,))
        for words in written:
            yield Notice(NoticeKind.NOTE, "The author says", (" ".join(words.split()),))
