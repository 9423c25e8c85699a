"""Names, neighbours and refusals of drills."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest

from binder_trade.drills import (
    SYSTEMS,
    Drill,
    NoDrill,
    all_drills,
    at_or_above,
    at_or_below,
    drill_named,
    nearest,
    reaming_drill,
    standard_drills,
)

OWNED = tuple(Drill(f"{size} mm", size, "owned") for size in (2.4, 2.5, 2.6))


@pytest.mark.parametrize(
    ("written", "name"),
    [
        ("3.3", "3.3 mm"),
        ("3.30 mm", "3.3 mm"),
        ("3.25 mm", "3.25 mm"),
        ("No. 34", "no. 34 drill"),
        ("#34", "no. 34 drill"),
        ("number drill 34", "no. 34 drill"),
        ("f", "letter F drill"),
        ("letter drill F", "letter F drill"),
        ("7/64", "7/64 in"),
        ('7/64"', "7/64 in"),
        ("14/64 in", "7/32 in"),
        ("33/64 in", "33/64 in"),
        ("1 1/64 in", "1 1/64 in"),
    ],
)
def test_a_drill_is_found_as_makers_write_it(written: str, name: str) -> None:
    assert drill_named(written).name == name


@pytest.mark.parametrize(
    "written", ["", "no. 0", "no. 81", "letter AA", "3.33 mm", "7/65 in", "7/0", "0/64", "9" * 99]
)
def test_a_name_of_no_drill_is_refused_with_a_way_out(written: str) -> None:
    with pytest.raises(NoDrill) as refused:
        drill_named(written)
    assert refused.value.reason
    assert refused.value.way_out


def test_a_name_is_looked_up_in_the_drills_that_are_given() -> None:
    assert drill_named("2.5", OWNED) is OWNED[1]
    with pytest.raises(NoDrill):
        drill_named("no. 34", OWNED)


def test_the_way_out_names_the_nearest_that_is_sold() -> None:
    with pytest.raises(NoDrill, match=r"3\.3 mm"):
        drill_named("3.33 mm")


@pytest.mark.parametrize("system", SYSTEMS)
def test_each_list_grows_and_every_drill_is_found_by_its_name(system: str) -> None:
    drills = standard_drills(system)
    assert all(first.mm < second.mm for first, second in pairwise(drills))
    assert all(drill_named(drill.name).mm == drill.mm for drill in drills)


def test_a_size_of_both_metric_lists_stands_once_among_all() -> None:
    names = [drill.name for drill in all_drills()]
    assert len(names) == len(set(names))
    assert len(names) > 250


def test_neighbours_of_a_size() -> None:
    assert nearest(2.54, OWNED) == OWNED[1]
    assert nearest(2.55, OWNED) == OWNED[2]  # as near: the larger spares the tap
    assert at_or_above(2.5, OWNED) == OWNED[1]
    assert at_or_above(2.51, OWNED) == OWNED[2]
    assert at_or_above(2.61, OWNED) is None
    assert at_or_below(2.49, OWNED) == OWNED[0]
    assert at_or_below(2.39, OWNED) is None
    assert nearest(2.5, ()) is None


@pytest.mark.parametrize("size", [math.nan, math.inf, -1.0, 0.0, 1e9])
def test_a_hole_that_no_drill_makes_is_refused(size: float) -> None:
    with pytest.raises(NoDrill):
        nearest(size, OWNED)
    with pytest.raises(NoDrill):
        reaming_drill(size, OWNED)


def test_a_drill_that_leaves_too_much_or_nothing_is_not_taken_for_reaming() -> None:
    with pytest.raises(NoDrill, match=r"4\.8 to 4\.9 mm"):
        reaming_drill(5.0, [Drill("4.5 mm", 4.5, "owned"), Drill("5 mm", 5.0, "owned")])


def test_reaming_shows_its_sum() -> None:
    chosen = reaming_drill(6.0, standard_drills("metric"))
    assert chosen.drill.name == "5.8 mm"
    assert [step.value for step in chosen.steps] == ["0.2 mm", "5.8 mm", "5.8 mm"]
    assert [drill.name for drill in chosen.others] == ["5.7 mm"]
