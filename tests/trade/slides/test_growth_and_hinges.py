"""Growth and hinges against published sums."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.slides import (
    NotDefined,
    expansion,
    float_when_warm,
    growth,
    hinge,
    knuckle,
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
