"""The plugin's own table: how acts are printed and timed, and what spoils them."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Any

from binder.api import load_data

if TYPE_CHECKING:
    from collections.abc import Mapping


@cache
def table() -> Mapping[str, Any]:
    """The data file, read once."""
    content: Mapping[str, Any] = load_data("binder_plugins.operations", "acts.yaml")
    return content


def row(act: str) -> Mapping[str, Any]:
    """What is known of an act; every act that the planner uses has its row."""
    found: Mapping[str, Any] = table()["acts"][act]
    return found


def holding_min(kind: str) -> float:
    """Minutes to mount work in a kind of grip. Source: common practice, no source."""
    return float(table()["holding"].get(kind, 3))
