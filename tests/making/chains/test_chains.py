"""Tolerance chains of printed examples, what random parts do, and the link made to suit."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_making.chains import Chain, Link, chain, made_to_suit
from binder_trade.explained import NotDefined


def even(name: str, nominal: float, half: float, factor: float = 1) -> Link:
    return Link(name, nominal, half, -half, factor)


# Budynas and Nisbett, Shigley's Mechanical Engineering Design, example 1-3 (read), inches.
SLEEVES = (
    even("shank", 1.750, 0.003),
    even("b", 0.750, 0.001, -1),
    even("c", 0.120, 0.005, -1),
    even("d", 0.875, 0.001, -1),
)


def test_sleeves_on_a_shouldered_screw() -> None:
    found = chain(SLEEVES)
    assert found.nominal_mm == pytest.approx(0.005)
    assert (found.least_mm, found.most_mm) == pytest.approx((-0.005, 0.015))
    assert found.largest.name == "c"
    assert found.largest.share == pytest.approx(0.5)


def test_the_sleeve_made_in_house_to_keep_the_gap() -> None:
    # The same example, (b): for w ≥ 0.003 the basic size of d is 0.867 (with its ± 0.001).
    wanted = (0.003, 0.023)
    found = made_to_suit(chain(SLEEVES), "d", wanted)
    assert found.target_mm == pytest.approx(0.867)
    assert found.half_mm == pytest.approx(0.001)


# A page with a worked example of a stack-up (read), inches: three parts in a housing.
IN_HOUSING = (
    even("housing", 4.020, 0.005),
    even("a", 2.000, 0.005, -1),
    even("b", 1.500, 0.003, -1),
    even("c", 0.500, 0.002, -1),
)


def test_a_size_made_of_several_strays_likely_as_they_do_by_themselves() -> None:
    """The same page, two of its parts told as one: the likely band stays what it prints."""
    both = Link("a and b", 3.500, 0.008, -0.008, -1, of=(0.005, 0.003))
    found = chain((IN_HOUSING[0], both, IN_HOUSING[3]))
    assert (found.least_mm, found.most_mm) == pytest.approx((0.005, 0.035))
    assert (found.likely_most_mm - found.likely_least_mm) / 2 == pytest.approx(0.00794, abs=5e-6)
    assert sum(one.square_share for one in found.contributions) == pytest.approx(1.0)


def test_three_parts_in_a_housing() -> None:
    found = chain(IN_HOUSING)
    assert found.nominal_mm == pytest.approx(0.020)
    assert (found.least_mm, found.most_mm) == pytest.approx((0.005, 0.035))
    likely = (found.likely_most_mm - found.likely_least_mm) / 2
    assert likely == pytest.approx(0.00794, abs=5e-6)
    assert found.likely_least_mm == pytest.approx(0.012, abs=5e-4)
    assert found.likely_most_mm == pytest.approx(0.028, abs=5e-4)


@pytest.mark.parametrize(("count", "worst", "likely"), [(10, 1.0, 0.316), (5, 0.5, 0.22)])
def test_equal_links(count: int, worst: float, likely: float) -> None:
    # Pages on root sum square (read): ten of ± 0.1; five of ± 0.1, its root calculated.
    found = chain([even(f"link {n}", 10, 0.1) for n in range(count)])
    assert (found.most_mm - found.least_mm) / 2 == pytest.approx(worst)
    assert (found.likely_most_mm - found.likely_least_mm) / 2 == pytest.approx(likely, abs=5e-3)


def test_a_spacer_and_a_ring_in_a_bore() -> None:
    # A page with a worked example (inputs and the gap of 3.00 read; the sums made here).
    found = chain(
        [
            even("bore", 40, 0.1),
            even("spacer", 25, 0.05, -1),
            even("ring", 2, 0.03, -1),
            even("shoulder", 10, 0.05, -1),
        ]
    )
    assert found.nominal_mm == pytest.approx(3.0)
    assert (found.least_mm, found.most_mm) == pytest.approx((2.77, 3.23))
    assert found.likely_most_mm - 3 == pytest.approx(math.sqrt(0.0159))
    assert found.contributions[0].name == "bore"


def test_gear_centres_from_two_holes_and_a_bush() -> None:
    """A radius enters with half: centres, and half of what bush and shaft have as clearance."""
    found = chain([even("centres", 30, 0.05), Link("clearance", 0, 0.04, 0.01, 0.5)])
    assert found.nominal_mm == pytest.approx(30)
    assert (found.least_mm, found.most_mm) == pytest.approx((29.955, 30.07))


LINKS = st.lists(
    st.builds(
        lambda nominal, lower, width, factor: (nominal, lower, lower + width, factor),
        st.floats(1, 200),
        st.floats(-0.5, 0.5),
        st.floats(0, 0.5),
        st.sampled_from([1.0, -1.0, 0.5, -0.5]),
    ),
    min_size=1,
    max_size=8,
)


def made(rows: list[tuple[float, float, float, float]]) -> list[Link]:
    return [
        Link(f"link {n}", nominal, upper, lower, factor)
        for n, (nominal, lower, upper, factor) in enumerate(rows)
    ]


@given(LINKS, st.data())
def test_no_parts_within_limits_leave_the_worst_case(
    rows: list[tuple[float, float, float, float]], data: st.DataObject
) -> None:
    links = made(rows)
    found = chain(links)
    end = sum(
        one.factor * (one.nominal_mm + data.draw(st.floats(one.lower_mm, one.upper_mm)))
        for one in links
    )
    assert found.least_mm - 1e-9 <= end <= found.most_mm + 1e-9
    assert found.least_mm - 1e-9 <= found.likely_least_mm
    assert found.likely_most_mm <= found.most_mm + 1e-9


@given(LINKS)
def test_the_worst_case_is_reached(rows: list[tuple[float, float, float, float]]) -> None:
    links = made(rows)
    most = sum(
        max(one.factor * (one.nominal_mm + d) for d in (one.lower_mm, one.upper_mm))
        for one in links
    )
    assert chain(links).most_mm == pytest.approx(most)


@given(LINKS)
def test_shares_add_up_and_the_largest_comes_first(
    rows: list[tuple[float, float, float, float]],
) -> None:
    found = chain(made(rows)).contributions
    halves = [one.half_mm for one in found]
    assert halves == sorted(halves, reverse=True)
    if halves[0] > 1e-6:
        assert sum(one.share for one in found) == pytest.approx(1)
        assert sum(one.square_share for one in found) == pytest.approx(1)


@given(LINKS, st.floats(0.1, 5))
def test_the_suited_link_brings_the_end_between(
    rows: list[tuple[float, float, float, float]], width: float
) -> None:
    links = made(rows)
    others = sum(one.half_mm for one in links[1:])
    wanted = (1.0, 1.0 + 2 * others + width)
    found = made_to_suit(chain(links), "link 0", wanted)
    first = links[0]
    closed = Link("link 0", found.target_mm, found.half_mm, -found.half_mm, first.factor)
    end = chain([closed, *links[1:]])
    assert (end.least_mm, end.most_mm) == pytest.approx(wanted)


def float_of_a_shaft() -> Chain:
    return chain(
        [even("housing", 30, 0.1), even("collar", 8, 0.05, -1), even("washer", 21.85, 0.05, -1)]
    )


def test_measured_links_leave_room() -> None:
    whole = float_of_a_shaft()
    with pytest.raises(NotDefined):
        made_to_suit(whole, "washer", (0.1, 0.2))
    found = made_to_suit(whole, "washer", (0.1, 0.2), {"housing": 30.06, "collar": 8.02})
    assert found.target_mm == pytest.approx(30.06 - 8.02 - 0.15)
    assert found.half_mm == pytest.approx(0.05)
    assert found.sum_text == "washer = housing − collar − 0.15"


def test_a_link_that_opens_the_gap_is_made_last() -> None:
    found = made_to_suit(float_of_a_shaft(), "housing", (0.0, 0.4))
    assert found.target_mm == pytest.approx(8 + 21.85 + 0.2)
    assert found.sum_text == "housing = collar + washer + 0.2"


def test_one_sided_tolerances_move_the_middle() -> None:
    """A drum of 19 −0.2 between cheeks of 19.1 +0.1: 0.1 at the least, 0.4 at the most."""
    found = chain([Link("cheeks", 19.1, 0.1), Link("drum", 19, 0.0, -0.2, -1)])
    assert found.nominal_mm == pytest.approx(0.1)
    assert (found.least_mm, found.most_mm) == pytest.approx((0.1, 0.4))
    assert (found.likely_least_mm + found.likely_most_mm) / 2 == pytest.approx(0.25)


@pytest.mark.parametrize(
    "wrong",
    [
        [],
        [Link("a", 1), Link("a", 2)],
        [Link("a", 1, -0.1, 0.1)],
        [Link("a", 1, factor=0)],
        [Link("a", float("inf"))],
    ],
)
def test_what_is_no_chain(wrong: list[Link]) -> None:
    with pytest.raises(NotDefined):
        chain(wrong)


def test_a_link_that_is_not_there() -> None:
    with pytest.raises(NotDefined, match="not a link"):
        made_to_suit(float_of_a_shaft(), "shim", (0.1, 0.2))
