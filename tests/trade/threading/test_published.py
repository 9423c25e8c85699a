"""Threading against published figures, each with its source in published.yaml."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
import yaml

from binder_trade.drills import all_drills, drill_named, standard_drills
from binder_trade.threading import (
    best_wire,
    clearance,
    clearance_drill,
    constants,
    drill_for_percent,
    length_of_engagement,
    metal,
    over_wires,
    percent,
    published,
    tapping_drill,
)
from binder_trade.threads import Thread, all_threads

TABLE: dict[str, Any] = yaml.safe_load(
    Path(__file__).with_name("published.yaml").read_text(encoding="utf-8")
)
INCH = 25.4
METRIC = standard_drills("metric as sold")
ANGLES = {60.0: "metric", 55.0: "BSW", 47.5: "BA"}
Named = Callable[[str], Thread]
Row = dict[str, Any]


def rows(*topics: str) -> pytest.MarkDecorator:
    found = [row for topic in topics for row in TABLE[topic]["rows"]]
    return pytest.mark.parametrize(
        "row", found, ids=lambda row: " ".join(map(str, row["in"].values()))
    )


@rows("iso_tapping_drill")
def test_metric_tapping_drills(row: Row, named: Named) -> None:
    chosen = tapping_drill(named(row["in"]["thread"]), METRIC)
    assert abs(chosen.drill.mm - row["out"]["drill_mm"]) <= row["within"]
    assert "ISO 2306" in chosen.source


@rows("un_tapping_drill")
def test_unified_tapping_drills(row: Row, named: Named) -> None:
    chosen = tapping_drill(named(row["in"]["thread"]), all_drills())
    assert chosen.drill == drill_named(row["out"]["drill"])
    assert abs(chosen.drill.mm / INCH - row["out"]["drill_in"]) <= row["within"]


@rows("whitworth_tapping_drill")
def test_whitworth_tapping_drills(row: Row, named: Named) -> None:
    thread = named(row["in"]["thread"])
    chosen = tapping_drill(thread, METRIC)
    assert abs(chosen.drill.mm - row["out"]["drill_mm"]) <= row["within"]
    assert 70 <= chosen.percent.of_form <= 90


@rows("ba_tapping_drill")
def test_ba_tapping_drills(row: Row, named: Named) -> None:
    thread = named(row["in"]["thread"])
    chosen = tapping_drill(thread, METRIC)
    assert abs(chosen.drill.mm - row["out"]["drill_mm"]) <= row["within"]
    assert 60 <= chosen.percent.of_form <= 85
    if "clearance_mm" in row["out"]:
        assert abs(clearance(thread).mm - row["out"]["clearance_mm"]) <= row["within"]


@rows("me_tapping_drill")
def test_model_engineers_tapping_drills(row: Row, named: Named) -> None:
    thread = named(row["in"]["thread"])
    chosen = tapping_drill(thread, METRIC)
    assert abs(chosen.drill.mm - row["out"]["drill_mm"]) <= row["within"] + 1e-9
    assert 60 <= chosen.percent.of_form <= 90
    (listed,) = published(thread)
    assert listed.mm == pytest.approx(row["out"]["drill_mm"])


@rows("bsp_tapping_drill")
def test_pipe_tapping_drills(row: Row, named: Named) -> None:
    thread = named(row["in"]["thread"])
    chosen = tapping_drill(thread, standard_drills("metric"))
    assert abs(chosen.drill.mm - row["out"]["drill_mm"]) <= row["within"]


@rows("thread_percent")
def test_percent_of_thread_on_its_stated_basis(row: Row, named: Named) -> None:
    given = row["in"]
    hole = given.get("drill_mm") or given["drill_in"] * INCH
    got = percent(named(given["thread"]), hole)
    figure = got.three_quarters if "3H/4" in given["convention"] else got.of_form
    assert figure == pytest.approx(row["out"]["percent"], abs=row["within"])


@rows("drill_for_percent")
def test_drill_for_a_percent(row: Row, named: Named) -> None:
    hole = drill_for_percent(named(row["in"]["thread"]), row["in"]["percent"])
    assert abs(hole - row["out"]["drill_mm"]) <= row["within"]


@rows("iso273_clearance")
def test_metric_clearance_holes(row: Row, named: Named) -> None:
    thread = named(row["in"]["thread"])
    for fit in ("fine", "medium", "coarse"):
        assert clearance(thread, fit).mm == row["out"][f"{fit}_mm"]


@rows("ba_number_drills")
def test_ba_by_number_drills(row: Row, named: Named) -> None:
    thread = named(row["in"]["thread"])
    names = [listed.name for listed in published(thread)]
    assert drill_named(row["out"]["tap"]).name in names
    numbers = standard_drills("number")
    assert clearance_drill(thread, numbers, "fine").drill == drill_named(row["out"]["clear"])


@rows("three_wire", "three_wire_books")
def test_size_over_three_wires(row: Row, named: Named) -> None:
    thread, given, out = named(row["in"]["thread"]), row["in"], row["out"]
    if "wire_in" in given:
        got, wanted = over_wires(thread, given["wire_in"] * INCH), out["over_wires_in"] * INCH
        assert abs(got.over_mm - wanted) <= row["within"] * INCH
    else:
        assert (
            abs(over_wires(thread, given["wire_mm"]).over_mm - out["over_wires_mm"])
            <= row["within"]
        )


@rows("three_wire_constant")
def test_three_wire_constants(row: Row) -> None:
    family = "UNC" if row["in"]["form"] == "60 deg" else "BSW"
    figures = constants(all_threads(family)[0].form)
    assert abs(figures.pitch / row["in"]["tpi"] - row["out"]["value_in"]) <= row["within"]


@rows("best_wire")
def test_best_wire(row: Row) -> None:
    family = ANGLES[row["in"]["angle_deg"]]
    figures = constants(all_threads(family)[0].form)
    wire = figures.best * row["in"]["pitch_mm"]
    assert abs(wire - row["out"]["best_wire_mm"]) <= row["within"]


@rows("engagement")
def test_length_of_engagement(row: Row, named: Named) -> None:
    got = length_of_engagement(named(row["in"]["thread"]))
    assert abs(got - row["out"]["Le_mm"]) <= row["within"]


@rows("engagement_rule")
def test_engagement_by_rule_of_thumb(row: Row) -> None:
    kind = metal(row["in"]["material"])
    assert kind is not None
    assert kind.times_d == row["out"]["times_d"]


def test_the_best_wire_of_a_thread_is_in_its_own_pitch(named: Named) -> None:
    # 0.57735 P, handbook.
    assert best_wire(named("M6")) == pytest.approx(0.57735, abs=1e-5)
    # P.C. Sharma, example 17.2: 1.444 mm for M20.
    assert best_wire(named("M20")) == pytest.approx(1.444, abs=1e-3)
