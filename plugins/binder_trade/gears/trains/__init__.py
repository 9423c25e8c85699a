"""Trains of gears: found from wheels in hand, reckoned through, planetary ones."""

from binder_trade.explained import NotDefined, Step
from binder_trade.gears.trains.change_wheels import (
    INCH_MM,
    Screw,
    Transposing,
    pitch_of,
    screws,
    transposing,
)
from binder_trade.gears.trains.clearing import Clearance, clears
from binder_trade.gears.trains.compound import MeshOf, Shaft, TrainRun, run_train
from binder_trade.gears.trains.planetary import (
    Member,
    Planetary,
    arm_speed,
    basic_ratio,
    first_speed,
    last_speed,
    planetary,
)
from binder_trade.gears.trains.reverted import Reverted, reverted
from binder_trade.gears.trains.search import Found, Train, search
from binder_trade.gears.trains.teeth import Teeth, teeth_for

__all__ = [
    "INCH_MM",
    "Clearance",
    "Found",
    "Member",
    "MeshOf",
    "NotDefined",
    "Planetary",
    "Reverted",
    "Screw",
    "Shaft",
    "Step",
    "Teeth",
    "Train",
    "TrainRun",
    "Transposing",
    "arm_speed",
    "basic_ratio",
    "clears",
    "first_speed",
    "last_speed",
    "pitch_of",
    "planetary",
    "reverted",
    "run_train",
    "screws",
    "search",
    "teeth_for",
    "transposing",
]
