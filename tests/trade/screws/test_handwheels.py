"""Handwheels and differential screws."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.explained import NotDefined
from binder_trade.screws.handwheel import (
    best_dial,
    differential_screw,
    handwheel,
    moves_toward_hand,
    screw_force,
)


# Common dials: 10 turns an inch with 100 divisions is a thousandth; 1.5 mm with 60 is 0.025.
@pytest.mark.parametrize(
    ("lead", "divisions", "each"), [(2.54, 100, 0.0254), (1.5, 60, 0.025), (2, 80, 0.025)]
)
def test_a_division(lead: float, divisions: int, each: float) -> None:
    assert handwheel(lead, divisions).division_mm == pytest.approx(each)


@given(lead=st.floats(0.5, 6), divisions=st.integers(10, 200), travel=st.floats(0.01, 90))
def test_a_travel_is_dialled(lead: float, divisions: int, travel: float) -> None:
    made = handwheel(lead, divisions)
    turns, over = made.dialled(travel)
    assert turns * made.turn_mm + over * made.division_mm == pytest.approx(travel)
    assert 0 <= over < divisions + 1e-6


def test_whole_turns_stay_whole() -> None:
    assert handwheel(1.5, 60).dialled(4.5) == (3, 0.0)
    assert handwheel(0.1, 10).dialled(0.3)[0] == 3


# A lathe's cross slide goes in, away from the hand, on a left-hand screw (common practice).
def test_which_way_the_slide_goes() -> None:
    assert not moves_toward_hand("left", screw_travels=False)
    assert moves_toward_hand("right", screw_travels=False)
    assert not moves_toward_hand("right", screw_travels=True)


# Textbook: a differential screw of 1 and 0.75 mm moves a quarter of a millimetre a turn.
def test_a_differential_screw() -> None:
    made = differential_screw(1, 0.75)
    assert made.turn_mm == pytest.approx(0.25)
    assert differential_screw(1, 0.75, opposite_hands=True).turn_mm == pytest.approx(1.75)
    assert differential_screw(0.75, 1).turn_mm < 0
    # Work in is work out: 2π × 100 N mm over 0.25 mm.
    assert made.force_n(100, 1) * 0.25 == pytest.approx(2 * math.pi * 100)
    assert screw_force(100, 2, 0.5) == pytest.approx(math.pi * 50)


def test_a_dial_for_a_screw() -> None:
    count, over = best_dial(1.25, 0.025)
    assert (count, round(over, 9)) == (50, 0)
    count, over = best_dial(25.4 / 26, 0.01)
    assert count == 98
    assert over == pytest.approx(25.4 / 26 - 0.98)


def test_screws_that_cannot_be() -> None:
    with pytest.raises(NotDefined, match="move nothing"):
        differential_screw(1, 1)
    with pytest.raises(NotDefined, match="number of divisions"):
        handwheel(1, 0)
    with pytest.raises(NotDefined, match="the lead"):
        handwheel(-1, 10)
    with pytest.raises(NotDefined, match="efficiency"):
        screw_force(1, 1, 0)
