"""Operations and rules to edges, each with the reason why one comes before the other."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from binder_making.operation import Operation
from binder_making.precedence.rules import Priority, Rule, rules, words
from binder_making.precedence.scopes import SCOPES, Key
from binder_trade.explained import NotDefined

_MOST_EDGES: Final = 1_000_000
# An act and its tags.
_Said = tuple[str, frozenset[str]]


@dataclass(frozen=True, slots=True)
class Edge:
    """The operation `before` comes before `after`, and why.

    `rule` is the id of the rule, or "" for a reason of another origin, as a joint of the spec.
    """

    before: str
    after: str
    reason: str
    is_must: bool = True
    priority: Priority = Priority.TRUTH
    rule: str = ""


@dataclass(slots=True)
class _Sides:
    """The operations that a rule speaks of, by the number of what they share."""

    before: dict[int, list[Operation]]
    after: dict[int, list[Operation]]


class _Shared:
    """What operations share, as numbers: one for each key of each scope."""

    def __init__(self) -> None:
        self._numbers: dict[Key, int] = {}

    def of(self, one: Operation, scope: str) -> list[int]:
        """The numbers of an operation's keys in a scope."""
        numbers = self._numbers
        return [numbers.setdefault((scope, *key), len(numbers)) for key in SCOPES[scope](one)]


def edges(
    operations: Sequence[Operation], by_rules: Sequence[Rule] | None = None
) -> tuple[Edge, ...]:
    """All edges between the operations, by rule, then in their order; none twice by one rule.

    Cost: linear in operations and in the edges that come out, which within one part grow with
    the square of its operations. An edge never leads to the operation that it comes from.
    Raises `NotDefined` for more than a million edges.
    """
    chosen = rules() if by_rules is None else by_rules
    roles = _roles(operations, chosen)
    pairs = sum(_pairs(sides) for sides in roles.values())
    if pairs > _MOST_EDGES:
        raise NotDefined(
            f"{pairs:,} reasons why one operation comes before another are too many to weigh",
            "split the part that has so many features",
        )
    return tuple(edge for number in roles for edge in _edges(chosen[number], roles[number]))


def _pairs(sides: _Sides) -> int:
    """How many pairs stand on the two sides."""
    return sum(len(one) * len(sides.after.get(key, ())) for key, one in sides.before.items())


def _roles(operations: Sequence[Operation], chosen: Sequence[Rule]) -> dict[int, _Sides]:
    """For each rule that has operations on both sides these; equal words are looked at once."""
    known = _spoken(operations, chosen)
    earlier = {number for befores, _ in known.values() for number in befores}
    found = {
        number: _Sides({}, {})
        for number in sorted({number for _, afters in known.values() for number in afters})
        if number in earlier
    }
    shared = _Shared()
    for one in operations:
        keys: dict[str, list[int]] = {}
        befores, afters = known[one.act, one.tags]
        for number in befores:
            if number in found:
                _put(one, chosen[number].scopes, found[number].before, keys, shared)
        for number in afters:
            if number in found:
                _put(one, chosen[number].scopes, found[number].after, keys, shared)
    return found


def _spoken(
    operations: Sequence[Operation], chosen: Sequence[Rule]
) -> dict[_Said, tuple[list[int], list[int]]]:
    """The rules that speak of each act with its tags: those that it comes before, and after."""
    is_all = chosen is rules()
    return {
        (act, tags): _known(act, tags) if is_all else _sides(act, tags, chosen)
        for act, tags in dict.fromkeys((one.act, one.tags) for one in operations)
    }


@lru_cache(maxsize=4096)
def _known(act: str, tags: frozenset[str]) -> tuple[list[int], list[int]]:
    """The sides on which the rules of the file speak of equal words, looked up once."""
    return _sides(act, tags, rules())


def _sides(act: str, tags: frozenset[str], chosen: Sequence[Rule]) -> tuple[list[int], list[int]]:
    spoken = words().of(act, tags)
    return (
        [n for n, rule in enumerate(chosen) if rule.before.holds(spoken)],
        [n for n, rule in enumerate(chosen) if rule.after.holds(spoken)],
    )


def _put(
    one: Operation,
    scopes: tuple[str, ...],
    side: dict[int, list[Operation]],
    keys: dict[str, list[int]],
    shared: _Shared,
) -> None:
    for scope in scopes:
        if scope not in keys:
            keys[scope] = shared.of(one, scope)
        for key in keys[scope]:
            side.setdefault(key, []).append(one)


def _edges(rule: Rule, sides: _Sides) -> Iterator[Edge]:
    """The pairs on both sides; where they can share more than one thing each pair once."""
    is_once = rule.scopes[0] in _ONCE and len(rule.scopes) == 1
    differs = _DIFFERS.get(rule.scopes[0])
    seen: set[tuple[str, str]] = set()
    for key, earlier in sides.before.items():
        later = sides.after.get(key, ())
        for one in earlier if later else ():
            for other in later:
                if one.id == other.id or (differs and differs(one) == differs(other)):
                    continue
                if not is_once:
                    if (one.id, other.id) in seen:
                        continue
                    seen.add((one.id, other.id))
                yield Edge(one.id, other.id, rule.reason, rule.is_must, rule.priority, rule.id)


# Scopes in which two operations share one thing at the most.
_ONCE: Final = frozenset({"feature", "end", "setup", "part"})
# A mate is of another part, a neighbour another feature.
_DIFFERS: Final[dict[str, Callable[[Operation], str]]] = {
    "mate": lambda one: one.part,
    "neighbour": lambda one: one.feature,
}
