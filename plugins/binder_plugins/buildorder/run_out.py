"""A screw that is run from end to end, to where both ends are: nothing on it stops it there."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Assembly, Design, Joint
from binder_plugins.buildorder.closing import joints_closed_in
from binder_solid.screw_ends import screw_ends


def run_to(joint: Joint, design: Design) -> str:
    """What the step of a screw says besides; '' for every other joint."""
    found = screw_ends(joint, design)
    return f": {found.told(design)}" if found is not None else ""


def ends_in(one: Assembly, design: Design) -> Iterator[str]:
    """The ends of each screw that an assembly closes, for the test of it."""
    for joint in joints_closed_in(one, design):
        found = screw_ends(joint, design)
        if found is not None:
            yield f"the ends of '{joint.name}' are {found.in_short(design)}, and no farther"
