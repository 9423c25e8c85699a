"""Turns the name of an old standard into the one that took its place, or the other way."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data
from binder_trade.hardware.listing import PACKAGE, Listed, NotListed


@dataclass(frozen=True, slots=True, kw_only=True)
class Equivalent(Listed):
    """Two standards of one thing; `same` says whether their parts interchange in all sizes."""

    old: str
    new: str
    words: str
    same: bool


def equivalent(standard: str) -> Equivalent:
    """What took the place of a standard, or what it took the place of; raises NotListed."""
    for one in _all():
        if standard in (one.old, one.new):
            return one
    reason = f"no other standard is listed for {standard[:30]!r}"
    raise NotListed(reason, "write it as DIN 912 or ISO 4762")


@cache
def _all() -> tuple[Equivalent, ...]:
    written: Mapping[str, Any] = load_data(PACKAGE, "equivalents.yaml")
    return tuple(
        Equivalent(
            old=old,
            new=new,
            words=words,
            same=same,
            standard=new,
            status="verified" if old in written["verified"] else "memory",
        )
        for old, (new, words, same) in written["rows"].items()
    )
