"""Running joints whose journal is shorter than the bore on it, and closed at both ends."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from binder.api import Design, Joint, PlaceFact
from binder_plugins.chains.shoulders import RUNNING, halves, held

# What is drawn tight against the end of a journal, or against the shoulder behind it.
_ON_END = ("screwed", "bolted", "studded", "riveted")
_ON_SHOULDER = (*_ON_END, "threaded")


@dataclass(frozen=True, slots=True)
class Nipped:
    """A joint with its lengths in mm, and the joint that closes it."""

    joint: Joint
    length: Fraction
    thickness: Fraction
    closed_by: str


def nipped(design: Design) -> Iterator[Nipped]:
    """Each bore that is as long as the journal between its two stops, or longer."""
    listed = getattr(design.spec.written, "shafts", None) or {}
    for joint in design.joints.values():
        if joint.kind not in RUNNING or len(joint.ends) != 2 or joint.entry.fixed:
            continue
        journal, bore = halves(joint, design)
        if journal is None or bore is None or journal.item in listed or not bore.is_through:
            continue
        length, thick = journal.length, held(bore, design)
        if length is None or thick is None or length > thick:
            continue
        stops = [_stop(journal, bore, joint, design, is_left=left) for left in (True, False)]
        closing = [one for one in stops if one]
        if None not in stops and closing:
            yield Nipped(joint, length, thick, closing[0])


def _stop(
    journal: PlaceFact, bore: PlaceFact, joint: Joint, design: Design, *, is_left: bool
) -> str | None:
    """The joint that stops the bore on one side, '' for a shoulder, None where nothing does."""
    beside = _beside(journal, design, is_left=is_left)
    if beside is None:
        return _joined_to(journal, _ON_END, joint, design)
    if beside.diameter is not None and bore.diameter is not None:
        if beside.diameter > bore.diameter:
            return ""
        if journal.diameter is not None and beside.diameter < journal.diameter:
            return _joined_to(beside, _ON_SHOULDER, joint, design)
    return None


def _beside(journal: PlaceFact, design: Design, *, is_left: bool) -> PlaceFact | None:
    """The step of the same part that begins where the journal ends."""
    start, length = journal.start or Fraction(0), journal.length or Fraction(0)
    for one in design.facts.all(PlaceFact):
        if one.item != journal.item or one.form != "step" or one.start is None:
            continue
        if one.length is None or one.place == journal.place:
            continue
        if (one.start + one.length == start) if is_left else (one.start == start + length):
            return one
    return None


def _joined_to(place: PlaceFact, kinds: tuple[str, ...], but: Joint, design: Design) -> str | None:
    """The joint that draws something up there, apart from the running one."""
    subject = f"{place.item}.{place.place}"
    for joint in design.joints.values():
        is_there = any(str(end) == subject for end in joint.ends)
        if joint.kind in kinds and joint.name != but.name and is_there:
            return joint.name
    return None
