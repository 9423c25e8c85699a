"""Lengths that are worked to a sum to their rows: measured, and held against that sum."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Blank, ItemNumber, SummedFact, Typed, exact, shown_length
from binder_solid.facts import FormFact
from binder_solid.suited import suited_in

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Text
    from binder_solid.suited import Suited

_OUT = "too long: face it again; too short: make it again"
_PIN = "too long: a shim under a clip; too short: cut the outer wall of a groove back"
_CUT = "too near: cut the outer wall of the last back; too far: a shim under a clip"
_FLOAT = "the end float of the row, when the clips are in"


def suited_rows(item: str, design: Design) -> Iterator[tuple[Text, ...]]:
    """A row for each length of a part that its leaf works to a sum."""
    closed = {one.chain.subject: one for one in suited_in(item, design)}
    for fact in design.facts.all(SummedFact):
        if fact.item == item and fact.subject in closed:
            yield _row(fact, closed[fact.subject], design)


def _row(fact: SummedFact, suited: Suited, design: Design) -> tuple[Text, ...]:
    number = design.facts.about(ItemNumber, fact.item)
    long, share = _drawn(fact, suited, design)
    mm = shown_length(exact(round(long, 3)), design.units)
    half = (suited.chain.most - suited.chain.least) / 2 / share
    band = shown_length(exact(round(half, 3)), design.units)
    said = f"({mm}) to suit: the sum in set-up {fact.setup}, ± {band}; {suited.chain.title}"
    place = fact.place.replace("_", " ")
    return (
        (str(number.number) if number else "",),
        (design.parts[fact.item].title,),
        ("outer walls of the grooves",) if fact.is_groove else _place(place),
        (said,),
        (_FLOAT if fact.is_groove else _read(long, design, is_step=bool(place)),),
        (Blank(f"{fact.item} suited {fact.subject}", design.units),),
        (_if_out(fact, suited, design),),
    )


def _if_out(fact: SummedFact, suited: Suited, design: Design) -> str:
    """What mends it; a pin between clips has its grooves by then, so that facing does not."""
    if fact.is_groove:
        return _CUT
    if fact.place:
        return _of_step(fact, design)
    return _PIN if suited.link.key.endswith(" walls") else _OUT


def _of_step(fact: SummedFact, design: Design) -> str:
    """A face of its own cut back makes a step shorter, a larger neighbour's face makes it longer.

    Plain geometry; the end of the part is a face of its own.
    """
    form = design.facts.about(FormFact, fact.item)
    steps = form.stretches if form is not None else ()
    place = next((n for n, one in enumerate(steps) if one.name == fact.place), None)
    if place is None:
        return _OUT
    beside = [steps[n] for n in (place - 1, place + 1) if 0 <= n < len(steps)]
    larger = next((one for one in beside if one.across > steps[place].across), None)
    shorter = "a shim, or make it again"
    if len(beside) < 2:
        shorter = "face its end back"
    elif any(one.across < steps[place].across for one in beside):
        shorter = "take its own face back"
    longer = "make it again"
    if larger is not None:
        longer = f"take the face of the {larger.name.replace('_', ' ')} back"
    return f"too long: {shorter}; too short: {longer}"


def _place(step: str) -> Text:
    return (Typed(step), ", its length") if step else ("whole length",)


def _drawn(fact: SummedFact, suited: Suited, design: Design) -> tuple[float, int]:
    """The length in mm as drawn, and how many alike share the sum."""
    form = design.facts.about(FormFact, fact.item)
    if form is None or fact.is_groove:
        return suited.link.nominal, 1
    if fact.place:
        step = next(one for one in form.stretches if one.name == fact.place)
        return step.end - step.start, 1
    is_shared = suited.link.key.endswith(" spacers")
    return form.size[0], round(suited.link.nominal / form.size[0]) if is_shared else 1


def _read(long: float, design: Design, *, is_step: bool) -> str:
    """The finest that reads it; between shoulders the anvils of a micrometer do not come down."""
    way = "depth" if is_step else "outside"
    found = design.workshop.finest(exact(long), exact(long), way)
    return found.name if found is not None else "a borrowed instrument"
