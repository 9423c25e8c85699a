"""Two eyes that hinge on each other with no pin named: the pin, its clearance, and both holes."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from math import ceil

from binder.api import (
    Bought,
    Design,
    End,
    Fact,
    HalfFact,
    HardwareFact,
    Joint,
    NumberOff,
    PlaceFact,
    SmallWork,
    shown_length,
)
from binder_plugins.fits.facts import Half
from binder_plugins.fits.figures import nominal, range_of, size
from binder_plugins.fits.gauged import as_gauged
from binder_plugins.fits.ways import half_of, named_way, reamed
from binder_solid.straddling import apart_of, sits_in_one
from binder_trade.explained import NotDefined
from binder_trade.fits.given import Way, given_by

_KEPT = (
    "the pin is riveted over at both ends, one end first, the other with a slip of paper under "
    "its head: it cannot come out, and what hinges still swings"
)
_PIN_WAY = "silver steel"
_OVER = Fraction(1, 2)  # diameters at either end to rivet over; common practice, no source
_PIN_MIN = 5.0  # to saw off and file one; common practice, no source
# A pin is sawn and filed to the next of these, in mm; common practice, no source.
_METRIC_STEP, _INCH_STEP = Fraction(1, 2), Fraction(254, 640)


@dataclass(frozen=True, slots=True)
class Hinge:
    """A hinge of two eyes on a pin of a diameter in mm; `long` is what the pin passes."""

    joint: Joint
    pin: Fraction
    ends: tuple[tuple[End, PlaceFact], ...]
    long: Fraction | None
    count: int


def hinge_of(joint: Joint, design: Design) -> Hinge | None:
    """The hinge of a joint whose ends are all eyes, and to which no other joint gives a pin."""
    places = [(end, design.facts.about(PlaceFact, str(end))) for end in joint.ends]
    eyes = tuple((end, place) for end, place in places if _is_eye(place) and place is not None)
    if joint.kind != "hinged" or len(eyes) < 2 or len(eyes) != len(places):
        return None
    sizes = [place.diameter for _, place in eyes if place.diameter is not None]
    said = getattr(joint.entry, "size", None)
    pin = said.exact if said is not None else min(sizes, default=None)
    if pin is None or joint.held_by or any(_has_pin(end, joint, design) for end, _ in eyes):
        return None
    offs = [_off(end.item, design) for end, _ in eyes]
    count = min(offs)
    thick = [place.thickness for _, place in eyes]
    passed = [
        1 if off > count and sits_in_one(end.item, joint, design) else -(-off // count)
        for (end, _), off in zip(eyes, offs, strict=True)
    ]
    known = [one * times for one, times in zip(thick, passed, strict=True) if one]
    long = sum(known, Fraction(0)) if len(known) == len(eyes) else None
    for (end, _), one, times in zip(eyes, thick, passed, strict=True):
        apart = apart_of(end.item, design) if times > 1 else None
        if long is not None and apart is not None and one:
            long = max(long, one * times + apart)
    return Hinge(joint, pin, eyes, long, count)


def _is_eye(place: PlaceFact | None) -> bool:
    return place is not None and place.form == "hole" and place.thread is None


def _has_pin(end: End, joint: Joint, design: Design) -> bool:
    """Another joint puts something through this eye."""
    others = (one for one in design.joints.values() if one.name != joint.name)
    return any(str(end) == str(other) for one in others for other in one.ends)


def _off(item: str, design: Design) -> int:
    number = design.facts.about(NumberOff, item)
    return max(1, number.count) if number is not None else 1


def hinge_facts(hinge: Hinge, design: Design) -> Iterator[Fact]:
    """Both halves with the clearance that each has on the pin, and the pin itself."""
    # What is larger than the pin swings, however the ends were written; of eyes alike the first.
    first, _ = max(hinge.ends, key=lambda one: one[1].diameter or hinge.pin)
    for end, place in hinge.ends:
        mate = next(str(other) for other, _ in hinge.ends if other is not end)
        what, clear, limits = _eye(hinge, end, place, design)
        role = "swings on" if end is first else "carries"
        pin = f"a pin of {nominal(hinge.pin, design.units)} silver steel h8"
        how = f"{role} {pin}, {clear}{_together(hinge)}"
        yield HalfFact(f"{hinge.joint.name}: {end}", hinge.joint.name, end.item, end.place, what,
                       mate, how, lower=limits[0], upper=limits[1])  # fmt: skip
    name = pin_name(hinge, design)
    yield NumberOff(name, hinge.count)
    why = "rivet its ends over lightly, a slip of paper under the head"
    subject, what = f"{hinge.joint.name}: {name}", pin_words(hinge, design.units)
    long = _long(hinge, design.units)
    length = float(long) if long is not None else None
    yield HardwareFact(
        subject, hinge.joint.name, name, what, hinge.count, length, why=why, kept=_KEPT,
        is_made=long is not None,
    )  # fmt: skip
    if long is not None:
        yield _cut(hinge, long, design)


def _cut(hinge: Hinge, long: Fraction, design: Design) -> SmallWork:
    """The pin as it is cut from rod: no shop sells it to that length."""
    section = f"{shown_length(hinge.pin, design.units)} drawn rod"
    said = shown_length(long, design.units)
    reads = design.workshop.finest(long, long, "outside")
    return SmallWork(
        subject=f"pin, {hinge.joint.name}",
        count=hinge.count,
        stock=f"silver steel, {section}, {said} each",
        steps=(
            f"saw it off, file both ends square to {said}, break their edges: it goes in by hand",
            "leave it soft: its ends are riveted over when the joint is closed",
        ),
        minutes=_PIN_MIN * hinge.count,
        of=hinge.joint.name,
        material="silver steel",
        form="drawn rod",
        section=(hinge.pin,),
        section_text=section,
        length=long,
        joints=(hinge.joint.name,),
        tools=f"hacksaw, vice, files, {reads.name if reads is not None else 'steel rule'}",
    )


def _together(hinge: Hinge) -> str:
    """Eyes of one size are drilled in one go."""
    sizes = {place.diameter for _, place in hinge.ends if place.diameter is not None}
    return "; drilled together" if len(sizes) < 2 else ""


def _eye(
    hinge: Hinge, end: End, place: PlaceFact, design: Design
) -> tuple[str, str, tuple[float, float] | tuple[None, None]]:
    """What the eye is made to, how free the pin is in it, and its limits in mm."""
    own = place.diameter if place.diameter is not None else hinge.pin
    half = reamed(half_of(end, place, "hole", design), own, design)
    try:
        hole = given_by(Way(half.way, "", half.says, half.source, half.cls), float(own), "H8")
        rod = named_way(_PIN_WAY)
        pin = given_by(rod, float(hinge.pin))
    except NotDefined:
        return nominal(own, design.units), "free on it", (None, None)
    limits = replace(half, lower_um=hole.lower_um, upper_um=hole.upper_um)
    eye = as_gauged(limits, float(own), design.workshop)
    apart = float(own - hinge.pin) * 1000
    clear = range_of(
        apart + eye.lower_um - pin.upper_um, apart + eye.upper_um - pin.lower_um, design.units
    )
    low, high = (float(own) + um / 1000 for um in (eye.lower_um, eye.upper_um))
    return _limits(half, own, (low, high), hole.cls, design.units), clear, (low, high)


def _limits(half: Half, own: Fraction, mm: tuple[float, float], cls: str, units: str) -> str:
    low, high = (size(one, units) for one in mm)
    verb = {"reamed": "ream", "drilled": "drill", "bored": "bore"}.get(half.way, half.way)
    return f"{verb} {nominal(own, units)}{f' {cls}' if cls else ''}, {low} to {high}"


def _long(hinge: Hinge, units: str) -> Fraction | None:
    """The least length that a pin is cut to, in mm, with enough at both ends to rivet over."""
    if hinge.long is None:
        return None
    step = _METRIC_STEP if units == "mm" else _INCH_STEP
    return step * ceil((hinge.long + 2 * _OVER * hinge.pin) / step)


def pin_words(hinge: Hinge, units: str) -> str:
    """`2 mm silver steel pin, 8 mm long`."""
    long = _long(hinge, units)
    length = f", {shown_length(long, units)} long" if long is not None else ""
    return f"{shown_length(hinge.pin, units)} silver steel pin{length}"


def pin_name(hinge: Hinge, design: Design) -> str:
    """A name for the pin that nothing else has."""
    name = "pin_of_" + re.sub(r"[^a-z0-9]+", "_", hinge.joint.name.lower()).strip("_")
    while design.item(name) is not None:
        name += "_more"
    return name


def hinge_pin(hinge: Hinge, design: Design) -> Bought:
    """The pin as it is bought."""
    words = pin_words(hinge, design.units)
    return Bought(
        name=pin_name(hinge, design),
        title=words,
        at=hinge.joint.at,
        quantity=hinge.count,
        note="",
        because="",
        what=words,
        sizes=(),
        measured=(),
        is_salvaged=False,
    )
