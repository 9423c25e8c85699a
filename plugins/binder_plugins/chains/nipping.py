"""Running joints whose journal is shorter than the bore on it, and closed at both ends."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from binder.api import Design, Joint
from binder_plugins.chains.shoulders import RUNNING, halves, held
from binder_plugins.chains.stops import stops_of


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
        stops = stops_of(journal, bore, joint, design)
        closing = [one for one in stops if one]
        if None not in stops and closing:
            yield Nipped(joint, length, thick, closing[0])
