"""Slides, hinges and screws that move, and what grows when it is warm: their sums."""

from binder_trade.explained import NotDefined, Step
from binder_trade.slides.backlash import Backlash, axial_backlash, backlash, least_gap
from binder_trade.slides.cutters import Cutter, CutterChoice, fit_cutter
from binder_trade.slides.dovetail import Dovetail, Half, Wanted, dovetail
from binder_trade.slides.fit import HandSliding, hand_sliding
from binder_trade.slides.gib import Gib, straight_gib, taper_gib
from binder_trade.slides.growth import expansion, float_when_warm, growth
from binder_trade.slides.hinge import Hinge, Knuckle, hinge, knuckle
from binder_trade.slides.leadscrew import Leadscrew, acme, square, trapezoidal, turns_for, vee
from binder_trade.slides.lifting import Lift, collar_torque, handle_force, lift, nut_pressure
from binder_trade.slides.pins import (
    Corners,
    OverPins,
    PinRange,
    corners,
    female_to_suit,
    male_to_suit,
    over_pins,
    owned_pin,
    pin_factor,
    pin_range,
)

__all__ = [
    "Backlash",
    "Corners",
    "Cutter",
    "CutterChoice",
    "Dovetail",
    "Gib",
    "Half",
    "HandSliding",
    "Hinge",
    "Knuckle",
    "Leadscrew",
    "Lift",
    "NotDefined",
    "OverPins",
    "PinRange",
    "Step",
    "Wanted",
    "acme",
    "axial_backlash",
    "backlash",
    "collar_torque",
    "corners",
    "dovetail",
    "expansion",
    "female_to_suit",
    "fit_cutter",
    "float_when_warm",
    "growth",
    "hand_sliding",
    "handle_force",
    "hinge",
    "knuckle",
    "least_gap",
    "lift",
    "male_to_suit",
    "nut_pressure",
    "over_pins",
    "owned_pin",
    "pin_factor",
    "pin_range",
    "square",
    "straight_gib",
    "taper_gib",
    "trapezoidal",
    "turns_for",
    "vee",
]
