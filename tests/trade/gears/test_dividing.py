"""Dividing carried out: moves added up round the work come to every place, and to no other."""

from __future__ import annotations

import math
from collections.abc import Callable
from fractions import Fraction

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from binder_trade.gears.dividing import (
    CompoundIndexing,
    NotDefined,
    can_index,
    circles,
    compound,
    dial,
    differential,
    index,
    index_angle,
    nearest,
    plates_sold,
)

# The machines are shared and noisy: no example is held to a time, and each run tries the same.
STEADY = settings(deadline=None, derandomize=True)

PLATES = plates_sold("set of three")
DIVISIONS = st.integers(2, 400)
RATIOS = st.sampled_from([40, 60, 90])
# Change wheels of a dividing head as sold, from memory.
WHEELS = (24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100)


@STEADY
@given(DIVISIONS, RATIOS)
def test_moves_round_the_work_come_back(divisions: int, ratio: int) -> None:
    assume(can_index(divisions, ratio, PLATES))
    made = index(divisions, ratio, PLATES)
    turns = made.turns + (Fraction(made.holes, made.circle) if made.circle else 0)
    assert turns * divisions == ratio
    assert made.circle == 0 or made.circle in PLATES[made.plate]
    for holes, circle in made.others:
        assert made.turns + Fraction(holes, circle) == turns
    assert made.sector == (made.holes + 1 if made.holes else 0)


@STEADY
@given(DIVISIONS, RATIOS)
def test_what_cannot_be_indexed_has_neighbours_that_can(divisions: int, ratio: int) -> None:
    assume(not can_index(divisions, ratio, PLATES))
    with pytest.raises(NotDefined):
        index(divisions, ratio, PLATES)
    near = nearest(divisions, ratio, PLATES)
    assert can_index(near.nearest, ratio, PLATES)
    gap = abs(near.nearest - divisions)
    between = range(divisions - gap + 1, divisions + gap)
    assert not any(can_index(each, ratio, PLATES) for each in between if each > 0)


def places(made: CompoundIndexing, divisions: int, ratio: int) -> set[Fraction]:
    """Where the work stands after each of so many moves, as parts of a turn."""
    step = Fraction(made.first, made.first_circle) + Fraction(made.second, made.second_circle)
    return {step * move / ratio % 1 for move in range(divisions)}


@pytest.mark.parametrize("divisions", [51, 57, 63, 69, 77, 87, 91, 93, 96, 99, 111, 147])
def test_compound_moves_come_to_every_place(divisions: int) -> None:
    made = compound(divisions, 40, PLATES)
    assert places(made, divisions, 40) == {Fraction(at, divisions) for at in range(divisions)}
    assert made.first_circle in PLATES[made.plate]
    assert made.second_circle in PLATES[made.plate]


@pytest.mark.parametrize(("divisions", "factor"), [(53, 53), (81, 81), (127, 127)])
def test_two_circles_make_no_factor_that_neither_has(divisions: int, factor: int) -> None:
    assert not any(holes % factor == 0 for holes in circles(PLATES))
    with pytest.raises(NotDefined):
        compound(divisions, 40, PLATES)


@pytest.mark.parametrize("divisions", [51, 53, 57, 59, 61, 67, 71, 73, 79, 83, 89, 97, 101, 127])
def test_a_differential_head_divides_primes(divisions: int) -> None:
    made = differential(divisions, 40, PLATES, WHEELS)
    # The crank against the plate, and the plate with the spindle, come to 40 / z.
    assert made.indexing.crank_turns + made.gearing / divisions == Fraction(40, divisions)
    assert made.train.error == 0
    assert made.plate_follows == (made.indexed_as > divisions)


def test_degrees_on_a_table_of_90_turns() -> None:
    made = index_angle(6, 90, PLATES)
    assert (made.turns, made.holes) == (1, 10) or made.crank_turns == Fraction(3, 2)
    assert index_angle(4, 90, {}).turns == 1


@STEADY
@given(st.integers(1, 200), RATIOS)
def test_a_dial_is_never_off_by_more_than_half_a_mark(divisions: int, ratio: int) -> None:
    mark = Fraction(360, ratio * 60)
    made = dial(divisions, ratio, mark)
    assert len(made.settings) == divisions
    for each in made.settings:
        shown = each.turns * made.turn_deg + each.marks * made.mark_deg
        assert shown - each.angle_deg == pytest.approx(each.off_deg, abs=1e-9)
        assert abs(each.off_deg) <= float(mark) / 2 + 1e-12
        assert 0 <= each.marks < 60
    assert made.worst_deg == max(abs(each.off_deg) for each in made.settings)


# A table of 90 : 1 turns 4° at a turn of its handwheel; 72 teeth lie 5° apart, on the marks.
def test_a_table_of_90_to_1_by_its_dial() -> None:
    made = dial(72, 90, Fraction(1, 30))
    second = made.settings[1]
    assert (second.turns, second.marks) == (1, 30)
    assert made.worst_deg == 0
    # Half a minute of arc is 7.3 µm on 100 mm.
    rough = dial(7, 90, Fraction(1, 60))
    assert rough.worst_mm(100) == pytest.approx(50 * math.radians(rough.worst_deg))
    assert 0 < rough.worst_deg <= 1 / 120


@pytest.mark.parametrize(
    "asked",
    [
        lambda: index(0, 40, PLATES),
        lambda: index(-3, 40, PLATES),
        lambda: index(12, 0, PLATES),
        lambda: index(7, 40, {"plate": [0]}),
        lambda: index(7, 40, {}),
        lambda: index_angle(Fraction(0), 40, PLATES),
        lambda: index_angle(Fraction(1, 7), 40, PLATES),
        lambda: nearest(127, 40, {"plate": [127 * 3]}, reach=0),
        lambda: compound(127, 40, PLATES),
        lambda: differential(127, 40, PLATES, [20, 30]),
        lambda: plates_sold("nobody"),
        lambda: dial(12, 90, Fraction(3, 7)),
        lambda: dial(12, 90, Fraction(0)),
        lambda: index_angle(Fraction(10**400), 40, PLATES),
        lambda: dial(12, 90, Fraction(10**400)),
        lambda: dial(0, 90, Fraction(1, 30)),
        lambda: dial(10**9, 90, Fraction(1, 30)),
    ],
)
def test_refusals(asked: Callable[[], object]) -> None:
    with pytest.raises(NotDefined) as told:
        asked()
    assert told.value.reason
    assert told.value.way_out
