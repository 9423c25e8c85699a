"""Patterns of holes: plane geometry; the chord for dividers of four on 30 is 21.213 in print."""

from __future__ import annotations

import contextlib
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.fastening import (
    FORMS,
    Face,
    NotDefined,
    Unreadable,
    chord,
    from_corner,
    lay_out,
    positions,
    read_pattern,
    round_face,
)


def near(places: tuple[tuple[float, float], ...], *wanted: tuple[float, float]) -> bool:
    return len(places) == len(wanted) and all(
        math.dist(place, want) < 1e-9 for place, want in zip(places, wanted, strict=True)
    )


@pytest.mark.parametrize(
    ("count", "circle", "wanted"),
    [(4, 30, 21.213), (6, 40, 20.0), (3, 20, 17.321), (2, 16, 16.0), (8, 32, 12.246)],
)
def test_chord_for_the_dividers(count: int, circle: float, wanted: float) -> None:
    """Chord tables of workshop handbooks: D sin(180/n)."""
    assert chord(count, circle) == pytest.approx(wanted, abs=5e-4)


def test_on_a_circle() -> None:
    pattern = read_pattern("4 off on 16 mm PCD")
    laid = lay_out(pattern, round_face(25))
    assert near(laid.places, (8, 0), (0, 8), (-8, 0), (0, -8))
    assert laid.least_edge_mm == pytest.approx(4.5)
    assert laid.chord_mm == pytest.approx(8 * math.sqrt(2))
    assert laid.least_pitch_mm == pytest.approx(8 * math.sqrt(2))
    assert laid.steps[0].value == "11.314 mm"


def test_first_hole_at_an_angle() -> None:
    half = math.sqrt(32)
    pattern = read_pattern("4 off on 16 mm PCD, first at 45°")
    corners = ((half, half), (-half, half), (-half, -half), (half, -half))
    assert near(positions(pattern, 30, 30), *corners)


def test_a_pair_and_a_row() -> None:
    assert near(positions(read_pattern("2 off, 14 mm apart"), 24, 22), (-7, 0), (7, 0))
    assert near(positions(read_pattern("14 mm apart", 3), 40, 10), (-14, 0), (0, 0), (14, 0))
    row = lay_out(read_pattern("6 off in a row at 8 mm"), Face(50, 12))
    assert row.extent_mm == pytest.approx((40, 0))
    assert row.least_edge_mm == pytest.approx(5)
    assert row.least_pitch_mm == pytest.approx(8)


def test_rows_in_from_the_edges() -> None:
    """A bed of 150 x 50 with six holes."""
    places = positions(read_pattern("in two rows, 5 mm from the edges", 6), 150, 50)
    assert near(places, (-70, -20), (0, -20), (70, -20), (-70, 20), (0, 20), (70, 20))


def test_rows_apart_are_spread_along_the_face() -> None:
    places = positions(read_pattern("in two rows, 10 mm apart", 4), 40, 20)
    assert near(places, (-10, -5), (10, -5), (-10, 5), (10, 5))
    places = positions(read_pattern("in two rows 10 mm apart, at 8 mm", 4), 40, 20)
    assert near(places, (-4, -5), (4, -5), (-4, 5), (4, 5))


def test_grid_corners_and_single() -> None:
    grid = read_pattern("3 by 2 grid at 10 mm x 12 mm")
    assert grid.count == 6
    assert lay_out(grid, Face(40, 30)).extent_mm == (20, 12)
    assert near(
        positions(read_pattern("at the corners, 6 mm in"), 40, 30),
        (-14, -9),
        (14, -9),
        (-14, 9),
        (14, 9),
    )
    alone = lay_out(read_pattern("single"), Face(20, 10))
    assert near(alone.places, (0, 0))
    assert alone.least_pitch_mm is None


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("2 off, 1/2 in apart", 12.7),
        ("2 off, ½ in apart", 12.7),
        ("2 off, 0.5 in apart", 12.7),
        ('2 off, 3/8" apart', 9.525),
        ("2 off, 1 1/8 in apart", 28.575),
        ("two holes 12 mm apart", 12.0),
    ],
)
def test_inch_sizes(text: str, mm: float) -> None:
    assert lay_out(read_pattern(text), Face(60, 20)).least_pitch_mm == pytest.approx(mm)


def test_marking_out_from_a_corner() -> None:
    face = Face(40, 30)
    places = positions(read_pattern("at the corners, 6 mm in"), 40, 30)
    assert near(from_corner(places, face), (6, 6), (34, 6), (6, 24), (34, 24))


def test_every_form_in_the_way_out_can_be_read() -> None:
    for form in FORMS:
        assert read_pattern(form).kind


REFUSED = {
    "": "no pattern",
    "anyhow": "no pattern",
    "on 16 PCD": "no pattern",
    "4 off on 16 mm PCD, more or less": "no pattern",
    "at the corners": "how far in",
    "3 by 2 grid": "how far apart",
    "on 0 mm PCD": "size of nothing",
    "0 off on 16 mm PCD": "no pattern",
    "9999999 off on 16 mm PCD": "no pattern",
    "4 off on 16 mm PCD, first at 45 mm": "no angle",
    "on 1,5 mm PCD": "comma",
    "in two rows, 5 mm high": "no pattern",
    "99999 by 99999 grid at 1 mm": "no pattern",
}


@pytest.mark.parametrize(("text", "reason"), REFUSED.items())
def test_refuses_and_lists_what_can_be_read(text: str, reason: str) -> None:
    with pytest.raises(Unreadable) as refused:
        read_pattern(text)
    assert reason in refused.value.reason
    assert refused.value.way_out


def test_numbers_off_that_disagree() -> None:
    with pytest.raises(Unreadable, match="has 4 holes, not 6"):
        read_pattern("at the corners, 6 mm in", 6)
    with pytest.raises(Unreadable, match="share out into 2 rows; say 6 off"):
        read_pattern("in two rows, 5 mm from the edges", 5)


def test_a_face_that_cannot_carry_it() -> None:
    corners = read_pattern("at the corners, 6 mm in")
    with pytest.raises(NotDefined, match="meet on a face of 10 mm"):
        positions(corners, 40, 10)
    with pytest.raises(NotDefined, match="no edges"):
        lay_out(corners, round_face(30))
    with pytest.raises(NotDefined, match="how many"):
        positions(read_pattern("14 mm apart"), 40, 10)
    for size in (math.nan, math.inf, 0.0, -1.0):
        with pytest.raises(NotDefined):
            positions(corners, size, 30)


@given(st.integers(2, 60), st.floats(1, 500))
def test_all_chords_of_a_circle_are_equal(count: int, circle: float) -> None:
    laid = lay_out(read_pattern("on 16 mm PCD", count), Face(600, 600))
    first, second = laid.places[:2]
    assert math.dist(first, second) == pytest.approx(chord(count, 16))
    assert math.dist(laid.places[-1], first) == pytest.approx(chord(count, 16))
    assert chord(count, circle) <= circle * 1.0000001


@given(st.text(max_size=200))
def test_any_text_is_read_or_refused(text: str) -> None:
    with contextlib.suppress(NotDefined):
        assert read_pattern(text).text == text
