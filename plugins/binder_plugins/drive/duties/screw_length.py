"""The travel of a screw against what its thread and its nut leave: the last turns do not count."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Joint, Size, ThreadFact, exact, shown_length
from binder_plugins.drive import feed_codes as codes
from binder_solid.screw_ends import half_cut_mm, nut_length

_SAME = 1e-6


def short_of_travel(joint: Joint, screw: ThreadFact | None, design: Design) -> Iterator[Diagnostic]:
    """A nut that comes to the half-cut turns of its screw before the travel is done."""
    travel = getattr(joint.entry, "travel", None)
    if screw is None or screw.full_depth is None or not isinstance(travel, Size):
        return
    nut = _nut(screw, design)
    if nut is None:
        return
    lost = half_cut_mm(screw, design)
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
        mates = filter(None, (design.facts.about(ThreadFact, end) for end in ends))
        found = [nut_length(one, design) for one in mates if one.is_internal]
        if found and found[0] is not None:
            return found[0]
    return None
