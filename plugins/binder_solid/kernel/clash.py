"""Parts that stand in one another's way."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from itertools import combinations

from OCP.BRepAlgoAPI import BRepAlgoAPI_Common

from binder_solid.forms import Form, Placed, Vector
from binder_solid.solid import Clash, NamedForm

from .extents import envelope, rough_envelope
from .shapes import combined, solid_of, volume_of
from .words import Shape, solids

_LEAST_SHARE = 1e-6  # of the smaller part, below which faces only touch
_LEAST_VOLUME = 1e-4  # mm³
Box = tuple[Vector, Vector]


def clashes(
    placed: Sequence[NamedForm], allowed: Collection[tuple[str, str]] = frozenset()
) -> tuple[Clash, ...]:
    """Finds the pairs that share some volume; touching faces do not. Raises Unbuildable."""
    shapes = [(part.name, solid_of(_stood(part))) for part in placed]
    boxes = [rough_envelope(shape) for _, shape in shapes]
    pairs = combinations(zip(shapes, boxes, strict=True), 2)
    return tuple(_found(list(pairs), allowed))


def _stood(part: NamedForm) -> Form:
    return Placed(part.form, part.frame)


def _found(
    pairs: Sequence[tuple[tuple[tuple[str, Shape], Box], tuple[tuple[str, Shape], Box]]],
    allowed: Collection[tuple[str, str]],
) -> Iterator[Clash]:
    for ((first, one), here), ((second, other), there) in pairs:
        if (first, second) in allowed or (second, first) in allowed or not _meet(here, there):
            continue
        common = combined(BRepAlgoAPI_Common(), [one], [other])
        volume = volume_of(common) if solids(common) else 0.0
        if volume > max(_LEAST_VOLUME, _LEAST_SHARE * min(volume_of(one), volume_of(other))):
            yield Clash(first, second, volume, *envelope(common))


def _meet(one: Box, other: Box) -> bool:
    return all(
        least <= most and other_least <= other_most
        for least, most, other_least, other_most in zip(
            one[0], other[1], other[0], one[1], strict=True
        )
    )
