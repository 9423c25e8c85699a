"""Twist drills that exist: metric, number, letter and fractional inch."""

from binder_trade.drills.drill import Drill, NoDrill
from binder_trade.drills.lists import SYSTEMS, all_drills, is_member, standard_drills
from binder_trade.drills.named import drill_named
from binder_trade.drills.near import at_or_above, at_or_below, nearest
from binder_trade.drills.reaming import Allowance, ReamingDrill, allowance, reaming_drill

__all__ = [
    "SYSTEMS",
    "Allowance",
    "Drill",
    "NoDrill",
    "ReamingDrill",
    "all_drills",
    "allowance",
    "at_or_above",
    "at_or_below",
    "drill_named",
    "is_member",
    "nearest",
    "reaming_drill",
    "standard_drills",
]
