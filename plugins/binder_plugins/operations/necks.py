"""A groove that leaves a thin neck in work between chuck and centre is cut when all else is."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.turning import Turning

# A neck is thin under so much in mm, or under this part of the thickest that is turned with it.
# Common practice, no source.
_THIN_MM, _PART = 3.0, 0.4


def thin_neck(turning: Turning, act: Act) -> Act:
    """The act, marked where it leaves a neck too thin to carry the cuts that come after."""
    if act.act != "groove":
        return act
    one = next((one for one in turning.around if one.name == act.feature), None)
    if one is None or one.diameter is None:
        return act
    x = one.frame.origin[0]
    across = min((s.across for s in turning.steps if s.start <= x <= s.end), default=0.0)
    deep = one.depth if one.depth is not None else one.diameter / 2
    thickest = max((turning.steps[i].across for i in turning.plan.first), default=across)
    if across - 2 * deep >= max(_THIN_MM, _PART * thickest):
        return act
    return replace(act, tags=act.tags | {"thin-neck"})
