"""Drills against published sizes, each with its source in published.yaml."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import yaml

from binder_trade.drills import (
    allowance,
    drill_named,
    is_member,
    reaming_drill,
    standard_drills,
)

TABLE: dict[str, Any] = yaml.safe_load(
    Path(__file__).with_name("published.yaml").read_text(encoding="utf-8")
)
INCH = 25.4


def rows(topic: str) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = TABLE[topic]["rows"]
    return found


GAUGED = [
    row for topic in ("number_drill", "letter_drill", "fractional_drill") for row in rows(topic)
]


@pytest.mark.parametrize("row", GAUGED, ids=lambda row: row["in"]["drill"])
def test_a_drill_by_name_has_its_published_size(row: dict[str, Any]) -> None:
    drill = drill_named(row["in"]["drill"])
    assert abs(drill.mm / INCH - row["out"]["dia_in"]) <= row["within"]["dia_in"]
    assert abs(drill.mm - row["out"]["dia_mm"]) <= row["within"]["dia_mm"]


@pytest.mark.parametrize(
    "row", rows("metric_drill_series"), ids=lambda row: str(row["in"]["dia_mm"])
)
def test_the_basic_metric_series_has_its_published_members(row: dict[str, Any]) -> None:
    assert is_member(row["in"]["dia_mm"]) is row["out"]["member"]


@pytest.mark.parametrize(
    "row", rows("reaming_allowance"), ids=lambda row: str(row["in"]["hole_mm"])
)
def test_what_is_left_to_ream_lies_in_the_published_range(row: dict[str, Any]) -> None:
    left = allowance(row["in"]["hole_mm"])
    least, most = row["out"]["min_mm"], row["out"]["max_mm"]
    assert (left.least_mm, left.most_mm) == (least, most)
    assert least <= left.usual_mm <= most


@pytest.mark.parametrize("row", rows("reaming_drill"), ids=lambda row: str(row["in"]["hole_mm"]))
def test_the_drill_before_a_reamer_is_the_customary_one(row: dict[str, Any]) -> None:
    chosen = reaming_drill(row["in"]["hole_mm"], standard_drills("metric"))
    assert abs(chosen.drill.mm - row["out"]["drill_mm"]) <= row["within"]
