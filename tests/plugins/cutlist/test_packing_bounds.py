"""The bounds rest on measures that add up to no more than the whole."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from binder_plugins.cutlist.bounds import fewest_unplaced, floor, measures
from binder_plugins.cutlist.problem import Kind, Problem


@given(st.integers(1, 60), st.data())
@settings(max_examples=100, deadline=None, derandomize=True, database=None)
def test_every_measure_is_superadditive(capacity: int, data: st.DataObject) -> None:
    weights = data.draw(st.lists(st.integers(1, capacity), max_size=6))
    one = data.draw(st.integers(0, capacity))
    other = data.draw(st.integers(0, capacity - one))
    for measure in measures(capacity, weights):
        assert measure(one) + measure(other) <= measure(one + other)
        assert measure(one) <= measure(capacity)


def least_bars(weights: list[int], capacity: int) -> int:
    heavy_first = tuple(sorted(weights, reverse=True))
    return floor(Problem(heavy_first, (Kind(capacity, capacity, None),)), 0).bars


def test_material_bound() -> None:
    # Seven pieces of 3 are 21, more than two bars of 10.
    assert least_bars([3] * 7, 10) == 3


def test_pieces_over_half_a_bar_take_one_each() -> None:
    # Martello and Toth: no two of 6 share a bar of 10, though 18 would do for two bars.
    assert least_bars([6, 6, 6], 10) == 3


def test_the_threshold_counts_what_no_small_piece_can_share() -> None:
    # L2 by hand, bar 10: threshold 4 makes 7 a whole bar; 7, 7, then 4 + 4 + 4 of which two
    # to a bar: material 26 would say three bars, 7 + 7 + 4 * 3 measures 10 + 10 + 12.
    assert least_bars([7, 7, 4, 4, 4], 10) == 4


def test_steps_count_thirds() -> None:
    # Fekete and Schepers, u(2): pieces over a third go two to a bar, so five take three,
    # where the material 5 * 35 = 175 and the halves say two.
    assert least_bars([35] * 5, 100) == 3


def test_owned_bars_count_towards_the_need_but_cost_nothing() -> None:
    kinds = (Kind(10, 10, 2), Kind(6, 6, None), Kind(15, 15, None))
    score = floor(Problem((9, 9, 5, 4), kinds), 0)
    # By hand: each 9 fills an owned 10, so 5 and 4 need a bought 6 each, or one 15 together.
    # Weight alone leaves 27 - 20 = 7 to buy, in steps of 3 that is 9.
    assert score.bought == 12
    # Weight alone: two of 15 hold 27, one does not.
    assert score.bars == 2


def test_pieces_that_only_owned_bars_take_may_be_too_many() -> None:
    problem = Problem((9, 9, 8, 3), (Kind(10, 10, 1), Kind(5, 5, None)))
    assert problem.scarce == 3
    assert fewest_unplaced(problem) == 2
