"""Posts that stand on one screw, and turn about it."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, HardwareFact, Joint, Part
from binder_plugins.fasteners import hole_codes

_CARRIES = ("threaded", "hinged", "swivels", "runs_in", "leads")
_SHAPES = ("block", "plate", "bent")


def check_one_screw(design: Design) -> Iterator[Diagnostic]:
    """Every flat-sided part that carries something that moves, on a single screw of its own."""
    for joint in design.joints.values():
        if joint.kind != "screwed" or joint.entry.fixed:
            continue
        count = sum(one.count for one in design.facts.all(HardwareFact) if one.joint == joint.name)
        for item in joint.items:
            part = design.parts.get(item)
            if part is not None and count == (part.quantity or 1) and _stands(part, joint, design):
                yield hole_codes.STANDS_ON_ONE_SCREW.at(
                    joint.ends[0].at,
                    f"each '{item}' stands on a single screw, and what it carries can turn it",
                    help='give it two, `pattern: "2 off, ... apart"`, or a dowel beside the screw',
                )
                break


def _stands(part: Part, joint: Joint, design: Design) -> bool:
    """Whether it carries what moves, and is joined to nothing else that keeps it from turning."""
    others = [one for one in design.joints.values() if part.name in one.items and one is not joint]
    kinds = {one.kind for one in others}
    return part.shape_kind in _SHAPES and bool(kinds) and kinds <= set(_CARRIES)
