"""Noses of pawls: triangles of pin, corner and axis, worked by hand beside each case."""

from __future__ import annotations

from math import atan2, cos, degrees, hypot, radians, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from binder_trade.gears.stopping import NotDefined, pawl_nose, ratchet_space, square_reach

WHEEL = ratchet_space(12, 14.0, 1.2)


def test_the_space_of_a_radial_face() -> None:
    """From the foot at 5.8 to the next point: 7 sin 30° = 3.5 aside, 7 cos 30° − 5.8 = 0.262 up."""
    assert WHEEL.tilt_deg == 0.0
    assert WHEEL.open_deg == pytest.approx(degrees(atan2(3.5, 0.2622)), abs=0.01)
    assert WHEEL.back_mm == pytest.approx(hypot(3.5, 0.2622), abs=1e-3)


def test_an_end_that_is_not_on_a_radius_is_filed_out_of_square() -> None:
    """Pin 13.93 and 12 from the axis: 18.386. Corner 15 and 3 from the pin: 15.297. By the law
    of cosines the angle at the corner is acos((15.297² + 5.8² − 18.386²) / (2 × 15.297 × 5.8))
    = 113.4°; a square end on a radius wants 90° + atan (3 / 15) = 101.3°: 12.1° out."""
    nose = pawl_nose(hypot(13.93, 12), 15.0, 3.0, 5.8, 1.2, WHEEL)
    assert nose.out_deg == pytest.approx(12.07, abs=0.05)
    # 90 − 12.1 = 77.9° of nose in a space of 85.7°: nothing is filed off the side.
    assert nose.clear_deg == pytest.approx(85.72 - 77.93, abs=0.05)
    assert (nose.relief_deg, nose.back_mm) == (0.0, 0.0)
    # A square end: √(18.386² − (5.8 + 3)²) = 16.14.
    assert nose.square_mm == pytest.approx(16.14, abs=5e-3)


def test_a_square_end_seats_where_it_is_told_and_is_relieved() -> None:
    """90° of nose do not go in 85.7°: 4.3° and 3° to be clear are filed off the side."""
    nose = pawl_nose(18.386, square_reach(18.386, 3.0, 5.8, 0.0), 3.0, 5.8, 1.2, WHEEL)
    assert nose.out_deg == pytest.approx(0.0, abs=1e-6)
    assert nose.relief_deg == pytest.approx(3.0 + 90 - 85.716, abs=0.01)


@pytest.mark.parametrize(
    ("reach", "why"), [(12.0, "foot"), (13.0, "too thin"), (18.0, "pushes"), (30.0, "foot")]
)
def test_a_nose_that_cannot_seat_is_refused_with_the_length_that_would(
    reach: float, why: str
) -> None:
    """The corner comes to the foot between 18.386 ∓ 5.8 from the pin; longer than some 17.4, where
    pin, corner and axis make a right angle (√(18.386² − 5.8²) = 17.45), the push throws it out."""
    with pytest.raises(NotDefined) as told:
        pawl_nose(18.386, reach, 3.0, 5.8, 1.2, WHEEL)
    assert why in told.value.reason
    assert "16.143 mm" in told.value.way_out


@given(
    st.integers(6, 40), st.floats(6, 60), st.floats(0.05, 0.25), st.floats(0, 15),
    st.floats(1, 3), st.floats(0.5, 6),
)  # fmt: skip
def test_the_filed_end_lies_on_the_face(
    teeth: int, outside: float, deep: float, lean: float, far: float, half: float
) -> None:
    """Laid out again: from the corner the face goes along the filed end, and the axis, so found,
    stands as far from the pin as was told."""
    depth = deep * outside / 2
    root = outside / 2 - depth
    space = ratchet_space(teeth, outside, depth, lean)
    centres = root + far * outside
    reach = square_reach(centres, half, root, space.tilt_deg) * 0.97
    assume(reach > half)
    try:
        nose = pawl_nose(centres, reach, half, root, depth, space)
    except NotDefined:
        return
    corner = (reach - nose.back_mm, -half)
    up = radians(90 + nose.out_deg - space.tilt_deg)
    axis = (corner[0] - root * cos(up), corner[1] - root * sin(up))
    assert hypot(*axis) == pytest.approx(centres, rel=1e-4)
    assert nose.clear_deg >= 3.0 - 1e-9
    assert space.open_deg - (90 - nose.out_deg) + nose.relief_deg == pytest.approx(nose.clear_deg)
