"""What the joints are filled with that set, to be bought with the rest."""

from __future__ import annotations

from binder.api import Design
from binder_solid.filled import adhesive


def adhesives(design: Design) -> dict[str, list[str]]:
    """Each adhesive with the names of its joints, in the order of the spec."""
    found: dict[str, list[str]] = {}
    for joint in design.joints.values():
        what = adhesive(joint, design)
        if what:
            found.setdefault(what, []).append(joint.name)
    return found
