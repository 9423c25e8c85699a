"""What is glued into a part before the part is drilled with others: pegs, plugs, sleeves."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder.api import Assembly, Design

FILLED = "what is glued into it is drilled with it"
_GLUED = ("glued", "retained")


def fills(one: Assembly, design: Design) -> str:
    """The part of an assembly that does nothing but glue bought pieces into it; else ''."""
    members = {member.item for member in one.members}
    made = members - design.bought.keys()
    inner = [joint for joint in design.joints.values() if {*joint.items} <= members]
    is_plain = len(made) == 1 and made <= design.parts.keys() and len(members) > 1
    if not is_plain or any(joint.kind not in _GLUED for joint in inner):
        return ""
    return next(iter(made))
