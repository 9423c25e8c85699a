"""Seals: O-rings and their grooves, gaskets, and glands packed with square packing."""

from binder_trade.explained import NotDefined, Step
from binder_trade.seals.choose import for_bore, for_rod
from binder_trade.seals.gasket import SHEETS, Gasket, Sheet, gasket
from binder_trade.seals.groove import (
    Groove,
    Place,
    face_groove,
    piston_groove,
    rod_groove,
    thinned,
)
from binder_trade.seals.housing import Duty, Housing, LeadIn, housing, lead_in
from binder_trade.seals.packing import SECTIONS, StuffingBox, section_for, stuffing_box
from binder_trade.seals.ranges import Remark, passes_port, remarks
from binder_trade.seals.rings import Ring, inch_ring, ring, rings

__all__ = [
    "SECTIONS",
    "SHEETS",
    "Duty",
    "Gasket",
    "Groove",
    "Housing",
    "LeadIn",
    "NotDefined",
    "Place",
    "Remark",
    "Ring",
    "Sheet",
    "Step",
    "StuffingBox",
    "face_groove",
    "for_bore",
    "for_rod",
    "gasket",
    "housing",
    "inch_ring",
    "lead_in",
    "passes_port",
    "piston_groove",
    "remarks",
    "ring",
    "rings",
    "rod_groove",
    "section_for",
    "stuffing_box",
    "thinned",
]
