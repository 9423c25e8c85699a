"""A sheet: the drawing, and where each size came to stand on it."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import Drawing
from binder_drafting.plane import Rectangle


@dataclass(frozen=True, slots=True)
class PlacedLabel:
    """The rectangle of some words; `id` is the size that they show, empty for all other words."""

    id: str
    box: Rectangle


@dataclass(frozen=True, slots=True)
class PlacedView:
    """Where the lines of a view lie, and its scale (2.0 is twice full size)."""

    name: str
    box: Rectangle
    scale: float


@dataclass(frozen=True, slots=True)
class Sheet:
    """A finished drawing; `problems` says in words what did not go as it should."""

    drawing: Drawing
    placed: tuple[PlacedLabel, ...]
    scale: str
    views: tuple[PlacedView, ...]
    problems: tuple[str, ...] = ()
