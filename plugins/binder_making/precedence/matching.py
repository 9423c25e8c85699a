"""Operations and rules to edges, each with the reason why one comes before the other."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from binder_making.operation import Operation
from binder_making.precedence.rules import Priority, Rule, rules, words
from binder_making.precedence.scopes import SCOPES, Key


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
    """The operations that a rule speaks of, by what they share."""

    before: dict[Key, list[Operation]]
    after: dict[Key, list[Operation]]


def edges(
    operations: Sequence[Operation], by_rules: Sequence[Rule] | None = None
) -> tuple[Edge, ...]:
    """All edges between the operations, by rule, then in their order; none twice by one rule.

    Cost: linear in operations and in the edges that come out. An edge never leads to the
    operation that it comes from.
    """
    chosen = rules() if by_rules is None else by_rules
    roles = _roles(operations, chosen)
    return tuple(
        edge for number, rule in enumerate(chosen) for edge in _edges(rule, roles.get(number))
    )


def _roles(operations: Sequence[Operation], chosen: Sequence[Rule]) -> dict[int, _Sides]:
    """For each rule the operations on either side; equal words are looked at once."""
    known: dict[tuple[str, frozenset[str]], tuple[list[int], list[int]]] = {}
    found: dict[int, _Sides] = {}
    for one in operations:
        signature = (one.act, one.tags)
        if signature not in known:
            spoken = words().of(*signature)
            known[signature] = (
                [n for n, rule in enumerate(chosen) if rule.before.holds(spoken)],
                [n for n, rule in enumerate(chosen) if rule.after.holds(spoken)],
            )
        befores, afters = known[signature]
        for number in befores:
            _put(one, chosen[number], found.setdefault(number, _Sides({}, {})).before)
        for number in afters:
            _put(one, chosen[number], found.setdefault(number, _Sides({}, {})).after)
    return found


def _put(one: Operation, rule: Rule, side: dict[Key, list[Operation]]) -> None:
    for scope in rule.scopes:
        for key in SCOPES[scope](one):
            side.setdefault((scope, *key), []).append(one)


def _edges(rule: Rule, sides: _Sides | None) -> Iterator[Edge]:
    seen: set[tuple[str, str]] = set()
    for key, earlier in sides.before.items() if sides else ():
        for one in earlier:
            for other in sides.after.get(key, ()) if sides else ():
                pair = (one.id, other.id)
                if one.id == other.id or pair in seen or _is_too_near(key[0], one, other):
                    continue
                seen.add(pair)
                yield Edge(*pair, rule.reason, rule.is_must, rule.priority, rule.id)


def _is_too_near(scope: str, one: Operation, other: Operation) -> bool:
    """A mate is of another part, a neighbour another feature."""
    if scope == "mate":
        return one.part == other.part
    return scope == "neighbour" and one.feature == other.feature
