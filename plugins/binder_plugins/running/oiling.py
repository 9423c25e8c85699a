"""A moving joint to what goes into it and how often."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data
from binder_plugins.running.moving import Moving

PACKAGE = "binder_plugins.running"


@dataclass(frozen=True, slots=True)
class Oil:
    """What goes in, how often, and why; `buy` is what is bought for it, '' for nothing."""

    what: str
    often: str
    why: str
    buy: str = ""
    has: str = ""

    def is_owned(self, listed: Iterable[str]) -> bool:
        """Whether one of the things that a workshop lists in plain words is it."""
        return any(re.search(self.has, one, re.IGNORECASE) for one in listed)


def oil_for(one: Moving) -> Oil | None:
    """The first row of the table that serves."""
    for row in _rows():
        if _serves(row, one):
            return Oil(
                row["what"], row["often"], row["why"], row.get("buy", ""), row.get("has", "")
            )
    return None


def oil_source() -> str:
    """What the table goes by."""
    return str(load_data(PACKAGE, "lubricants.yaml")["source"])


def says_oil(one: Moving) -> bool:
    """Whether its duty or note asks for oil."""
    return bool(re.search(r"\boil", one.words))


def says_grease(one: Moving) -> bool:
    """Whether its duty or note asks for grease."""
    return bool(re.search(r"\bgreas", one.words))


def says_dry(one: Moving) -> bool:
    """Whether its duty or note asks for none."""
    return bool(re.search(r"\b(dry|graphite)\b", one.words))


def _serves(row: Mapping[str, Any], one: Moving) -> bool:
    if "kinds" in row and one.joint.kind not in row["kinds"]:
        return False
    if "groups" in row and not any(fact.group in row["groups"] for fact in one.materials):
        return False
    if "ids" in row and not any(fact.id in row["ids"] for fact in one.materials):
        return False
    if "words" in row and not any(re.search(rf"\b{word}\b", one.words) for word in row["words"]):
        return False
    return "under" not in row or (one.rubbing or 0.0) < row["under"]


@cache
def _rows() -> tuple[Mapping[str, Any], ...]:
    return tuple(load_data(PACKAGE, "lubricants.yaml")["rows"])
