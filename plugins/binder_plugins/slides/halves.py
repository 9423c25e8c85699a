"""Turns a settled slide into features of both parts, what their leaves print, and the sums."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Design,
    Feature,
    Given,
    HalfFact,
    Size,
    Slot,
    Working,
    exact,
    implied_feature,
    made_size,
    shown_length,
)
from binder_plugins.slides.astride import place_of
from binder_plugins.slides.facts import Side, SlideFact
from binder_trade.slides import Dovetail, Half, OverPins, Step, corners


def features(fact: SlideFact, design: Design) -> Iterator[Feature]:
    """A dovetail on each part where the maker wrote none, or left it to suit."""
    slide = fact.slide
    if slide is None or "dovetailed" not in design.spec.kinds.of(Slot.FEATURE):
        return
    for side, half, inside in ((fact.male, slide.male, False), (fact.female, slide.female, True)):
        if side.is_made and _is_open(side):
            yield _feature(fact, side, half, design, inside=inside)


def _is_open(side: Side) -> bool:
    """No size is written for this half."""
    if side.feature is None:
        return True
    value = getattr(side.feature.entry, side.feature.kind, None)
    return not isinstance(value, Size) and value == "to suit"


def _feature(fact: SlideFact, side: Side, half: Half, design: Design, *, inside: bool) -> Feature:
    joint, slide = fact.joint, fact.slide
    angle = slide.angle_deg if slide is not None else 60.0
    made = f"{joint.name.replace(' ', '_')}_{'slot' if inside else 'tail'}"
    name = side.feature.name if side.feature is not None else made
    old = side.feature.entry if side.feature is not None else None
    on = str(getattr(old, "on", "") or side.end.place)
    at = getattr(old, "at", None)
    return implied_feature(
        design,
        joint,
        side.end.item,
        name,
        "dovetailed",
        dovetailed=made_size(half.narrow_mm, joint),
        depth=made_size(half.depth_mm, joint),
        on=on or "top",
        at=place_of(fact, at) if inside else at,
        inside=inside,
        note=_words(half, angle, on, design.units, inside=inside),
    )


def _words(half: Half, angle: float, on: str, units: str, *, inside: bool) -> str:
    wide = shown_length(exact(half.wide_mm), units)
    deep = shown_length(exact(half.depth_mm), units)
    where = f"on {on}" if on else ""
    if inside:
        return f"slot, {wide} at its floor, {deep} deep, {angle:g}° {where}".strip()
    return f"tail, {wide} across its top, {deep} high, {angle:g}° {where}".strip()


def halves(fact: SlideFact, design: Design) -> Iterator[HalfFact]:
    """What the leaf of each part prints of its half."""
    slide = fact.slide
    if slide is None:
        return
    first = first_side(fact)
    for side, half, is_tail in ((fact.male, slide.male, True), (fact.female, slide.female, False)):
        other, pins = fact.female if is_tail else fact.male, fact.pins
        over = None if pins is None else pins.male_over_mm if is_tail else pins.female_between_mm
        yield HalfFact(
            subject=f"{fact.joint.name}: {side.end}",
            joint=fact.joint.name,
            item=side.end.item,
            place=side.end.place,
            what=_half_words(fact, half, design.units, is_tail=is_tail, is_first=side is first),
            mate=str(other.end),
            how="measure over two pins" if side is first else "cut to suit the other half",
            is_master=side is first,
            over=over,
            pin=pins.pin_mm if pins is not None else None,
            is_inside=not is_tail,
            eased=_eased(slide, design.units),
        )


def _eased(slide: Dovetail, units: str) -> str:
    """What keeps the sharp edges of one half out of the corners of the other."""
    found = corners(slide)
    saw, flat = (
        shown_length(exact(round(mm, 1)), units) for mm in (found.relief_mm, found.edge_flat_mm)
    )
    return f"saw {saw} into the inside corners, along; break the outside ones to a flat of {flat}"


def first_side(fact: SlideFact) -> Side:
    """The half that is made first: the master, else the tail."""
    master = fact.joint.master
    is_slot = master is not None and str(master) == str(fact.female.end)
    return fact.female if is_slot else fact.male


def _half_words(fact: SlideFact, half: Half, units: str, *, is_tail: bool, is_first: bool) -> str:
    narrow, wide, deep = (
        shown_length(exact(size), units) for size in (half.narrow_mm, half.wide_mm, half.depth_mm)
    )
    angle = fact.slide.angle_deg if fact.slide is not None else 60.0
    ends = f"{narrow} to {wide} wide, {deep} {'high' if is_tail else 'deep'}"
    words = f"dovetail {'tail' if is_tail else 'slot'} {angle:g}°, {ends}"
    if fact.pins is None:
        return words
    over = fact.pins.male_over_mm if is_tail else fact.pins.female_between_mm
    read, pin = (shown_length(exact(size), units) for size in (over, fact.pins.pin_mm))
    where = f"{'over' if is_tail else 'between'} two {pin} pins"
    if is_first:
        return f"{words}; {read} {where}"
    mate, way, sign = ("slot", "between", "+") if is_tail else ("tail", "over", "−")
    apart = shown_length(exact(apart_mm(fact.pins)), units)
    return f"{words}; {where}: the {mate} as measured {way} them {sign} {apart} ({read} as drawn)"


def apart_mm(pins: OverPins) -> float:
    """What the tail measures over the pins more than the slot between them, in mm."""
    return pins.male_over_mm - pins.female_between_mm


def workings(fact: SlideFact, design: Design) -> Iterator[Working]:
    """The sum behind each size: `binder why SPEC table_on_bed.male_over_two_pins`."""
    if fact.slide is None or fact.wanted is None:
        return
    stem = fact.joint.name.replace(" ", "_")
    given = tuple(_given(fact, design.units))
    steps = (*fact.slide.steps, *(fact.pins.steps if fact.pins is not None else ()))
    for step in steps:
        yield _working(stem, step, given, fact)


def _given(fact: SlideFact, units: str) -> Iterator[Given]:
    asked = fact.wanted
    if asked is None:
        return
    at = fact.joint.at
    sizes = {
        "a, root of the tail": asked.narrow_mm,
        "depth": asked.depth_mm,
        "clearance": asked.clearance_mm,
        "t, gib": asked.gib_mm,
        "d, pin": fact.pins.pin_mm if fact.pins is not None else None,
    }
    yield Given("θ, angle of the flank", f"{asked.angle_deg:g}°", at)
    for name, size in sizes.items():
        if size is not None:
            yield Given(name, shown_length(exact(size), units), at)


def _working(stem: str, step: Step, given: tuple[Given, ...], fact: SlideFact) -> Working:
    return Working(
        id=f"{stem}.{step.name.replace(' ', '_')}",
        title=f"{step.name}, {fact.joint.name}",
        given=given,
        formula=step.formula,
        result=step.value,
        because="both halves follow from one definition",
        source=step.source,
        span=fact.joint.at,
    )
