"""Cams as drawn, against the sums that textbooks print for specified contours.

Tangent cam with a roller, arc cam with a flat follower: Khurmi and Gupta, Theory of Machines,
cams with specified contours (from memory); the rest is geometry.
"""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.explained import NotDefined
from binder_trade.mechanisms.cam_followed import followed
from binder_trade.mechanisms.cam_laws import Law, Segment, cam_motion
from binder_trade.mechanisms.cam_outlines import arc_cam, radii_cam
from binder_trade.mechanisms.cam_profile import cam_profile

BASE, LIFT, NOSE, ROLLER = 25.0, 10.0, 8.0, 12.5
APART = BASE + LIFT - NOSE


def test_a_tangent_cam_on_its_flank() -> None:
    """With r = r1 + r2: x = r (sec θ − 1), v = r sin θ / cos² θ, a = r (2 − cos² θ) / cos³ θ."""
    made = followed(arc_cam(BASE, LIFT, NOSE), "roller", ROLLER)
    begins = math.pi - math.acos((BASE - NOSE) / APART)
    for degrees in (2, 10, 20):
        turn = math.radians(degrees)
        cosine, sine = math.cos(turn), math.sin(turn)
        arm = BASE + ROLLER
        lift, speed, push = made.at(begins + turn)
        assert lift == pytest.approx(arm * (1 / cosine - 1), abs=1e-3)
        assert speed == pytest.approx(arm * sine / cosine**2, rel=1e-3)
        assert push == pytest.approx(arm * (2 - cosine**2) / cosine**3, rel=1e-3)


def test_a_tangent_cam_on_its_nose_is_a_crank_and_rod() -> None:
    """The roller's middle: c cos θ + √(l² − c² sin² θ), a crank c on a rod of nose and roller."""
    made = followed(arc_cam(BASE, LIFT, NOSE), "roller", ROLLER)
    rod = NOSE + ROLLER
    for degrees in (0, 5, 10):
        turn = math.radians(degrees)
        far = APART * math.cos(turn) + math.sqrt(rod**2 - (APART * math.sin(turn)) ** 2)
        assert made.at(math.pi + turn)[0] == pytest.approx(far - BASE - ROLLER, abs=1e-3)
    # At the top: a = −c (1 + c / l), as at the dead point of that crank.
    assert made.at(math.pi)[2] == pytest.approx(-APART * (1 + APART / rod), rel=1e-3)


def test_a_bowed_cam_under_a_flat_follower() -> None:
    """On the flank v = (R − r1) sin θ, a = (R − r1) cos θ; on the nose a = −c cos θ."""
    flank = 60.0
    made = followed(arc_cam(BASE, LIFT, NOSE, flank), "flat")
    low, high = flank - BASE, flank - NOSE
    begins = math.acos((low**2 + APART**2 - high**2) / (2 * low * APART))
    for degrees in (3, 10):
        turn = math.radians(degrees)
        lift, speed, push = made.at(begins + turn)
        assert lift == pytest.approx(low * (1 - math.cos(turn)), abs=1e-3)
        assert speed == pytest.approx(low * math.sin(turn), rel=1e-3)
        assert push == pytest.approx(low * math.cos(turn), rel=1e-3)
    assert made.at(math.pi)[2] == pytest.approx(-APART, rel=1e-4)
    assert (made.most_pressure_rad, made.strikes_mm_rad) == (0, 0)


@given(
    base=st.floats(5, 40),
    lift=st.floats(0.5, 15),
    nose=st.floats(0.1, 0.95),
    roller=st.floats(1, 20),
)
def test_every_arc_cam_lifts_as_far_as_it_says(
    base: float, lift: float, nose: float, roller: float
) -> None:
    for flank in (None, base + lift + 2 * base):
        made = followed(arc_cam(base, lift, nose * base, flank), "roller", roller)
        assert made.lift_mm == pytest.approx(lift, abs=1e-3)
        assert made.base_mm == pytest.approx(base, rel=1e-6)
        # Falling it is the mirror of rising.
        for turn in (1.0, 2.0, 2.9):
            assert made.at(-turn)[0] == pytest.approx(made.at(turn)[0], abs=1e-6)


