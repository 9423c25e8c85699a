"""Cutting plans to the cut list: what to saw from which bar, with a picture of each."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    BarPlan,
    Block,
    Checklist,
    Column,
    CutPiece,
    CutSize,
    Design,
    Diagnostic,
    ItemNumber,
    Paragraph,
    Picture,
    Place,
    Reckoned,
    Section,
    Subheading,
    Table,
    Text,
    Tick,
    shown_length,
)
from binder_plugins.cutlist.bar_picture import bar_drawing, marks_of
from binder_plugins.cutlist.plates import blanks_of, sheets_to_have

_PARTED = "part off"


def cut_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """The bars to buy, then each bar with its cuts, then the blanks of plate and sheet."""
    plans = design.facts.all(BarPlan)
    blanks = [cut for cut in design.facts.all(CutSize) if not _is_planned(cut, plans)]
    blocks: list[Block] = []
    if plans:
        blocks += _bars_to_have(plans, design.units)
        for plan in plans:
            blocks += _cutting(plan, design)
    if blanks:
        blocks += [*sheets_to_have(blanks, design), *blanks_of(blanks, design)]
    if blocks:
        yield Section("cut-list", "Cut list", Place.CUT_LIST, tuple(blocks), starts_page=False)


def _is_planned(cut: CutSize, plans: tuple[BarPlan, ...]) -> bool:
    return any(piece.item == cut.subject for plan in plans for piece in plan.pieces)


def _bars_to_have(plans: tuple[BarPlan, ...], units: str) -> list[Block]:
    words = (
        "Lengths have the facing of both ends in them, and what holds a piece that is too thick "
        "for the spindle. The grip is lost once on each bar."
    )
    columns = (
        Column("Material", 3),
        Column("Section", 4),
        Column("Bars", 5),
        Column("Could fewer do?", 3),
    )
    return [Paragraph((words,)), Table(columns, tuple(_plan_row(plan, units) for plan in plans))]


def _plan_row(plan: BarPlan, units: str) -> tuple[Text, ...]:
    bars: dict[str, int] = {}
    for bar in plan.bars:
        where = "on the shelf" if bar.is_owned else "to buy"
        name = f"{shown_length(bar.length, units)} ({where})"
        bars[name] = bars.get(name, 0) + 1
    words = ", ".join(f"{count} off {name}" for name, count in bars.items())
    fewest = f"not ruled out; at least {plan.least} needed"
    said = "no: that is proved" if plan.is_proven else fewest
    why = Reckoned(said, _how_cut(plan.pieces))
    return ((plan.material,), (plan.section_text,), (words,), (why,))


def _how_cut(pieces: tuple[CutPiece, ...]) -> str:
    """`1 piece to saw, 2 parted off in the lathe`: each by what cuts it off."""
    parted = sum(piece.count for piece in pieces if piece.verb == _PARTED)
    sawn = sum(piece.count for piece in pieces) - parted
    first = f"{sawn} piece{'s' if sawn != 1 else ''} to saw"
    if not parted:
        return first
    if not sawn:
        return f"{parted} piece{'s' if parted != 1 else ''} parted off in the lathe"
    return f"{first}, {parted} parted off in the lathe"


def _cutting(plan: BarPlan, design: Design) -> Iterator[Block]:
    yield Subheading(f"{plan.material}, {plan.section_text}")
    marks = marks_of(plan, design)
    for number, bar in enumerate(plan.bars, 1):
        left = shown_length(bar.left, design.units)
        caption = (
            f"Bar {number} of {len(plan.bars)}, {shown_length(bar.length, design.units)}: "
            f"{left} left, of which {shown_length(plan.holding, design.units)} is grip"
        )
        described = "a bar with its pieces in order of cutting"
        yield Picture(bar_drawing(bar, marks, design), described, caption)
    ticks = tuple(_tick(piece, marks[piece.item], design) for piece in plan.pieces)
    yield Checklist(ticks, numbered=False)


def _tick(piece: CutPiece, mark: str, design: Design) -> Tick:
    saw = shown_length(piece.length, design.units)
    text = f"{piece.count} off {_marked(piece.item, mark, design)}: {_taking(piece)} {saw}"
    cut = design.facts.about(CutSize, piece.item)
    more = [f"finished {shown_length(cut.length, design.units)}"] if cut is not None else []
    if piece.over:
        more.append(f"{shown_length(piece.over, design.units)} to hold it by")
    return Tick(f"saw {piece.item}", (", ".join((text, *more)),))


def _taking(piece: CutPiece) -> str:
    """A sawn piece is as long as it is told; one that is parted takes its facing as well."""
    return "uses" if piece.verb == _PARTED else piece.verb


def _marked(name: str, mark: str, design: Design) -> str:
    """`item 2 screw`, or `piece a, plug gauge`: as the picture has it."""
    item = design.item(name)
    if design.facts.about(ItemNumber, name) is None:
        return f"piece {mark}, {name}"
    return f"item {mark} {item.title if item is not None else name}"
