"""Which instrument is taken, and sizes over pins against printed chords."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_making.measuring import (
    PLUG,
    Grade,
    Instrument,
    Plugs,
    centres,
    chord,
    fed_mm,
    is_tried,
    judge,
    over_pins,
    over_two,
    pitch_circle,
    plugs,
    reached_by,
    told_by,
)
from binder_trade.explained import NotDefined

CALIPER = Instrument("caliper", ("outside", "inside", "depth"), 0, 150, 0.01, 0.03)
MICROMETER = Instrument("micrometer", ("outside",), 0, 25, 0.01, 0.004)
RULE = Instrument("rule", ("outside", "depth"), 0, 300, 0.5)
OWNED = (MICROMETER, RULE, CALIPER)


@pytest.mark.parametrize(
    ("lower", "upper", "way", "name", "grade"),
    [
        # The rule of ten (common practice): a tenth is good, a fifth will do.
        (9.8, 10.2, "outside", "caliper", Grade.GOOD),
        (9.96, 10.0, "outside", "micrometer", Grade.GOOD),
        (9.975, 10.0, "outside", "micrometer", Grade.FAIR),
        (9.99, 10.0, "outside", None, Grade.NONE),
        (10.0, 10.15, "inside", "caliper", Grade.FAIR),
        (10.0, 10.015, "inside", None, Grade.NONE),
        (29.99, 30.0, "outside", None, Grade.NONE),
        (5, 15, "depth", "rule", Grade.GOOD),
        (200, 202.5, "outside", "rule", Grade.FAIR),
        (0.1, 0.2, "run-out", None, Grade.NONE),
    ],
)
def test_the_instrument_for_a_size(
    lower: float, upper: float, way: str, name: str | None, grade: Grade
) -> None:
    found = judge(lower, upper, way, OWNED)
    assert (found.instrument.name if found.instrument else None) == name
    assert found.grade is grade


@pytest.mark.parametrize(
    ("kind", "least", "most", "tried"),
    [
        # What is felt by hand: common practice, no source.
        ("runs_in", 10, 34, True),
        ("slides", 4, 24, True),
        ("runs_in", 75, 216, False),  # it goes in, and so it would were it wrong
        ("pressed", -30, -8, False),  # it goes in once
        ("slides", -5, 10, False),
        ("silver_soldered", 40, 80, False),
    ],
)
def test_a_mate_judges_only_what_is_felt(kind: str, least: int, most: int, tried: bool) -> None:
    assert is_tried(kind, least, most) is tried


@pytest.mark.parametrize(
    ("limits", "way", "is_master", "by_mate", "words"),
    [
        ((9.8, 10.2), "outside", False, True, "caliper"),
        ((9.975, 10.0), "outside", False, True, "micrometer, read twice"),
        ((9.99, 10.0), "outside", False, True, "micrometer, then its own mate"),
        ((9.99, 10.0), "outside", False, False, "micrometer, against a known piece"),
        ((9.99, 10.0), "outside", True, True, "micrometer, as near as it reads"),
        ((400.0, 400.01), "outside", False, False, "a borrowed instrument"),
        ((10.0, 10.015), "inside", False, False, "a plug turned to size"),
    ],
)
def test_one_answer_for_every_page(
    limits: tuple[float, float],
    way: str,
    is_master: bool,
    by_mate: bool,
    words: str,
) -> None:
    assert told_by(limits, way, OWNED, is_master=is_master, by_mate=by_mate) == words


SHANK_SET = [(f"{n / 10:.1f} mm", n / 10) for n in range(10, 131)]


@pytest.mark.parametrize(
    ("limits", "words"),
    [
        # A hole drilled 3.1, by what goes in and what does not: common practice, no source. The
        # limits of the least and the greatest hole as in the limit gauges of ISO 1938.
        ((3.075, 3.202), "shanks of drills: 3.1 mm goes in, 3.2 mm does not"),
        ((3.0, 3.3), "shanks of drills: 3.0 mm goes in, 3.3 mm does not"),
        ((3.11, 3.19), PLUG),  # no shank is within
        ((6.0, 6.5), "caliper"),  # jaws go into it
    ],
)
def test_a_small_hole_is_no_matter_for_flat_jaws(limits: tuple[float, float], words: str) -> None:
    said = told_by(limits, "inside", OWNED, is_master=False, by_mate=False, shanks=SHANK_SET)
    assert said == words


def test_what_is_made_for_small_holes_reads_them() -> None:
    bore_gauge = Instrument("small bore gauge", ("inside",), 2.0, 6.0, 0.01)
    said = told_by(
        (3.075, 3.202), "inside", [*OWNED, bore_gauge], is_master=False, by_mate=False,
        shanks=SHANK_SET,
    )  # fmt: skip
    assert said == "small bore gauge"


def test_the_limits_are_drawn_in_by_the_doubt() -> None:
    # ISO 14253-1 (from memory): accept only what is within for certain.
    found = judge(9.96, 10.0, "outside", OWNED)
    assert (found.accept_least_mm, found.accept_most_mm) == pytest.approx((9.964, 9.996))


def test_what_none_can_judge_is_tried_with_its_mate_or_a_plug() -> None:
    assert "mate" in judge(9.999, 10.0, "outside", OWNED).why
    assert "plug" in judge(10.0, 10.001, "inside", OWNED).why


def test_limits_that_cross() -> None:
    with pytest.raises(NotDefined):
        judge(10, 9, "outside", OWNED)
    with pytest.raises(NotDefined):
        plugs(10, 9)


@given(st.floats(0, 20), st.floats(0.001, 5))
def test_a_wider_tolerance_never_asks_for_more(lower: float, width: float) -> None:
    ranks = {Grade.NONE: 0, Grade.FAIR: 1, Grade.GOOD: 2}
    narrow = judge(lower, lower + width, "outside", OWNED)
    wide = judge(lower, lower + 1.1 * width, "outside", OWNED)
    if lower + 1.1 * width <= 25:
        assert ranks[wide.grade] >= ranks[narrow.grade]
    assert lower <= narrow.accept_least_mm <= narrow.accept_most_mm <= lower + width + 1e-9


@pytest.mark.parametrize(
    ("holes", "factor"),
    [
        (3, 0.866025),
        (4, 0.707107),
        (5, 0.587785),
        (6, 0.5),
        (7, 0.433884),
        (8, 0.382683),
        (10, 0.309017),
        (12, 0.258819),
    ],
)
def test_chords(holes: int, factor: float) -> None:
    # Machinists' handbook, table of chords for unit diameter.
    assert chord(1, holes) == pytest.approx(factor, abs=1e-6)


def test_the_trades_example_of_dividers() -> None:
    # Common practice: four holes on 30 mm are 21.213 apart.
    assert chord(30, 4) == pytest.approx(21.213, abs=1e-3)


@given(st.floats(5, 200), st.integers(2, 40), st.floats(0.5, 4))
def test_a_pitch_circle_comes_back(circle: float, holes: int, pin: float) -> None:
    over = over_pins(circle, holes, pin)
    assert pitch_circle(over, holes, pin) == pytest.approx(circle)
    assert over <= circle + pin + 1e-9
    if holes % 2 == 0:
        assert over == pytest.approx(circle + pin)


def test_over_two_pins_by_coordinates() -> None:
    first, second = (0.0, 0.0), (30.0, 40.0)
    between = math.dist(first, second)
    assert over_two(between, 6, 4) == pytest.approx(55)
    assert centres(55, 6, 4) == pytest.approx(50)


def test_plugs_go_and_do_not() -> None:
    assert plugs(6.0, 6.012) == Plugs(6.0, 6.012)


@pytest.mark.parametrize(
    ("circle", "holes", "apart"), [(0, 4, 1), (30, 1, 1), (30, 4, 4), (30, 4, 0)]
)
def test_what_has_no_chord(circle: float, holes: int, apart: int) -> None:
    with pytest.raises(NotDefined):
        chord(circle, holes, apart)


BLADE = Instrument("blade micrometer", ("outside",), 0, 25, 0.001, 0.004)


@pytest.mark.parametrize(
    ("wide", "owned", "found"),
    [
        (0.5, (CALIPER, MICROMETER), ""),
        (0.5, (CALIPER, BLADE), "blade micrometer"),
        (3.0, (CALIPER, MICROMETER), None),
    ],
)
def test_a_narrow_groove_is_read_by_what_goes_into_it(
    wide: float, owned: tuple[Instrument, ...], found: str | None
) -> None:
    """A caliper's jaws are over a millimetre thick where they carry: common practice, no source."""
    assert reached_by(wide, (3.752, 3.8), "outside", owned) == found


def test_a_groove_is_fed_half_of_what_it_takes_off_the_diameter() -> None:
    """(4 - 3.8) / 2 = 0.1 and (4 - 3.752) / 2 = 0.124: geometry."""
    assert fed_mm(4.0, (3.752, 3.8)) == pytest.approx((0.1, 0.124))
