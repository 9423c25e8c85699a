"""Screws and nuts to what has to wait for them, and to what their tool has to get past."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder.api import Assembly, Design, Diagnostic, Joint, TurningFact, exact, shown_length
from binder_plugins.buildorder import codes
from binder_plugins.buildorder.closing import inside_of, joints_closed_in
from binder_solid.driver_way import DRIVEN, Beside, beside_heads

# The blade of a common screwdriver, and the steps in which a longer one is told, both in mm;
# common practice, no source.
_SHORT_MM, _ROUND_MM = 60.0, 10.0


def past(joint: Joint, one: Assembly, design: Design) -> str:
    """What the step of a joint says of what stands round its heads and nuts by then; else ''."""
    there = _there(joint, one, design)
    found = [each for each in beside_heads(joint, design) if each.item in there]
    moved = _first(each for each in found if each.bars and _turns(each.item, design))
    words = ""
    if moved is not None:
        words += f"; turn the {_title(moved, design)} out of the {_tool(joint)}'s way first"
    fixed = [each for each in found if not (each.bars or _turns(each.item, design))]
    tall = max(fixed, key=lambda each: each.top, default=None)
    if tall is not None and tall.top > _SHORT_MM:
        blade = shown_length(exact(_ROUND_MM * math.ceil(tall.top / _ROUND_MM)), design.units)
        words += f"; a driver with a blade of {blade} or more, past the {_title(tall, design)}"
    return words


def check_heads(design: Design) -> Iterator[Diagnostic]:
    """Heads and nuts over which something stands for good when their joint is closed."""
    for one in design.assemblies.values():
        for joint in joints_closed_in(one, design):
            if joint.kind not in DRIVEN:
                continue
            there = _there(joint, one, design)
            for each in beside_heads(joint, design):
                if each.bars and each.item in there and not _turns(each.item, design):
                    yield _found(joint, each, one, design)
                    break


def _found(joint: Joint, each: Beside, one: Assembly, design: Design) -> Diagnostic:
    where = "a nut or head" if joint.kind == "bolted" else "a head"
    tool = _tool(joint)
    return codes.HEAD_OUT_OF_REACH.at(
        joint.at,
        f"'{each.item}' stands over {where} of '{joint.name}' when it is {joint.kind} "
        f"in '{one.name}'",
        help=f"put the parts of '{joint.name}' in an assembly before '{each.item}' goes on, "
        f"or a hole for the {tool} in '{each.item}'{_otherwise(joint, each, design)}",
    )


def _otherwise(joint: Joint, each: Beside, design: Design) -> str:
    """What else helps where the two bar one another, so that neither can be closed first."""
    for other in design.joints_at(each.item):
        for barring in beside_heads(other, design) if other.name != joint.name else ():
            if barring.bars and barring.item in joint.items:
                return f"; or bring the heads of '{other.name}' clear of '{barring.item}'"
    return ""


def _tool(joint: Joint) -> str:
    return "spanner" if joint.kind == "bolted" else "driver"


def _there(joint: Joint, one: Assembly, design: Design) -> frozenset[str]:
    """What hangs together with the parts of a joint when it is closed in an assembly."""
    bonds = [
        inside_of(inner, design) if (inner := design.assemblies.get(member.item)) else {member.item}
        for member in one.members
    ]
    bonds += [set(other.items) for other in _closed_before(joint, one, design)]
    there, known = set(joint.items), 0
    while len(there) > known:
        known = len(there)
        there.update(*(bond for bond in bonds if there & bond))
    return frozenset(there)


def _closed_before(joint: Joint, one: Assembly, design: Design) -> Iterator[Joint]:
    for other in joints_closed_in(one, design):
        if other.name == joint.name:
            return
        yield other


def _turns(item: str, design: Design) -> bool:
    """Whether it goes round with a shaft, or hangs on nothing else than what does."""
    for body in design.facts.all(TurningFact):
        met = {
            name
            for joint in design.joints.values()
            if item in joint.items
            for name in joint.items
            if name != item
        }
        if item in body.items or (met and met <= set(body.items)):
            return True
    return False


def _first(found: Iterator[Beside]) -> Beside | None:
    return max(found, key=lambda each: each.top, default=None)


def _title(each: Beside, design: Design) -> str:
    item = design.item(each.item)
    return item.title if item is not None else each.item
