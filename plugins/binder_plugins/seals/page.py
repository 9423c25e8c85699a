"""Seals to their sheets: O-rings with their grooves, gaskets, and stuffing boxes."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Blank,
    Block,
    Column,
    Design,
    Diagnostic,
    Facts,
    Follows,
    Picture,
    Place,
    Reckoned,
    Section,
    Subheading,
    Table,
    Text,
    exact,
    shown_length,
)
from binder_plugins.seals.facts import BoxFact, GasketFact, RingFact
from binder_plugins.seals.groove_drawing import groove_drawing

_INCH = 25.4
_GASKETS = (
    Column("Joint", 3),
    Column("Gasket", 4),
    Column("Pulled down to", 3, is_figure=True),
    Column("Suits", 4),
)
_BOXES = (
    Column("Joint", 3),
    Column("Rod", 2, is_figure=True),
    Column("Packing", 3),
    Column("Box", 3),
    Column("Gland", 3),
    Column("Each ring", 2, is_figure=True),
)


def seal_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One section: a sheet for each O-ring, a table of gaskets, one of boxes."""
    sheets = tuple(
        _sheet(fact, design.units) for fact in design.facts.all(RingFact) if fact.depth_mm > 0
    )
    blocks = (*_gaskets(design), *_boxes(design))
    if sheets or blocks:
        yield Section("seals", "Seals", Place.JOINTS, blocks, starts_page=False, sections=sheets)


def _sheet(fact: RingFact, units: str) -> Section:
    name = fact.joint.name
    blocks: tuple[Block, ...] = (
        Picture(groove_drawing(fact, units), f"section of the groove of {name} with its ring"),
        Facts(tuple(_facts(fact, units))),
    )
    slug = name.replace(" ", "-")
    return Section(f"seal-{slug}", name, Place.JOINTS, blocks, starts_page=False)


def _facts(fact: RingFact, units: str) -> Iterator[tuple[str, Text]]:
    groove = fact.groove
    duty = "moving" if groove.housing.duty == "moving" else "standing"
    yield "O-ring", (Reckoned(groove.ring.name, f"{duty} seal; {groove.ring.source}"),)
    yield "Floor of the groove", _floor(fact, units)
    yield "Groove", (_section(fact, units),)
    pressed = f"{groove.squeeze_least:.0f} to {groove.squeeze_most:.0f} %"
    yield "Pressed by", (Reckoned(f"{groove.squeeze:.0f} %", f"{pressed} with all tolerances"),)
    yield "Stretched by", (f"{groove.stretch:.1f} %; it fills {groove.fill:.0f} % of the groove",)
    lead = shown_length(exact(fact.lead.length_mm), units)
    yield "Lead-in", (f"{lead} at {fact.lead.angle_deg:g}° on the {fact.mate.end.item}, no burr",)


def _floor(fact: RingFact, units: str) -> Text:
    """The floor follows from the bore or rod as it was really made."""
    apart = fact.groove.diameter_mm - fact.mate_mm
    printed = apart / _INCH if units == "inch" else apart
    what = "rod" if fact.groove.place == "rod" else "bore"
    sign = "+" if apart > 0 else "−"
    key = f"joint {fact.joint.name} {fact.mate.end.place}"
    return (
        f"⌀{shown_length(exact(fact.groove.diameter_mm), units)}: {what} measured ",
        Blank(key, units),
        f" {sign} {shown_length(exact(abs(apart)), units)} = cut the floor to ",
        Follows(key, printed, units),
    )


def _section(fact: RingFact, units: str) -> str:
    housing = fact.groove.housing
    width, most, deep, radius = (
        shown_length(exact(size), units)
        for size in (
            housing.width_mm,
            housing.width_mm + housing.width_plus_mm,
            fact.depth_mm,
            housing.corner_mm,
        )
    )
    return f"{width} to {most} wide, {deep} deep, R{radius} in its corners, edges just broken"


def _gaskets(design: Design) -> Iterator[Block]:
    facts = design.facts.all(GasketFact)
    if facts:
        yield Subheading("Gaskets")
        yield Table(_GASKETS, tuple(_gasket(fact, design.units) for fact in facts))


def _gasket(fact: GasketFact, units: str) -> tuple[Text, ...]:
    made = fact.gasket
    free, thin, thick = (
        shown_length(exact(round(mm, 2)), units)
        for mm in (made.free_mm, made.closed_least_mm, made.closed_most_mm)
    )
    name = f"{made.sheet.name}, {free}"
    return (fact.joint.name,), (name,), (f"{thin} to {thick}",), (made.sheet.suits,)


def _boxes(design: Design) -> Iterator[Block]:
    facts = design.facts.all(BoxFact)
    if facts:
        yield Subheading("Stuffing boxes")
        yield Table(_BOXES, tuple(_box(fact, design.units) for fact in facts))


def _box(fact: BoxFact, units: str) -> tuple[Text, ...]:
    box = fact.box
    rod, section, across, deep, nose, outside, bore, ring = (
        shown_length(exact(round(mm, 2)), units)
        for mm in (
            box.rod_mm,
            box.section_mm,
            box.box_mm,
            box.depth_mm,
            box.nose_mm,
            box.gland_outside_mm,
            box.gland_bore_mm,
            box.ring_mm,
        )
    )
    return (
        (fact.joint.name,),
        (rod,),
        (f"{box.rings} rings of {section} square",),
        (Reckoned(f"⌀{across}, {deep} deep", "rod and two packings; half the nose enters"),),
        (f"nose ⌀{outside}, {nose} long, bore ⌀{bore}",),
        (ring,),
    )
