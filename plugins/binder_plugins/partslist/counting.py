"""Items to their numbers, and to how many of each one model needs."""

from __future__ import annotations

from collections.abc import Iterator
from graphlib import TopologicalSorter

from binder.api import (
    Assembly,
    Contribution,
    Design,
    Diagnostic,
    Fabrication,
    Given,
    Item,
    ItemNumber,
    Member,
    NumberOff,
    Working,
)
from binder_plugins.partslist import codes


def number_items(design: Design) -> Contribution:
    """Item numbers in the order written: parts, fabrications, bought items, assemblies."""
    items = (
        *design.parts.values(),
        *design.fabrications.values(),
        *design.bought.values(),
        *design.assemblies.values(),
    )
    return Contribution(facts=[ItemNumber(item.name, n) for n, item in enumerate(items, 1)])


def members_of(item: Item | None) -> tuple[Member, ...]:
    """What an assembly or fabrication consists of."""
    if isinstance(item, Assembly):
        return item.members
    return item.pieces if isinstance(item, Fabrication) else ()


def count_items(design: Design) -> Contribution:
    """How many of each item one model needs, with the sum behind each."""
    uses = _uses(design)
    counts: dict[str, int] = {}
    workings: list[Working] = []
    for name in _tops_first(design):
        item = design.item(name)
        if item is None:
            continue
        above = uses.get(name, [])
        counts[name] = sum(counts[owner] * n for owner, n in above) or item.quantity or 1
        if above:
            workings.append(_working(item, above, counts, design))
    return Contribution(
        facts=[NumberOff(name, count) for name, count in counts.items()],
        workings=workings,
        findings=list(_disagreements(design, uses, counts)),
    )


def _uses(design: Design) -> dict[str, list[tuple[str, int]]]:
    """For each item, what it is part of and how many of it go in there."""
    uses: dict[str, list[tuple[str, int]]] = {}
    for owner in (*design.assemblies.values(), *design.fabrications.values()):
        for member in members_of(owner):
            uses.setdefault(member.item, []).append((owner.name, member.count))
    return uses


def _tops_first(design: Design) -> Iterator[str]:
    """All names, each after everything that it is part of."""
    sorter: TopologicalSorter[str] = TopologicalSorter()
    for item in design.items():
        sorter.add(item.name)
        for member in members_of(item):
            sorter.add(member.item, item.name)
    return iter(sorter.static_order())


def _working(
    item: Item, above: list[tuple[str, int]], counts: dict[str, int], design: Design
) -> Working:
    terms = [f"{n} in each of {counts[owner]} {owner}" for owner, n in above]
    owners = [design.item(owner) for owner, _ in above]
    given = tuple(
        Given(f"number of {owner.name}", str(counts[owner.name]), owner.at, f"{owner.name}.off")
        for owner in owners
        if owner is not None
    )
    return Working(
        id=f"{item.name}.off",
        title=f"number off, {item.title}",
        given=given,
        formula=" + ".join(terms),
        result=str(counts[item.name]),
        because="counted over all that it is part of",
        source="counting",
        span=item.at,
    )


def _disagreements(
    design: Design, uses: dict[str, list[tuple[str, int]]], counts: dict[str, int]
) -> Iterator[Diagnostic]:
    for item in design.items():
        written = item.quantity
        if written is not None and item.name in uses and written != counts[item.name]:
            yield codes.COUNT_DISAGREES.at(
                item.at,
                f"'{item.name}' is told as {written} off, the assemblies need {counts[item.name]}",
                help="correct one of them, or leave `quantity:` out",
            )
