"""Clearance holes from lists and by rule, and the drills for them."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder_trade.drills import NoDrill, all_drills, drill_named, standard_drills
from binder_trade.explained import NotDefined
from binder_trade.threading import FITS, clearance, clearance_drill
from binder_trade.threads import Thread, all_threads

Named = Callable[[str], Thread]


@pytest.mark.parametrize(
    # Machine screw clearance drills, close and free, as published in three charts.
    ("thread", "close", "free"),
    [
        ("0-80 UNF", "no. 52 drill", "no. 50 drill"),
        ("4-40 UNC", "no. 32 drill", "no. 30 drill"),
        ("10-32 UNF", "no. 9 drill", "no. 7 drill"),
        ("1/4-20 UNC", "letter F drill", "letter H drill"),
        ("1/2-13 UNC", "33/64 in", "17/32 in"),
    ],
)
def test_unified_clearance_drills(named: Named, thread: str, close: str, free: str) -> None:
    assert clearance(named(thread), "fine").mm == drill_named(close).mm
    assert clearance(named(thread), "medium").mm == drill_named(free).mm


@pytest.mark.parametrize(
    # List for model engineers, as published; no standard.
    ("thread", "size"),
    [("1/4 x 40 ME", 6.6), ("3/16 x 40 ME", 5.0), ("3/8 BSW", 9.8), ("1/2 x 26 brass", 13.1)],
)
def test_inch_clearance_holes(named: Named, thread: str, size: float) -> None:
    assert clearance(named(thread)).mm == size


def test_a_size_in_no_list_follows_a_rule_that_says_so(named: Named) -> None:
    got = clearance(named("M9"), "medium")
    assert got.mm == pytest.approx(9.9)
    assert "rule" in got.convention
    assert "no source" in got.source


@pytest.mark.parametrize("family", ["metric", "BA", "UNC", "UNF", "BSW", "BSF", "ME", "brass"])
def test_every_fit_clears_its_screw_and_coarse_is_no_smaller(family: str) -> None:
    for thread in all_threads(family):
        fine, medium, coarse = (clearance(thread, fit).mm for fit in FITS)
        assert thread.major_mm < fine <= medium <= coarse, thread.designation


def test_the_next_owned_drill_up_is_taken(named: Named) -> None:
    got = clearance_drill(named("M3"), [("3.3 mm", 3.3), ("3.5 mm", 3.5), ("4 mm", 4.0)])
    assert got.drill.name == "3.5 mm"
    assert got.gap_mm == pytest.approx(0.5)
    assert dict(got.others)["fine"].name == "3.3 mm"


def test_a_drill_far_above_is_not_taken(named: Named) -> None:
    with pytest.raises(NoDrill, match=r"3\.4 mm"):
        clearance_drill(named("M3"), [("3 mm", 3.0), ("4 mm", 4.0)])


def test_a_fit_of_another_name_is_refused(named: Named) -> None:
    with pytest.raises(NotDefined, match="fine, medium, coarse"):
        clearance(named("M3"), "sloppy")


def test_2_ba_in_number_drills(named: Named) -> None:
    # 4.9 mm published: the next number drill up is no. 10, 4.915 mm, which the list has too.
    got = clearance_drill(named("2 BA"), standard_drills("number"))
    assert got.drill.name == "no. 10 drill"


def test_metric_holes_are_found_among_all_drills(named: Named) -> None:
    assert clearance_drill(named("M6"), all_drills()).drill.name == "6.6 mm"
