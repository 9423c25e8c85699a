"""A journal to what stops at either end what runs on it: a shoulder, or what a joint draws up."""

from __future__ import annotations

from fractions import Fraction

from binder.api import Design, Joint, PlaceFact

# What is drawn tight against the end of a journal, or against the shoulder behind it.
_ON_END = ("screwed", "bolted", "studded", "riveted")
_ON_SHOULDER = (*_ON_END, "threaded")


def stops_of(
    journal: PlaceFact, bore: PlaceFact, joint: Joint, design: Design
) -> tuple[str | None, str | None]:
    """What stops a bore on the left and on the right: a joint, '' for a shoulder, or nothing."""
    left = _stop(journal, bore, joint, design, is_left=True)
    return left, _stop(journal, bore, joint, design, is_left=False)


def closed_by(journal: PlaceFact, bore: PlaceFact, joint: Joint, design: Design) -> str:
    """The joint that closes the open end, where the other has a shoulder or a joint of its own."""
    stops = stops_of(journal, bore, joint, design)
    return "" if None in stops else next(filter(None, stops), "")


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
