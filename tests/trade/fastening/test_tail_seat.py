"""The countersink of a riveted tail, by volumes: what stands out must fill it."""

from __future__ import annotations

import math

import pytest

from binder_trade.explained import NotDefined
from binder_trade.fastening import tail_mouth


def cone(mouth: float, hole: float) -> float:
    """The ring between a 90° cone and its hole, in mm³: a frustum less a cylinder (geometry)."""
    high, big, small = (mouth - hole) / 2, mouth / 2, hole / 2
    whole = math.pi * high / 3 * (big**2 + big * small + small**2)
    return whole - math.pi * small**2 * high


@pytest.mark.parametrize("across", [1.0, 2.0, 3.0, 5.0])
def test_half_a_diameter_of_tail_fills_the_mouth(across: float) -> None:
    """A tail may stand out by half its diameter at the least (common practice, no source)."""
    hole = across + 0.1
    mouth = tail_mouth(across, hole, 10.0)

    assert cone(mouth, hole) <= math.pi / 4 * across**2 * across / 2
    assert mouth > hole


def test_half_of_a_thin_plate_stays_whole() -> None:
    """⌀2.1 in 0.6 mm of sheet: a 90° cone 0.3 mm deep is 2 × 0.3 wider than its hole."""
    assert math.isclose(tail_mouth(2.0, 2.1, 0.6), 2.1 + 2 * 0.3)


def test_no_tail_has_no_mouth() -> None:
    with pytest.raises(NotDefined):
        tail_mouth(0.0, 2.1, 1.0)
