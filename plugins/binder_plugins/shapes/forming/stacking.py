"""Pieces of a fabrication to their places on one another."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import LayerEntry
from binder_solid.facts import FormFact
from binder_solid.forms import Form, Frame, Placed, Vector

# How the piece's own x and z lie: as it is drawn, its length upwards, its width upwards.
_WAYS: dict[str, tuple[Vector, Vector]] = {
    "flat": ((1.0, 0.0, 0.0), (0.0, 0.0, 1.0)),
    "on end": ((0.0, 0.0, 1.0), (-1.0, 0.0, 0.0)),
    "on edge": ((1.0, 0.0, 0.0), (0.0, -1.0, 0.0)),
}


@dataclass(frozen=True, slots=True)
class Stacked:
    """The pieces where they lie, and how much room they take: x, y and z from the origin."""

    forms: tuple[Form, ...]
    size: Vector


@dataclass(frozen=True, slots=True)
class Layer:
    """Pieces of one kind side by side, each at a place from the middle of the first piece."""

    entry: LayerEntry
    form: FormFact
    places: tuple[tuple[float, float], ...]


def stacked(layers: tuple[Layer, ...]) -> Stacked:
    """Each layer upon the one before it; the first piece lies in the corner of space."""
    long, wide, _ = _size(layers[0])
    forms: list[Form] = []
    high = 0.0
    for layer in layers:
        forms += _laid(layer, (long / 2, wide / 2, high))
        high += _size(layer)[2]
    return Stacked(tuple(forms), (long, wide, high))


def _laid(layer: Layer, on: Vector) -> Iterator[Form]:
    size = _size(layer)
    least = _least(layer)
    x, z = _WAYS[_stands(layer)]
    for u, v in layer.places:
        corner = (on[0] + u - size[0] / 2, on[1] + v - size[1] / 2, on[2])
        a, b, c = (want - have for want, have in zip(corner, least, strict=True))
        yield Placed(layer.form.form, Frame((a, b, c), z, x))


def _stands(layer: Layer) -> str:
    return str(layer.entry.stands or "flat")


def _corners(layer: Layer) -> list[Vector]:
    """The least and the most corner of a piece in its own frame, turned as it stands."""
    long, wide, high = layer.form.size
    before = (0.0, -wide / 2, -high / 2) if layer.form.stretches else (0.0, 0.0, 0.0)
    after = (before[0] + long, before[1] + wide, before[2] + high)
    return [_turned(point, _stands(layer)) for point in (before, after)]


def _turned(point: Vector, stands: str) -> Vector:
    x, y, z = point
    return {"flat": (x, y, z), "on end": (-z, y, x), "on edge": (x, -z, y)}[stands]


def _least(layer: Layer) -> Vector:
    one, other = _corners(layer)
    return (min(one[0], other[0]), min(one[1], other[1]), min(one[2], other[2]))


def _size(layer: Layer) -> Vector:
    one, other = _corners(layer)
    return (abs(one[0] - other[0]), abs(one[1] - other[1]), abs(one[2] - other[2]))
