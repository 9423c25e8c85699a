"""What is nipped dry while the model runs in, to the line that shows a slip, and where none can.

Common practice, no source: a line is drawn over what lies side by side in sight. A screw hides its
own thread, so its line runs from its head to what lies under it.
"""

from __future__ import annotations

from binder.api import Design, HardwareFact, Joint
from binder_solid.float_tried import end_floats

_HEADED = ("screw", "bolt")
_KEPT_FROM_TURNING = frozenset({"pinned", "dowelled", "keyed", "screwed", "bolted", "riveted"})


def slip_line(joint: Joint, design: Design) -> str:
    """From where to where the pencil line of a locked joint runs."""
    first, last = (_title(joint, end, design) for end in (0, -1))
    screws = _screws(joint, design)
    if not screws:
        return f"a pencil line from the {first} to the {last}"
    which = "the" if screws[0].count == 1 else "each"
    return f"a pencil line from the head of {which} {screws[0].what} to the {first}"


def slips_unseen(joint: Joint, design: Design) -> str:
    """What is tried beside the line where both of its ends can turn as one; '' where none can.

    One screw on its own lets what it clamps turn with it: the line stays whole and the thread
    comes undone.
    """
    if sum(one.count for one in _screws(joint, design)) != 1 or _is_kept(joint, design):
        return ""
    floats = [one.title for one in end_floats(design) if joint.name in one.joints]
    read = f", and read the end float of {' and '.join(floats)} again" if floats else ""
    clamped = _title(joint, 0, design)
    return (
        f"the line stays whole where that head and the {clamped} come undone as one, so try the "
        f"screw with its key each time as well{read}"
    )


def _screws(joint: Joint, design: Design) -> list[HardwareFact]:
    """The screws of a joint; none for a thread of the parts themselves."""
    found = (one for one in design.facts.all(HardwareFact) if one.joint == joint.name)
    return [one for one in found if any(word in one.what for word in _HEADED)]


def _is_kept(joint: Joint, design: Design) -> bool:
    return any(
        other.name != joint.name
        and other.kind in _KEPT_FROM_TURNING
        and set(joint.items) <= set(other.items)
        for other in design.joints_at(joint.items[0])
    )


def _title(joint: Joint, end: int, design: Design) -> str:
    item = design.item(joint.ends[end].item)
    return item.title if item is not None else joint.ends[end].item
