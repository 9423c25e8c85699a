"""A joint of one cross pin through lapped or straddled parts, to the finding that it is a hinge."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from binder.api import Design, Diagnostic, Joint
from binder_plugins.fasteners import shaft_codes
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.seen import Seen

# What holds nothing in its place: a rope, a drive, a knot.
_SLACK = frozenset({"tied", "winds"})


def hinge_fault(seen: Seen, halves: tuple[Half, ...]) -> Iterator[Diagnostic]:
    """One pin, round which either part turns, and no other way from the one part to the other.

    `halves` are those that the pin goes through by a hole across its own axis alone: a bore that
    takes the other half round it is none of them.
    """
    if seen.each > 1 or len(halves) < 2 or len({half.end.item for half in halves}) < 2:
        return
    one, other = halves[0].end.item, halves[1].end.item
    reached = _reached(one, seen.joint, seen.design)
    if other in reached:
        return
    loads = next(_loads(reached | _reached(other, seen.joint, seen.design), seen.design), None)
    pushed = f", and '{loads.name}' loads it" if loads is not None else " as soon as it is loaded"
    yield shaft_codes.SINGLE_PIN_IS_HINGE.at(
        seen.joint.at,
        f"'{seen.joint.name}' is held by one pin: '{one}' turns about it on '{other}'{pushed}",
        help="a second pin as far from the first as the parts let it, or a stay from the one to "
        "the other; if it is to turn, say `hinged:`",
    )


def _reached(start: str, without: Joint, design: Design) -> frozenset[str]:
    """All that other joints hold to an item, a fabrication with its pieces."""
    near: dict[str, set[str]] = {}
    for joint in design.joints.values():
        if joint.name != without.name and _holds(joint):
            for item in joint.items:
                near.setdefault(item, set()).update(joint.items)
    for whole in design.fabrications.values():
        for piece in whole.pieces:
            near.setdefault(piece.item, set()).add(whole.name)
            near.setdefault(whole.name, set()).add(piece.item)
    return frozenset(_walk(start, near))


def _holds(joint: Joint) -> bool:
    meeting = joint.entry.meeting
    is_drive = meeting is not None and meeting.group == "drive"
    return not is_drive and joint.kind not in _SLACK


def _walk(start: str, near: Mapping[str, set[str]]) -> set[str]:
    found, waiting = set[str](), [start]
    while waiting:
        name = waiting.pop()
        if name not in found:
            found.add(name)
            waiting += near.get(name, ())
    return found


def _loads(items: frozenset[str], design: Design) -> Iterator[Joint]:
    """The ropes that are led over any of these items, or made fast to it."""
    for joint in design.joints.values():
        over = getattr(joint.entry, "over", None)
        ends = [str(one) for one in over] if isinstance(over, list) else []
        ends.append(str(getattr(joint.entry, "dead_end", None) or ""))
        if items & set(ends):
            yield joint
