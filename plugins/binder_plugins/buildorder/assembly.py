"""Assemblies to their sheets: what goes in, in which steps, and the test."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Assembly,
    Block,
    CautionLines,
    Checklist,
    ClosedWithFact,
    Column,
    Design,
    Diagnostic,
    ItemNumber,
    Joint,
    JointFact,
    Notice,
    NoticeKind,
    Paragraph,
    Place,
    Section,
    Strong,
    Table,
    Text,
    Tick,
)
from binder_plugins.buildorder.closing import inside_of
from binder_plugins.buildorder.curing import left_alone, parts_of
from binder_plugins.buildorder.filed_seats import seated_at
from binder_plugins.buildorder.float_set import float_set
from binder_plugins.buildorder.floating import floats_in
from binder_plugins.buildorder.locking import locked, when
from binder_plugins.buildorder.run_out import ends_in
from binder_plugins.buildorder.running_in import full_load, is_run_in
from binder_plugins.buildorder.step_words import step_words
from binder_plugins.buildorder.stops import stop_at
from binder_solid.filled import done_as
from binder_solid.leaning import leans_at
from binder_solid.set_there import put_on, set_there


def assembly_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """A section that holds one sheet for each assembly, inner ones first as they are built."""
    sheets = [
        _sheet(one, design)
        for one in sorted(design.assemblies.values(), key=lambda one: len(inside_of(one, design)))
    ]
    if sheets:
        yield Section("assembly", "Assembly", Place.ASSEMBLY, (), sections=tuple(sheets))


def _sheet(one: Assembly, design: Design) -> Section:
    columns = (
        Column("Item", 1, is_figure=True),
        Column("Off", 1, is_figure=True),
        Column("What", 6),
    )
    rows = (
        *(_row(member.item, member.count, design) for member in one.members),
        *(_row(name, count, design) for name, count in _closed_with(one, design)),
    )
    blocks: list[Block] = [Table(columns, rows)]
    lines = CautionLines(design)
    ticks = tuple(_steps(one, lines, design))
    if ticks:
        blocks.append(Checklist(ticks))
    if one.note:
        blocks.append(Paragraph((one.note,)))
    test = f"{full_load(one, design)}{one.test.rstrip('. ')}" if one.test else ""
    words = "; ".join(filter(None, (*floats_in(one, design), test, *ends_in(one, design))))
    if words:
        title = "Test when it has run in" if is_run_in(one, design) else "Test now"
        blocks.append(Notice(NoticeKind.NOTE, title, (words,)))
    last = tuple(locked(one, lines, design))
    if last:
        blocks += [Paragraph((when(one, design),)), Checklist(last)]
    return Section(
        f"assembly-{one.name}",
        one.title.capitalize(),
        Place.ASSEMBLY,
        tuple(blocks),
        starts_page=False,
    )


def _closed_with(one: Assembly, design: Design) -> tuple[tuple[str, int], ...]:
    """The hardware of the joints that close here, bought or made without a leaf."""
    found = design.facts.about(ClosedWithFact, one.name)
    return found.items if found is not None else ()


def _row(name: str, count: int, design: Design) -> tuple[Text, ...]:
    item = design.item(name)
    number = design.facts.about(ItemNumber, name)
    title = item.title if item is not None else name
    return ((str(number.number) if number else "",), (str(count),), (title,))


def _steps(one: Assembly, lines: CautionLines, design: Design) -> Iterator[Tick]:
    """The maker's own steps, then the joints that close here."""
    for number, words in enumerate(one.steps, 1):
        yield Tick(f"{one.name} step {number}", (words,))
    parts = parts_of(one, design)
    for number, part in enumerate(parts, 1):
        for joint in part:
            yield from _step(joint, one, lines, design)
            yield from float_set(joint, one, design)
        if number < len(parts):
            words = left_alone(part, design)
            yield Tick(f"{one.name} cure {number}", (Strong(f"{words[0].upper()}{words[1:]}"),))


def _step(joint: Joint, one: Assembly, lines: CautionLines, design: Design) -> Iterator[Tick]:
    fact = design.facts.about(JointFact, joint.name)
    if fact is not None:
        more = [lines.at((done_as(joint, design),), joint.items)]
        if joint.entry.feel:
            more.append((f"should feel: {joint.entry.feel}",))
        place = (set_there if fact.is_lasting else put_on)(joint, design)
        if not place and fact.group == "fixing":
            place = leans_at(joint, design)
        if not place and fact.is_lasting:
            place = stop_at(joint, design) or seated_at(joint, design)
        if place:
            more.append((f"place: {place}",))
        if joint.entry.note:
            more.append((f"note: {joint.entry.note}",))
        step = step_words(joint, one, design)
        words = step[0].upper() + step[1:]
        yield Tick(f"{one.name} {joint.name}", (words,), tuple(filter(None, more)))
