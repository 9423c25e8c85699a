"""Wood that moves: how much a board's width changes with damp, and the room to leave."""

from binder_trade.explained import NotDefined, Step
from binder_trade.wood.moisture import moisture_at
from binder_trade.wood.movement import (
    HEATED_ROOM,
    OUTDOORS,
    WORKSHOP,
    Button,
    Cut,
    Movement,
    Season,
    Slot,
    Wood,
    button,
    movement,
    slot,
    wood,
    wood_names,
)

__all__ = [
    "HEATED_ROOM",
    "OUTDOORS",
    "WORKSHOP",
    "Button",
    "Cut",
    "Movement",
    "NotDefined",
    "Season",
    "Slot",
    "Step",
    "Wood",
    "button",
    "moisture_at",
    "movement",
    "slot",
    "wood",
    "wood_names",
]