@pytest.mark.parametrize("law", ["harmonic", "cycloidal", "3-4-5"])
def test_radii_taken_off_a_law_give_its_motion_back(law: Law) -> None:
    """Radii every 5° of a cam for a pointed follower are base and lift of its law."""
    motion = cam_motion([Segment(120, 6, law), Segment(60), Segment(120, -6, law), Segment(60)])
    radii = [(float(n), 20 + motion.at(math.radians(n))[0]) for n in range(0, 360, 5)]
    made = followed(radii_cam(radii), "knife")
    off = max(abs(made.at(math.radians(n))[0] - motion.at(math.radians(n))[0]) for n in range(360))
    assert off < 0.005
    assert made.most_speed == pytest.approx(motion.most_speed, rel=0.02)
    profile = cam_profile(motion, 20, "knife")
    assert made.most_pressure_rad == pytest.approx(profile.most_pressure_rad, rel=0.02)


@pytest.mark.parametrize("follower", ["roller", "flat"])
def test_an_outline_cut_for_a_follower_moves_it_so(follower: str) -> None:
    """Radii of the envelope of a law's follower, put under that follower again."""
    motion = cam_motion([Segment(120, 6, "cycloidal"), Segment(120, -6, "cycloidal"), Segment(120)])
    name = "roller" if follower == "roller" else "flat"
    made = cam_profile(motion, 30, name, 5, points=720)  # type: ignore[arg-type]
    polar = sorted(
        (math.degrees(math.atan2(p.x_mm, p.y_mm)) % 360, math.hypot(p.x_mm, p.y_mm))
        for p in made.points
    )
    again = followed(radii_cam(polar[::4]), name, 5)  # type: ignore[arg-type]
    for n in range(0, 360, 7):
        turn = math.radians(n)
        assert again.at(turn)[0] == pytest.approx(motion.at(turn)[0], abs=0.01)


def test_equal_radii_stay_round() -> None:
    made = followed(
        radii_cam([(n, 20.0) for n in range(0, 240, 20)] + [(260, 23), (300, 26), (340, 21)]),
        "knife",
    )
    assert all(made.at(math.radians(n))[0] == pytest.approx(0, abs=1e-9) for n in range(30, 180))


def test_a_flat_under_a_flat_strikes() -> None:
    """Its length is the jump: from the base circle's touch to the nose's, √(c² − (r1 − r2)²)."""
    made = followed(arc_cam(BASE, LIFT, NOSE), "flat")
    assert made.strikes_mm_rad == pytest.approx(math.sqrt(APART**2 - (BASE - NOSE) ** 2))


def test_a_hollow_sharper_than_the_roller_is_bridged() -> None:
    hollow = [(n, 20.0 - 3 * math.exp(-(((n - 180) / 8) ** 2)) + n % 2) for n in range(0, 360, 4)]
    assert followed(radii_cam(hollow), "roller", 12).is_bridged
    assert not followed(radii_cam(hollow), "roller", 0.5).is_bridged


@pytest.mark.parametrize(
    "make",
    [
        lambda: arc_cam(20, 6, 24),  # the nose rounder than the cam
        lambda: arc_cam(20, 6, 6, 18),  # a flank that bulges more than the base circle
        lambda: arc_cam(20, 6, 6, 23),  # one that does not reach
        lambda: arc_cam(-1, 6, 6),
        lambda: radii_cam([(0, 20), (90, 21)]),
        lambda: radii_cam([(n, 20.0) for n in (0, 60, 50, 180, 240, 300)]),
        lambda: radii_cam([(n, 20.0) for n in range(0, 420, 60)]),
        lambda: radii_cam([(n, 0.0) for n in range(0, 360, 60)]),
        lambda: followed(radii_cam([(n, 20.0) for n in range(0, 360, 60)]), "knife"),
    ],
)
def test_nonsense_is_refused(make: object) -> None:
    with pytest.raises(NotDefined):
        make()  # type: ignore[operator]
