"""The hardware of a model as one list: what to buy, how many, where, and why that length."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Block,
    Column,
    Design,
    Diagnostic,
    HardwareFact,
    Notice,
    NoticeKind,
    Paragraph,
    Place,
    Reckoned,
    Section,
    Table,
    Text,
    exact,
    shown_length,
)

_COLUMNS = (
    Column("Designation", 5),
    Column("Off", 1.2, is_figure=True),
    Column("Buy", 1.2, is_figure=True),
    Column("Where", 5),
    Column("Grip", 2.2, is_figure=True),
    Column("Holds by", 2.4, is_figure=True),
    Column("Why this one", 5),
)
_WORDS = (
    "`Buy` has a tenth more of the small ones: they roll under the bench. Grip is what is "
    "clamped; `holds by` is the thread, or the metal, that is engaged."
)


def hardware_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One section where the joints need any hardware."""
    facts = design.facts.all(HardwareFact)
    if facts:
        yield Section("hardware", "Hardware", Place.SHOPPING, tuple(_blocks(facts, design)))


def _blocks(facts: tuple[HardwareFact, ...], design: Design) -> Iterator[Block]:
    yield Paragraph((_WORDS.replace("`", ""),))
    groups: dict[str, list[HardwareFact]] = {}
    for fact in facts:
        groups.setdefault(fact.what, []).append(fact)
    rows = [row for alike in groups.values() for row in _rows(alike, design)]
    yield Table(_COLUMNS, tuple(rows))
    yield from _held(list(groups))


def _rows(alike: list[HardwareFact], design: Design) -> Iterator[tuple[Text, ...]]:
    """One row for each joint; the sums stand in the first."""
    off = sum(fact.count for fact in alike)
    buy = off + sum(fact.spares for fact in alike)
    for row, fact in enumerate(alike):
        first = row == 0
        why: Text = (Reckoned("", fact.why),) if fact.why else ("",)
        yield (
            (fact.what if first else "",),
            (str(off) if first else "",),
            (("make" if fact.is_made else str(buy)) if first else "",),
            (f"{fact.joint}: {fact.count} off",),
            (_shown(fact.grip, design),),
            (_shown(fact.engagement, design),),
            why,
        )


def _shown(mm: float | None, design: Design) -> str:
    return shown_length(exact(round(mm, 2)), design.units) if mm is not None else ""


def _held(whats: list[str]) -> Iterator[Block]:
    """The order of magnitude of what each size of screw is proved to, thin to thick."""
    from binder_plugins.fasteners.proved import SOURCE, proved

    lines = proved(whats)
    if lines:
        yield Notice(NoticeKind.NOTE, "What such screws hold", ("; ".join(lines),), SOURCE)
