"""Bars, sheet, tube, wire and reamers as sold: written as makers write, and ever larger."""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction
from itertools import pairwise
from typing import Any

import pytest

Reader = Callable[[str], Fraction]
Tables = dict[str, Any]

WANTED = {
    "drawn_rod", "drawn_rod_inch", "silver_steel", "silver_steel_inch", "hexagon", "hexagon_inch",
    "hexagon_bsf", "hexagon_ba", "square", "square_inch", "sheet", "wire", "reamers",
    "reamers_inch", "r10", "r20", "r40",
}  # fmt: skip
FRACTION = re.compile(r"(?:[0-9]+|(?:[0-9]+ )?[0-9]+/[0-9]+) in")


def whole(text: str, mm: Reader) -> tuple[Fraction, Fraction]:
    first, second = text.split(" x ")
    return mm(first), mm(second)


def test_the_series_that_are_asked_for_are_there(
    series: Tables, pairs: Tables, by_gauge: Tables
) -> None:
    assert set(series) >= WANTED
    assert {"flat", "flat_inch", "tube", "tube_inch"} <= set(pairs)
    assert "sheet_swg" in by_gauge


def test_every_series_grows(series: Tables, mm: Reader) -> None:
    for name, row in series.items():
        assert all(a < b for a, b in pairwise(map(mm, row["members"]))), name


def test_no_step_of_stock_is_wild(series: Tables, mm: Reader) -> None:
    # A member left out, or a slipped point, shows as a jump to more than double.
    for name, row in series.items():
        assert all(b <= 2 * a for a, b in pairwise(map(mm, row["members"]))), name


def test_a_series_is_of_one_unit(series: Tables) -> None:
    for name, row in series.items():
        assert len({text.rpartition(" ")[2] for text in row["members"] if " " in text}) <= 1, name


def test_fractions_of_an_inch_are_in_lowest_terms(series: Tables, pairs: Tables) -> None:
    members = [
        text for name, row in series.items() if name.endswith("_inch") for text in row["members"]
    ]
    members += [half for text in pairs["flat_inch"]["members"] for half in text.split(" x ")]
    for text in members:
        assert FRACTION.fullmatch(text), text
        part = text.removesuffix(" in").rpartition(" ")[2]
        assert str(Fraction(part)) == part, text


def test_pairs_grow_and_stand_once(pairs: Tables, mm: Reader) -> None:
    for name, row in pairs.items():
        sizes = [whole(text, mm) for text in row["members"]]
        assert all(a < b for a, b in pairwise(sizes)), name


def test_flats_are_wider_than_thick(pairs: Tables, mm: Reader) -> None:
    for name in ("flat", "flat_inch", "gauge_plate"):
        assert all(w > t for w, t in (whole(text, mm) for text in pairs[name]["members"])), name


def test_tubes_have_a_hole(pairs: Tables, mm: Reader) -> None:
    for name in ("tube", "tube_inch"):
        assert all(d > 2 * w for d, w in (whole(text, mm) for text in pairs[name]["members"])), name


def test_series_by_gauge_name_gauges_and_thin_out(
    by_gauge: Tables, gauges: Tables, mm: Reader
) -> None:
    for row in by_gauge.values():
        members = gauges[row["gauge"]]["members"]
        sizes = [mm(members[gauge]) for gauge in row["members"]]
        assert all(thick > thin for thick, thin in pairwise(sizes)), row["name"]


@pytest.mark.parametrize(
    # Usual ranges of suppliers, from memory: a smoke test that nothing common is missing.
    ("name", "sizes"),
    [
        ("drawn_rod", "2 3 4 5 6 8 10 12 14 15 16 18 20 22 25 28 30 32 35 40 45 50"),
        ("drawn_rod", "2 3 4 5 6 7 8 10 12 14 15 16 18 20 22 25 30 35 40 50"),
        ("silver_steel", "1 1.5 2 2.5 3 4 5 6 7 8 9 10 11 12 13 14 15 16 18 20 25"),
        ("square", "3 4 5 6 8 10 12 16 20 25"),
        ("reamers", "1.5 2 2.5 3 4 5 6"),
    ],
)
def test_common_metric_sizes_are_there(series: Tables, name: str, sizes: str) -> None:
    assert {f"{size} mm" for size in sizes.split()} <= set(series[name]["members"])


def test_common_inch_rod_is_there(series: Tables) -> None:
    # Usual ranges of suppliers, from memory.
    common = ["1/8", "3/16", "1/4", "5/16", "3/8", "7/16", "1/2", "9/16", "5/8", "3/4", "7/8"]
    common += ["1", "1 1/4", "1 1/2", "2"]
    assert {f"{size} in" for size in common} <= set(series["drawn_rod_inch"]["members"])


@pytest.mark.parametrize("size", ["0.525 in", "0.600 in", "0.820 in"])
def test_hexagons_for_whitworth_heads(series: Tables, size: str) -> None:
    # BS 1083: 5/16, 3/8 and 1/2 BSW with the reduced hexagon.
    assert size in series["hexagon_bsf"]["members"]


def test_hexagons_for_ba_heads(series: Tables, mm: Reader) -> None:
    # BS 57: 1.75 times the diameter; BS 93 diameters of 10 BA to 0 BA in mm.
    diameters = [1.7, 1.9, 2.2, 2.5, 2.8, 3.2, 3.6, 4.1, 4.7, 5.3, 6.0]
    widths = [float(mm(text)) / 25.4 for text in series["hexagon_ba"]["members"]]
    for width, diameter in zip(widths, diameters, strict=True):
        assert abs(width - 1.75 * diameter / 25.4) <= 0.0006
