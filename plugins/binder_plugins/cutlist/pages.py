"""Cutting plans to the cut list: what to saw from which bar, with a picture of each."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Anchor,
    BarCut,
    BarPlan,
    Block,
    Checklist,
    Column,
    CutPiece,
    CutSize,
    Design,
    Diagnostic,
    Drawing,
    DrawnBox,
    DrawnLabel,
    ItemNumber,
    Paragraph,
    Picture,
    Place,
    Reckoned,
    Section,
    Stroke,
    Subheading,
    Table,
    Text,
    Tick,
    shown_length,
    text_width,
)
from binder_plugins.cutlist.plates import blanks_of, sheets_to_have

_WIDTH = 176.0
_HIGH = 8.0
_LETTER = 2.5


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
    sawn = sum(piece.count for piece in plan.pieces)
    why = Reckoned(said, f"{sawn} piece{'s' if sawn != 1 else ''} to saw")
    return ((plan.material,), (plan.section_text,), (words,), (why,))


def _cutting(plan: BarPlan, design: Design) -> Iterator[Block]:
    yield Subheading(f"{plan.material}, {plan.section_text}")
    for number, bar in enumerate(plan.bars, 1):
        left = shown_length(bar.left, design.units)
        caption = (
            f"Bar {number} of {len(plan.bars)}, {shown_length(bar.length, design.units)}: "
            f"{left} left, of which {shown_length(plan.holding, design.units)} is grip"
        )
        described = "a bar with its pieces in order of sawing"
        yield Picture(_bar_drawing(bar, design), described, caption)
    ticks = tuple(_tick(plan, index, design) for index in range(len(plan.pieces)))
    yield Checklist(ticks, numbered=False)


def _tick(plan: BarPlan, index: int, design: Design) -> Tick:
    piece = plan.pieces[index]
    saw = shown_length(piece.length, design.units)
    text = f"{piece.count} off {_numbered(piece.item, design)}: {_taking(piece)} {saw}"
    cut = design.facts.about(CutSize, piece.item)
    more = [f"finished {shown_length(cut.length, design.units)}"] if cut is not None else []
    if piece.over:
        more.append(f"{shown_length(piece.over, design.units)} to hold it by")
    return Tick(f"saw {piece.item}", (", ".join((text, *more)),))


def _taking(piece: CutPiece) -> str:
    """A sawn piece is as long as it is told; one that is parted takes its facing as well."""
    return "uses" if piece.verb == "part off" else piece.verb


def _numbered(name: str, design: Design) -> str:
    item = design.item(name)
    number = design.facts.about(ItemNumber, name)
    title = item.title if item is not None else name
    return f"item {number.number} {title}" if number is not None else title


def _bar_drawing(bar: BarCut, design: Design) -> Drawing:
    """The bar to scale over the width of the page, item numbers in the pieces."""
    scale = _WIDTH / float(bar.length)
    shapes: list[DrawnBox | DrawnLabel] = [
        DrawnBox(0, 1, _WIDTH, _HIGH, tint=0.0, stroke=Stroke.OUTLINE)
    ]
    for piece in bar.pieces:
        x = float(piece.start) * scale
        width = float(piece.end - piece.start) * scale
        shapes.append(DrawnBox(x, 1, width, _HIGH, tint=0.12, stroke=Stroke.THIN))
        words = _fitting(piece.item, width, design)
        if words:
            middle = 1 + _HIGH / 2 + _LETTER / 2
            shapes.append(DrawnLabel(x + width / 2, middle, words, _LETTER, Anchor.MIDDLE))
    return Drawing(_WIDTH, _HIGH + 2, tuple(shapes))


def _fitting(name: str, width: float, design: Design) -> str:
    """The longest name of a piece that its box holds: title, number, or nothing."""
    item = design.item(name)
    number = design.facts.about(ItemNumber, name)
    numbered = str(number.number) if number else ""
    title = item.title if item is not None else name
    for words in (f"{numbered} {title}".strip(), numbered):
        if words and text_width(words, _LETTER) < width - 1:
            return words
    return ""
