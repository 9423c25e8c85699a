"""What turns on a pin, and is screwed to that pin's part, to the finding that it is nipped."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Labelled
from binder_plugins.fasteners import codes

_TURNS = frozenset({"swivels", "runs_in"})
_CLAMPS = frozenset({"screwed", "bolted", "studded"})


def check_swivels(design: Design) -> Iterator[Diagnostic]:
    """A screw holds a swivel by something that bears on the pin, and not by the swivel."""
    turning = {frozenset(one.items): one for one in design.joints.values() if one.kind in _TURNS}
    for joint in design.joints.values():
        swivel = turning.get(frozenset(joint.items)) if joint.kind in _CLAMPS else None
        if swivel is None:
            continue
        names = " and ".join(f"'{name}'" for name in joint.items)
        yield codes.SCREW_NIPS_SWIVEL.at(
            joint.at,
            f"'{joint.name}' clamps {names} together, which turn on each other in '{swivel.name}'",
            related=[Labelled(swivel.at, "they turn here")],
            help="make the pin a hair longer than what turns on it, and screw a washer or plate, "
            "wider than the pin, down on the pin's end",
        )
