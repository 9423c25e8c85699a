"""The acts of a route to the order that the rules of precedence give them."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise
from typing import TYPE_CHECKING

from binder_making.operation import Operation
from binder_making.order import Loop, in_order
from binder_making.precedence import Edge, Priority, edges

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from binder_plugins.operations.facts import Act, SetUp

_AFTER_GRIP = "the grip before it is done with"
_SAME_HOLE = "each tool follows the hole that is there"
_PLANNED = "from the end inwards, heavy cuts first"
_BORING = frozenset(
    {"centre", "spot", "drill", "bore", "ream", "counterbore", "countersink", "tap"}
)


@dataclass(frozen=True, slots=True)
class Ordered:
    """The set-ups with their acts in order; `trouble` where the reasons run in a ring."""

    setups: tuple[SetUp, ...]
    trouble: tuple[tuple[str, str], ...] = ()


def ordered(name: str, setups: Sequence[SetUp]) -> Ordered:
    """Each set-up's acts by the rules, those that are free as they were planned."""
    operations = operations_of(name, setups)
    reasons = [*edges(operations), *route_edges(name, setups)]
    found = in_order(operations, reasons)
    if isinstance(found, Loop):
        return Ordered(tuple(setups), (("operations-loop", _ring(found, setups)),))
    place = {one: number for number, one in enumerate(found.sequence)}
    return Ordered(
        tuple(
            replace(one, acts=tuple(sorted(one.acts, key=lambda act: place[act.id])))
            for one in setups
        )
    )


def operations_of(name: str, setups: Sequence[SetUp]) -> list[Operation]:
    """The records that the rules read; each gripping ends by taking the work out."""
    return [one for setup in setups for one in (*_acts(name, setup), _out(name, setup))]


def _acts(name: str, setup: SetUp) -> Iterator[Operation]:
    for act in setup.acts:
        yield operation(name, setup, act)


def operation(name: str, setup: SetUp, act: Act) -> Operation:
    """One act as the rules read it."""
    return Operation(
        id=act.id,
        act=_ACTS.get(act.act, act.act),
        part=name,
        feature=act.feature,
        end=act.end,
        machine=setup.machine,
        holding=setup.grip.holder if setup.machine else "",
        setup=f"{name} {setup.number}" if setup.machine else "",
        tool=act.tool,
        tags=act.tags,
        meets=act.meets,
        joints=act.joints,
        minutes=act.run,
    )


# Words of this plugin that the rules have another word for.
_ACTS = {"wind": "bend", "assemble": "dry-assemble"}


def out_id(name: str, setup: SetUp) -> str:
    """The id of taking the work out of a grip."""
    return f"{name} out of {setup.number}"


def _out(name: str, setup: SetUp) -> Operation:
    return Operation(
        id=out_id(name, setup),
        act="unchuck",
        part=name,
        machine=setup.machine,
        setup=f"{name} {setup.number}" if setup.machine else "",
    )


def route_edges(name: str, setups: Sequence[SetUp]) -> Iterator[Edge]:
    """Set-ups one after another, and the tools of one hole on the axis in their order."""
    for setup in setups:
        for act in setup.acts:
            yield Edge(act.id, out_id(name, setup), _AFTER_GRIP, priority=Priority.HOLD)
        yield from _holes(setup)
        yield from _as_planned(setup)
    for one, other in pairwise(setups):
        for act in other.acts:
            yield Edge(out_id(name, one), act.id, _AFTER_GRIP, priority=Priority.HOLD)


def _holes(setup: SetUp) -> Iterator[Edge]:
    if setup.place != "lathe":
        return
    boring = [act for act in setup.acts if act.act in _BORING]
    for one, other in pairwise(boring):
        yield Edge(one.id, other.id, _SAME_HOLE, priority=Priority.HOLD)


def _as_planned(setup: SetUp) -> Iterator[Edge]:
    """At the lathe the planned turn is kept where no rule says otherwise."""
    if setup.place == "lathe":
        for one, other in pairwise(setup.acts):
            yield Edge(one.id, other.id, _PLANNED, is_must=False, priority=Priority.RIGIDITY)


def _ring(loop: Loop, setups: Sequence[SetUp]) -> str:
    said = {act.id: act.what for setup in setups for act in setup.acts}
    lines = [
        f"'{_said(one.before, said)}' before '{_said(one.after, said)}' ({one.reason})"
        for one in loop.edges[:5]
    ]
    return "; ".join(lines)


def _said(name: str, said: Mapping[str, str]) -> str:
    """What an act does; taking out of a grip says so itself."""
    return said.get(name, name)
