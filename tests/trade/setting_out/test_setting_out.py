"""Dividers and handwheels against a handbook's table and sums done by hand."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.setting_out import NotDefined, chord, wound

# Machinery's Handbook, length of chords for a circle of unit diameter (from memory).
CHORDS = {
    3: 0.866025,
    4: 0.707107,
    5: 0.587785,
    6: 0.5,
    7: 0.433884,
    8: 0.382683,
    10: 0.309017,
    12: 0.258819,
}


@pytest.mark.parametrize("count", CHORDS)
def test_chords_are_those_of_the_handbook(count: int) -> None:
    assert chord(1.0, count) == pytest.approx(CHORDS[count], abs=1e-6)


def test_four_on_thirty() -> None:
    assert chord(30.0, 4) == pytest.approx(21.213, abs=5e-4)  # common practice, no source


@given(st.floats(1.0, 500.0), st.integers(2, 60))
def test_a_chord_joins_two_neighbours_on_the_circle(circle: float, count: int) -> None:
    turn = 2.0 * math.pi / count
    ends = [(circle / 2 * math.cos(a), circle / 2 * math.sin(a)) for a in (0.0, turn)]
    assert chord(circle, count) == pytest.approx(math.dist(*ends), rel=1e-9)


# Own arithmetic: coordinate, one turn, one division, then turns, divisions and what is left.
BY_HAND = [
    (25.0, 2.0, 0.02, 12, 50.0, 0.0),
    (7.25, 1.5, 0.02, 4, 62.5, 0.0),
    # 25 mm is 0.98425 in: 9 turns of 0.1 in and 84.25 thou, read as 84.5
    (25.0, 2.54, 0.0254, 9, 84.5, 25.0 - 9 * 2.54 - 84.5 * 0.0254),
    (25.4, 2.54, 0.0254, 10, 0.0, 0.0),
    # a hair under a whole turn is the turn
    (1.999, 2.0, 0.02, 1, 0.0, -0.001),
    (0.0, 2.0, 0.02, 0, 0.0, 0.0),
]


@pytest.mark.parametrize(("far", "turn", "line", "turns", "lines", "left"), BY_HAND)
def test_turns_by_hand(
    far: float, turn: float, line: float, turns: int, lines: float, left: float
) -> None:
    found = wound(far, turn, line)
    assert (found.turns, found.divisions, found.is_back) == (turns, lines, False)
    assert found.left_mm == pytest.approx(left, abs=1e-9)


def test_what_lies_before_nought_is_wound_back() -> None:
    found = wound(-7.0, 2.0, 0.02)
    assert (found.turns, found.divisions, found.is_back) == (3, 50.0, True)
    assert not wound(-0.001, 2.0, 0.02).is_back  # nothing is wound at all


@given(
    st.floats(-400.0, 400.0),
    st.sampled_from([(2.0, 0.02), (1.5, 0.02), (2.54, 0.0254), (3.175, 0.0254), (5.0, 0.05)]),
)
def test_what_is_wound_comes_within_a_quarter_of_a_line(
    far: float, dial: tuple[float, float]
) -> None:
    turn, line = dial
    found = wound(far, turn, line)
    there = (found.turns * turn + found.divisions * line) * (-1 if found.is_back else 1)
    assert there + found.left_mm == pytest.approx(far, abs=1e-9)
    assert abs(found.left_mm) <= line / 4 + 1e-9
    assert 0 <= found.divisions * line < turn


@pytest.mark.parametrize("turn", [0.0, -2.0, math.nan, math.inf])
def test_a_screw_that_goes_nowhere_is_refused(turn: float) -> None:
    with pytest.raises(NotDefined):
        wound(10.0, turn, 0.02)
    with pytest.raises(NotDefined):
        chord(turn, 4)


def test_one_hole_has_no_chord() -> None:
    with pytest.raises(NotDefined, match="no next one"):
        chord(30.0, 1)
