"""The data files of precedence to typed rules, and the words that they may use."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import IntEnum
from functools import cache
from typing import Any

from binder.api import load_data
from binder_making.precedence.predicate import Predicate, predicate

PACKAGE = "binder_making.precedence"


class Priority(IntEnum):
    """What a rule is for; of two that contradict each other the lower number wins."""

    SAFETY = 0
    HOLD = 1
    TRUTH = 2
    RIGIDITY = 3
    TOOLS = 4
    TIME = 5


@dataclass(frozen=True, slots=True)
class Rule:
    """What comes before what where both share one of the `scopes`, and why."""

    id: str
    before: Predicate
    after: Predicate
    scopes: tuple[str, ...]
    is_must: bool
    priority: Priority
    reason: str


@dataclass(frozen=True, slots=True)
class Words:
    """The acts, the groups of acts and the tags that operations and rules are told in."""

    acts: Mapping[str, str]
    groups: Mapping[str, tuple[str, ...]]
    tags: Mapping[str, str]

    def of(self, act: str, tags: frozenset[str]) -> frozenset[str]:
        """All words that are true of an operation."""
        return tags | _with_groups(act)


@cache
def words() -> Words:
    """The vocabulary, read once."""
    table: Mapping[str, Any] = load_data(PACKAGE, "words.yaml")
    groups = {name: tuple(acts) for name, acts in table["groups"].items()}
    return Words(table["acts"], groups, table["tags"])


@cache
def _with_groups(act: str) -> frozenset[str]:
    return frozenset({act} | {name for name, acts in words().groups.items() if act in acts})


@cache
def rules() -> tuple[Rule, ...]:
    """All rules in the order of the file. Source: common practice, no source."""
    table: Mapping[str, Any] = load_data(PACKAGE, "rules.yaml")
    return tuple(_rule(row) for row in table["rules"])


def _rule(row: Mapping[str, Any]) -> Rule:
    return Rule(
        row["id"],
        predicate(row["before"]),
        predicate(row["after"]),
        tuple(row["scope"].split(", ")),
        row["strength"] == "must",
        Priority[row["for"].upper()],
        row["why"],
    )
