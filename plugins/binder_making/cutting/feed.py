"""What is fed for a turn, and how deep a cut a small machine takes."""

from __future__ import annotations

from collections.abc import Sequence

from binder_making.cutting.group import Group
from binder_making.cutting.published import tables
from binder_making.cutting.speed import table
from binder_trade.explained import NotDefined, positive

INCH_MM = 25.4
_ROUND = 1e-9


def turning_feed(
    material: Group, act: str, *, finish: bool = False, owned: Sequence[float] = ()
) -> float:
    """The feed in mm for a turn of a lathe tool; the next lower of the `owned` ones.

    Where the machine has none so fine, the figure is for the hand. Raises `NotDefined` for an
    act that is not turned. Source: common practice, no source.
    """
    row = table()["feeds"].get(act)
    if row is None:
        raise NotDefined(f"no feed is known for '{act}'", "one of: " + ", ".join(table()["feeds"]))
    wanted = float(row[1] if finish else row[0]) * (1.0 if finish else material.feed)
    lower = [one for one in owned if one <= wanted + _ROUND]
    return max(lower, default=wanted)


def drill_feed(diameter_mm: float) -> float:
    """The feed in mm for a turn of an HSS drill: the least published, as fed by hand.

    Source: manual of a drilling machine; over 5/8 in the last row goes on (from memory).
    """
    inches = positive(diameter_mm, "a drill") / INCH_MM
    rows = tables()["drill_feed"]["rows"]
    row = next((one for one in rows if inches <= one[0] + _ROUND), rows[-1])
    return float(row[1]) * INCH_MM


def ream_feed(diameter_mm: float) -> float:
    """The feed in mm for a turn of a reamer. Source: common practice, no source."""
    return float(table()["ream_feed"]) * drill_feed(diameter_mm)


def tooth_feed(material: Group, diameter_mm: float) -> float:
    """The feed in mm for a tooth of a milling cutter. Source: common practice, no source."""
    row = table()["tooth"]
    wanted = positive(diameter_mm, "a cutter") / float(row["over"]) * material.feed
    return min(max(wanted, float(row["least"])), float(row["most"]) * material.feed)


def rough_depth(material: Group, swing_mm: float) -> float:
    """The depth of a roughing cut in mm on the radius, by the swing of the lathe in mm.

    Source: common practice, no source.
    """
    swing = positive(swing_mm, "the swing")
    depth = next(float(row[1]) for row in table()["depths"] if swing <= row[0])
    return depth * material.depth


def finish_depth() -> float:
    """The depth of a finishing cut in mm on the radius. Source: common practice, no source."""
    return float(table()["finish_depth"])
