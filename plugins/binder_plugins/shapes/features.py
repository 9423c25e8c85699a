"""What can be cut or formed in a part."""

from __future__ import annotations

from typing import Any

from pydantic import create_model

from binder.api import (
    Angle,
    At,
    Count,
    FeatureEntry,
    Flag,
    Kind,
    Length,
    LengthOrSuit,
    LengthOrThrough,
    Name,
    Slot,
    ThreadOrSuit,
    Words,
)


class Placed(FeatureEntry):
    """A feature with its place: on which step or face, across which, and where along it.

    `off` is how many alike, `pattern` how they stand (`on 16 mm PCD`, `in a row at 8 mm`).
    """

    on: Name | None = None
    across: Name | None = None
    at: At | None = None
    off: Count | None = None
    pattern: Words | None = None
    each_end: Flag = False


class Hole(Placed):
    """A hole: its depth is that of the full diameter, without the point of the drill."""

    depth: LengthOrThrough | None = None
    counterbore: Length | None = None


class Screwed(Placed):
    """An outside thread."""

    length: Length | None = None


class Cut(Placed):
    """A groove, slot or flat."""

    depth: LengthOrThrough | None = None
    length: Length | None = None


class Edge(Placed):
    """A broken, chamfered or rounded edge."""

    angle: Angle | None = None


_KINDS: tuple[tuple[str, type[Placed], Any, str], ...] = (
    ("drilled", Hole, LengthOrSuit, "a drilled hole: its diameter"),
    ("reamed", Hole, LengthOrSuit, "a reamed hole: its diameter"),
    ("bored", Hole, LengthOrSuit, "a bored hole: its diameter"),
    ("counterbored", Hole, Length, "a counterbore: its diameter"),
    ("countersunk", Hole, Length, "a countersink: its diameter at the surface"),
    ("spotfaced", Hole, Length, "a spotface: its diameter"),
    ("tapped", Hole, ThreadOrSuit, "a tapped hole: its thread"),
    ("screwed", Screwed, ThreadOrSuit, "an outside thread"),
    ("chamfered", Edge, Length, "a chamfer: its width"),
    ("rounded", Edge, Length, "a rounded edge or end: its radius"),
    ("knurled", Cut, Length, "a knurl: its pitch"),
    ("grooved", Cut, LengthOrSuit, "a groove: its width"),
    ("undercut", Cut, Length, "an undercut: its width"),
    ("slotted", Cut, LengthOrSuit, "a slot: its width"),
    ("flatted", Cut, Length, "a flat: its distance from the opposite side"),
    ("recessed", Cut, Length, "a recess: its diameter or width"),
    ("keywayed", Cut, LengthOrSuit, "a keyway: its width"),
    ("filed", Edge, Words, "an outline or shape filed by eye, in words"),
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
