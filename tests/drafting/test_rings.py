"""Rings of item numbers: what ISO 6433 asks of leaders, from memory, whatever the model."""

from __future__ import annotations

from itertools import combinations, permutations
from math import dist
from random import Random

import pytest

from binder_drafting.plane import Point, Rectangle, cross, enters
from binder_drafting.rings import RADIUS, Pointing, ring_places

EXTENT = Rectangle(0.0, 0.0, 150.0, 100.0)


def crowd(seed: int, count: int) -> list[Pointing]:
    """Items heaped about one place of the drawing, as the small parts of a winch are."""
    dice = Random(seed)
    at = (dice.uniform(20.0, 130.0), dice.uniform(20.0, 80.0))
    points = [
        (
            min(150.0, max(0.0, dice.gauss(at[0], 25.0))),
            min(100.0, max(0.0, dice.gauss(at[1], 20.0))),
        )
        for _ in range(count)
    ]
    return [Pointing(str(n), str(n), point) for n, point in enumerate(points)]


def strikes(start: Point, end: Point, ring: Point) -> bool:
    """Whether a straight line enters a ring, by the square that the ring holds."""
    half = RADIUS / 2**0.5
    square = Rectangle(ring[0] - half, ring[1] - half, ring[0] + half, ring[1] + half)
    return enters(start, end, square)


@pytest.mark.parametrize("count", [1, 6, 12, 18])
@pytest.mark.parametrize("seed", range(12))
def test_a_leader_crosses_no_ring_and_no_leader(seed: int, count: int) -> None:
    items = crowd(seed, count)
    places = ring_places(items, EXTENT)
    leaders = list(zip((one.at for one in items), places, strict=True))
    assert not [True for one, two in combinations(leaders, 2) if cross(*one, *two)]
    assert not [True for one, two in permutations(leaders, 2) if strikes(*one, two[1])]
    assert all(dist(one, two) > 2 * RADIUS for one, two in combinations(places, 2))
    assert not [True for x, y in places if EXTENT.grown(RADIUS).holds(Rectangle(x, y, x, y))]
