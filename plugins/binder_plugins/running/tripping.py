"""A trip wheel and its lever as they stand: do the stopping faces push the lever the way it lifts.

The teeth take the lever with their stopping faces, so the wheel turns the way that these look. A
lever that is worked beyond its fulcrum must be pushed down there, one that is worked between
fulcrum and head must be pushed up.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Design, Diagnostic, Joint, Size
from binder_plugins.running import codes
from binder_solid.tripped import tripped

if TYPE_CHECKING:
    from collections.abc import Iterator

# Nearer than this to the fulcrum it cannot be said on which side of it the wheel works. Share of
# the lever.
_NEAR = 0.05


def check_trips(design: Design) -> Iterator[Diagnostic]:
    """Each wheel whose teeth would press the head down instead of lifting it."""
    for joint in design.joints.values():
        if joint.kind == "trips" and _lifts(joint, design) is False:
            wheel = joint.ends[0].item
            yield codes.TRIP_WHEEL_WRONG_WAY.at(
                joint.at,
                f"the stopping faces of '{wheel}' push the lever of '{joint.name}' the way that "
                "presses its head down",
                help=f"write `{wheel}: {{reversed: true}}` under `positions:`, or take it off "
                "where that is written",
            )


def _lifts(joint: Joint, design: Design) -> bool | None:
    """Whether the push at the lever raises its head; None where that cannot be told."""
    reach = getattr(joint.entry, "reach", None)
    found = tripped(joint, design)
    if not isinstance(reach, Size) or found is None:
        return None
    beyond = found.at - reach.mm
    return None if abs(beyond) < _NEAR * found.long else found.is_down == (beyond > 0)
