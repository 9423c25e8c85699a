"""A hole in a face beside a step that stands up before it: how much room a tool has there."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_solid.facts import Located, Stretch

_SAME = 1e-6


def beside_step(steps: Sequence[Stretch], one: Located) -> tuple[float, float]:
    """From the hole's middle to what stands up nearer to the axis, and how high that is, in mm.

    The room is that to the widest of the steps before the face; the axis alone leaves no height.
    """
    far = max((math.hypot(*spot[1:]) for spot in one.spots), default=0.0)
    if not one.spots:
        return far, 0.0
    x, way = one.spots[0][0], one.frame.z[0]
    before = [
        step for step in steps if (step.start >= x - _SAME if way > 0 else step.end <= x + _SAME)
    ]
    if not before:
        return far, 0.0
    widest = max(before, key=lambda step: max(step.across, step.end_across))
    high = (widest.end - x) if way > 0 else (x - widest.start)
    return far - max(widest.across, widest.end_across) / 2, high
