"""Teeth for a ratio against trial of every pair, and against well-known trains of clocks."""

from __future__ import annotations

import itertools
from fractions import Fraction

import pytest

from binder_trade.gears.trains import NotDefined, teeth_for

RATIOS = [Fraction(355, 113), Fraction(1, 7), Fraction(1000, 1003), Fraction(29, 59)]


@pytest.mark.parametrize("wanted", RATIOS, ids=str)
def test_no_pair_is_nearer(wanted: Fraction) -> None:
    errors = [
        abs(Fraction(driver, driven) / wanted - 1)
        for driver in range(12, 101)
        for driven in range(12, 101)
    ]
    found = teeth_for(wanted, keep=1)[0]
    assert abs(found.error) == min(errors)
    assert found.ratio == Fraction(*found.pairs[0])


@pytest.mark.parametrize("wanted", [Fraction(355, 113), Fraction(1, 5), *RATIOS[2:]], ids=str)
def test_no_two_pairs_are_nearer(wanted: Fraction) -> None:
    ratios = {Fraction(one, two) for one, two in itertools.product(range(10, 25), repeat=2)}
    products = {(min(one, two), max(one, two)) for one in ratios for two in ratios}
    errors = sorted(abs(one * two / wanted - 1) for one, two in products)
    found = teeth_for(wanted, least=10, most=24, pairs=2, keep=8)
    assert [abs(each.error) for each in found] == errors[:8]


# Motion work of a clock, 1 : 12; centre wheel to escape wheel 60 : 1 in two pairs of 8 leaves
# is 64/8 × 60/8 (common practice): exact answers exist and are found.
def test_clocks_are_exact() -> None:
    motion = teeth_for(Fraction(1, 12), least=8, most=80, pairs=2)[0]
    assert motion.error == 0
    train = teeth_for(60, least=8, most=64, pairs=2)[0]
    assert train.error == 0
    assert train.ratio == 60


# The moon's month, 29.530589 days: 2 turns of 59 / 2 are wrong by a thousandth (published).
def test_the_error_of_a_moon_dial() -> None:
    month = Fraction("29.530589")
    found = teeth_for(1 / month, least=12, most=135, pairs=2)[0]
    usual = Fraction(2, 59) * month - 1
    assert abs(found.error) < abs(usual)
    assert float(usual) == pytest.approx(0.001037, abs=1e-6)


def test_hunting_teeth_are_told() -> None:
    assert teeth_for(Fraction(12, 37))[0].hunts
    assert not teeth_for(Fraction(1, 2))[0].hunts


@pytest.mark.parametrize(
    ("wanted", "most", "pairs"), [(0, 100, 1), (-2, 100, 1), (60, 100, 1), (2, 900, 1), (2, 60, 3)]
)
def test_refusals(wanted: int, most: int, pairs: int) -> None:
    with pytest.raises(NotDefined):
        teeth_for(wanted, most=most, pairs=pairs)
