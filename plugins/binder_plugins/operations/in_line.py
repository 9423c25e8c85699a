"""Bearings finished in line: put up, one tool through each row of bores, measured, marked."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import TogetherFact
from binder_making.measuring import PLUG, noted
from binder_plugins.operations.bench import bench_vice
from binder_plugins.operations.closing_piece import gaps_measured
from binder_plugins.operations.drilled import left_at
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.gap_stubs import stubs_faced
from binder_plugins.operations.hole_kinds import Where
from binder_plugins.operations.hole_tools import hand_drilled
from binder_plugins.operations.line_reamers import by_hand, guided, short_of
from binder_plugins.operations.rows import Hole, holes_of, mate_of, running_half
from binder_plugins.operations.sized import finished
from binder_plugins.operations.trying_rods import trying_rods
from binder_solid.piloting import piloted

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.work import Work

_TRUE = "every bore of a row to the others: what cuts one is guided in the one before"
# What a bore that is finished in line was left under its size, in mm: common practice.
_LEFT_MM = 0.2
# Each spotted alone, two bearings lie out of line by what each was held askew.
_ON_ROD = "with one straight rod through all the bores, clamped level and square; "
_UNTIL = "every row is through and marked"
_TILL_MEASURED = "every row is through, its gap measured and all marked"


def lined(fact: TogetherFact, works: Mapping[str, Work]) -> Iterator[SetUp]:
    """At the bench, all screws down, with a tool through each row of bores.

    A gap inside is told by a stub that a lathe faces meanwhile: all stays up for it.
    """
    rows = [found for line in fact.lines if (found := list(holes_of(line, works)))]
    if not rows:
        return
    work = rows[0][0].work
    acts = [*_holes_in_wood(fact, work)]
    rods = trying_rods(rows, works) if fact.how == "reamed in line" else ""
    tried = f"tried with {'the rod' if rods else 'a rod'}"
    acts.append(
        work.act(
            "clamp-stack",
            f"put up: {fact.up}; all down evenly, {tried}{_rod(fact, rows)}",
            tool=", ".join(filter(None, ("screwdriver or key, square", rods))),
            spoils="a bearing that is forced into line",
        )
    )
    asked = longest(works) if fact.how == "reamed in line" else {}
    for found in rows:
        acts += _row(fact, found, asked)
    vice = bench_vice(work.design.workshop)
    grip = Grip(vice or "by hand", "bench", "what carries the bearings")
    stubs = stubs_faced(fact, work, rows)
    last = [*gaps_measured(fact, work, has_stub=stubs is not None), *_ended(work, fact)]
    if stubs is None:
        acts += last
    datum = "the first bore of each row"
    until = _UNTIL if stubs is None else _TILL_MEASURED
    yield SetUp(1, "bench", "", grip, datum, tuple(acts), _TRUE, until)
    if stubs is not None:
        yield stubs
        yield SetUp(3, "bench", "", grip, "all as it stood", tuple(last))


def _rod(fact: TogetherFact, rows: Sequence[Sequence[Hole]]) -> str:
    """Of what size: the bores are still short of the shaft's, which does not go in.

    A bush that was pressed in has closed, so that the rod is tried in each bore first.
    """
    if fact.how != "reamed in line":
        return " that just goes in"
    sizes = dict.fromkeys(left_at(one.work, one.one) for row in rows for one in row)
    said = " or ".join(f"⌀{rows[0][0].work.mm(size)}" for size in sizes)
    return f" of {said}, eased first till it goes into each bore by itself"


def _holes_in_wood(fact: TogetherFact, work: Work) -> Iterator[Act]:
    """The pilot holes of the wood screws that hold it up: they are drilled now, for good."""
    for name in fact.held:
        words = piloted(work.design.joints[name], work.design)
        if words:
            titles = " and the ".join(_titles(name, work))
            act = work.act(
                "drill",
                f"the {titles}: {_ON_ROD}{words.removesuffix(', then ')}",
                tool=hand_drilled(words),
                tags=("later",),
            )
            yield replace(act, joints=fact.joints)


def _titles(joint: str, work: Work) -> Iterator[str]:
    for name in work.design.joints[joint].items:
        item = work.design.item(name)
        yield item.title if item is not None else name


def longest(works: Mapping[str, Work]) -> dict[float, float]:
    """What the longest row of each size asks of a D-bit in mm: one is made that does them all."""
    found: dict[float, float] = {}
    design = next(iter(works.values())).design
    for fact in design.facts.all(TogetherFact):
        if fact.how != "reamed in line":
            continue
        for line in fact.lines:
            row = list(holes_of(line, works))
            bridge = short_of(row, fact.joints) if row else None
            if bridge is not None:
                size = row[0].one.diameter or 0.0
                found[size] = max(bridge, found.get(size, 0.0))
    return found


def _row(fact: TogetherFact, row: Sequence[Hole], asked: Mapping[float, float]) -> Iterator[Act]:
    hole = row[0]
    work, count = hole.work, sum(one.work.count for one in row)
    mate = mate_of(fact, hole)
    of = f"for the {mate}: " if mate else ""
    bridge = short_of(row, fact.joints) if count > 1 and fact.how == "reamed in line" else None
    through = f", through {count} bores at one go" if count > 1 and bridge is None else ""
    for cut in _cuts(fact, hole, count):
        act = replace(
            cut,
            what=f"{of}{cut.what}{through}",
            joints=fact.joints,
            speed="by hand" if cut.act in {"ream", "lap"} else cut.speed,
            feed="",
        )
        if act.act == "ream" and bridge is not None:
            long = asked[hole.one.diameter or 0.0]
            yield from guided(row, act, bridge, of, long)
        elif act.act == "ream":
            yield by_hand(hole, act)
        else:
            yield act
    half = running_half(fact, hole)
    if half is not None and half.is_master:
        each = "each bore" if count > 1 else "the bore"
        measure = work.act(
            "measure",
            noted(f"{each} of the {mate or work.item.title}", PLUG),
            feature=hole.one.name,
            tool=PLUG,
            times=count,
            tags=("master",),
        )
        yield replace(measure, joints=(half.joint,))


def _cuts(fact: TogetherFact, hole: Hole, count: int) -> Iterator[Act]:
    work, one = hole.work, hole.one
    tags = ("in-line", "later")
    if fact.how == "lapped together":
        yield work.act(
            "lap",
            f"lap {work.mm(one.diameter or 0.0)}",
            feature=one.name,
            times=count,
            tags=(*tags, "finish", "fit"),
            half=work.half(one.name),
        )
        return
    where = Where("", hole.deep * count, tags=tags, is_started=True, is_together=True)
    yield from finished(work, one, where, (one.diameter or 0.0) - _LEFT_MM)


def _ended(work: Work, fact: TogetherFact) -> Iterator[Act]:
    apart = work.act("separate", f"{fact.note}, then take it apart")
    yield replace(apart, joints=fact.joints)
    yield work.act("deburr", "wash out the chips, take the burrs off inside", amount=1.0)
