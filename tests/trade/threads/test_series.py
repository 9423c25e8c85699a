"""What is made, what is not, and how a thread is called."""

from __future__ import annotations

import math
from collections.abc import Callable
from fractions import Fraction

import pytest

from binder_trade.threads import NotMade, Thread, all_threads, choice, is_listed, thread
from binder_trade.threads.basic import FAMILIES

Named = Callable[[str], Thread]
# Half threads to the inch: the designation is not one that the product reads.
HALF_COUNTED = {"2-4 1/2 UNC"}


@pytest.mark.parametrize("family", FAMILIES)
def test_each_name_means_one_thread_and_is_read_back(family: str, named: Named) -> None:
    listed = all_threads(family)
    assert len({one.designation for one in listed}) == len(listed)
    for one in listed:
        if one.designation not in HALF_COUNTED:
            assert named(one.designation) == one


@pytest.mark.parametrize("family", FAMILIES)
def test_the_list_goes_from_thin_to_thick_without_doubles(family: str) -> None:
    sizes = [(one.major_mm, -one.pitch_mm) for one in all_threads(family)]
    assert sizes == sorted(set(sizes))


@pytest.mark.parametrize("family", [one for one in FAMILIES if one != "UNS"])
def test_no_diameter_has_two_usual_pitches(family: str) -> None:
    usual = [one.major_mm for one in all_threads(family) if one.is_coarse]
    assert len(usual) == len(set(usual))


@pytest.mark.parametrize(
    ("family", "count", "first", "last"),
    [
        # ISO 261 to M68 with three retired sizes; BS 93; ISO 228-1.
        ("BA", 17, "16 BA", "0 BA"),
        ("BSP", 24, "G 1/16", "G 6"),
        ("UNC", 25, "1-64 UNC", "2-4 1/2 UNC"),
        ("UNF", 24, "0-80 UNF", "1 1/2-12 UNF"),
        ("BSW", 22, "1/16 BSW", "2 BSW"),
        ("BSF", 22, "3/16 BSF", "2 BSF"),
        ("brass", 18, "1/8 x 26 brass", "2 x 26 brass"),
    ],
)
def test_a_series_runs_from_its_first_to_its_last(
    family: str, count: int, first: str, last: str
) -> None:
    listed = all_threads(family)
    assert (len(listed), listed[0].designation, listed[-1].designation) == (count, first, last)


def test_the_metric_list_has_every_diameter_of_iso_261_up_to_m68() -> None:
    # Number of diameters: 21 of first, 17 of second and 17 of third choice (ISO 261), and
    # three retired ones.
    choices = [choice(one) for one in _one_of_each(all_threads("metric"))]
    assert [choices.count(which) for which in (1, 2, 3)] == [21, 17, 20]


def _one_of_each(threads: tuple[Thread, ...]) -> list[Thread]:
    return list({one.major_mm: one for one in threads}.values())


@pytest.mark.parametrize(
    ("text", "reason", "way_out"),
    [
        ("M6 x 3", "nobody makes M6 with a pitch of 3 mm", "write M6 or M6 x 0.75"),
        ("M7.3", "nobody makes M7.3", "the nearest is M7 or M8"),
        ("M15", "M15 has no usual pitch", "write M15 x 1.5 or M15 x 1"),
        ("M80", "nobody makes M80", "the nearest is M68"),
        ("17 BA", "no BA thread is called '17'", "sizes run from 16 BA to 0 BA"),
        (
            "1/4-21 UNC",
            "nobody makes 1/4 in UNC with 21 threads to the inch",
            "write 1/4-20 UNC",
        ),
        (
            "1/4-28 UNC",
            "nobody makes 1/4 in UNC with 28 threads to the inch",
            "1/4-28 UNF has that pitch; or write 1/4-20 UNC",
        ),
        ("1/4-20 UNS", "1/4-20 UNS is not a special: UNC has it", "write 1/4-20 UNC"),
        (
            "1/2 x 26 ME",
            "nobody makes 1/2 in ME with 26 threads to the inch",
            "1/2 x 26 brass has that pitch; or write 1/2 x 32 ME or 1/2 x 40 ME",
        ),
        ("no. 7-40 UNC", "nobody makes no. 7 UNC", "the nearest is 6-32 UNC or 8-32 UNC"),
        ("G 1/3", "no BSP thread is called '1/3'", "sizes run from G 1/16 to G 6"),
    ],
)
def test_a_thread_that_nobody_makes_says_what_is_made(
    text: str, reason: str, way_out: str, named: Named
) -> None:
    with pytest.raises(NotMade) as refused:
        named(text)
    assert (refused.value.reason, refused.value.way_out) == (reason, way_out)


@pytest.mark.parametrize(
    ("text", "pitch_mm"),
    [("M6 x 0.5", 0.5), ("21/64 x 40 ME", 0.635), ("5/32 x 26", 25.4 / 26), ("1/2-16 UNS", 1.5875)],
)
def test_what_can_be_cut_is_made_though_no_list_has_it(
    text: str, pitch_mm: float, named: Named
) -> None:
    one = named(text)
    assert one.pitch_mm == pytest.approx(pitch_mm)
    assert not is_listed(one)
    assert not one.is_coarse


def test_one_and_two_are_inches_where_no_numbered_size_has_the_pitch(named: Named) -> None:
    assert named("1-24 UNS").major_mm == pytest.approx(25.4)
    assert named("1-64 UNC").major_mm == pytest.approx(0.073 * 25.4)
    with pytest.raises(NotMade, match=r"no\. 1 UNC"):
        named("1-40 UNC")


def test_a_left_hand_thread_has_the_same_sizes(named: Named) -> None:
    left, right = named("5/16-18 UNC LH"), named("5/16-18 UNC")
    assert left.is_left_hand
    assert left.designation == "5/16-18 UNC LH"
    assert left.effective_mm == right.effective_mm
    assert is_listed(left)


def test_a_size_may_be_asked_for_by_number_or_by_diameter() -> None:
    by_number = thread("UNC", number="4", tpi=40)
    by_diameter = thread("UNC", Fraction(112, 1000) * Fraction("25.4"))
    assert by_number == by_diameter
    assert thread("UNC", 6.35, " ") == thread("UNC", 6.35)
    assert thread("UNC", 6.35, pitch_mm=1.27) == thread("UNC", 6.35, tpi=20)


@pytest.mark.parametrize("bad", [0.0, -1.0, math.nan, math.inf, 1e-300, 1e300, 10**400])
def test_what_is_no_size_is_refused(bad: float) -> None:
    for family in FAMILIES:
        with pytest.raises(NotMade):
            thread(family, bad)
        with pytest.raises(NotMade):
            thread(family, 6.35, pitch_mm=bad)


@pytest.mark.parametrize("tpi", [0, -20, 10**400])
def test_what_is_no_count_of_threads_is_refused(tpi: int) -> None:
    with pytest.raises(NotMade):
        thread("UNC", 6.35, tpi=tpi)


def test_nonsense_is_refused() -> None:
    for family, number in (("BSW", "4"), ("UNC", "x"), ("UNC", "99"), ("BA", "two"), ("ME", "")):
        with pytest.raises(NotMade):
            thread(family, number=number)
    with pytest.raises(NotMade, match="there is no family"):
        thread("trapezoidal", 8)
    with pytest.raises(NotMade, match="not both"):
        thread("UNC", 6.35, pitch_mm=1, tpi=20)
