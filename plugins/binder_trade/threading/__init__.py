"""Cutting threads: drills, depths, wires, engagement, screwcutting and what else would serve."""

from binder_trade.threading.blind import (
    LEAD_SOURCE,
    LEADS,
    BlindHole,
    blind,
    full_thread_in,
    point_length,
    tap_lead,
)
from binder_trade.threading.clearance import (
    FITS,
    Clearance,
    ClearanceDrill,
    clearance,
    clearance_drill,
)
from binder_trade.threading.engaged import (
    Engagement,
    engagement,
    length_of_engagement,
    strength_left,
    strip_ratio,
)
from binder_trade.threading.fittings import is_fitting, least_wall
from binder_trade.threading.keys import size_key, thread_key
from binder_trade.threading.listed import Listed, listed, published
from binder_trade.threading.metals import Metal, metal
from binder_trade.threading.percent import Basis, Percent, bases, drill_for_percent, percent
from binder_trade.threading.screwcut import Infeed, Screwcutting, blank_rule, screwcutting
from binder_trade.threading.substitute import (
    Substitute,
    lookalikes,
    stress_area,
    substitutes,
)
from binder_trade.threading.tapping import (
    LEAST_PERCENT,
    MOST_PERCENT,
    Choice,
    TappingDrill,
    Window,
    tapping_drill,
    tapping_window,
)
from binder_trade.threading.wires import (
    Constants,
    OverWires,
    Wires,
    best_wire,
    constants,
    over_owned,
    over_wires,
    usable_wires,
)

__all__ = [
    "FITS",
    "LEADS",
    "LEAD_SOURCE",
    "LEAST_PERCENT",
    "MOST_PERCENT",
    "Basis",
    "BlindHole",
    "Choice",
    "Clearance",
    "ClearanceDrill",
    "Constants",
    "Engagement",
    "Infeed",
    "Listed",
    "Metal",
    "OverWires",
    "Percent",
    "Screwcutting",
    "Substitute",
    "TappingDrill",
    "Window",
    "Wires",
    "bases",
    "best_wire",
    "blank_rule",
    "blind",
    "clearance",
    "clearance_drill",
    "constants",
    "drill_for_percent",
    "engagement",
    "full_thread_in",
    "is_fitting",
    "least_wall",
    "length_of_engagement",
    "listed",
    "lookalikes",
    "metal",
    "over_owned",
    "over_wires",
    "percent",
    "point_length",
    "published",
    "screwcutting",
    "size_key",
    "strength_left",
    "stress_area",
    "strip_ratio",
    "substitutes",
    "tap_lead",
    "tapping_drill",
    "tapping_window",
    "thread_key",
    "usable_wires",
]
