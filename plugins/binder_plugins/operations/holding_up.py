"""The plan of all work to its critical path: what holds the model up, and what has time."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder_making.network import Activity, Network, critical_path, scheduled

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from binder_plugins.operations.planning import WorkPlan

_SAME = 1e-6
_HANDS, _RESTING = "hands", ", resting"


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

    Of an owner in the chain only the pieces that are in it count, so that its minutes add up.
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
    whole: dict[str, list[str]] = {}
    for name in plan.pieces:
        whole.setdefault(owners[name], []).append(name)
    chain: dict[str, list[str]] = {}
    for name in net.path:
        chain.setdefault(owners[name], []).append(name)
    others = [_held(one, own, plan, net, at) for one, own in whole.items() if one not in chain]
    links = [
        replace(_held(one, own, plan, net, at), title=_title(own, whole[one], plan))
        for one, own in chain.items()
    ]
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


def owner_of(name: str, plan: WorkPlan) -> str:
    """The item of a set-up, the task of a coat, else the task itself."""
    if plan.pieces[name].setup is not None:
        return name.rsplit(" ", 1)[0]
    return name.split(", coat ", maxsplit=1)[0]


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
    first = own[0]
    before = [at[one][1] for one in _outside(own, plan)]
    after = [at[one][0] for one, waits in plan.waits.items() if _waits_on(one, waits, own)]
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


def _title(own: list[str], whole: list[str], plan: WorkPlan) -> str:
    """The title of an owner; where the chain has only some of its set-ups, with their numbers."""
    title = plan.pieces[own[0]].title
    setups = [one.number for name in own if (one := plan.pieces[name].setup) is not None]
    if len(own) == len(whole) or not setups:
        return title
    if len(setups) == 1:
        return f"{title}, set-up {setups[0]}"
    is_run = setups == list(range(setups[0], setups[-1] + 1)) and len(setups) > 2
    said = f"{setups[0]} to {setups[-1]}" if is_run else ", ".join(map(str, setups))
    return f"{title}, set-ups {said}"


def _outside(own: list[str], plan: WorkPlan) -> Iterator[str]:
    """What the first of its pieces waits for."""
    yield from (one for one in plan.waits[own[0]] if one not in own)


def _waits_on(one: str, waits: tuple[str, ...], own: list[str]) -> bool:
    return one not in own and any(name in own for name in waits)
