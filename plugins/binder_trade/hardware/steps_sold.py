"""Turns a range of lengths into the lengths that are sold within it."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Any

from binder.api import load_data
from binder_trade.hardware.listing import PACKAGE, Row, measure

_SLACK = 1e-6


def steps_within(name: str, row: Row) -> tuple[float, ...]:
    """The lengths of a named series, mm, from `from` to `to` of a row."""
    low, high = row["from"] - _SLACK, row["to"] + _SLACK
    return tuple(step for step in _steps(name) if low <= step <= high)


def texts_within(name: str, row: Row) -> tuple[str, ...]:
    """The same lengths as they are asked for in a shop: 10 mm, 1 1/4 in."""
    low, high = row["from"] - _SLACK, row["to"] + _SLACK
    pairs = zip(_steps(name), _texts(name), strict=True)
    return tuple(text for step, text in pairs if low <= step <= high)


@cache
def _steps(name: str) -> tuple[float, ...]:
    written = _written(name)
    return tuple(measure(step, written["unit"]) for step in written["steps"])


@cache
def _texts(name: str) -> tuple[str, ...]:
    written = _written(name)
    return tuple(f"{step} {written['unit']}" for step in written["steps"])


def _written(name: str) -> Mapping[str, Any]:
    found: Mapping[str, Any] = load_data(PACKAGE, "steps.yaml")[name]
    return found
