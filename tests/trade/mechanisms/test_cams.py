"""Laws of cam motion and outlines of cams."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.explained import NotDefined
from binder_trade.mechanisms.cam_laws import CamMotion, Law, Segment, cam_motion, law_at, peaks
from binder_trade.mechanisms.cam_profile import Follower, cam_profile, least_base

LAWS: tuple[Law, ...] = ("uniform", "parabolic", "harmonic", "cycloidal", "3-4-5")


def _motion(law: Law = "cycloidal", lift: float = 8.0) -> CamMotion:
    return cam_motion([Segment(120, lift, law), Segment(40), Segment(120, -lift, law), Segment(80)])


# Peaks as textbooks of cams print them (Norton, from memory): speed and acceleration.
@pytest.mark.parametrize(
    ("law", "speed", "push"),
    [
        ("uniform", 1.0, math.inf),
        ("parabolic", 2.0, 4.0),
        ("harmonic", 1.571, 4.935),
        ("cycloidal", 2.0, 6.283),
        ("3-4-5", 1.875, 5.774),
    ],
)
def test_peaks_of_the_laws(law: Law, speed: float, push: float) -> None:
    assert peaks(law) == pytest.approx((speed, push), abs=1e-3)
    seen = [law_at(law, each / 4000) for each in range(4001)]
    assert max(each[1] for each in seen) == pytest.approx(speed, abs=1e-3)
    if law != "uniform":
        assert max(each[2] for each in seen) == pytest.approx(push, abs=1e-3)


@given(law=st.sampled_from(LAWS), part=st.floats(0.01, 0.99))
def test_laws_are_their_own_derivatives(law: Law, part: float) -> None:
    step = 1e-6
    one, here, two = (law_at(law, part + d) for d in (-step, 0, step))
    assert here[1] == pytest.approx((two[0] - one[0]) / 2 / step, abs=1e-5)
    if abs(part - 0.5) > 0.01 or law != "parabolic":
        assert here[2] == pytest.approx((two[1] - one[1]) / 2 / step, abs=1e-4)


@pytest.mark.parametrize("law", LAWS)
def test_laws_begin_and_end_at_rest(law: Law) -> None:
    assert law_at(law, 0)[0] == 0
    assert law_at(law, 1)[0] == pytest.approx(1)
    assert law_at(law, 0.5)[0] == pytest.approx(0.5)


def test_a_motion_through_one_turn() -> None:
    made = _motion(lift=8)
    assert made.lift_mm == 8
    assert made.at(math.radians(60))[0] == pytest.approx(4)
    assert made.at(math.radians(140)) == (8, 0, 0)
    assert made.at(math.radians(220))[0] == pytest.approx(4)
    assert made.at(math.radians(300)) == (0, 0, 0)
    assert made.most_speed == pytest.approx(8 / math.radians(120) * 2)


def test_motions_that_cannot_be() -> None:
    with pytest.raises(NotDefined, match="not one turn"):
        cam_motion([Segment(120, 8), Segment(120, -8)])
    with pytest.raises(NotDefined, match="come back"):
        cam_motion([Segment(180, 8), Segment(180)])
    with pytest.raises(NotDefined, match="falls below"):
        cam_motion([Segment(180, -8), Segment(180, 8)])
    with pytest.raises(NotDefined, match="an angle of the cam"):
        cam_motion([Segment(-10, 0)])


# The roller touches the outline everywhere and cuts it nowhere.
@pytest.mark.parametrize(("roller", "offset"), [(0.0, 0.0), (4.0, 0.0), (4.0, 3.0), (4.0, -3.0)])
def test_the_roller_rides_the_outline(roller: float, offset: float) -> None:
    motion = _motion()
    made = cam_profile(motion, 20, "roller", roller, offset, 1440)
    start = math.sqrt((20 + roller) ** 2 - offset**2)
    for turn in (0.1, 0.9, 1.6, 2.4, 3.3, 4.0, 5.5):
        lift = motion.at(turn)[0]
        x, y = offset, start + lift
        centre = (
            x * math.cos(turn) + y * math.sin(turn),
            y * math.cos(turn) - x * math.sin(turn),
        )
        near = min(math.dist(centre, (each.x_mm, each.y_mm)) for each in made.points)
        assert near == pytest.approx(roller, abs=0.07 if roller == 0 else 2e-3)
    assert not made.is_undercut


# A flat face lies on the outline: no point stands above it.
def test_the_flat_face_lies_on_the_outline() -> None:
    motion = _motion(lift=5)
    made = cam_profile(motion, 25, "flat", points=1440)
    for turn in (0.1, 0.9, 1.6, 2.4, 3.3, 4.0, 5.5):
        high = max(p.x_mm * math.sin(turn) + p.y_mm * math.cos(turn) for p in made.points)
        assert high == pytest.approx(25 + motion.at(turn)[0], abs=1e-3)
    assert made.face_mm == pytest.approx(2 * motion.most_speed)
    assert made.most_pressure_rad == 0


# A circle set off its centre: a flat follower rises e (1 − cos), harmonic over half a turn.
def test_an_eccentric_circle_is_a_harmonic_cam() -> None:
    motion = cam_motion([Segment(180, 6, "harmonic"), Segment(180, -6, "harmonic")])
    made = cam_profile(motion, 10, "flat")
    assert {round(each.curvature_mm, 9) for each in made.points} == {13.0}


# By hand: 8 mm harmonic in 60° peaks at s'' = −36. A flat face wants base > 36 − 8; the path of a
# roller of 6 has x² / (x + 36) = 6 at the top, so x = 18 and the base is 18 − 6 − 8.
def test_a_small_base_is_undercut() -> None:
    motion = cam_motion([Segment(60, 8), Segment(60, -8), Segment(240)])
    assert cam_profile(motion, 27.9, "flat").is_undercut
    assert not cam_profile(motion, 28.1, "flat").is_undercut
    assert least_base(motion, "flat") == pytest.approx(28, abs=0.01)
    assert cam_profile(motion, 3.9, "roller", 6).is_undercut
    assert not cam_profile(motion, 4.1, "roller", 6).is_undercut
    for follower, roller in (("flat", 0.0), ("roller", 6.0), ("knife", 0.0)):
        kind: Follower = follower  # type: ignore[assignment] # a literal from a list
        base = least_base(motion, kind, roller)
        made = cam_profile(motion, base * 1.0001, kind, roller)
        assert not made.is_undercut
        assert math.degrees(made.most_pressure_rad) <= 30.01
        tight = cam_profile(motion, base * 0.98, kind, roller)
        assert tight.is_undercut or math.degrees(tight.most_pressure_rad) > 30


def test_outlines_that_cannot_be() -> None:
    with pytest.raises(NotDefined, match="offset"):
        cam_profile(_motion(), 10, "roller", 2, 15)
    with pytest.raises(NotDefined, match="the base circle"):
        cam_profile(_motion(), 0)
    with pytest.raises(NotDefined, match="number of points"):
        cam_profile(_motion(), 10, points=2)
