"""The name of a material to what it cuts like."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined

PACKAGE = "binder_making.cutting"


@dataclass(frozen=True, slots=True)
class Group:
    """Materials that cut alike: speeds of HSS turning in m/min, factors of depth and feed.

    `band` is the row of the published bands that speaks of it, "" for none.
    """

    name: str
    least_mpm: float
    usual_mpm: float
    most_mpm: float
    depth: float
    feed: float
    cuts: str
    snatches: bool
    band: str
    source: str


def group_of(material: str) -> Group | None:
    """The group that a material's name belongs to; None where the name says nothing of it."""
    spoken = set(re.findall(r"[a-z0-9]+", material.lower()))
    return next((group for words, group in _by_words() if words <= spoken), None)


def group(name: str) -> Group:
    """A group by its own name. Raises `NotDefined` for another."""
    found = {one.name: one for one in groups()}
    if name not in found:
        raise NotDefined(f"'{name}' is no group of materials", "one of: " + ", ".join(found))
    return found[name]


@cache
def groups() -> tuple[Group, ...]:
    """All groups."""
    table: Mapping[str, Any] = load_data(PACKAGE, "groups.yaml")
    return tuple(_group(row, table["source"]) for row in table["groups"])


@cache
def _by_words() -> tuple[tuple[frozenset[str], Group], ...]:
    rows = load_data(PACKAGE, "groups.yaml")["groups"]
    return tuple(
        (frozenset(words.split()), one)
        for row, one in zip(rows, groups(), strict=True)
        for words in row["words"]
    )


def _group(row: Mapping[str, Any], source: str) -> Group:
    least, usual, most = row["speed"]
    return Group(
        row["name"],
        float(least),
        float(usual),
        float(most),
        float(row["depth"]),
        float(row["feed"]),
        row["cuts"],
        bool(row.get("snatches", False)),
        row.get("like", ""),
        source,
    )
