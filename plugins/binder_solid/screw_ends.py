"""A screw that leads in a nut to the two ends of its travel: where it stands, and what is left."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import PlaceFact, Size, ThreadFact, exact, shown_length
from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder.api import Design, Joint
    from binder_solid.facts import Located, Stretch

HALF_CUT = 1.0
"""What a die leaves half cut with its plain side run up, in pitches: no nut goes on it.

Common practice, no source.
"""
_RUN_OUT = ("undercut", "grooved")
_NEAR = 1e-6


@dataclass(frozen=True, slots=True)
class ScrewEnds:
    """The ends of a screw's travel, in mm: what of its thread shows beside its nut at either.

    Wound out its free end is level with the far end of the nut, all of whose thread it fills;
    wound in it stands the travel lower. `before` names what stands behind its thread, `at` is where
    that ends along the screw, `half_cut` what a die leaves half cut there, 0 where it runs out into
    a groove. `item` is the screw by its name, `nut_place` the thread of the nut.
    """

    item: str
    nut_place: str
    at: float
    screw: str
    nut: str
    before: str
    shown_in: float
    shown_out: float
    filled: float
    turns: float
    half_cut: float

    def told(self, design: Design) -> str:
        """Both ends in words that a caliper can find. Geometry."""
        mm = [
            shown_length(exact(round(one, 2)), design.units)
            for one in (self.shown_in, self.shown_out, self.filled, self.half_cut)
        ]
        jams = f", no less: the last {mm[3]} are half cut and jam in it" if self.half_cut else ""
        between = f"between the {self.nut} and the {self.before} of the {self.screw}"
        return (
            f"wound in, {mm[0]} of thread show {between}{jams}; wound out, {self.turns:.3g} turns "
            f"on, {mm[1]} show, and the thread of the {self.nut} is still filled, {mm[2]} of it: "
            "nothing stops the screw there, and with every turn more it holds by less"
        )

    def in_short(self, design: Design) -> str:
        """`2 mm to 22 mm of its thread showing, 13.3 turns`."""
        low, high = (
            shown_length(exact(round(one, 2)), design.units)
            for one in (self.shown_in, self.shown_out)
        )
        return f"{low} to {high} of its thread showing, {self.turns:.3g} turns"


def screw_ends(joint: Joint, design: Design) -> ScrewEnds | None:
    """The ends of what a joint of kind `leads` lets travel; None where nothing tells how far."""
    threads = [design.facts.about(ThreadFact, str(end)) for end in joint.ends]
    screw = next((one for one in threads if one is not None and not one.is_internal), None)
    nut = next((one for one in threads if one is not None and one.is_internal), None)
    if joint.kind != "leads" or screw is None or nut is None or screw.full_depth is None:
        return None
    feed = next((one for one in design.joints.values() if _feeds(one, screw.item)), None)
    travel, filled = getattr(feed.entry, "travel", None) if feed else None, nut_length(nut, design)
    found = _before(screw, design)
    if feed is None or not isinstance(travel, Size) or filled is None or found is None:
        return None
    before, at = found
    shown_out = float(screw.full_depth) - filled
    shown_in = shown_out - travel.mm
    half_cut = half_cut_mm(screw, design)
    if shown_in < half_cut - _NEAR:
        return None
    turns = travel.mm / _lead(feed, screw)
    names = (screw.item, nut.subject, at, _title(screw.item, design), _title(nut.item, design))
    return ScrewEnds(*names, before, shown_in, shown_out, filled, turns, half_cut)


def nut_length(nut: ThreadFact, design: Design) -> float | None:
    """How long the thread of a nut is in mm, None where that is not known."""
    if nut.full_depth is not None:
        return float(nut.full_depth)
    place = design.facts.about(PlaceFact, nut.subject)
    return float(place.thickness) if place is not None and place.thickness is not None else None


def half_cut_mm(screw: ThreadFact, design: Design) -> float:
    """What is half cut at the end of a screw's thread in mm, none where it runs into a groove."""
    places = [one for one in design.facts.all(PlaceFact) if one.item == screw.item]
    own = next((one.on for one in places if one.place == screw.place), "")
    is_free = any(one.kind in _RUN_OUT and one.on == own for one in places)
    return 0.0 if is_free else HALF_CUT * screw.pitch


def _feeds(joint: Joint, item: str) -> bool:
    """Whether a screw is fed that goes along itself; where its nut does, the slide has the ends."""
    travels = getattr(joint.entry, "what_travels", None) == "screw"
    return joint.kind == "feeds" and travels and item in joint.items


def _lead(feed: Joint, screw: ThreadFact) -> float:
    said, starts = getattr(feed.entry, "lead", None), getattr(feed.entry, "starts", None)
    return said.mm if isinstance(said, Size) else screw.pitch * int(starts or 1)


def _before(screw: ThreadFact, design: Design) -> tuple[str, float] | None:
    """What stands behind the thread of a screw, and where; None where it begins at no end of it."""
    form = design.facts.about(FormFact, screw.item)
    located = form.located if form is not None else ()
    thread = next((one for one in located if one.name == screw.place), None)
    if form is None or thread is None or thread.length is None or len(thread.spots) != 1:
        return None
    return _behind(form.stretches, thread, thread.length)


def _behind(steps: Sequence[Stretch], thread: Located, long: float) -> tuple[str, float] | None:
    low, high = (thread.frame.origin[0] + half for half in (-long / 2, long / 2))
    is_right = abs(high - steps[-1].end) < _NEAR
    if not is_right and abs(low - steps[0].start) > _NEAR:
        return None
    at = low if is_right else high
    for one in steps:
        name = one.name.replace("_", " ")
        if abs((one.end if is_right else one.start) - at) < _NEAR:
            return name, at
        if one.start + _NEAR < at < one.end - _NEAR:
            return f"plain part of the {name}", at
    return None


def _title(item: str, design: Design) -> str:
    found = design.item(item)
    return found.title if found is not None else item
