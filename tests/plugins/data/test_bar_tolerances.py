"""Limits of bright bar: the bands meet, the limits widen, and the published limits stand."""

from __future__ import annotations

from itertools import pairwise
from typing import Any

import pytest

CLASSES = ("h9", "h10", "h11", "h12")


def limit(bright_bar: dict[str, Any], size: float, grade: str) -> int:
    bands = [band for band in bright_bar["bands"] if band["over"] < size <= band["to"]]
    assert len(bands) == 1
    found: int = bands[0][grade]
    return found


def test_bands_meet(bright_bar: dict[str, Any]) -> None:
    assert all(a["to"] == b["over"] for a, b in pairwise(bright_bar["bands"]))


def test_limits_widen_with_size_and_with_class(bright_bar: dict[str, Any]) -> None:
    for grade in CLASSES:
        assert all(a[grade] > b[grade] for a, b in pairwise(bright_bar["bands"]))
    for band in bright_bar["bands"]:
        assert all(band[fine] > band[coarse] for fine, coarse in pairwise(CLASSES))


def test_every_class_in_use_has_limits(bright_bar: dict[str, Any]) -> None:
    used = {*bright_bar["usual"].values()}
    used |= {grade for grades in bright_bar["sold"].values() for grade in grades}
    assert used <= set(CLASSES)
    assert bright_bar["status"] == "verified"


@pytest.mark.parametrize(
    # EN 10278 with the values of ISO 286-2, as printed in three public tables.
    ("size", "grade", "lower"),
    [
        (3, "h9", -25),
        (6, "h9", -30),
        (12, "h9", -43),
        (20, "h9", -52),
        (25, "h10", -84),
        (12, "h11", -110),
        # ISO 286-2, shaft h11.
        (100, "h11", -220),
        (60, "h12", -300),
        (180, "h10", -160),
    ],
)
def test_published_limits(bright_bar: dict[str, Any], size: float, grade: str, lower: int) -> None:
    assert limit(bright_bar, size, grade) == lower


@pytest.mark.parametrize(
    # EN 10278: the class that holds where none is agreed.
    ("shape", "grade"),
    [("drawn round", "h10"), ("hexagon", "h11"), ("square", "h11"), ("ground round", "h9")],
)
def test_the_class_when_none_is_agreed(bright_bar: dict[str, Any], shape: str, grade: str) -> None:
    assert bright_bar["usual"][shape] == grade
