"""The features of this plugin, each by the key that opens it."""

from __future__ import annotations

from typing import Any

from pydantic import create_model

from binder.api import Kind, Length, LengthOrSuit, Slot, ThreadOrSuit, Words
from binder_plugins.shapes.features import (
    Bevel,
    Boss,
    Cut,
    Edge,
    Filed,
    Hole,
    Keyway,
    Knurl,
    Placed,
    Pocket,
    Rebate,
    Screwed,
    TeeSlot,
)

_KINDS: tuple[tuple[str, type[Placed], Any, str], ...] = (
    ("drilled", Hole, LengthOrSuit, "a drilled hole: its diameter"),
    ("reamed", Hole, LengthOrSuit, "a reamed hole: its diameter"),
    ("bored", Hole, LengthOrSuit, "a bored hole: its diameter"),
    ("counterbored", Hole, Length, "a counterbore: its diameter"),
    ("countersunk", Hole, Length, "a countersink: its diameter at the surface"),
    ("spotfaced", Hole, Length, "a spotface: its diameter"),
    ("centred", Placed, Length, "a centre hole, form A: the diameter of its pilot"),
    ("tapped", Hole, ThreadOrSuit, "a tapped hole: its thread"),
    ("screwed", Screwed, ThreadOrSuit, "an outside thread"),
    ("chamfered", Edge, Length, "a chamfer: its width"),
    ("rounded", Edge, Length, "a rounded edge or end: its radius"),
    ("bevelled", Bevel, Length, "a bevelled edge: its width on the face"),
    ("knurled", Knurl, Length, "a knurl: its pitch"),
    ("grooved", Cut, LengthOrSuit, "a groove: its width"),
    ("undercut", Cut, Length, "an undercut: its width"),
    ("slotted", Cut, LengthOrSuit, "a slot: its width"),
    ("t_slotted", TeeSlot, Length, "a T-slot: the width of its neck"),
    ("pocketed", Pocket, Length, "a pocket: its length"),
    ("stepped", Rebate, Length, "a step milled off: how far in from its side"),
    ("bossed", Boss, Length, "a boss: its diameter"),
    ("flatted", Cut, Length, "a flat: its distance from the opposite side, or flat"),
    ("recessed", Cut, Length, "a recess: its diameter or width"),
    ("keywayed", Keyway, LengthOrSuit, "a keyway: its width"),
    ("filed", Filed, Words, "an outline or shape filed by eye, in words"),
)


def feature_kinds() -> list[Kind]:
    """All features of this plugin."""
    return [
        Kind(Slot.FEATURE, key, _model(key, model, value), says)
        for key, model, value, says in _KINDS
    ]


def _model(key: str, base: type[Placed], value: Any) -> type[Placed]:  # noqa: ANN401
    fields: dict[str, Any] = {key: (value, ...)}
    model = create_model(f"Feature_{key}", __base__=base, **fields)
    model.kind = key
    return model
