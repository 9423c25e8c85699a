"""The name of a material to what tapping and gripping asks of it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data


@dataclass(frozen=True, slots=True)
class Metal:
    """A kind of material for threads.

    `depth_least` and `depth_most` are per cent of thread as US charts count it (1.299 P of 60°
    threads); `times_d` is the engaged length over the diameter.
    """

    name: str
    depth_least: float
    depth_most: float
    times_d: float
    depth_source: str
    length_source: str

    @property
    def depth(self) -> float:
        """The middle of the depth wanted, in per cent."""
        return (self.depth_least + self.depth_most) / 2


def metal(material: str) -> Metal | None:
    """The kind that a material's name belongs to, or None where the name says nothing of it.

    Source: a shop table of depths and the workshop rule for lengths (no standard).
    """
    spoken = set(re.findall(r"[a-z0-9]+", material.lower()))
    return next((kind for words, kind in _kinds() if words <= spoken), None)


@cache
def _kinds() -> tuple[tuple[frozenset[str], Metal], ...]:
    table = load_data("binder_trade.threading", "metals.yaml")
    return tuple(
        (frozenset(words.split()), _metal(row, table))
        for row in table["metals"]
        for words in row["words"]
    )


def _metal(row: dict[str, Any], table: dict[str, Any]) -> Metal:
    guessed = " (from memory, after the nearest metal)" if row.get("guessed") else ""
    least, most = row["depth"]
    return Metal(
        row["name"],
        float(least),
        float(most),
        float(row["times_d"]),
        table["depth_source"] + guessed,
        table["length_source"] + guessed,
    )
