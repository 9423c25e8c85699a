"""A neck at the end of a taper: how deep, and so wide that the tool of the taper goes into it."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.turning import Turning

_SAME = 1e-6
# The pointed tool as its recipe grinds it (recipes.yaml): the angle of its point, how far its
# flank beside the shoulder leans from square, in degrees, and the round of its point in mm.
_POINT, _BESIDE, _ROUND_MM = 30.0, 2.0, 0.2
# What is seen to be clear when a tool is tried, in mm: common practice, no source.
_SHAKE_MM = 0.2


@dataclass(frozen=True, slots=True)
class Neck:
    """A neck to `across` and so `wide`, in mm; in how many plunges side by side, 1 where one does.

    `is_entered` tells whether the point of the tool goes down to its bottom.
    """

    across: float
    wide: float
    plunges: int = 1
    is_entered: bool = False


def point_width(front_mm: float, behind_mm: float) -> float:
    """How wide in mm the pointed tool is between walls so high, its tip on the bottom. Geometry.

    Its flanks meet under the tip, which is rounded: by r / sin(half the point) - r.
    """
    under = _ROUND_MM / math.sin(math.radians(_POINT / 2)) - _ROUND_MM
    leans = math.tan(math.radians(_POINT - _BESIDE))
    return (front_mm + under) * math.tan(math.radians(_BESIDE)) + (behind_mm + under) * leans


def stopped_short(step_mm: float) -> float:
    """How far in mm from a shoulder so high the point stops, lest its leaning flank cut that."""
    return step_mm * math.tan(math.radians(_POINT - _BESIDE))


def neck_between(
    long: float, ends: tuple[float, float], walls: tuple[float, float], blade: float
) -> Neck:
    """The neck behind a larger step, in which a taper begins that is so `long`, all in mm.

    `ends` are the diameters of the taper at the neck and at its other end, `walls` those of the
    step before it and of the bar behind it, `blade` is the width of the parting tool. As wide as
    one plunge of that, or as the tool of the taper is where that is more; where the taper is too
    short for it one plunge, which the tool does not go to the bottom of.
    """
    wide, (front, bar) = blade, walls
    while wide <= long:
        across = neck_across(long, ends, wide)
        needed = point_width(max(front - across, 0.0) / 2, max(bar - across, 0.0) / 2) + _SHAKE_MM
        if needed <= wide + _SAME:
            plunges = max(math.ceil(wide / blade - _SAME), 1) if blade else 1
            return Neck(across, wide, plunges, is_entered=True)
        wide = math.ceil(needed * 10 - _SAME) / 10
    return Neck(neck_across(long, ends, blade), blade)


def neck_across(long: float, ends: tuple[float, float], wide: float) -> float:
    """What a neck is cut to in mm: no deeper than the cone is anywhere under the tool.

    Rounded up to a tenth; what is left of it at the shoulder the top-slide takes.
    """
    near, far = ends
    share = min(wide / long, 1.0)
    return max(near, math.ceil((near + (far - near) * share) * 10 - _SAME) / 10)


def neck_act(
    turning: Turning,
    feature: str,
    end: tuple[str, tuple[str, ...]],
    cut: tuple[float, Neck],
    words: str,
) -> Act:
    """A neck plunged at an end of a taper, `cut` from so many mm across to that of the neck.

    `end` is the free end, with the tags of the set-up.
    """
    (free, tags), (there, neck) = end, cut
    made = turning.work.act(
        "groove",
        f"neck in {words}",
        machine=turning.lathe,
        feature=feature,
        tool="parting tool",
        size=neck.across,
        start=there,
        end=free,
        times=neck.plunges,
        tags=(*tags, "outside", "neck"),
        spoils="a tool that is not square or at centre height digs in",
    )
    return replace(made, is_entered=neck.is_entered)
