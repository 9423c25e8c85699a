"""Pieces of a fabrication to their places on one another."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import LayerEntry
from binder_solid.facts import FormFact
from binder_solid.forms import Form, Frame, Placed, Vector

# How the piece's own x and z lie: as it is drawn, its length upwards, its width upwards, and the
# same with its length from the front to the back.
_WAYS: dict[str, tuple[Vector, Vector]] = {
    "flat": ((1.0, 0.0, 0.0), (0.0, 0.0, 1.0)),
    "on end": ((0.0, 0.0, 1.0), (-1.0, 0.0, 0.0)),
    "on edge": ((1.0, 0.0, 0.0), (0.0, -1.0, 0.0)),
    "on edge across": ((0.0, 1.0, 0.0), (1.0, 0.0, 0.0)),
}


_UPRIGHT = 0.999


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


@dataclass(frozen=True, slots=True)
class Pierced:
    """A piece from above: its corner, its size, and (x, y, diameter) of its upright holes."""

    corner: tuple[float, float]
    size: tuple[float, float]
    holes: tuple[tuple[float, float, float], ...]

    def covers(self, x: float, y: float) -> bool:
        """Whether the piece lies over a point."""
        return all(c < at < c + s for at, c, s in zip((x, y), self.corner, self.size, strict=True))


def stacked(layers: tuple[Layer, ...]) -> Stacked:
    """Each layer upon the one before it; the first piece lies in the corner of space."""
    long, wide, _ = _size(layers[0])
    forms: list[Form] = []
    high = 0.0
    for layer in layers:
        forms += _laid(layer, (long / 2, wide / 2, high))
        high += _size(layer)[2]
    return Stacked(tuple(forms), (long, wide, high))


def pierced(layers: tuple[Layer, ...]) -> list[tuple[Pierced, ...]]:
    """The copies of each layer as they are seen from above, with the holes that go down them."""
    long, wide, _ = _size(layers[0])
    return [tuple(_pierced(layer, (long / 2, wide / 2, 0.0))) for layer in layers]


def _pierced(layer: Layer, on: Vector) -> Iterator[Pierced]:
    stands, (wide, deep, _) = _stands(layer), _size(layer)
    for a, b, _ in _corners_at(layer, on):
        least = _least(layer)
        holes = tuple(
            (x + a, y + b, one.diameter)
            for one in layer.form.located
            if one.kind == "drilled" and one.depth is None and one.diameter
            if abs(_turned(one.frame.z, stands)[2]) > _UPRIGHT
            for x, y, _ in (_turned(spot, stands) for spot in one.spots)
        )
        yield Pierced((least[0] + a, least[1] + b), (wide, deep), holes)


def _laid(layer: Layer, on: Vector) -> Iterator[Form]:
    x, z = _WAYS[_stands(layer)]
    for corner in _corners_at(layer, on):
        yield Placed(layer.form.form, Frame(corner, z, x))


def _corners_at(layer: Layer, on: Vector) -> Iterator[Vector]:
    """Where the origin of each copy comes to lie."""
    size, least = _size(layer), _least(layer)
    for u, v in layer.places:
        corner = (on[0] + u - size[0] / 2, on[1] + v - size[1] / 2, on[2])
        a, b, c = (want - have for want, have in zip(corner, least, strict=True))
        yield (a, b, c)


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
    ways = {
        "flat": (x, y, z),
        "on end": (-z, y, x),
        "on edge": (x, -z, y),
        "on edge across": (z, x, y),
    }
    return ways[stands]


def _least(layer: Layer) -> Vector:
    one, other = _corners(layer)
    return (min(one[0], other[0]), min(one[1], other[1]), min(one[2], other[2]))


def _size(layer: Layer) -> Vector:
    one, other = _corners(layer)
    return (abs(one[0] - other[0]), abs(one[1] - other[1]), abs(one[2] - other[2]))
