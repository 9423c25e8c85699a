"""Belts, chains and ropes across what is taken apart for finishing: off first, on again last."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.buildorder.closing import inside_of
from binder_plugins.buildorder.led import passed

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from binder.api import Assembly, Design, Joint

# What is done before it comes off and when it is on again; common practice, no source.
_OFF = {
    "belted": "press the belt between {ends} in the middle of its span, write down how far it "
    "gives, and slip it off",
    "chained": "write down how far the chain between {ends} sags, and lift it off",
    "winds": "let down what hangs on the rope of {first}, slack it and take it off",
}
_ON = {
    "belted": "the belt between {ends} on again, the pulleys set in line, and its tension tried: "
    "it gives as far as was written down",
    "chained": "the chain between {ends} on again, the wheels set in line, and its slack tried: "
    "it sags as far as was written down",
    "winds": "the rope of {first} on again, led as before and wound by hand with a light pull "
    "on it",
}


def reached(joint: Joint) -> tuple[str, ...]:
    """Its items, and what a cord is led over and made fast to: it comes off that first."""
    end = getattr(joint.entry, "dead_end", None)
    return (*joint.items, *passed(joint), *([str(end)] if end is not None else []))


def across(whole: Assembly, undone: Iterable[Joint], design: Design) -> list[Joint]:
    """The belts, chains and ropes that join what hangs together no more with `undone` open."""
    inside = inside_of(whole, design)
    names = {joint.name for joint in undone}
    held = [one for one in design.joints.values() if not _is_drive(one)]
    found = []
    for joint in design.joints.values():
        ends = [item for item in reached(joint) if item in inside]
        if joint.kind not in _OFF or joint.name in names or len(ends) < 2:
            continue
        before = _together(ends[0], held, design)
        after = _together(ends[0], [one for one in held if one.name not in names], design)
        if any(item in before - after for item in ends):
            found.append(joint)
    return found


def taken_off(undone: Iterable[Joint], design: Design) -> str:
    """`first press the belt of ... and slip it off`; '' where no cord is among them."""
    said = list(_said(_OFF, undone, design))
    return f"first {'; '.join(said)}" if said else ""


def put_on(undone: Iterable[Joint], design: Design) -> str:
    """`last the belt of ... on again, ...`; '' where no cord is among them."""
    said = list(_said(_ON, undone, design))
    return f"last {'; '.join(said)}" if said else ""


def is_cord(joint: Joint) -> bool:
    """Whether it is a belt, a chain or a rope."""
    return joint.kind in _OFF


def _said(words: dict[str, str], undone: Iterable[Joint], design: Design) -> Iterator[str]:
    for joint in undone:
        if joint.kind in words:
            titles = list(dict.fromkeys(_title(end.item, design) for end in joint.ends))
            said = words[joint.kind].replace("{ends}", " and ".join(titles))
            yield said.replace("{first}", titles[0])


def _together(start: str, joints: Sequence[Joint], design: Design) -> set[str]:
    """All that hangs together with an item by these joints, and as pieces of one fabrication."""
    groups = [set(joint.items) for joint in joints]
    groups += [
        {one.name, *(piece.item for piece in one.pieces)} for one in design.fabrications.values()
    ]
    found, grew = {start}, True
    while grew:
        more = {item for group in groups if group & found for item in group} - found
        found |= more
        grew = bool(more)
    return found


def _is_drive(joint: Joint) -> bool:
    meeting = joint.entry.meeting
    return meeting is None or meeting.group == "drive"


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return f"the {item.title if item is not None else name}"
