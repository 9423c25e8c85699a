"""The torque of taps and dies, and the grip that bears it."""

from __future__ import annotations

import math

import pytest

from binder_making.cutting import grip_for, thread_torque
from binder_trade.explained import NotDefined

# Coarse threads of ISO 261: outside and pitch in mm.
COARSE = [(3.0, 0.5), (4.0, 0.7), (5.0, 0.8), (6.0, 1.0), (8.0, 1.25), (10.0, 1.5), (12.0, 1.75)]


def test_the_torque_of_m10() -> None:
    """1.5² × 10 × 2000 / 8000 = 5.625 N m: the formula of tap makers, from memory."""
    assert math.isclose(thread_torque(1.5, 10.0), 5.625)


@pytest.mark.parametrize(("major", "pitch"), COARSE)
def test_a_thread_on_the_bar_that_is_gripped_asks_a_diameter_of_it(
    major: float, pitch: float
) -> None:
    """Held by as much as it is thick it does not turn; by a third it does. Common practice, no
    source."""
    long = grip_for(thread_torque(pitch, major), major)
    assert major / 3 < long <= major


def test_twice_the_diameter_asks_a_quarter_of_the_length_and_a_collet_half() -> None:
    """The same pull along the round, at twice the lever (statics)."""
    torque = thread_torque(1.0, 6.0)
    assert math.isclose(grip_for(torque, 12.0) * 4, grip_for(torque, 6.0))
    assert math.isclose(grip_for(torque, 6.0, is_collet=True) * 2, grip_for(torque, 6.0))


def test_no_thread_has_no_torque() -> None:
    with pytest.raises(NotDefined):
        thread_torque(0.0, 6.0)
    with pytest.raises(NotDefined):
        grip_for(1.0, 0.0)
