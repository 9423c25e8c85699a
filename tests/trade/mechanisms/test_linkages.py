"""Cranks, yokes and four-bars against textbook examples, closure and differences."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from binder_trade.explained import NotDefined
from binder_trade.mechanisms.crank_slider import crank_slider
from binder_trade.mechanisms.four_bar import Branch, coupler_point, four_bar
from binder_trade.mechanisms.yoke import eccentric, scotch_yoke

ANGLES = st.floats(0, 2 * math.pi)


# Norton, Design of Machinery, Ex 4-2 (from memory): a 40, b 120, offset −20, at 60°: d = 126.84.
def test_a_slider_of_a_textbook() -> None:
    assert crank_slider(40, 120, -20).at(math.radians(60)).x_mm == pytest.approx(126.84, abs=0.01)


@given(radius=st.floats(5, 50), over=st.floats(1.3, 6), off=st.floats(-0.9, 0.9), angle=ANGLES)
def test_the_rod_keeps_its_length(radius: float, over: float, off: float, angle: float) -> None:
    rod = radius * over
    made = crank_slider(radius, rod, off * (rod - radius))
    at = made.at(angle)
    assert math.dist(at.pin_mm, (at.x_mm, made.offset_mm)) == pytest.approx(rod)
    assert made.inner_mm - 1e-9 <= at.x_mm <= made.outer_mm + 1e-9
    assert abs(at.rod_rad) <= made.most_rod_rad + 1e-9


@given(radius=st.floats(5, 50), over=st.floats(1.3, 6), off=st.floats(-0.8, 0.8), angle=ANGLES)
def test_speed_and_acceleration_are_derivatives(
    radius: float, over: float, off: float, angle: float
) -> None:
    rod, step = radius * over, 1e-5
    made = crank_slider(radius, rod, off * (rod - radius))
    one, here, two = (made.at(angle + d) for d in (-step, 0, step))
    assert here.speed_mm == pytest.approx((two.x_mm - one.x_mm) / 2 / step, abs=1e-5 * radius)
    assert here.acceleration_mm == pytest.approx(
        (two.speed_mm - one.speed_mm) / 2 / step, abs=1e-4 * radius
    )
    assert made.torque_nmm(angle, 10) == pytest.approx(10 * abs(here.speed_mm))


@given(radius=st.floats(5, 50), over=st.floats(1.3, 6), off=st.floats(-0.8, 0.8))
def test_the_slide_stands_at_its_dead_points(radius: float, over: float, off: float) -> None:
    rod = radius * over
    made = crank_slider(radius, rod, off * (rod - radius))
    assert made.at(made.outer_dead_rad).x_mm == pytest.approx(made.outer_mm)
    assert made.at(made.inner_dead_rad).x_mm == pytest.approx(made.inner_mm)
    for angle in (made.outer_dead_rad, made.inner_dead_rad):
        assert made.at(angle).speed_mm == pytest.approx(0, abs=1e-6 * radius)
    back = (made.inner_dead_rad - made.outer_dead_rad) % (2 * math.pi)
    assert made.time_ratio == pytest.approx((2 * math.pi - back) / back)


def test_a_slider_in_line() -> None:
    made = crank_slider(20, 80)
    assert (made.stroke_mm, made.time_ratio) == pytest.approx((40, 1))
    assert (made.outer_mm, made.inner_mm) == (100, 60)


@pytest.mark.parametrize(("rod", "offset"), [(20, 0), (30, 10), (30, math.nan), (10, 0)])
def test_a_crank_that_cannot_go_round(rod: float, offset: float) -> None:
    with pytest.raises(NotDefined, match="dead points"):
        crank_slider(20, rod, offset)


# Norton, Design of Machinery, Ex 4-1 (from memory): d 100, a 40, b 120, c 80, at 40°.
@pytest.mark.parametrize(
    ("branch", "coupler", "rocker"), [("open", 20.30, 57.33), ("crossed", -60.98, -98.01)]
)
def test_a_four_bar_of_a_textbook(branch: Branch, coupler: float, rocker: float) -> None:
    state = four_bar(100, 40, 120, 80).at(math.radians(40), branch)
    assert math.degrees(state.coupler_rad) == pytest.approx(coupler, abs=0.01)
    assert math.degrees(state.rocker_rad) == pytest.approx(rocker, abs=0.01)


@pytest.mark.parametrize(
    ("links", "kind"),
    [
        ((100, 40, 120, 80), "crank-rocker"),
        ((40, 100, 120, 80), "double-crank"),
        ((100, 120, 40, 80), "double-rocker"),
        ((100, 60, 100, 60), "change-point"),
        ((100, 70, 60, 80), "triple-rocker"),
    ],
)
def test_grashof(links: tuple[float, float, float, float], kind: str) -> None:
    made = four_bar(*links)
    assert made.kind == kind
    turns = kind in {"crank-rocker", "double-crank", "change-point"}
    assert (made.crank_span_rad is None) == turns


@given(
    links=st.tuples(*[st.floats(10, 100)] * 4),
    angle=ANGLES,
    branch=st.sampled_from(["open", "crossed"]),
)
def test_a_four_bar_closes(
    links: tuple[float, float, float, float], angle: float, branch: Branch
) -> None:
    assume(max(links) < 0.49 * sum(links))
    made = four_bar(*links)
    assume(made.kind != "change-point")
    try:
        state = made.at(angle, branch)
    except NotDefined:
        assert made.crank_span_rad is not None
        turned = abs(math.remainder(angle, 2 * math.pi))
        low, high = made.crank_span_rad
        assert not low + 1e-6 < turned < high - 1e-6
        return
    assert math.hypot(*state.crank_pin_mm) == pytest.approx(made.crank_mm)
    assert math.dist(state.crank_pin_mm, state.rocker_pin_mm) == pytest.approx(made.coupler_mm)
    assert math.dist(state.rocker_pin_mm, (made.ground_mm, 0)) == pytest.approx(made.rocker_mm)
    assert state.transmission_rad >= made.least_transmission_rad - 1e-6


@given(angle=ANGLES, branch=st.sampled_from(["open", "crossed"]))
def test_the_rockers_speed_is_a_derivative(angle: float, branch: Branch) -> None:
    made, step = four_bar(100, 40, 120, 80), 1e-6
    one, two = (made.at(angle + d, branch).rocker_rad for d in (-step, step))
    turned = math.remainder(two - one, 2 * math.pi)
    assert made.at(angle, branch).speed_ratio == pytest.approx(turned / 2 / step, abs=1e-5)


# Watt's linkage draws a straight line: the middle of the coupler of equal rockers, near enough
# (textbook; proportions 2 : 1 : 2).
def test_a_straight_line_by_watt() -> None:
    made = four_bar(math.hypot(200, 50), 100, 50, 100)
    seen = []
    for each in range(-8, 9):
        angle = math.atan2(50, 200) + math.radians(each)
        state = made.at(angle, "crossed")
        assert coupler_point(state, 50, 0) == pytest.approx(state.rocker_pin_mm)
        seen.append(coupler_point(state, 25, 0))
    (x1, y1), (x2, y2) = seen[0], seen[-1]
    long = math.dist(seen[0], seen[-1])
    off = [abs((x2 - x1) * (y - y1) - (y2 - y1) * (x - x1)) / long for x, y in seen]
    assert long > 20
    assert max(off) < 0.02


def test_the_ends_of_a_rockers_swing() -> None:
    made = four_bar(100, 40, 120, 80)
    assert made.rocker_span_rad is not None
    seen = [made.at(math.radians(each / 10)).rocker_rad for each in range(3600)]
    assert made.rocker_span_rad == pytest.approx((min(seen), max(seen)), abs=1e-5)
    ends = sorted(made.at(angle).rocker_rad for angle in made.dead_points_rad())
    assert ends == pytest.approx(made.rocker_span_rad)
    for angle in made.dead_points_rad():
        assert made.at(angle).speed_ratio == pytest.approx(0, abs=1e-9)


def test_links_that_do_not_close() -> None:
    with pytest.raises(NotDefined, match="longer than the other three"):
        four_bar(300, 40, 120, 80)
    with pytest.raises(NotDefined, match="the coupler"):
        four_bar(100, 40, -120, 80)
    with pytest.raises(NotDefined, match="do not reach"):
        four_bar(100, 70, 60, 80).at(math.pi)


def test_a_scotch_yoke() -> None:
    made = scotch_yoke(15, 5)
    assert (made.stroke_mm, made.slot_mm) == (30, 35)
    assert made.at(0) == pytest.approx((15, 0, -15))
    assert made.at(math.pi / 2) == pytest.approx((0, -15, 0), abs=1e-12)


def test_an_eccentric_is_a_crank() -> None:
    made = eccentric(3, 6, 60, 1.5)
    assert made.sheave_mm == 2 * 3 + 6 + 2 * 1.5
    assert made.motion.stroke_mm == pytest.approx(6)
    # The shaft lies inside the sheave with the rim left on the thin side.
    assert made.sheave_mm / 2 - made.throw_mm - 6 / 2 == pytest.approx(1.5)
    with pytest.raises(NotDefined, match="own strap"):
        eccentric(3, 6, 7)
