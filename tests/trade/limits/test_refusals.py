"""What the standard does not have is refused, with a reason and a way out."""

from __future__ import annotations

import math

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from binder_trade.limits import GRADES, Limits, NotDefined, fit, limits, shaft_letters, tolerance_um

LETTERS = sorted(shaft_letters() | {letter.upper() for letter in shaft_letters()})


def outcome(nominal_mm: float, cls: str) -> Limits | NotDefined:
    try:
        return limits(nominal_mm, cls)
    except NotDefined as refused:
        return refused


def refusal(nominal_mm: float, cls: str) -> NotDefined:
    with pytest.raises(NotDefined) as caught:
        limits(nominal_mm, cls)
    return caught.value


# ISO 286-1:1988 tables 2 and 3: empty places and footnotes.
@pytest.mark.parametrize(
    ("nominal_mm", "cls", "reason", "way_out"),
    [
        (24, "t6", "t is not defined up to 24 mm", "use u"),
        (24, "T6", "T is not defined up to 24 mm", "use U"),
        (14, "v6", "v is not defined up to 14 mm", "use x"),
        (18, "Y7", "Y is not defined up to 18 mm", "use Z"),
        (10.5, "cd7", "cd is given only up to 10 mm", "use c or d"),
        (12, "EF8", "EF is given only up to 10 mm", "use E or F"),
        (500, "fg6", "fg is given only up to 10 mm", "use f or g"),
        (1, "a9", "a is not used up to 1 mm", "use c"),
        (0.5, "B9", "B is not used up to 1 mm", "use C"),
        (10, "j4", "there is no j4", "use js4"),
        (10, "j9", "there is no j9", "use js9"),
        (4, "j8", "j8 is defined only up to 3 mm", "use js8"),
        (10, "J5", "there is no J5", "use JS5"),
        (10, "J9", "there is no J9", "use JS9"),
        (10, "K9", "K coarser than grade 8 is defined only up to 3 mm", "K8"),
        (1, "N9", "N coarser than grade 8 is not used up to 1 mm", "N8"),
        (10, "K2", "K2 is not defined over 3 mm", "use K3"),
        (10, "ZC01", "ZC01 is not defined over 3 mm", "use ZC3"),
        (1, "h14", "grade 14 is not used up to 1 mm", "grade 13"),
        (0.3, "JS18", "grade 18 is not used up to 1 mm", "grade 13"),
    ],
)
def test_a_class_not_defined_at_a_size(
    nominal_mm: float, cls: str, reason: str, way_out: str
) -> None:
    refused = refusal(nominal_mm, cls)
    assert reason in refused.reason
    assert way_out in refused.way_out


# The other side of each bound, where the tables begin or end.
@pytest.mark.parametrize(
    ("nominal_mm", "cls", "upper_um", "lower_um"),
    [
        (24.001, "t6", 54, 41),
        (14.001, "v6", 50, 39),
        (18.001, "Y7", -55, -76),
        (10, "cd7", -56, -71),
        (10, "EF8", 40, 18),
        (10, "fg6", -8, -17),
        (1.001, "a9", -270, -295),
        (1.001, "B9", 165, 140),
        (3, "j8", 8, -6),
        (3, "K9", 0, -25),
        (1.001, "N9", -4, -29),
        (3, "K2", 0, -1.2),
        (10, "K3", 0, -2.5),
        (1.001, "h14", 0, -250),
    ],
)
def test_the_last_place_that_is_defined(
    nominal_mm: float, cls: str, upper_um: float, lower_um: float
) -> None:
    found = limits(nominal_mm, cls)
    assert (found.upper_um, found.lower_um) == (upper_um, lower_um)


@pytest.mark.parametrize(
    ("nominal_mm", "reason"),
    [
        (0, "more than nothing"),
        (-0.0, "more than nothing"),
        (-3, "more than nothing"),
        (-math.inf, "more than nothing"),
        (math.inf, "end at 500 mm"),
        (500.01, "end at 500 mm"),
        (10**400, "end at 500 mm"),
        (math.nan, "not a number"),
    ],
)
def test_a_size_that_no_table_reaches(nominal_mm: float, reason: str) -> None:
    assert reason in refusal(nominal_mm, "H7").reason
    with pytest.raises(NotDefined):
        tolerance_um(nominal_mm, "7")
    with pytest.raises(NotDefined):
        fit(nominal_mm, "H7", "g6")


@pytest.mark.parametrize("grade", ["", "19", "-1", "001", "7.0", "IT7", "\u0663"])
def test_a_grade_that_does_not_exist(grade: str) -> None:
    with pytest.raises(NotDefined, match="grade"):
        tolerance_um(10, grade)


@given(st.floats(), st.sampled_from(LETTERS), st.sampled_from(GRADES))
@example(5e-324, "N", "8")
@example(1.7976931348623157e308, "h", "7")
def test_nothing_but_limits_or_a_refusal(nominal_mm: float, letter: str, grade: str) -> None:
    found = outcome(nominal_mm, letter + grade)
    if isinstance(found, NotDefined):
        assert found.reason
        assert found.way_out
    else:
        assert found.upper_um > found.lower_um


# A size that was reckoned, not typed, is 3.0000000000000004 in floats.
def test_a_size_reckoned_a_hair_past_a_bound_stays_in_its_band() -> None:
    reckoned_mm = (0.1 + 0.2) * 10
    assert reckoned_mm > 3
    assert limits(reckoned_mm, "g6").upper_um == limits(3, "g6").upper_um
    assert limits(3.00001, "g6").upper_um == limits(6, "g6").upper_um
