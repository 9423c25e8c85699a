"""Grip and hold turned into the hardware that is wanted, with its length and why."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Diagnostic, Given, Working, lengths_in
from binder_plugins.fasteners import codes
from binder_plugins.fasteners.layers import layers
from binder_plugins.fasteners.lengths_sold import sold
from binder_plugins.fasteners.said import Said, Wanted
from binder_plugins.fasteners.seen import Seen
from binder_trade.explained import NotDefined, Step
from binder_trade.fastening import (
    BOTTOMS,
    SHORT,
    STANDS_OUT,
    FastenerName,
    Grip,
    Judged,
    Length,
    NoLength,
    TappedHole,
    choose_length,
    judge_length,
    with_length,
)
from binder_trade.hardware import NotListed

_SAME_MM = 1e-6
_STICKS_OUT = 1.0  # diameters beyond a through hole that are let pass
_LONGEST_WORKING = 300


def lengths_of(seen: Seen) -> dict[float, str] | Diagnostic | None:
    """The lengths sold, or the finding that this hardware is in no table.

    A written length that no table has is taken as it is. None where the maker has written
    what he buys, but no length.
    """
    name = seen.asked.name
    try:
        return sold(seen.asked)
    except (NotListed, NotDefined, ValueError) as fault:
        if name.length_mm is not None:
            return {name.length_mm: name.length_text}
        if seen.asked.bought:
            return None
        reason = getattr(fault, "reason", f"'{seen.asked.name.says}' is not listed")
        way_out = getattr(fault, "way_out", "write its length")
        return codes.HARDWARE_NOT_LISTED.at(seen.asked.at, reason, help=way_out)


def wanted(
    seen: Seen, name: FastenerName, length: Length | None = None, grip_mm: float | None = None
) -> Wanted:
    """The hardware of a joint as it is bought."""
    return Wanted(
        joint=seen.joint,
        what=name.says,
        bought=seen.asked.bought,
        count=seen.total,
        thick_mm=seen.asked.diameter_mm,
        length_mm=name.length_mm,
        grip_mm=grip_mm,
        engagement_mm=length.engagement_mm if length is not None else None,
        why=lengths_in(length.why, seen.design.units) if length is not None else "",
    )


def unlisted(seen: Seen, finding: Diagnostic | None) -> Iterator[Said]:
    """The hardware as it was named, where nothing is known of its lengths."""
    if finding is not None:
        yield finding
    yield wanted(seen, seen.asked.name)


def screw_length(
    seen: Seen, grip: Grip | None, hole: TappedHole | None, least_mm: float
) -> Iterator[Said]:
    """The length of a machine screw: the written one judged, else the shortest that serves."""
    name = seen.asked.name
    lengths = lengths_of(seen)
    if not isinstance(lengths, dict):
        yield from unlisted(seen, lengths)
        return
    if name.length_mm is not None:
        yield from not_sold(seen, lengths)
    if grip is None or hole is None:
        yield wanted(seen, name, grip_mm=grip.length_mm if grip else None)
    elif name.length_mm is not None:
        yield from _judged(seen, grip, hole, least_mm, lengths)
    else:
        yield from chosen(
            seen, choose_length(lengths, grip, hole, least_mm, least_mm), lengths, grip.length_mm
        )


def not_sold(seen: Seen, lengths: dict[float, str]) -> Iterator[Said]:
    """Advice where the written length is not in the list of those sold."""
    length = seen.asked.name.length_mm
    if length is None or any(abs(one - length) < _SAME_MM for one in lengths):
        return
    below = [text for mm, text in lengths.items() if mm < length][-1:]
    above = [text for mm, text in lengths.items() if mm > length][:1]
    yield codes.LENGTH_NOT_SOLD.at(
        seen.asked.at,
        f"'{seen.asked.name.says}' is not sold in that length",
        help=f"sold are {' and '.join((*below, *above))}",
    )


def chosen(
    seen: Seen, found: Length | NoLength, lengths: dict[float, str], grip_mm: float
) -> Iterator[Said]:
    """The hardware in the length that was chosen, with its sum; or why none serves."""
    name = seen.asked.name
    if isinstance(found, NoLength):
        yield codes.LENGTH_NOT_SOLD.at(
            seen.asked.at,
            f"no length of '{name.says}' serves '{seen.joint.name}': {found.reason}",
            help=" or ".join(found.ways_out[:3]),
        )
        yield wanted(seen, name, grip_mm=grip_mm)
        return
    text = lengths.get(found.chosen_mm, f"{found.chosen_mm:g} mm")
    long = with_length(name, found.chosen_mm, text)
    yield wanted(seen, long, found, grip_mm)
    yield working(seen, "length", f"length of the {name.kind}", text, found.why, found.steps)


def working(
    seen: Seen, what: str, title: str, result: str, why: str, steps: tuple[Step, ...]
) -> Working:
    """A sum of the trade as a working of the joint, with its steps in one line."""
    units = seen.design.units
    sums = lengths_in(
        "; ".join(f"{step.name}: {step.formula} = {step.value}" for step in steps), units
    )
    sources = dict.fromkeys(step.source for step in steps)
    return Working(
        id=f"{seen.id}.{what}",
        title=f"{title}, '{seen.joint.name}'",
        given=tuple(_given(seen)),
        formula=sums[:_LONGEST_WORKING],
        result=result,
        because=lengths_in(" ".join(why.split()[:10]), units),
        source="; ".join(sources),
        span=seen.joint.at,
    )


def _given(seen: Seen) -> Iterator[Given]:
    yield Given("fastener", seen.asked.name.says, seen.asked.at)
    for half in seen.halves:
        if half.thick is not None:
            at = half.place.at if half.place is not None else half.end.at
            filled = f", {half.filled:g} mm of it filled by the mate" if half.filled else ""
            metal = lengths_in(f"{half.thick:g} mm{filled}", seen.design.units)
            yield Given(f"metal at {half.end}", metal, at)
    for layer in layers(seen):
        at = seen.design.joints[layer.subject].at
        yield Given(layer.what, lengths_in(f"{layer.thickness:g} mm", seen.design.units), at)


def _judged(
    seen: Seen, grip: Grip, hole: TappedHole, least_mm: float, lengths: dict[float, str]
) -> Iterator[Said]:
    name = seen.asked.name
    length = name.length_mm or 0.0
    found = judge_length(length, grip, hole, least_mm)
    better = choose_length(lengths, grip, hole, least_mm, least_mm)
    yield from faults(seen, found, hole, least_mm, better_words(better, lengths))
    left = "from the far face" if hole.is_through else "from the end of the thread"
    why = f"as written; ends {found.spare_mm:.1f} mm {left}"
    if found.faults:
        why = "as written"
    steps = better.steps
    held = Length(length, found.engagement_mm, found.spare_mm, why, steps)
    yield wanted(seen, name, held, grip.length_mm)
    yield working(seen, "length", f"length of the {name.kind}", name.length_text, why, steps)


def faults(
    seen: Seen, found: Judged, hole: TappedHole, least_mm: float, better: str
) -> Iterator[Said]:
    """The findings of a length that does not serve."""
    says, at = seen.asked.name.says, seen.asked.at
    if BOTTOMS in found.faults:
        over = max(0.0, hole.pitch_mm - found.spare_mm)
        yield codes.SCREW_BOTTOMS_OUT.at(
            at,
            f"'{says}' bottoms out in '{seen.joint.name}': it is {over:.1f} mm too long for "
            f"{hole.full_thread_mm:g} mm of thread",
            help=better,
        )
    if STANDS_OUT in found.faults and -found.spare_mm > _STICKS_OUT * (
        seen.asked.diameter_mm or 0.0
    ):
        yield codes.SCREW_TOO_LONG.at(
            at,
            f"'{says}' stands {-found.spare_mm:.1f} mm out of '{seen.joint.name}'",
            help=better,
        )
    if SHORT in found.faults:
        yield codes.ENGAGEMENT_SHORT.at(
            at,
            f"'{says}' holds by {found.engagement_mm:.1f} mm in '{seen.joint.name}', "
            f"{least_mm:.1f} mm is the least",
            help=better,
        )


def better_words(better: Length | NoLength, lengths: dict[float, str]) -> str:
    """The way out, worked through: the length that serves, or what else would."""
    if isinstance(better, NoLength):
        return f"{better.reason}: {' or '.join(better.ways_out[:2])}"
    text = lengths.get(better.chosen_mm, f"{better.chosen_mm:g} mm")
    return f"{text} is sold and holds by {better.engagement_mm:.1f} mm"
