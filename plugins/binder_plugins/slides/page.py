"""Slides to their sheets: section, both halves, over the pins, and the sum for the second."""

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
    Paragraph,
    Picture,
    Place,
    Reckoned,
    Section,
    Table,
    Text,
    exact,
    shown_length,
)
from binder_plugins.slides.astride import gib_side, side_words
from binder_plugins.slides.facts import SlideFact
from binder_plugins.slides.gibs import gib_of
from binder_plugins.slides.halves import apart_mm, first_side
from binder_plugins.slides.made import bevelled
from binder_plugins.slides.section_drawing import section_of
from binder_trade.slides import Dovetail, OverPins, corners, pin_factor, pin_range

_COLUMNS = (
    Column("At sharp corners", 3),
    Column("Tail", 2, is_figure=True),
    Column("Slot", 2, is_figure=True),
)
_INCH = 25.4
_HALF = 0.05
_WORDS = (
    "Cut one half, measure it over two equal pins, and make the other to it. Both rest on the "
    "flats beside the tail; its top stays clear. Measure at both ends and in the middle."
)


def slide_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One sheet for each slide."""
    sheets = tuple(_sheet(fact, design) for fact in design.facts.all(SlideFact) if fact.slide)
    if sheets:
        yield Section(
            "slides",
            "Dovetail slides",
            Place.JOINTS,
            (Paragraph((_WORDS,)),),
            starts_page=False,
            sections=sheets,
        )


def _sheet(fact: SlideFact, design: Design) -> Section:
    blocks: list[Block] = []
    if fact.slide is not None:
        drawing = section_of(fact.slide, fact.pins, design.units, gib_side(fact))
        blocks.append(Picture(drawing, f"section of {fact.joint.name}: tail, slot and pins"))
        blocks.append(Table(_COLUMNS, tuple(_rows(fact.slide, fact.pins, design.units))))
        blocks.append(Facts(tuple(_facts(fact, fact.slide, design))))
    name = fact.joint.name.replace(" ", "-")
    title = fact.joint.name
    return Section(f"slide-{name}", title, Place.JOINTS, tuple(blocks), starts_page=False)


def _rows(slide: Dovetail, pins: OverPins | None, units: str) -> Iterator[tuple[Text, Text, Text]]:
    tail, slot = slide.male, slide.female
    yield _row("Where it is narrow", tail.narrow_mm, slot.narrow_mm, units)
    yield _row("Where it is wide", tail.wide_mm, slot.wide_mm, units)
    yield _row("Height and depth", tail.depth_mm, slot.depth_mm, units)
    if pins is not None:
        pin = shown_length(exact(pins.pin_mm), units)
        title = f"Over, and between, two {pin} pins"
        yield _row(title, pins.male_over_mm, pins.female_between_mm, units)


def _row(name: str, tail: float, slot: float, units: str) -> tuple[Text, Text, Text]:
    sizes = (shown_length(exact(size), units) for size in (tail, slot))
    first, second = sizes
    return (name,), (first,), (second,)


def _facts(fact: SlideFact, slide: Dovetail, design: Design) -> Iterator[tuple[str, Text]]:
    units = design.units
    yield "Flank", (f"{slide.angle_deg:g}° to the flat",)
    play = shown_length(exact(slide.clearance_mm), units)
    why = "room to set the gib" if slide.gib_mm else "a hand-sliding fit"
    yield "Sideways play as cut", (Reckoned(play, why),)
    if fact.pins is not None:
        yield "Second half to suit", _sum(fact, fact.pins, units)
        yield "Pins", (_pins(fact, slide, fact.pins, units),)
    eased = corners(slide)
    saw, flat = (_about(size, units) for size in (eased.relief_mm, eased.edge_flat_mm))
    yield "Corners", (f"saw-cut {saw} in the inside ones, flat of {flat} on the outside ones",)
    if slide.gib_mm:
        yield "Gib", (_gib(fact, slide, units),)


def _about(mm: float, units: str) -> str:
    """A size that need not be held, to a tenth of a millimetre."""
    return shown_length(exact(round(mm, 1)), units)


def _sum(fact: SlideFact, pins: OverPins, units: str) -> Text:
    first = first_side(fact)
    is_tail = first is fact.male
    apart = apart_mm(pins)
    printed = apart / _INCH if units == "inch" else apart
    key = f"joint {fact.joint.name} {first.end.place}"
    words = ("tail over pins ", "slot") if is_tail else ("slot between pins ", "tail")
    sign = "−" if is_tail else "+"
    return (
        words[0],
        Blank(key, units),
        f" {sign} {shown_length(exact(apart), units)} = {words[1]} ",
        Follows(key, -printed if is_tail else printed, units),
    )


def _pins(fact: SlideFact, slide: Dovetail, pins: OverPins, units: str) -> str:
    fit = pin_range(slide)
    least, most = (_about(size, units) for size in (fit.least_mm + _HALF, fit.most_mm - _HALF))
    name = fact.pin_name.removesuffix(" drill")
    own = f"shanks of two {name} drills (a set holds one: buy a second); " if name else ""
    each, less = 2 * pin_factor(slide.angle_deg), slide.female.wide_mm - slide.male.narrow_mm
    apart, wider = (shown_length(exact(mm), units) for mm in (apart_mm(pins), less))
    return (
        f"{own}two others alike of {least} to {most} serve, with {each:.3f} × pin − {wider} in "
        f"the place of {apart}"
    )


def _gib(fact: SlideFact, slide: Dovetail, units: str) -> str:
    thick, along = (shown_length(exact(size), units) for size in (slide.gib_mm, slide.gib_width_mm))
    words = f"strip {thick} thick, which takes {along} along the flat"
    side = side_words(fact, units)
    words = f"{words}; it lies {side}" if side else words
    gib = gib_of(fact)
    if gib is None:
        return words
    screws = ", ".join(_about(place, units) for place in gib.screws_mm)
    return f"{words}; {bevelled(fact, gib, units)}; screws at {screws} from one end"
