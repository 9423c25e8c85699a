"""The wall of a groove that its clip bears on: the outer one, whatever the groove's width."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from binder.api import Design
    from binder_solid.facts import Located

_SAME = 1e-6


def holds_clip(part: str, one: Located, design: Design) -> bool:
    """Whether a clip sits in a groove round turned work: its joint names it or its step."""
    form = design.facts.about(FormFact, part)
    if one.kind != "grooved" or one.face != "across" or form is None:
        return False
    x = one.spots[0][0]
    under = [step.name for step in form.stretches if step.start - _SAME <= x <= step.end + _SAME]
    ends = {f"{part}.{name}" for name in (one.name, *under)}
    return any(
        joint.kind == "clipped" and ends & {str(end) for end in joint.ends}
        for joint in design.joints.values()
    )


def outer_wall(one: Located, x: float, whole: float) -> float:
    """Where the outer wall of a groove lies along the work, in mm, its middle being at `x`.

    A clip is pushed towards the nearer end by what it holds. The nominal width counts: a wider
    groove grows inwards from this wall, so that the clip stands where it did.
    """
    half = (one.diameter or 0.0) / 2
    return x - half if x <= whole / 2 else x + half
