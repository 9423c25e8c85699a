"""Which drill is chosen before the tap, and why."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from binder_trade.drills import NoDrill, all_drills, standard_drills
from binder_trade.explained import NotDefined
from binder_trade.threading import (
    LEAST_PERCENT,
    MOST_PERCENT,
    drill_for_percent,
    listed,
    percent,
    tapping_drill,
    tapping_window,
)
from binder_trade.threads import Thread, all_threads

Named = Callable[[str], Thread]
METRIC = standard_drills("metric as sold")
TENTHS = [(f"{size / 10:g} mm", size / 10) for size in range(10, 131)]
FAMILIES = ("metric", "UNC", "UNF", "UNEF", "BSW", "BSF", "BSP", "BA", "ME", "brass")


def test_m3_prints_both_ways_of_counting(named: Named) -> None:
    # The two conventions differ by 1.2: M3 at 2.5 mm is 92 % on 5H/8 and 77 % on 3H/4.
    got = percent(named("M3"), 2.5)
    assert got.of_form == pytest.approx(92.4, abs=0.05)
    assert got.three_quarters == pytest.approx(77.0, abs=0.05)
    assert got.on_chart == got.three_quarters
    assert "77 % of 1.299 P" in got.basis
    assert "92 % of 1.0825 P" in got.basis


def test_whitworth_and_ba_have_one_way(named: Named) -> None:
    for name, drill in (("1/4 BSW", 5.1), ("2 BA", 4.0)):
        got = percent(named(name), drill)
        assert got.three_quarters is None
        assert got.on_chart == got.of_form


@pytest.mark.parametrize("basis", ["5H/8", "3H/4"])
def test_percent_and_drill_are_one_sum_both_ways(named: Named, basis: str) -> None:
    hole = drill_for_percent(named("M5"), 70, basis)
    got = percent(named("M5"), hole)
    assert (got.of_form if basis == "5H/8" else got.three_quarters) == pytest.approx(70)


def test_a_basis_of_another_form_is_refused(named: Named) -> None:
    with pytest.raises(NotDefined, match="full depth"):
        drill_for_percent(named("2 BA"), 70, "3H/4")


@pytest.mark.parametrize("hole", [3.0, 9.0, 0.0, -1.0, math.nan, math.inf])
def test_a_hole_that_leaves_nothing_to_tap_is_refused(named: Named, hole: float) -> None:
    with pytest.raises(NotDefined):
        percent(named("M3"), hole)


def test_the_nearest_owned_drill_stands_in_for_the_listed_one(named: Named) -> None:
    chosen = tapping_drill(named("M2.5"), TENTHS)
    assert chosen.wanted_mm == 2.05
    assert chosen.drill.name == "2.1 mm"  # as near as 2.0: the larger spares the tap
    assert "nearest to 2.05 mm" in chosen.why


def test_inch_drills_tap_a_metric_thread(named: Named) -> None:
    drills = (*standard_drills("number"), *standard_drills("fraction"))
    chosen = tapping_drill(named("M3"), drills)
    assert chosen.drill.name == "no. 40 drill"  # 2.489 mm, the nearest to 2.5
    assert chosen.others[0].drill.name == "no. 39 drill"


def test_a_drill_below_the_minor_diameter_is_never_taken(named: Named) -> None:
    with pytest.raises(NoDrill, match=r"2\.4 mm") as refused:
        tapping_drill(named("M3"), [("2.4 mm", 2.4), ("2.8 mm", 2.8)])
    assert "2.46 to 2.68 mm" in refused.value.way_out


def test_no_drill_at_all_is_said(named: Named) -> None:
    with pytest.raises(NoDrill, match="no drill here"):
        tapping_drill(named("M3"), [])


def test_only_far_larger_drills_are_said_to_leave_nothing(named: Named) -> None:
    with pytest.raises(NoDrill, match="leaves nothing to tap"):
        tapping_drill(named("M3"), [("4 mm", 4.0)])


@pytest.mark.parametrize(
    ("material", "least", "most"),
    # Shop table of depths by metal: per cent of full depth.
    [("mild steel", 60, 65), ("brass", 70, 70), ("stainless steel", 50, 50), ("cast iron", 70, 75)],
)
def test_without_a_standard_the_metal_decides(
    named: Named, material: str, least: float, most: float
) -> None:
    chosen = tapping_drill(named("2 BA"), [("exact", 4.0), *METRIC], material=material)
    aimed = percent(named("2 BA"), chosen.wanted_mm).of_form
    assert least - 1e-9 <= aimed <= most + 1e-9


def test_a_standard_keeps_its_drill_and_the_metal_is_an_alternative(named: Named) -> None:
    chosen = tapping_drill(named("M3"), METRIC, material="stainless steel")
    assert chosen.drill.name == "2.5 mm"
    assert chosen.others[0].drill.name == "2.65 mm"  # 3 - 0.5 x 1.299 x 0.5 = 2.675
    assert "50 % of thread that suits stainless steel" in chosen.others[0].why


def test_an_engagement_asked_outranks_the_list(named: Named) -> None:
    chosen = tapping_drill(named("M6"), METRIC, engagement=60)
    assert chosen.wanted_mm == pytest.approx(6 - 0.6 * 1.299038)
    assert chosen.drill.name == "5.2 mm"


@pytest.mark.parametrize("asked", [math.nan, math.inf, -5.0, 0.0, 500.0])
def test_an_engagement_that_is_none_is_refused(named: Named, asked: float) -> None:
    with pytest.raises(NotDefined):
        tapping_drill(named("M6"), METRIC, engagement=asked)


@pytest.mark.parametrize("family", FAMILIES)
def test_every_listed_drill_lies_in_the_window(family: str) -> None:
    for thread in all_threads(family):
        found = listed(thread)
        if found is not None:
            assert tapping_window(thread).holds(found.mm), (thread.designation, found)


@pytest.mark.parametrize("family", FAMILIES)
def test_every_thread_of_usual_size_gets_a_drill(family: str) -> None:
    for thread in all_threads(family):
        if not 0.5 < thread.major_mm < 25:
            continue
        chosen = tapping_drill(thread, all_drills())
        window = tapping_window(thread)
        assert (window.least_percent, window.most_percent) == (LEAST_PERCENT, MOST_PERCENT)
        assert chosen.percent.on_chart >= LEAST_PERCENT - 1e-6
        assert window.holds(chosen.drill.mm)
        assert chosen.drill.mm >= thread.minor_internal_mm - 1e-6
        assert chosen.steps


def test_every_unified_row_of_the_chart_belongs_to_a_thread() -> None:
    threads = [one for family in ("UNC", "UNF", "UNEF") for one in all_threads(family)]
    assert sum(listed(one) is not None for one in threads) >= 40
