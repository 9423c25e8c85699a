"""Wheels that move by steps: ratchets, Geneva wheels, gears with teeth left out."""

from binder_trade.explained import NotDefined, Step
from binder_trade.gears.stopping.geneva import Geneva, geneva, position, speed
from binder_trade.gears.stopping.mutilated import Mutilated, mutilated
from binder_trade.gears.stopping.noses import (
    PawlNose,
    RatchetSpace,
    pawl_nose,
    ratchet_space,
    square_reach,
)
from binder_trade.gears.stopping.pawls import RatchetFeed, pawl_load, ratchet_feed
from binder_trade.gears.stopping.ratchet import Ratchet, ratchet

__all__ = [
    "Geneva",
    "Mutilated",
    "NotDefined",
    "PawlNose",
    "Ratchet",
    "RatchetFeed",
    "RatchetSpace",
    "Step",
    "geneva",
    "mutilated",
    "pawl_load",
    "pawl_nose",
    "position",
    "ratchet",
    "ratchet_feed",
    "ratchet_space",
    "speed",
    "square_reach",
]
