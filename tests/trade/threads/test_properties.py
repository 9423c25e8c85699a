"""What holds for every thread, listed or cut to a maker's wish."""

from __future__ import annotations

from math import pi

from hypothesis import given
from hypothesis import strategies as st

from binder_trade.threads import (
    NotMade,
    Thread,
    all_threads,
    is_alike,
    is_listed,
    is_same,
    limits,
    lookalikes,
    mates,
    thread,
)
from binder_trade.threads.basic import FAMILIES

LISTED = [one for family in FAMILIES for one in all_threads(family)]
any_thread = st.sampled_from(LISTED)
sizes = st.floats(allow_nan=True, allow_infinity=True) | st.integers(-5, 100)
# Rounding of the last figure of a float.
DUST = 1e-9


@given(any_thread)
def test_a_thread_is_thinner_the_deeper_one_measures(one: Thread) -> None:
    assert 0 < one.minor_external_mm <= one.minor_internal_mm + DUST
    assert one.minor_internal_mm < one.effective_mm < one.major_mm
    assert one.depth_mm < one.pitch_mm < one.major_mm
    assert one.minor_external_mm + 2 * one.depth_mm - one.major_mm < DUST


@given(any_thread)
def test_the_stress_area_lies_between_core_and_effective_circle(one: Thread) -> None:
    core, effective = (pi / 4 * size**2 for size in (one.minor_external_mm, one.effective_mm))
    assert core < one.stress_area_mm2 < effective


@given(any_thread)
def test_limits_are_in_order(one: Thread) -> None:
    screw, nut = limits(one), limits(one, is_internal=True)
    assert screw.major_max is not None
    assert screw.major_min < screw.major_max <= one.major_mm <= nut.major_min
    assert screw.effective_min < screw.effective_max <= one.effective_mm
    assert nut.minor_min is not None
    assert one.effective_mm <= nut.effective_min < nut.effective_max
    assert one.minor_internal_mm <= nut.minor_min < nut.minor_max < nut.major_min
    assert screw.minor_max < screw.effective_max < screw.major_max


@given(any_thread)
def test_a_screw_at_its_largest_enters_the_nut_at_its_smallest(one: Thread) -> None:
    screw, nut = limits(one), limits(one, is_internal=True)
    assert screw.effective_max <= nut.effective_min
    assert nut.minor_min is not None
    assert screw.minor_max <= nut.minor_min + DUST


@given(any_thread)
def test_a_screw_at_its_smallest_still_holds_in_the_nut_at_its_largest(one: Thread) -> None:
    screw, nut = limits(one), limits(one, is_internal=True)
    assert screw.major_min > nut.minor_max


@given(any_thread, any_thread)
def test_likeness_is_mutual_and_bears_out_mating(one: Thread, other: Thread) -> None:
    assert is_alike(one, other) == is_alike(other, one)
    assert mates(one, other).is_mating == mates(other, one).is_mating == is_alike(one, other)
    assert is_same(one, other) == (one == other)


@given(any_thread)
def test_no_thread_is_its_own_lookalike(one: Thread) -> None:
    assert not any(is_alike(one, other) for other in lookalikes(one))


@given(st.sampled_from([*FAMILIES, "ACME", ""]), sizes, sizes | st.none())
def test_any_size_gives_a_sound_thread_or_a_reason(
    family: str, major: float, pitch: float | None
) -> None:
    one = asked(family, major, pitch_mm=pitch)
    if isinstance(one, NotMade):
        assert one.reason
        assert one.way_out
    else:
        assert 0 < one.minor_external_mm < one.effective_mm < one.major_mm


@given(
    st.sampled_from(["metric", "ME", "brass", "UNS"]),
    st.integers(1, 128).map(lambda parts: parts * 25.4 / 64) | st.integers(1, 68),
    st.sampled_from([0.2, 0.25, 0.35, 0.5, 0.75, 1, 1.5, 2, 3])
    | st.integers(4, 80).map(lambda count: 25.4 / count),
)
def test_what_is_cut_to_a_wish_keeps_a_core(family: str, major: float, pitch: float) -> None:
    one = asked(family, major, pitch_mm=pitch)
    if isinstance(one, Thread):
        assert is_listed(one) or one.minor_external_mm >= 0.6 * one.major_mm - DUST


@given(
    st.sampled_from([*FAMILIES]),
    st.text(max_size=12) | st.integers(-5, 30).map(str),
    st.integers(-5, 100) | st.none(),
)
def test_any_name_gives_a_thread_or_a_reason(family: str, number: str, tpi: int | None) -> None:
    one = asked(family, number=number, tpi=tpi)
    if isinstance(one, NotMade):
        assert one.way_out
    else:
        assert is_listed(one) or one.family == "UNS"


def asked(
    family: str,
    major: float | None = None,
    *,
    number: str = "",
    pitch_mm: float | None = None,
    tpi: int | None = None,
) -> Thread | NotMade:
    """The thread, or why it is not made; any other fault fails the test."""
    try:
        return thread(family, major, number, pitch_mm, tpi)
    except NotMade as refused:
        return refused
