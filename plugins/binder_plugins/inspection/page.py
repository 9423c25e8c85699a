"""Halves of joints to the list of what is measured."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Blank,
    Block,
    Column,
    Design,
    Diagnostic,
    FitFact,
    HalfFact,
    ItemNumber,
    Paragraph,
    Place,
    Section,
    Table,
    Text,
    Typed,
    exact,
    shown_length,
)
from binder_making.measuring import is_tried
from binder_plugins.inspection.gauging import if_out, said_of, tool_for
from binder_plugins.inspection.suited import suited_rows
from binder_plugins.inspection.truing import alignment_blocks
from binder_solid.eased_along import eased_along
from binder_solid.float_tried import EndFloat, end_floats, float_tried

_COLUMNS = (
    Column("Item", 1.2, is_figure=True),
    Column("Part", 2.5),
    Column("Place", 2.2),
    Column("Size and limits", 3.8),
    Column("With", 3.6),
    Column("Measured", 3.2),
    Column("If it is out", 3.5),
)
# What is bought has a bore that a stepped plug told: no inside jaws are as near.
_AGAINST_PLUG = "a micrometer, against the step of the plug that goes in"
_NO_CLIP = "the clip does not go home: cut on; it is loose in it: make again"
_WORDS = (
    "Let the work cool before it is measured: limits hold at 20 °C (ISO 1). Deburr first. A half "
    "that is made to suit is measured against the other as it was really made: what it differs "
    "from that counts, no size of its own. A plug gauge gives no number: where its thinner end "
    "goes in and its thicker one does not, write down the middle of the two; where both go in, "
    "turn thicker ones until one does not."
)


def inspection_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """Sizes in the order of the parts, then what must be true to what."""
    rows = (
        *_rows(design),
        *(_float_row(one, design) for one in end_floats(design)),
    )
    blocks: list[Block] = [Paragraph((_WORDS,)), Table(_COLUMNS, rows)] if rows else []
    blocks += alignment_blocks(design)
    if blocks:
        yield Section("inspection", "Inspection", Place.INSPECTION, tuple(blocks))


def _rows(design: Design) -> Iterator[tuple[Text, ...]]:
    """The halves of each part that are read, then what of it is made to a sum."""
    halves = design.facts.all(HalfFact)
    for item in design.items():
        yield from (_row(one, design) for one in halves if one.item == item.name and _is_read(one))
        yield from suited_rows(item.name, design)


def _is_read(half: HalfFact) -> bool:
    """Whether it has limits, is made to its measured mate, or has a gauge of its own."""
    return (
        half.lower is not None
        or half.suits is not None
        or half.over is not None
        or bool(half.gauged)
    )


def _is_tried(half: HalfFact, design: Design) -> bool:
    fit, joint = design.facts.about(FitFact, half.joint), design.joints.get(half.joint)
    if joint is None or (fit is None and half.suits is None):
        return True
    if fit is None:
        least, most = sorted(abs(add) * 1000 for add in half.suits or ())
        return is_tried(joint.kind, least, most)
    return is_tried(joint.kind, fit.clearance_min_um, fit.clearance_max_um)


def _where(half: HalfFact, design: Design) -> str:
    """The stretch that is eased to one of several mates, of a rod that is eased to each."""
    spans = eased_along(half, design).own if half.is_eased else ()
    told = [
        " to ".join(shown_length(exact(round(one, 2)), design.units) for one in span)
        for span in spans
    ]
    return f", {' and '.join(told)} from left" if told else ""


def _row(half: HalfFact, design: Design) -> tuple[Text, ...]:
    item = design.item(half.item)
    number = design.facts.about(ItemNumber, half.item)
    tool = half.gauged or tool_for(half, design.workshop, by_mate=_is_tried(half, design))
    if half.suits is not None and half.mate in design.bought:
        tool = _AGAINST_PLUG
    is_eased = half.suits is not None and half.is_eased
    return (
        (str(number.number) if number else "",),
        (item.title if item is not None else half.item,),
        (Typed(half.place), _where(half, design)),
        (f"{half.what}, {half.how}" if is_eased else half.what,),
        (": ".join(filter(None, (said_of(tool, half, design.units), half.fed))),),
        (Blank(f"joint {half.joint} {half.place}", design.units),),
        (_NO_CLIP if half.gauged else if_out(half, design.facts.about(FitFact, half.joint)),),
    )


def _float_row(one: EndFloat, design: Design) -> tuple[Text, ...]:
    """What is left along the axis when all is together; it is no size of one part."""
    least, most = (shown_length(exact(round(mm, 3)), design.units) for mm in (one.least, one.most))
    return (
        ("",),
        (one.title,),
        ("end float",),
        (f"{least} to {most}",),
        (float_tried(one.least, one.most, design),),
        (Blank(f"float {one.subject}", design.units),),
        (f"too little: {one.little}; too much: {one.much}",),
    )
