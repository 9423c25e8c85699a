"""Signs: what of a design may call for a caution, told apart by where it is said."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class SignKind(StrEnum):
    """Where a sign comes from; the values are the keys under `triggers:` in the table."""

    SHAPE = "shapes"
    FEATURE = "features"
    JOINT = "joints"
    HAZARD = "hazards"
    FINISH = "finishes"
    MATERIAL = "materials"
    SALVAGED = "salvaged"
    WORDS = "words"
    DRIVEN_BY = "driven_by"
    TOOL = "tools"
    ACT = "acts"


@dataclass(frozen=True, slots=True)
class Sign:
    """One thing said about an item ('' for the whole model), and the phrases in it."""

    kind: SignKind
    said: str
    item: str
    phrases: frozenset[str]


def key_sign(kind: SignKind, key: str, item: str) -> Sign:
    """A sign that is one word of the language or of a table, matched as it stands."""
    return Sign(kind, key, item, frozenset({key}))
