"""Belt lengths and wraps against textbooks, and against a belt laid down point by point."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from binder_trade.belts.centres import centres_for, change_of_centres, jockey
from binder_trade.belts.loop import Pulley, loop, moved_to_take_up
from binder_trade.belts.run import Layout, run
from binder_trade.explained import NotDefined

INCH = 25.4
SIZES = st.floats(5, 200)


# Khurmi & Gupta, Theory of Machines, Ex 11.6: 450 and 200 mm at 1.95 m, crossed.
def test_a_crossed_belt_of_a_textbook() -> None:
    made = run(450, 200, 1950, "crossed")
    assert made.length_mm == pytest.approx(4975, abs=1)
    assert made.wrap_first_rad == made.wrap_second_rad == pytest.approx(3.477, abs=0.002)


# Khurmi & Gupta, Theory of Machines, Ex 11.15: 0.6 and 0.24 m at 3 m, open.
def test_an_open_belt_of_a_textbook() -> None:
    assert run(600, 240, 3000).length_mm == pytest.approx(7330, abs=5)


# A published worked example of belt length: 8 and 4 in at 18 in, 55.06 in, 167.2°.
def test_an_open_belt_in_inches() -> None:
    made = run(8 * INCH, 4 * INCH, 18 * INCH)
    assert made.length_mm / INCH == pytest.approx(55.06, abs=0.02)
    assert math.degrees(made.wrap_second_rad) == pytest.approx(167.2, abs=0.1)
    assert made.least_wrap_rad == made.wrap_second_rad


def _laid(one: float, two: float, centres: float, crossed: bool) -> float:
    """The length of a polygon of many corners: the hull of both circles, open; crossed, two loops
    from the point where the strands cross."""
    if not crossed:
        points = [
            (x + d / 2 * math.cos(a), d / 2 * math.sin(a))
            for x, d in ((0.0, one), (centres, two))
            for a in (2 * math.pi * k / 4_000 for k in range(4_000))
        ]
        return _hull(points)
    meet = centres * one / (one + two)
    return _wrapped(one / 2, meet) + _wrapped(two / 2, centres - meet)


def _wrapped(radius: float, away: float) -> float:
    """A string from a point round a circle and back to the point, as a hull."""
    points = [
        (radius * math.cos(a), radius * math.sin(a))
        for a in (2 * math.pi * k / 4_000 for k in range(4_000))
    ]
    return _hull([*points, (away, 0.0)])


def _hull(points: list[tuple[float, float]]) -> float:
    ordered = sorted(points)

    def half(row: list[tuple[float, float]]) -> list[tuple[float, float]]:
        chain: list[tuple[float, float]] = []
        for x, y in row:
            while len(chain) > 1 and (
                (chain[-1][0] - chain[-2][0]) * (y - chain[-2][1])
                - (chain[-1][1] - chain[-2][1]) * (x - chain[-2][0])
                <= 0
            ):
                chain.pop()
            chain.append((x, y))
        return chain

    around = half(ordered)[:-1] + half(ordered[::-1])[:-1]
    return sum(math.dist(a, b) for a, b in zip(around, [*around[1:], around[0]], strict=True))


@pytest.mark.parametrize(
    ("one", "two", "centres"), [(30, 90, 100), (20, 20, 60), (60, 15.5, 41), (100, 6, 70)]
)
@pytest.mark.parametrize("crossed", [False, True])
def test_a_belt_laid_point_by_point(one: float, two: float, centres: float, crossed: bool) -> None:
    layout: Layout = "crossed" if crossed else "open"
    made = run(one, two, centres, layout)
    assert made.length_mm == pytest.approx(_laid(one, two, centres, crossed), abs=2e-4)


# The textbook's series: a crossed belt is longer than an open one by D d / C, nearly.
@given(one=SIZES, two=SIZES, over=st.floats(3, 8))
def test_crossed_is_longer(one: float, two: float, over: float) -> None:
    centres = (one + two) / 2 * over
    gap = run(one, two, centres, "crossed").length_mm - run(one, two, centres).length_mm
    assert gap == pytest.approx(one * two / centres, rel=0.1)


# Handbook formula (from memory): π(D + d)/2 + √(C² + D²) + √(C² + d²).
@given(one=SIZES, two=SIZES, over=st.floats(3, 8))
def test_a_quarter_turn_by_the_handbook(one: float, two: float, over: float) -> None:
    centres = (one + two) / 2 * over
    made = run(one, two, centres, "quarter-turn")
    handbook = math.pi * (one + two) / 2 + math.hypot(centres, one) + math.hypot(centres, two)
    assert made.length_mm == pytest.approx(handbook, rel=5e-3)
    assert made.least_wrap_rad > math.pi
    assert made.lean_deg == pytest.approx(2 * math.degrees(math.atan(max(one, two) / 2 / centres)))


@settings(deadline=None)
@given(
    one=SIZES,
    two=SIZES,
    over=st.floats(1.05, 8),
    layout=st.sampled_from(["open", "crossed", "quarter-turn"]),
)
def test_centres_come_back_from_the_length(
    one: float, two: float, over: float, layout: Layout
) -> None:
    centres = (one + two) / 2 * over
    made = run(one, two, centres, layout)
    assert centres_for(one, two, made.length_mm, layout).centres_mm == pytest.approx(
        centres, rel=1e-9
    )


# Khurmi's series solved for C: B = 4L − 2π(D + d), C = (B + √(B² − 32 (D − d)²)) / 16.
def test_centres_by_the_series() -> None:
    length, large, small = 1000.0, 100.0, 60.0
    b = 4 * length - 2 * math.pi * (large + small)
    series = (b + math.sqrt(b**2 - 32 * (large - small) ** 2)) / 16
    assert centres_for(large, small, length).centres_mm == pytest.approx(series, abs=0.01)


@given(one=SIZES, two=SIZES, over=st.floats(1.2, 8))
def test_two_pulleys_are_a_loop(one: float, two: float, over: float) -> None:
    centres = (one + two) / 2 * over
    made = loop([Pulley(0, 0, one), Pulley(centres, 0, two)])
    plain = run(one, two, centres)
    assert made.length_mm == pytest.approx(plain.length_mm, rel=1e-12)
    assert made.wraps_rad == pytest.approx((plain.wrap_first_rad, plain.wrap_second_rad))
    crossed = loop([Pulley(0, 0, one), Pulley(centres, 0, two, -1)])
    assert crossed.length_mm == pytest.approx(run(one, two, centres, "crossed").length_mm)


def test_three_equal_pulleys_in_a_triangle() -> None:
    corners = [(0.0, 0.0), (100.0, 0.0), (50.0, 100 * math.sqrt(3) / 2)]
    made = loop([Pulley(x, y, 20) for x, y in corners])
    assert made.length_mm == pytest.approx(300 + math.pi * 20)
    assert made.wraps_rad == pytest.approx([2 * math.pi / 3] * 3)


# Where the drive stands on the bed, and which way round, does not change the belt.
@given(x=st.floats(-90, 90), y=st.floats(-90, 90), turn=st.floats(0, 2 * math.pi))
def test_a_loop_anywhere(x: float, y: float, turn: float) -> None:
    places = [(0.0, 0.0, 30.0, 1), (120.0, 10.0, 50.0, 1), (60.0, 25.0, 12.0, -1)]
    moved = [
        Pulley(
            x + a * math.cos(turn) - b * math.sin(turn),
            y + a * math.sin(turn) + b * math.cos(turn),
            size,
            sense,
        )
        for a, b, size, sense in places
    ]
    here = loop([Pulley(*place) for place in places])
    there = loop(moved)
    assert there.length_mm == pytest.approx(here.length_mm)
    assert there.wraps_rad == pytest.approx(here.wraps_rad)


def test_a_jockey_from_outside_adds_length() -> None:
    def pressed(down: float) -> list[Pulley]:
        jockey_pulley = Pulley(75, 25 + 5 - down, 10, -1)
        return [Pulley(0, 0, 50), Pulley(150, 0, 50), jockey_pulley]

    plain = run(50, 50, 150).length_mm
    assert loop(pressed(1e-6)).length_mm == pytest.approx(plain, abs=1e-3)
    assert loop(pressed(10)).length_mm > plain
    wanted = loop(pressed(10)).length_mm
    travel = moved_to_take_up(pressed(1e-6), 2, -math.pi / 2, 20, wanted)
    assert travel == pytest.approx(10, abs=1e-5)
    with pytest.raises(NotDefined, match="no travel"):
        moved_to_take_up(pressed(1e-6), 2, -math.pi / 2, 1, wanted)


def test_a_small_jockey_pressed_on_the_span() -> None:
    tight, loose = run(60, 40, 150), run(50, 50, 150)
    made = jockey([tight, loose], max(tight.length_mm, loose.length_mm))
    slack = abs(tight.length_mm - loose.length_mm)
    span = min(tight, loose, key=lambda each: each.length_mm).span_mm
    assert 2 * math.hypot(span / 2, made.travel_mm) == pytest.approx(span + slack)


def test_a_longer_belt_moves_the_centres_by_half() -> None:
    made = run(40, 40, 120)
    assert change_of_centres(made, 4) == pytest.approx(2)


@pytest.mark.parametrize("layout", ["open", "crossed", "quarter-turn"])
def test_pulleys_that_touch(layout: Layout) -> None:
    with pytest.raises(NotDefined) as caught:
        run(60, 40, 50, layout)
    assert "50 mm apart" in caught.value.way_out


def test_belts_that_cannot_be() -> None:
    with pytest.raises(NotDefined, match="does not go round"):
        centres_for(60, 40, 200)
    with pytest.raises(NotDefined, match="a pulley's diameter"):
        run(math.nan, 40, 100)
    with pytest.raises(NotDefined, match="too short"):
        jockey([run(60, 40, 150)], 300)
    with pytest.raises(NotDefined, match="two pulleys"):
        loop([Pulley(0, 0, 10)])
    with pytest.raises(NotDefined, match="in one another"):
        loop([Pulley(0, 0, 100), Pulley(10, 0, 10)])
    with pytest.raises(NotDefined, match="passes pulley 3 by"):
        loop([Pulley(0, 0, 20), Pulley(100, 0, 20), Pulley(50, -40, 10)])
