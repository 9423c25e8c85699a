"""Blanks of plate and sheet: what to have of each, and what is sawn out of it for each part."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from binder.api import (
    BarUse,
    Block,
    Column,
    CutSize,
    Design,
    ItemNumber,
    MaterialFact,
    NumberOff,
    Subheading,
    Table,
    Text,
    shown_length,
)

# What a saw takes between two blanks, and the room to file both edges: common practice, no source.
_BETWEEN = Fraction(2)


def sheets_to_have(cuts: list[CutSize], design: Design) -> Iterator[Block]:
    """A strip of each plate or sheet out of which all its blanks come, one behind the other."""
    found: dict[tuple[str, str], list[CutSize]] = {}
    for cut in cuts:
        if _sizes(cut, design) is not None:
            found.setdefault((_material(cut, design), cut.section_text), []).append(cut)
    columns = (Column("Material", 3), Column("Plate or sheet", 4), Column("To buy, at least", 5))
    rows = tuple(
        ((material,), (section,), (_strip(of, design),))
        for (material, section), of in found.items()
    )
    if rows:
        yield Subheading("Plate and sheet to have")
        yield Table(columns, rows)


def _strip(cuts: list[CutSize], design: Design) -> str:
    """As wide as the widest blank, as long as all of them with a saw's cut after each."""
    long, wide = Fraction(0), Fraction(0)
    for cut in cuts:
        size = _sizes(cut, design) or (Fraction(0), Fraction(0))
        long += _off(cut, design) * (min(size) + _BETWEEN)
        wide = max(wide, *size)
    both = " × ".join(shown_length(one, design.units) for one in (long, wide))
    return f"{both}, or as much in pieces that take the blanks below"


def blanks_of(cuts: list[CutSize], design: Design) -> Iterator[Block]:
    """Each blank as it is sawn, and what it is finished to."""
    columns = (
        Column("Item", 4),
        Column("Off", 1, is_figure=True),
        Column("From", 4),
        Column("Saw out", 3),
        Column("Finished size", 3),
    )
    yield Subheading("Blanks of plate, sheet and castings")
    yield Table(columns, tuple(_row(cut, design) for cut in cuts))


def _row(cut: CutSize, design: Design) -> tuple[Text, ...]:
    item, number = design.item(cut.subject), design.facts.about(ItemNumber, cut.subject)
    title = item.title if item is not None else cut.subject
    width = f" × {shown_length(cut.width, design.units)}" if cut.width is not None else ""
    material = _material(cut, design)
    return (
        (f"item {number.number} {title}" if number is not None else title,),
        (str(_off(cut, design)),),
        (", ".join(filter(None, (material, cut.section_text))),),
        (_sawn(cut, design),),
        (f"{shown_length(cut.length, design.units)}{width}",),
    )


def _sawn(cut: CutSize, design: Design) -> str:
    """The size on the leaf of the part, where it is sawn."""
    sizes, use = _sizes(cut, design), design.facts.about(BarUse, cut.subject)
    if sizes is None:
        return ""
    both = " × ".join(shown_length(one, design.units) for one in sizes)
    if use is not None and use.is_round:
        held = f", held by the rest of a piece {both}" if use.over else ""
        return f"⌀{shown_length(sizes[1], design.units)}{held}"
    return both


def _sizes(cut: CutSize, design: Design) -> tuple[Fraction, Fraction] | None:
    use = design.facts.about(BarUse, cut.subject)
    return (use.length, use.width) if use is not None and use.width is not None else None


def _material(cut: CutSize, design: Design) -> str:
    known, part = design.facts.about(MaterialFact, cut.subject), design.parts.get(cut.subject)
    if known is not None:
        return known.id.replace("-", " ")
    return part.material if part is not None else ""


def _off(cut: CutSize, design: Design) -> int:
    count = design.facts.about(NumberOff, cut.subject)
    return count.count if count is not None else 1
