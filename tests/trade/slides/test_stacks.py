"""Lengths along a shaft, growth and hinges against published sums."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.slides import (
    Length,
    NotDefined,
    expansion,
    float_when_warm,
    growth,
    hinge,
    knuckle,
    made_to_suit,
    stack,
)

# A published worked example of a stack: bore 40 ± 0.10; spacer 25 ± 0.05, ring 2 ± 0.03,
# shoulder 10 ± 0.05; gap 3.00, worst case ± 0.23, root sum square ± 0.126 (√0.0159).
PUBLISHED = (
    ("spacer", 25.0, 0.05, 0.05),
    ("ring", 2.0, 0.03, 0.03),
    ("shoulder", 10.0, 0.05, 0.05),
)


def test_a_published_stack() -> None:
    chain = stack(PUBLISHED, Length("bore", 40, 0.10, 0.10))
    assert chain.nominal_mm == pytest.approx(3.0)
    assert (chain.least_mm, chain.most_mm) == pytest.approx((2.77, 3.23))
    assert chain.likely_most_mm - 3 == pytest.approx(math.sqrt(0.0159))


# Five lengths of ± 0.1: 0.5 or 0.22 (sum, and root of the sum of squares).
def test_five_lengths() -> None:
    chain = stack([(f"part {i}", 10, 0.1, 0.1) for i in range(4)], Length("space", 41, 0.1, 0.1))
    assert chain.most_mm - chain.nominal_mm == pytest.approx(0.5)
    assert chain.likely_most_mm - chain.nominal_mm == pytest.approx(0.22, abs=0.005)


def test_one_sided_tolerances_move_the_middle() -> None:
    chain = stack([("drum", 19, 0.0, 0.2)], Length("cheeks", 19.1, 0.1, 0.0))
    assert chain.nominal_mm == pytest.approx(0.1)
    assert (chain.least_mm, chain.most_mm) == pytest.approx((0.1, 0.4))
    assert (chain.likely_least_mm + chain.likely_most_mm) / 2 == pytest.approx(0.25)


def test_the_closing_part_follows_what_was_measured() -> None:
    parts = [("drum", 19.0, 0.1, 0.1), ("washer", 1.0, 0.1, 0.1)]
    chain = stack(parts, Length("cheeks", 20.15, 0.1, 0.1))
    closing = made_to_suit(chain, "washer", (0.1, 0.2), {"drum": 19.04, "cheeks": 20.20})
    assert closing.target_mm == pytest.approx(1.01)
    assert (closing.least_mm, closing.most_mm) == pytest.approx((0.96, 1.06))
    assert closing.sum_text == "cheeks − drum − 0.15"


@given(
    lengths=st.lists(st.floats(1, 50), min_size=1, max_size=6),
    bands=st.lists(st.floats(0, 0.5), min_size=6, max_size=6),
)
def test_the_likely_band_lies_within_the_worst_case(
    lengths: list[float], bands: list[float]
) -> None:
    parts = [(str(i), each, bands[i], bands[i] / 2) for i, each in enumerate(lengths)]
    chain = stack(parts, Length("space", sum(lengths) + 1, 0.1, 0.1))
    assert chain.least_mm - 1e-9 <= chain.likely_least_mm <= chain.likely_most_mm
    assert chain.likely_most_mm <= chain.most_mm + 1e-9


@given(lengths=st.lists(st.floats(1, 50), min_size=2, max_size=6), wanted=st.floats(0.05, 0.5))
def test_a_part_made_to_suit_gives_the_float_that_was_wanted(
    lengths: list[float], wanted: float
) -> None:
    space = Length("space", sum(lengths) + 0.6)
    chain = stack([(str(i), each, 0, 0) for i, each in enumerate(lengths)], space)
    closing = made_to_suit(chain, "0", (wanted, wanted))
    again = stack(
        [("0", closing.target_mm, 0, 0), *((str(i), x, 0, 0) for i, x in enumerate(lengths) if i)],
        space,
    )
    assert again.nominal_mm == pytest.approx(wanted)


def test_a_stack_that_is_not_one_is_refused() -> None:
    space = Length("space", 10)
    with pytest.raises(NotDefined, match="nothing stands"):
        stack([], space)
    with pytest.raises(NotDefined, match="the length of drum"):
        stack([("drum", math.nan, 0, 0)], space)
    with pytest.raises(NotDefined, match="is not one part"):
        made_to_suit(stack([("drum", 9, 0, 0)], space), "washer", (0.1, 0.2))
    with pytest.raises(NotDefined, match="the others leave"):
        made_to_suit(
            stack([("drum", 9, 0, 0), ("ring", 2, 0, 0)], space), "drum", (0.1, 9), {"ring": 4}
        )


# Bansal, Strength of Materials, problem 1.28: 2 m, 70 K, 12e-6 grows 0.168 cm.
def test_a_published_growth() -> None:
    assert growth(2000, 12e-6, 70) == pytest.approx(1.68)


# Trade rule: 100 mm of brass by 20 K is 0.04 mm (coefficient from memory: 19e-6).
def test_brass_by_twenty_kelvin() -> None:
    assert growth(100, expansion("brass"), 20) == pytest.approx(0.04, abs=0.003)


def test_a_brass_wheel_between_steel_cheeks_loses_its_float() -> None:
    left = float_when_warm(0.1, (100, "mild steel"), (100, "brass"), 50)
    assert left == pytest.approx(0.1 + 0.06 - 0.095)
    with pytest.raises(NotDefined, match="unobtainium"):
        expansion("unobtainium")


# Textbook proportions, from memory: eye 2 d, 1.25 d thick, cheeks 0.75 d.
def test_a_knuckle() -> None:
    joint = knuckle(4, 0.05, 0.1)
    assert (joint.eye_outside_mm, joint.eye_thick_mm, joint.fork_cheek_mm) == (8, 5, 3)
    assert joint.fork_gap_mm == pytest.approx(5.1)


@given(count=st.integers(2, 9), play=st.floats(0.02, 0.3))
def test_the_knuckles_fill_the_width(count: int, play: float) -> None:
    made = hinge(40, 2, count, play)
    assert count * made.knuckle_mm + (count - 1) * play == pytest.approx(40)
    assert made.gap_mm - made.knuckle_mm == pytest.approx(2 * play)


def test_too_many_knuckles_are_refused() -> None:
    with pytest.raises(NotDefined, match="do not go into"):
        hinge(3, 1, 40, 0.1)
