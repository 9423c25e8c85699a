"""The cup of a rivet snap, held against the heads of the standard.

Source: DIN 660:2012, round heads: shank d, head across dk and high k, in mm.
"""

from __future__ import annotations

import pytest

from binder_trade.explained import NotDefined
from binder_trade.fastening.rivet_cup import rivet_cup

# d, dk, k of DIN 660:2012.
HEADS = ((1.6, 2.8, 1.0), (2.0, 3.5, 1.2), (3.0, 5.2, 1.8), (4.0, 7.0, 2.4), (6.0, 10.5, 3.6))


@pytest.mark.parametrize(("shank", "across", "high"), HEADS)
def test_a_ball_of_the_cup_is_the_ball_of_the_head(
    shank: float, across: float, high: float
) -> None:
    """The head is a cap of its ball: dk squared is 4 k (D - k); k is rounded to 0.1 there."""
    cup = rivet_cup(shank)
    assert across**2 == pytest.approx(4 * high * (cup.across - high), rel=0.05)


@pytest.mark.parametrize(("shank", "across", "high"), HEADS)
def test_the_rim_of_a_cup_stays_off_the_plate(shank: float, across: float, high: float) -> None:
    """Shallower than the head, by so little that it still forms it: common practice, no source."""
    assert 0.8 * high < rivet_cup(shank).deep < high < across


def test_no_rivet_has_no_cup() -> None:
    with pytest.raises(NotDefined):
        rivet_cup(0.0)
