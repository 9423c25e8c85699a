"""The plan of all work to its critical path: what holds the model up, and what has time."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder_making.network import Activity, Network, critical_path, scheduled
from binder_plugins.operations.aids.facts import PREFIX

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping

    from binder_plugins.operations.planning import WorkPlan

_SAME = 1e-6
_HANDS, _RESTING, _COAT = "hands", ", resting", ", coat "


@dataclass(frozen=True, slots=True)
class Held:
    """A part or task in the plan: minutes of work, float in minutes, and its evenings.

    `may_begin` is the evening of the last thing that it waits for, `begins` and `ends` are the
    evenings planned, `needed` that in which the first thing that waits for it begins.
    """

    owner: str
    title: str
    minutes: float
    slack: float
    may_begin: int
    begins: int
    ends: int
    needed: int


@dataclass(frozen=True, slots=True)
class Holding:
    """The chain on which the whole hangs, in order, and all others, the least float first.

    Of an owner in the chain only the pieces that are in it count, so that its minutes add up;
    its other pieces stand among the others. What stays in the chuck counts to its set-up's owner.
    `length` is the chain in minutes, waits for cures as whole evenings in it; `rests` are they.
    `idle` is what one pair of hands waits with nothing to take up, in evenings, if it always takes
    up what has the least float.
    """

    chain: tuple[Held, ...]
    others: tuple[Held, ...]
    length: float
    rests: float
    idle: float = 0.0


def holding_up(plan: WorkPlan, useful: float) -> Holding:
    """The network over all pieces of the plan; `useful` are the minutes of an evening.

    A cure lasts until the next evening, or so many days: it counts as whole evenings.
    Source: the critical path method (`binder_making.network`).
    """
    rests = {name: _rest(piece.rests_h, useful) for name, piece in plan.pieces.items()}
    net = critical_path([
        Activity(name, piece.takes + rests[name], plan.waits[name])
        for name, piece in plan.pieces.items()
    ])  # fmt: skip
    owners = {name: owner_of(name, plan) for name in plan.pieces}
    at = _evenings(plan)
    whole = _gathered(plan.pieces, owners)
    chain = _gathered(net.path, owners)
    rest = _gathered((one for one in plan.pieces if one not in net.path), owners)
    links, others = (
        [
            replace(_held(one, own, plan, net, at), title=_title(own, whole[one], plan))
            for one, own in some.items()
        ]
        for some in (chain, rest)
    )
    return Holding(
        tuple(links),
        tuple(sorted(others, key=lambda one: (one.slack, one.begins))),
        net.length,
        sum(rests[name] for name in net.path),
        _idle(plan, rests) / useful,
    )


def _idle(plan: WorkPlan, rests: Mapping[str, float]) -> float:
    """Minutes in which all that could be taken up waits for a cure; a cure wants no hands."""
    last = {name: f"{name}{_RESTING}" if rest else name for name, rest in rests.items()}
    work = [
        Activity(name, piece.takes, tuple(last[one] for one in plan.waits[name]))
        for name, piece in plan.pieces.items()
    ]
    cures = [Activity(last[name], rest, (name,)) for name, rest in rests.items() if rest]
    if not cures:
        return 0.0
    made = scheduled([*work, *cures], {one.id: {_HANDS: 1} for one in work}, {_HANDS: 1})
    return max(0.0, made.length - sum(one.duration for one in work))


def _gathered(names: Iterable[str], owners: Mapping[str, str]) -> dict[str, list[str]]:
    """The pieces of each owner, in their order."""
    found: dict[str, list[str]] = {}
    for name in names:
        found.setdefault(owners[name], []).append(name)
    return found


def owner_of(name: str, plan: WorkPlan) -> str:
    """The item of a set-up, the task of a coat, else the task itself.

    A tool that stays in the chuck is its set-up's: the two can only be moved together.
    """
    if plan.pieces[name].goes_on:
        served = next((one for one, waits in plan.waits.items() if name in waits), "")
        if served:
            return owner_of(served, plan)
    if plan.pieces[name].setup is not None:
        return name.rsplit(" ", 1)[0]
    return name.split(_COAT, maxsplit=1)[0]


def _rest(hours: float, useful: float) -> float:
    return math.ceil(hours / 24) * useful


def _evenings(plan: WorkPlan) -> dict[str, tuple[int, int]]:
    """The first and the last evening of each piece."""
    found: dict[str, tuple[int, int]] = {}
    for evening in plan.evenings:
        for job in evening.jobs:
            name = job.split(", part ", maxsplit=1)[0]
            found[name] = (found.get(name, (evening.number, 0))[0], evening.number)
    return found


def _held(
    owner: str,
    own: list[str],
    plan: WorkPlan,
    net: Network,
    at: Mapping[str, tuple[int, int]],
) -> Held:
    """A part or task by those of its pieces that are told."""
    first = _first(own, plan)
    before = [at[one][1] for one in _outside(first, own, plan)]
    # A mandrel that is turned to its bore waits for the part and the part for it: it is no end.
    between: set[str] = set()
    left = [one for name in own for one in plan.waits[name]]
    while left:
        one = left.pop()
        if one not in between:
            between.add(one)
            left += plan.waits.get(one, ())
    after = [
        at[one][0]
        for one, waits in plan.waits.items()
        if _waits_on(one, waits, own) and one not in between
    ]
    slack = min(net.times[name].total_float for name in own)
    return Held(
        owner,
        plan.pieces[first].title,
        sum(plan.pieces[name].takes for name in own),
        0.0 if slack < _SAME else slack,
        max(before, default=1),
        min(at[name][0] for name in own),
        max(at[name][1] for name in own),
        min(after, default=len(plan.evenings)),
    )


def _first(own: list[str], plan: WorkPlan) -> str:
    """The first piece of an owner, not the tool that is made for it in its chuck."""
    return next((name for name in own if not plan.pieces[name].goes_on), own[0])


def _title(own: list[str], whole: list[str], plan: WorkPlan) -> str:
    """The title of an owner; of only some of its pieces with their numbers, and with its tools."""
    first = _first(own, plan)
    title = plan.pieces[first].title
    kept = [name for name in own if plan.pieces[name].goes_on and name != first]
    tools = [name.removeprefix(PREFIX).removesuffix(f" for the {title}") for name in kept]
    mine, all_of_it = ([one for one in some if one not in kept] for some in (own, whole))
    if len(mine) < sum(1 for one in all_of_it if not plan.pieces[one].goes_on):
        title += _numbered(mine, plan)
    if not tools:
        return title
    comma = "," if len(mine) < len(all_of_it) else ""
    return f"{title}{comma} with its {' and its '.join(tools)}"


def _numbered(own: list[str], plan: WorkPlan) -> str:
    """`, set-ups 2 to 4` or `, coat 1`; nothing for what is in one piece."""
    kind = "set-up"
    numbers = [one.number for name in own if (one := plan.pieces[name].setup) is not None]
    if not numbers:
        kind = "coat"
        numbers = [int(name.rsplit(_COAT, 1)[1]) for name in own if _COAT in name]
    if len(numbers) < 2:
        return f", {kind} {numbers[0]}" if numbers else ""
    is_run = numbers == list(range(numbers[0], numbers[-1] + 1)) and len(numbers) > 2
    said = f"{numbers[0]} to {numbers[-1]}" if is_run else ", ".join(map(str, numbers))
    return f", {kind}s {said}"


def _outside(first: str, own: list[str], plan: WorkPlan) -> Iterator[str]:
    """What the first of its pieces waits for, or the tool that is made for that in its chuck."""
    for one in plan.waits[first]:
        if one not in own:
            yield one
        elif plan.pieces[one].goes_on:
            yield from _outside(one, own, plan)


def _waits_on(one: str, waits: tuple[str, ...], own: list[str]) -> bool:
    return one not in own and any(name in own for name in waits)
