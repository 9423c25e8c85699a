"""The travel of a screw against what its thread and its nut leave: the last turns do not count."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Joint, PlaceFact, Size, ThreadFact, exact, shown_length
from binder_plugins.drive import feed_codes as codes

# What a die leaves half cut with its plain side run up, in pitches: no nut goes on it. Common
# practice, no source.
_HALF_CUT = 1.0
_RUN_OUT = ("undercut", "grooved")
_SAME = 1e-6


def short_of_travel(joint: Joint, screw: ThreadFact | None, design: Design) -> Iterator[Diagnostic]:
    """A nut that comes to the half-cut turns of its screw before the travel is done."""
    travel = getattr(joint.entry, "travel", None)
    if screw is None or screw.full_depth is None or not isinstance(travel, Size):
        return
    nut = _nut(screw, design)
    if nut is None:
        return
    lost = 0.0 if _runs_out(screw, design) else _HALF_CUT * screw.pitch
    able = float(screw.full_depth) - nut - lost
    if able >= travel.mm - _SAME:
        return
    units = design.units
    sizes = [
        shown_length(exact(round(mm, 3)), units)
        for mm in (float(screw.full_depth), nut, lost, able, travel.mm, travel.mm - able)
    ]
    yield codes.THREAD_SHORT_OF_TRAVEL.at(
        travel.span,
        f"{sizes[0]} of thread, less {sizes[1]} in the nut and {sizes[2]} that the die leaves half "
        f"cut, lets the screw of '{joint.name}' go {sizes[3]}, and {sizes[4]} is asked of it",
        help=f"make the thread {sizes[5]} longer, or turn an undercut for it to run out into",
    )


def _nut(screw: ThreadFact, design: Design) -> float | None:
    """The thread in mm of the nut that a screw leads in."""
    for joint in design.joints.values():
        ends = [str(one) for one in joint.ends]
        if joint.kind != "leads" or screw.subject not in ends:
            continue
        for end in ends:
            mate = design.facts.about(ThreadFact, end)
            place = design.facts.about(PlaceFact, end)
            if mate is None or not mate.is_internal:
                continue
            if mate.full_depth is not None:
                return float(mate.full_depth)
            if place is not None and place.thickness is not None:
                return float(place.thickness)
    return None


def _runs_out(screw: ThreadFact, design: Design) -> bool:
    """Whether a groove stands on the same step, into which the thread runs out."""
    places = [one for one in design.facts.all(PlaceFact) if one.item == screw.item]
    own = next((one.on for one in places if one.place == screw.place), "")
    return any(one.kind in _RUN_OUT and one.on == own for one in places)
