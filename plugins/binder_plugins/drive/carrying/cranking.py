"""The push of a connecting rod on the shaft of its crank, by the torque that it passes on."""

from __future__ import annotations

from math import cos, pi

from binder.api import Joint, Size
from binder_trade.explained import NotDefined
from binder_trade.mechanisms.crank_slider import crank_slider

_POINTS = 720


def crank_push(joint: Joint, torque: float) -> float | None:
    """The push of the rod in N where the torque (N mm) moves the slide at its fastest.

    Source: virtual work (statics): the work of a small turn is that of the slide's small way, so
    that the slide is pushed by the torque over its speed in mm/rad, and the rod, which leans, by
    that over the cosine of its slope. Without a rod it is a slotted link: at its fastest the
    slide goes by the throw for a radian. Friction left out; at the dead points there is no upper
    limit. None without a torque, or where the crank does not go round.
    """
    throw, rod, offset = (getattr(joint.entry, one, None) for one in ("throw", "rod", "offset"))
    if torque <= 0 or not isinstance(throw, Size) or throw.mm <= 0:
        return None
    if not isinstance(rod, Size):
        return torque / throw.mm
    try:
        made = crank_slider(throw.mm, rod.mm, offset.mm if isinstance(offset, Size) else 0.0)
    except NotDefined:
        return None
    states = [made.at(2 * pi * n / _POINTS) for n in range(_POINTS)]
    fastest = max(states, key=lambda one: abs(one.speed_mm))
    return torque / abs(fastest.speed_mm) / cos(fastest.rod_rad)
