"""What holds for every thread, drill and length, whatever is asked."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from binder_trade.drills import NoDrill
from binder_trade.explained import NotDefined
from binder_trade.threading import (
    blind,
    clearance,
    clearance_drill,
    drill_for_percent,
    full_thread_in,
    over_wires,
    percent,
    screwcutting,
    substitutes,
    tapping_drill,
    tapping_window,
    usable_wires,
)
from binder_trade.threads import Thread, all_threads

FAMILIES = ("metric", "UNC", "UNF", "UNEF", "BSW", "BSF", "BSP", "BA", "ME", "brass")
THREADS = [thread for family in FAMILIES for thread in all_threads(family)]
thread = st.sampled_from(THREADS)
sizes = st.floats(allow_nan=True, allow_infinity=True)
drills = st.lists(st.tuples(st.just("owned"), sizes), max_size=8)


@given(thread, st.floats(1, 120))
def test_percent_and_hole_are_one_sum_both_ways(one: Thread, wanted: float) -> None:
    hole = drill_for_percent(one, wanted)
    assert percent(one, hole).on_chart == pytest.approx(wanted)


@settings(max_examples=200)
@given(thread, drills)
def test_a_drill_is_chosen_in_the_window_or_refused(
    one: Thread, owned: list[tuple[str, float]]
) -> None:
    window = tapping_window(one)
    serving = [mm for _, mm in owned if window.holds(mm)]
    if not serving:
        with pytest.raises(NoDrill):
            tapping_drill(one, owned)
        return
    chosen = tapping_drill(one, owned)
    gaps = [abs(mm - chosen.wanted_mm) for mm in serving]
    assert chosen.drill.mm in serving
    assert abs(chosen.drill.mm - chosen.wanted_mm) <= min(gaps) + 1e-6


@given(thread, drills, st.sampled_from(("fine", "medium", "coarse")))
def test_a_clearance_drill_clears_or_is_refused(
    one: Thread, owned: list[tuple[str, float]], fit: str
) -> None:
    wanted = clearance(one, fit).mm
    serving = [mm for _, mm in owned if wanted <= mm <= wanted + 0.3]
    if not serving:
        with pytest.raises(NoDrill):
            clearance_drill(one, owned, fit)
        return
    assert clearance_drill(one, owned, fit).drill.mm == min(serving)
    assert min(serving) > one.major_mm


@given(thread, sizes, st.sampled_from(("taper", "second", "plug")))
def test_a_blind_hole_gives_back_its_thread(one: Thread, depth: float, tap: str) -> None:
    if not 1e-6 <= depth <= 1e6:
        with pytest.raises(NotDefined):
            blind(one, depth, tap)
        return
    found = blind(one, depth, tap)
    assert found.tip_mm > found.drill_mm > depth
    if found.drill_mm <= 1e6:
        assert full_thread_in(one, found.drill_mm, tap) == pytest.approx(depth, abs=1e-6)


@given(thread)
def test_the_best_wire_can_be_used(one: Thread) -> None:
    wires = usable_wires(one)
    assert wires.least_mm < wires.best_mm < wires.most_mm
    assert over_wires(one, wires.best_mm).over_mm > one.major_mm


@given(thread)
def test_screwcutting_figures_agree(one: Thread) -> None:
    figures = screwcutting(one)
    for infeed in figures.infeeds:
        assert infeed.along_slide_mm > infeed.depth_mm
    assert figures.groove_diameter_mm < one.minor_external_mm
    assert figures.die_blank_mm < one.major_mm


@settings(max_examples=50)
@given(thread, st.lists(thread, max_size=6))
def test_substitutes_that_serve_come_first(asked: Thread, owned: list[Thread]) -> None:
    found = substitutes(asked, owned)
    serving = [one.serves for one in found]
    assert serving == sorted(serving, reverse=True)
    assert all(one.area_ratio >= 0.9 for one in found if one.serves)
