"""Preferred numbers: the published decades, and the rule from which they come."""

from __future__ import annotations

import math
from typing import Any

import pytest

R20 = "1.0 1.12 1.25 1.4 1.6 1.8 2.0 2.24 2.5 2.8 3.15 3.55 4.0 4.5 5.0 5.6 6.3 7.1 8.0 9.0"
R20_ROUNDED = "1 1.1 1.25 1.4 1.6 1.8 2 2.2 2.5 2.8 3.2 3.6 4 4.5 5 5.6 6.3 7.1 8 9"
R40_ROUNDED = (
    "1 1.05 1.1 1.2 1.25 1.3 1.4 1.5 1.6 1.7 1.8 1.9 2 2.1 2.2 2.4 2.5 2.6 2.8 3 3.2 3.4 3.6 3.8"
    " 4 4.2 4.5 4.8 5 5.3 5.6 6 6.3 6.7 7.1 7.5 8 8.5 9 9.5"
)
R10_COARSE = "1 1.2 1.5 2 2.5 3 4 5 6 8"  # one public table leaves out the 6
R20_COARSE = "1 1.1 1.2 1.4 1.6 1.8 2 2.2 2.5 2.8 3 3.5 4 4.5 5 5.5 6 7 8 9"


def numbers(series: dict[str, Any], name: str) -> list[float]:
    return [float(text) for text in series[name]["members"]]


@pytest.mark.parametrize(
    ("name", "published"),
    [
        ("r5", "1 1.6 2.5 4 6.3"),  # ISO 3
        ("r10", "1 1.25 1.6 2 2.5 3.15 4 5 6.3 8"),  # ISO 3
        ("r20", R20),  # ISO 3
        ("r20_rounded", R20_ROUNDED),  # ISO 497
        ("r40_rounded", R40_ROUNDED),  # ISO 497
        ("r10_coarse", R10_COARSE),  # ISO 497
        ("r20_coarse", R20_COARSE),  # ISO 497
    ],
)
def test_published_decades(series: dict[str, Any], name: str, published: str) -> None:
    assert numbers(series, name) == [float(text) for text in published.split()]


@pytest.mark.parametrize(("name", "count"), [("r5", 5), ("r10", 10), ("r20", 20), ("r40", 40)])
def test_members_are_rounded_from_the_geometric_series(
    series: dict[str, Any], name: str, count: int
) -> None:
    # ISO 3: the rounded values differ from 10^(i/n) by no more than 1.3 %.
    decade = numbers(series, name)
    assert len(decade) == count
    for place, number in enumerate(decade):
        assert math.isclose(number, 10 ** (place / count), rel_tol=0.013)


def test_each_finer_series_holds_the_coarser(series: dict[str, Any]) -> None:
    assert numbers(series, "r40")[::2] == numbers(series, "r20")
    assert numbers(series, "r20")[::2] == numbers(series, "r10")
    assert numbers(series, "r10")[::2] == numbers(series, "r5")


@pytest.mark.parametrize(
    # Nearest by ratio among the numbers of ISO 3.
    ("name", "value", "nearest"),
    [
        ("r10", 7.0, 6.3),
        ("r5", 3.0, 2.5),
        ("r20", 4.6, 4.5),
        ("r40", 1.28, 1.25),
        ("r20", 8.3333, 8.0),
        ("r20", 4.1667, 4.0),
        ("r20", 3.125, 3.15),
        ("r20", 7.29, 7.1),
    ],
)
def test_nearest_by_ratio(series: dict[str, Any], name: str, value: float, nearest: float) -> None:
    found = min(numbers(series, name), key=lambda number: abs(math.log(number / value)))
    assert found == nearest
