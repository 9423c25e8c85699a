"""What is reckoned of a gear is what is drawn of it: the two packages share no line."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import binder_solid.gears as drawn
from binder_trade.gears import Gear, blank, chordal, mesh, over_pins, rack, span

# The machines are shared and noisy: no example is held to a time, and each run tries the same.
STEADY = settings(deadline=None, derandomize=True)

TEETH = st.integers(18, 90)
SHIFTS = st.floats(-0.2, 0.5)
ANGLES = st.sampled_from(["A", "D", "14.5 DP"])


def both(teeth: int, shift: float, key: str) -> tuple[Gear, drawn.Gear]:
    basic = rack(key)
    reckoned = Gear(teeth, 1.5, basic, shift)
    parts = (basic.angle_deg, shift, basic.addendum, basic.clearance)
    return reckoned, drawn.Gear(1.5, teeth, *parts)


@STEADY
@given(TEETH, SHIFTS, ANGLES)
def test_circles_and_measures_agree(teeth: int, shift: float, key: str) -> None:
    ours, picture = both(teeth, shift, key)
    made = blank(ours)
    sizes = (picture.tip_diameter, picture.root_diameter, picture.base_diameter)
    assert (made.blank_mm, made.root_mm, made.base_mm) == pytest.approx(sizes)
    assert made.thickness_mm == pytest.approx(picture.tooth_thickness)
    across = span(ours)
    assert across.span_mm == pytest.approx(drawn.span(picture, across.across))
    pins = over_pins(ours)
    assert pins.size_mm == pytest.approx(drawn.over_pins(picture, pins.pin_mm))
    chord = chordal(ours)
    assert (chord.thickness_mm, chord.height_mm) == pytest.approx(drawn.chordal(picture))


@STEADY
@given(TEETH, TEETH, SHIFTS, SHIFTS, ANGLES)
def test_meshes_agree(one: int, other: int, first: float, second: float, key: str) -> None:
    (ours, a), (mate, b) = both(one, first, key), both(other, second, key)
    made = mesh(ours, mate)
    assert made.centres_mm == pytest.approx(drawn.centres(a, b))
    assert made.contact_ratio == pytest.approx(drawn.contact_ratio(a, b))
