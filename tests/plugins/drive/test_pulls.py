"""Pulls of belts against closed forms, and which way a worm turns its wheel."""

from __future__ import annotations

from math import pi

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_plugins.drive.carrying.pulls import strands
from binder_plugins.drive.duties.worm_hand import wheel_spin
from binder_plugins.drive.standing import Axis, passes
from binder_trade.shafting.twist import belt_load


# Khurmi, Theory of Machines: T1 + T2 = 2 T0 in a belt at work as at rest.
@given(pull=st.floats(0.1, 50), rest=st.floats(25, 200))
def test_a_belt_wins_in_one_strand_what_it_loses_in_the_other(pull: float, rest: float) -> None:
    tight, slack = strands(pull, rest, 3.0)
    assert tight - slack == pytest.approx(pull)
    assert tight + slack == pytest.approx(2 * rest)


# Capstan equation: without a told pull it is put on as tight as it must be, T1 / T2 = the ratio.
@given(pull=st.floats(0.1, 50), ratio=st.floats(1.5, 9))
def test_a_belt_as_tight_as_it_must_be(pull: float, ratio: float) -> None:
    tight, slack = strands(pull, None, ratio)
    assert tight - slack == pytest.approx(pull)
    assert tight / slack == pytest.approx(ratio)
    assert belt_load(tight, slack, pi) == pytest.approx(tight + slack)


# Mechanics of the screw: a right-hand worm lies along x over a wheel whose shaft lies along y.
# Turned clockwise as seen from the right it would screw itself to the left; held, it draws the
# teeth under it to the right, so that the wheel, seen from the front (from −y), turns clockwise.
@pytest.mark.parametrize(("is_right", "sense"), [(True, -1.0), (False, 1.0)])
def test_which_way_a_worm_turns_its_wheel(is_right: bool, sense: float) -> None:
    worm = Axis((0.0, 0.0, 20.0), (1.0, 0.0, 0.0))
    wheel = Axis((0.0, 0.0, 0.0), (0.0, 1.0, 0.0))
    spin = wheel_spin(worm, wheel, (1.0, 0.0, 0.0), is_right=is_right)
    assert spin is not None
    from_the_front = -spin[1]  # anticlockwise there is a turning about −y
    assert from_the_front == pytest.approx(sense)


# Geometry: where bevels would meet, on an axis that comes from 7 mm to the left of the model's
# middle; and under a worm, which passes over the axis of its wheel.
def test_where_one_axis_passes_another() -> None:
    axis = Axis((-7.0, 0.0, 0.0), (1.0, 0.0, 0.0))
    assert passes(axis, Axis((18.0, 40.0, 0.0), (0.0, 1.0, 0.0))) == pytest.approx(25)
    assert passes(axis, Axis((18.0, 40.0, 9.0), (0.0, -1.0, 0.0))) == pytest.approx(25)
    half = 0.5**0.5
    assert passes(axis, Axis((23.0, 5.0, 0.0), (half, half, 0.0))) == pytest.approx(25)
    assert passes(axis, Axis((0.0, 5.0, 0.0), (-1.0, 0.0, 0.0))) is None


def test_shafts_that_do_not_pass_across() -> None:
    along = Axis((0.0, 0.0, 0.0), (1.0, 0.0, 0.0))
    above = Axis((0.0, 0.0, 20.0), (1.0, 0.0, 0.0))
    assert wheel_spin(along, above, (1.0, 0.0, 0.0), is_right=True) is None
    meeting = Axis((0.0, 0.0, 0.0), (0.0, 1.0, 0.0))
    assert wheel_spin(along, meeting, (1.0, 0.0, 0.0), is_right=True) is None
