"""Clamps on the table: on edges where no cutter runs out, and over nothing that is cut away.

A clamp over a cut bears on nothing, and one in the way of the cutter is cut into, or is shifted
half way through and the work with it. Common practice, no source.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder_plugins.operations.hole_kinds import HOLES, SINKS
from binder_plugins.operations.sides import SAME_MM, face_up
from binder_solid.along_axes import Span, spans_of

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.facts import SetUp
    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located

# In mm: how far the nose of a clamp reaches on to the work, how far the cutter with what holds it
# keeps from it, and how much of an edge one takes. Common practice, no source.
_NOSE, _CLEAR, _WIDE = 8.0, 5.0, 20.0
# What a clamp wants beside a cut, in mm.
BESIDE_MM = _NOSE + _CLEAR
_TABLE = "on the table"
_ALONG_EDGES = frozenset({"rounded", "chamfered", "bevelled"})
_SIDES = (("left", "right"), ("front", "back"), ("underside", "top"))
_ONE_BY_ONE = "no edge is free: one clamp at a time is moved as the cutter comes to it"
_DRILLED, _MILLED = (
    f"the packing clear of what is {done} through" for done in ("drilled", "milled")
)


@dataclass(frozen=True, slots=True)
class Edge:
    """An edge of the work: the axes across and along it, if it is the far one, what is free."""

    axis: int
    along: int
    is_far: bool
    free: tuple[Span, ...]

    @property
    def name(self) -> str:
        """`front`."""
        return _SIDES[self.axis][self.is_far]


def clamped_clear(work: Work, setups: Sequence[SetUp]) -> tuple[SetUp, ...]:
    """The set-ups on the table with their clamps told by what is cut there, and was before."""
    form = work.form
    if form is None or form.stretches:
        return tuple(setups)
    done: list[Located] = []
    told = []
    for one in setups:
        names = {act.feature.partition(",")[0] for act in one.acts}
        here = [each for each in form.located if each.name in names]
        done += here
        is_clamped = one.grip.holder.startswith("clamp") and _TABLE in one.grip.holder
        told.append(_told(work, one, form, here, done) if is_clamped and here else one)
    return tuple(told)


def _told(
    work: Work, one: SetUp, form: FormFact, here: Sequence[Located], done: Sequence[Located]
) -> SetUp:
    up = {"left": 0, "right": 0, "front": 1, "back": 1}.get(face_up(one.datum), 2)
    plan = [axis for axis in range(3) if axis != up]
    long, wide = sorted(plan, key=lambda axis: -form.size[axis])
    gone = [_grown(spans) for each in done for spans in _cut(each, up)]
    edges = [
        Edge(axis, along, is_far, tuple(_free((axis, along), gone, form, is_far=is_far)))
        for axis, along in ((wide, long), (long, wide))
        for is_far in (False, True)
    ]
    pairs = [pair for pair in (edges[:2], edges[2:]) if all(edge.free for edge in pair)]
    is_free = all(edge.free == ((0.0, form.size[edge.along]),) for edge in edges)
    said = "" if is_free or not pairs else _edges(pairs[0], form, work)
    more = [_packed(here)] if "packing" in one.grip.holder else []
    if not pairs:
        more.append(_ONE_BY_ONE)
    barred = [edge.name for edge in edges if _runs_out(edge, here, form, up)]
    if barred and pairs:
        more.append(f"no clamp on its {' or '.join(barred)} edge, where the cutter runs out")
    true = "; ".join(dict.fromkeys(filter(None, (one.true, *more))))
    return replace(one, grip=replace(one.grip, on=said or one.grip.on), true=true)


def _cut(one: Located, up: int) -> Iterator[tuple[Span, Span, Span]]:
    """What a cut from the face that lies up, or from the one under it, takes away."""
    if abs(one.frame.z[up]) < 1 - SAME_MM or one.adds or one.kind in _ALONG_EDGES:
        return
    yield from (spans for tool in one.tools if (spans := spans_of(tool)) is not None)


def _grown(spans: tuple[Span, Span, Span]) -> tuple[Span, Span, Span]:
    x, y, z = ((low - _CLEAR, high + _CLEAR) for low, high in spans)
    return x, y, z


def _free(
    axes: tuple[int, int], gone: Sequence[Sequence[Span]], form: FormFact, *, is_far: bool
) -> Iterator[Span]:
    """The lengths of an edge on which a clamp has room, in whole mm."""
    axis, along = axes
    wide, long = form.size[axis], form.size[along]
    low, high = (wide - _NOSE, wide) if is_far else (0.0, _NOSE)
    taken = sorted(each[along] for each in gone if each[axis][0] < high and low < each[axis][1])
    at = 0.0
    for start, end in (*taken, (long, long)):
        first, last = math.ceil(at - SAME_MM), math.floor(min(start, long) + SAME_MM)
        if last - first >= _WIDE:
            yield (at, long) if (at, start) == (0.0, long) else (float(first), float(last))
        at = max(at, end)


def _edges(pair: Sequence[Edge], form: FormFact, work: Work) -> str:
    """`its front and back edges, 12 mm to 90 mm from left`, or each by itself."""
    near, far = pair
    if near.free == far.free:
        return f"its {near.name} and {far.name} edges{_lengths(near, form, work)}"
    return " and ".join(f"its {one.name} edge{_lengths(one, form, work)}" for one in pair)


def _lengths(edge: Edge, form: FormFact, work: Work) -> str:
    """Where on an edge clamps have room; nothing where all of it is free."""
    if edge.free == ((0.0, form.size[edge.along]),):
        return ""
    told = " and ".join(f"{work.mm(low)} to {work.mm(high)}" for low, high in edge.free)
    return f", {told} from {_SIDES[edge.along][0]}"


def _runs_out(edge: Edge, here: Sequence[Located], form: FormFact, up: int) -> bool:
    """Whether what is milled here is open at an edge, so that the cutter comes out over it."""
    at = form.size[edge.axis] if edge.is_far else 0.0
    return any(
        low < at + SAME_MM and at - SAME_MM < high
        for one in here
        if one.kind not in HOLES | SINKS.keys()
        for spans in _cut(one, up)
        for low, high in (spans[edge.axis],)
    )


def _packed(here: Sequence[Located]) -> str:
    """What packing keeps clear of, where anything goes right through."""
    through = [one for one in here if one.depth is None and one.kind != "dovetailed"]
    if any(one.kind not in HOLES for one in through):
        return _MILLED
    return _DRILLED if through else ""
