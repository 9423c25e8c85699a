"""Chains against textbooks and the unit-pitch table of the standard."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from binder_trade.chains.bead import bead_loop, bead_wheel
from binder_trade.chains.roller import (
    chain,
    chain_drive,
    chain_speed,
    exact_length,
    links_for,
    pitch_circle,
    teeth_for,
)
from binder_trade.explained import NotDefined


# Jindal, Machine Design, Ex 30-3: 21 and 42 teeth, 9.52 mm, 50 pitches apart, 1000 r/min.
def test_a_chain_of_a_textbook() -> None:
    assert links_for(9.52, 21, 42, 50 * 9.52) * 9.52 == pytest.approx(1254.01, abs=0.5)
    made = chain_speed(9.52, 1000, 21, 42)
    assert made.speed_ms == pytest.approx(3.332, abs=0.002)
    assert made.driven_rpm == 500


# Bhandari, Design of Machine Elements, Ex 14.3: 21 teeth, 3 : 1, 12.7 mm, about 500 mm apart.
def test_whole_links_and_their_centres() -> None:
    made = chain_drive(12.7, 21, 63, 500)
    assert made.links_exact == pytest.approx(121.875, abs=0.01)
    assert made.links == 122
    assert made.centres_mm == pytest.approx(500.805, abs=0.01)
    assert not made.needs_cranked_link
    assert made.wrap_small_rad < math.pi


# Khurmi & Gupta, Theory of Machines, Ex 11.23: 20 teeth, 240 on 120 r/min, 600 mm circle, 0.8 m.
def test_the_exact_form_of_a_textbook() -> None:
    pitch = 600 * math.sin(math.pi / 40)
    assert pitch == pytest.approx(47.1, abs=0.05)
    assert pitch_circle(pitch, 40) == pytest.approx(600)
    assert round(teeth_for(pitch, 600)) == 40
    assert exact_length(pitch, 20, 40, 800) / 1000 == pytest.approx(3.0402, abs=0.001)


# ISO 606, Annex A, pitch circle for a pitch of one (from memory).
@pytest.mark.parametrize(
    ("teeth", "circle"),
    [(9, 2.9238), (13, 4.1786), (17, 5.4422), (19, 6.0755), (25, 7.9787), (38, 12.1096)],
)
def test_pitch_circles_of_the_standard(teeth: int, circle: float) -> None:
    assert pitch_circle(1, teeth) == pytest.approx(circle, abs=1e-4)


# ISO 606 (from memory): pitch of each number, in sixteenths of an inch from 06B on.
def test_chains_of_the_standard() -> None:
    assert [chain(name).pitch_mm for name in ("04B", "05B", "06b", "08B-1")] == [6, 8, 9.525, 12.7]
    row = [chain(name) for name in ("04B", "05B", "06B", "08B", "10B")]
    for sizes in ([each.roller_mm for each in row], [each.breaking_n or 0.0 for each in row]):
        assert sizes == sorted(set(sizes))
    assert all(each.roller_mm < each.pitch_mm > each.inner_mm for each in row)
    with pytest.raises(NotDefined, match="no chain"):
        chain("99Z")


# Closed forms: equal sprockets take 2 C / p + z links.
@given(teeth=st.integers(9, 40), half=st.integers(15, 60))
def test_equal_sprockets(teeth: int, half: int) -> None:
    made = chain_drive(8, teeth, teeth, half * 8.0, even=False)
    assert made.links == 2 * half + teeth
    assert made.centres_mm == pytest.approx(half * 8)
    assert made.needs_cranked_link == (teeth % 2 == 1)


@settings(deadline=None)
@given(first=st.integers(9, 30), second=st.integers(9, 60), apart=st.floats(30, 80))
def test_the_chain_comes_out_even(first: int, second: int, apart: float) -> None:
    made = chain_drive(6, first, second, apart * 6)
    assert made.links % 2 == 0
    assert abs(made.links - made.links_exact) <= 1
    assert links_for(6, first, second, made.centres_mm) == pytest.approx(made.links)


# Textbooks print a rise and fall of 1.7 % at 17 teeth and 1 % at 22 (from memory).
@pytest.mark.parametrize(("teeth", "part"), [(17, 0.017), (22, 0.0102), (11, 0.0405)])
def test_a_polygon_pulls_unevenly(teeth: int, part: float) -> None:
    assert chain_speed(6, 100, teeth, 20).variation == pytest.approx(part, rel=0.02)


def test_bead_chains() -> None:
    wheel = bead_wheel(4.5, 3.2, 12)
    assert wheel.pitch_circle_mm * math.sin(math.pi / 12) == pytest.approx(4.5)
    made = bead_loop(4.5, 12, 12, 100)
    assert made.beads == round(200 / 4.5 + 12)
    assert made.centres_mm == pytest.approx((made.beads - 12) * 4.5 / 2)
    with pytest.raises(NotDefined, match="thicker than they are apart"):
        bead_wheel(3, 3.2, 12)


def test_chains_that_cannot_be() -> None:
    with pytest.raises(NotDefined, match="touch"):
        chain_drive(12.7, 21, 63, 100)
    with pytest.raises(NotDefined, match="does not go round"):
        chain_drive(12.7, 21, 63, 500, links=20)
    with pytest.raises(NotDefined, match="number of teeth"):
        chain_drive(12.7, 0, 63, 500)
    with pytest.raises(NotDefined, match="smaller than a link"):
        teeth_for(6, 5)
