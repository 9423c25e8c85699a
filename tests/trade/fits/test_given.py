"""What tools and bars give, in the maker's words."""

from __future__ import annotations

import pytest

from binder_trade.explained import NotDefined
from binder_trade.fits.duties import choose
from binder_trade.fits.given import Way, given_by, given_for, read_tool, ways
from binder_trade.fits.reach import Reach, check_reachable


def half(text: str, which: str) -> Way:
    told = read_tool(text)
    way = told.hole if which == "hole" else told.shaft
    assert way is not None
    return way


def verdict_on(duty: str, words: str) -> Reach:
    choice = choose(duty, 6)
    hole = given_for(choice, half(words, "hole"), 6)
    return check_reachable(choice, hole, given_for(choice, half(words, "shaft"), 6))


def test_tool_and_bar_in_one_line() -> None:
    told = read_tool("reamed 6 mm, bar as bought")
    assert told.nominal_mm == 6
    assert told.hole is not None
    assert told.shaft is not None
    assert (told.hole.way, told.hole.cls) == ("reamed", "H7")
    assert (told.shaft.way, told.shaft.cls) == ("drawn bar", "h10")


@pytest.mark.parametrize(
    ("text", "size"),
    [
        ("reamed 6 mm", 6),
        ("drilled 1/4 in", 6.35),
        ('bored 1 1/2"', 38.1),
        ("reamed 0.25 inch", 6.35),
        ("reamed", None),
    ],
)
def test_sizes(text: str, size: float | None) -> None:
    assert read_tool(text).nominal_mm == (None if size is None else pytest.approx(size))


@pytest.mark.parametrize(
    ("size", "cls", "lower"),
    [  # EN 10278 with ISO 286-2 values, as in stockholders' tables
        (3, "h9", -25),
        (6, "h9", -30),
        (12, "h9", -43),
        (20, "h9", -52),
        (25, "h10", -84),
        (12, "h11", -110),
        (6, "h10", -48),
        (6, "h11", -75),
    ],
)
def test_bars_as_bought(size: float, cls: str, lower: float) -> None:
    given = given_by(half(f"bar as bought {cls}", "shaft"), size)
    assert (given.upper_um, given.lower_um, given.source) == (0, lower, "the workshop")


def test_a_plain_bar_is_h10() -> None:
    # EN 10278: drawn rounds are h10 where nothing else is agreed (6 mm: −0.048).
    given = given_by(half("bar as bought", "shaft"), 6)
    assert (given.cls, given.lower_um) == ("h10", -48)


@pytest.mark.parametrize(
    ("diameter", "upper_thou"),
    [(3.175, 4), (3.2, 5), (6.35, 5), (6.4, 6), (12.7, 6), (19.05, 8), (25.4, 10), (40, 12)],
)
def test_drilled_holes(diameter: float, upper_thou: float) -> None:
    # AND10387, drilled holes: +.004/−.001 in to .125, and so on.
    given = given_by(half("drilled", "hole"), diameter)
    assert given.upper_um == pytest.approx(upper_thou * 25.4)
    assert given.lower_um == pytest.approx(-25.4)


def test_above_the_table_a_drilled_hole_is_refused() -> None:
    with pytest.raises(NotDefined, match="ends at"):
        given_by(half("drilled", "hole"), 60)


def test_a_turned_shaft_is_made_to_its_class() -> None:
    turned = half("turned", "shaft")
    assert given_by(turned, 6, "f7").cls == "f7"
    assert given_by(turned, 6, "g6").cls == "g7"
    with pytest.raises(NotDefined, match="which class"):
        given_by(turned, 6)


def test_a_reamer_may_be_another() -> None:
    assert given_by(half("reamed H8", "hole"), 6).upper_um == 18


def test_reamer_and_bar_give_no_press_fit() -> None:
    verdict = verdict_on("press", "reamed, bar as bought")
    # Reamer 0 to +12 and bar −48 to 0 leave 0 to 60 where −27 to −7 are wanted.
    assert verdict.got_um == (0.0, 60.0)
    assert verdict.wanted_um == (-27.0, -7.0)
    assert verdict.says == "may fall through where it should hold"
    assert "bond it with retaining compound" in verdict.ways_out


def test_reamed_and_turned_comes_out() -> None:
    verdict = verdict_on("runs", "reamed; turned")
    # H7/f7 at 6 mm lies inside H8/f7: 10 to 34 in 10 to 40.
    assert (verdict.reached, verdict.got_um) == (True, (10, 34))
    assert verdict.ways_out == ()


def test_halves_of_two_sizes_are_refused() -> None:
    choice = choose("runs", 6)
    hole = given_by(half("reamed", "hole"), 6)
    shaft = given_by(half("bar as bought", "shaft"), 8)
    with pytest.raises(NotDefined, match="two nominal sizes"):
        check_reachable(choice, hole, shaft)


def test_the_same_half_twice_is_refused() -> None:
    with pytest.raises(NotDefined, match="said twice"):
        read_tool("reamed, drilled")


@pytest.mark.parametrize("text", ["", ",", "gnawed", "1/0 in reamed", "reamde"])
def test_strange_words_are_refused(text: str) -> None:
    with pytest.raises(NotDefined):
        read_tool(text)


def test_every_way_is_read_by_its_own_name() -> None:
    for way in ways():
        told = read_tool(way.way)
        assert (told.hole or told.shaft) == way
        assert bool(way.cls) + bool(way.least_grade) + (way.way == "drilled") == 1
