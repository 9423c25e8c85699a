"""The length of a cut, feed and speed to minutes of cutting, the hand's work left out.

Source: geometry, as in any textbook of production engineering. Lengths in mm, turns in r/min.
"""

from __future__ import annotations

import math

from binder_making.cutting.drilling import point_length
from binder_trade.explained import NotDefined, not_negative, positive


def turn_min(length_mm: float, feed_mm: float, rpm: float, passes: int = 1) -> float:
    """A cut along the axis, outside or in a bore: passes × L/(f n)."""
    travel = positive(length_mm, "a length") / (positive(feed_mm, "a feed") * _turns(rpm))
    return _count(passes) * travel


def passes(from_mm: float, to_mm: float, depth_mm: float) -> int:
    """How many cuts of a depth on the radius lead from one diameter to the other."""
    stock = abs(positive(from_mm, "a diameter") - not_negative(to_mm, "a diameter")) / 2
    return math.ceil(stock / positive(depth_mm, "a depth of cut") - 1e-9)


def face_min(outer_mm: float, feed_mm: float, rpm: float, inner_mm: float = 0.0) -> float:
    """One cut across a face at a steady spindle: (D − d)/2 over f n. Parting is the same."""
    outer = positive(outer_mm, "a diameter")
    if not 0 <= inner_mm < outer:
        raise NotDefined("the face has no width", "give the hole smaller than the outside")
    return turn_min((outer - inner_mm) / 2, feed_mm, rpm)


def drill_min(
    depth_mm: float,
    diameter_mm: float,
    feed_mm: float,
    rpm: float,
    *,
    is_through: bool = False,
    point_mm: float | None = None,
) -> float:
    """A hole of full diameter so deep: the point goes in first, and out where it is through.

    `point_mm` is the length of the point, 0.30 d by the geometry of 118° where it is left
    out; some books take 0.29 d.
    """
    point = point_length(diameter_mm) if point_mm is None else positive(point_mm, "a point")
    length = positive(depth_mm, "a depth") + (2 if is_through else 1) * point
    return turn_min(length, feed_mm, rpm)


def screwcut_min(length_mm: float, pitch_mm: float, rpm: float, cuts: int) -> float:
    """The cutting strokes of a thread: cuts × L/(p n)."""
    return turn_min(length_mm, pitch_mm, rpm, cuts)


def mill_min(length_mm: float, feed_per_min_mm: float, approach_mm: float = 0.0) -> float:
    """A milling cut: (L + approach) over the feed in mm a minute."""
    travel = positive(length_mm, "a length") + not_negative(approach_mm, "the approach")
    return travel / positive(feed_per_min_mm, "a feed")


def mill_feed(tooth_feed_mm: float, teeth: int, rpm: float) -> float:
    """The feed of a milling table in mm a minute: f z n."""
    return positive(tooth_feed_mm, "a feed for a tooth") * _count(teeth) * _turns(rpm)


def face_mill_approach(cutter_mm: float) -> float:
    """What a face mill travels before and after the work: half of its diameter each, in mm."""
    return positive(cutter_mm, "a cutter")


def slab_mill_approach(cutter_mm: float, depth_mm: float) -> float:
    """What a cutter on its side travels before it is in full cut: √(a (D − a)), in mm."""
    cutter, depth = positive(cutter_mm, "a cutter"), positive(depth_mm, "a depth of cut")
    if depth > cutter:
        raise NotDefined("the cut is deeper than the cutter is wide", "take a larger cutter")
    return math.sqrt(depth * (cutter - depth))


def _turns(rpm: float) -> float:
    return positive(rpm, "a spindle speed")


def _count(number: int) -> int:
    if not 1 <= number <= 10_000:
        raise NotDefined(f"{number} is not a number of cuts or teeth", "one or more")
    return number
