"""Plain series of drills: members, gaps and published sizes."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from itertools import pairwise
from typing import Any

import pytest

Reader = Callable[[str], Fraction]


def sizes(series: dict[str, Any], name: str, mm: Reader) -> list[Fraction]:
    return [mm(text) for text in series[name]["members"]]


def hundredths(*runs: range) -> list[Fraction]:
    return [Fraction(number, 100) for run in runs for number in run]


def test_drills_as_sold_have_no_gap(series: dict[str, Any], mm: Reader) -> None:
    # Common practice, no source: by 0.1 to 13, by 0.05 to 3, then the .25 and .75 sizes.
    fine, tenths, quarters = range(30, 300, 5), range(300, 1310, 10), range(325, 1300, 50)
    assert sizes(series, "metric_drills", mm) == sorted(hundredths(fine, tenths, quarters))


def test_the_basic_series_follows_its_rule(series: dict[str, Any], mm: Reader) -> None:
    # BS 328: tenths + 0, .02, .05, .08 to 0.98; by .05 to 2.95; by .1 to 13.9; by .25 to 25.
    below_one = [Fraction(10 * n + e, 100) for n in range(2, 10) for e in (0, 2, 5, 8)]
    above = hundredths(range(100, 300, 5), range(300, 1400, 10), range(1400, 2501, 25))
    assert sizes(series, "metric_drills_standard", mm) == below_one + above


@pytest.mark.parametrize(
    # BS 328, as described in two public tables.
    ("size", "member"),
    [
        ("0.32 mm", True),
        ("0.98 mm", True),
        ("1.05 mm", True),
        ("1.23 mm", False),
        ("2.05 mm", True),
        ("2.95 mm", True),
        ("3 mm", True),
        ("3.05 mm", False),
        ("3.25 mm", False),  # sold, though not of the basic series
        ("5.25 mm", False),  # sold, though not of the basic series
        ("7.1 mm", True),
        ("13.9 mm", True),
        ("13.95 mm", False),
        ("14.25 mm", True),
        ("20.5 mm", True),
    ],
)
def test_published_members_of_the_basic_series(
    series: dict[str, Any], size: str, *, member: bool
) -> None:
    assert (size in series["metric_drills_standard"]["members"]) is member


@pytest.mark.parametrize("size", ["3.25 mm", "5.25 mm", "8.75 mm", "12.75 mm"])
def test_sizes_that_are_sold_beside_the_basic_series(series: dict[str, Any], size: str) -> None:
    assert size in series["metric_drills"]["members"]


@pytest.mark.parametrize(
    # ISO 2306, drills for use before tapping: M1.4, M2.5 to M12, M10 x 1, M12 x 1.25, M6 x 0.75.
    "size",
    [1.1, 2.05, 2.5, 2.9, 3.3, 4.2, 5.0, 5.2, 8.5, 9.0, 10.2, 10.5, 10.8],
)
def test_tapping_drills_can_be_bought(series: dict[str, Any], mm: Reader, size: float) -> None:
    assert Fraction(str(size)) in sizes(series, "metric_drills", mm)


def test_fractions_go_by_sixty_fourths(series: dict[str, Any], mm: Reader) -> None:
    every = [Fraction(n, 64) * Fraction("25.4") for n in range(1, 33)]
    assert sizes(series, "fraction_drills", mm) == every


@pytest.mark.parametrize(
    # Exact: n/64 x 25.4, to four places.
    ("text", "millimetre"),
    [
        ("1/64 in", 0.3969),
        ("1/32 in", 0.7937),
        ("3/64 in", 1.1906),
        ("3/32 in", 2.3812),
        ("9/64 in", 3.5719),
        ("13/64 in", 5.1594),
        ("7/32 in", 5.5562),
        ("15/64 in", 5.9531),
        ("1/4 in", 6.35),
        ("27/64 in", 10.7156),
        ("29/64 in", 11.5094),
    ],
)
def test_published_fractions(
    series: dict[str, Any], mm: Reader, text: str, millimetre: float
) -> None:
    assert text in series["fraction_drills"]["members"]
    assert abs(float(mm(text)) - millimetre) <= 0.0001


def test_drills_grow(series: dict[str, Any], mm: Reader) -> None:
    for name in ("metric_drills", "metric_drills_standard", "fraction_drills"):
        assert all(a < b for a, b in pairwise(sizes(series, name, mm))), name
