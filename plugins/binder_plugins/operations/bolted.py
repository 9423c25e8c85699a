"""What fastens work to a faceplate, or a stack that turns: holes that are free by then, or straps.

A bolt goes through a hole that is cut already and that nothing else stands in; two of them hold.
Else straps bear on the metal beside the cut. Common practice, no source.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bolt_sizes import over_strap, takes_bolt, through_hole, to_plate
from binder_plugins.operations.hole_kinds import through
from binder_solid.space import dot

if TYPE_CHECKING:
    from collections.abc import Collection, Sequence

    from binder_plugins.operations.facts import Act, Grip
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

# The smallest hole that takes a bolt; what stays free beside the cut for the tool and its chips,
# and on how much a strap bears, all in mm. Common practice, no source.
_BOLT_MM, _FREE_MM, _BEARS_MM = 2.5, 5.0, 6.0
_LEAN = 1e-6
_ROUND = frozenset({"drilled", "reamed", "bored"})
# A clamp that flies off a spindle hits who stands there.
_NONE_HANGS = ": no clamp hangs on a spindle"
_NOTHING_ELSE = "; nothing else hangs on the spindle"
JAWS = f"pegs and the jaws{_NONE_HANGS}"
_SIDES = (("left-hand end", "right-hand end"), ("front edge", "back edge"))


@dataclass(frozen=True, slots=True)
class Bolts:
    """How `many` bolts the holes take, with their sizes: `held` by nuts, or `to_plate`.

    `over` are those with which straps hold the work to the plate.
    """

    held: str
    to_plate: str
    over: str
    many: int


def bolt_holes(
    work: Work,
    along: Located,
    there: Collection[str],
    pegged: Sequence[float] = (),
    pieces: int = 1,
) -> Bolts:
    """The holes along a cut that are `there` by then; in one of each `pegged` size stands a peg.

    So many `pieces` lie on one another.
    """
    found = sorted(
        round(one.diameter or 0.0, 3)
        for one in (work.form.located if work.form is not None else ())
        if one.name in there and one.name != along.name
        and one.kind in _ROUND and one.depth is None
        and (one.diameter or 0.0) >= _BOLT_MM and takes_bolt(work, one.diameter or 0.0)
        and abs(dot(one.frame.z, along.frame.z)) > 1 - _LEAN
        for _ in one.spots
    )  # fmt: skip
    free = Counter(found) - Counter(round(one, 3) for one in pegged)
    thick = pieces * (through(replace(along, depth=None), work.form.size) if work.form else 0.0)
    plain = [_through(work, free, size, through_hole(work, size, thick)) for size in _wide(free)]
    plate = [_through(work, free, size, to_plate(work, size, thick)) for size in _wide(free)]
    return Bolts(" and ".join(plain), " and ".join(plate), over_strap(work, thick), free.total())


def _wide(free: Counter[float]) -> list[float]:
    return sorted(free, reverse=True)


def _through(work: Work, free: Counter[float], across: float, bolt: str) -> str:
    """`bolts with nuts M3 × 10 mm through the 2 ⌀3.4 mm holes`."""
    count, hole = free[across], f"⌀{work.mm(across)}"
    if count == 1:
        return f"a bolt with nut {bolt} through the {hole} hole"
    return f"bolts with nuts {bolt} through the {count} {hole} holes"


def in_jaws(bolts: Bolts) -> str:
    """What keeps a stack together whose edges the jaws hold."""
    if not bolts.many:
        return JAWS
    more = "" if bolts.many > 1 else ", and pegs and the jaws"
    return f"{bolts.held}{more}{_NONE_HANGS}"


@dataclass(frozen=True, slots=True)
class Fastened:
    """With what work is fastened to a faceplate, and `where`, as words after its clamping."""

    tool: str
    where: str = ""


def on_plate(work: Work, along: Located, bolts: Bolts) -> Fastened:
    """Bolts through the holes of the work, else straps on the metal beside the cut."""
    weight = "a block against its heavy side"
    if bolts.many > 1:
        return Fastened(f"to the plate by {bolts.to_plate}, {weight}", _NOTHING_ELSE)
    where = f"; straps hold it to the plate, {_beside(work, along)}{_NOTHING_ELSE}"
    return Fastened(f"straps, bolts with nuts {bolts.over} to the plate, {weight}", where)


def alone(grip: Grip, acts: Sequence[Act], held: Fastened) -> tuple[Grip, list[Act]]:
    """The grip of one piece on a faceplate with what holds it, which lies ready for its first act.

    It has no clamping of a stack that would tell it.
    """
    how = held.where.removeprefix("; ").removesuffix(_NOTHING_ELSE)
    told = how if "straps" in held.tool else held.tool.partition(", ")[0]
    first, *rest = acts
    tools = f"{first.tool}, {held.tool}".removeprefix(", ")
    return replace(grip, on=f"{grip.on}; {told}"), [replace(first, tool=tools), *rest]


def _beside(work: Work, cut: Located) -> str:
    """`both from 0 mm to 51 mm off its left-hand end`: clear of the cut, by the form."""
    if work.form is None:
        return "clear of the cut"
    half = (cut.diameter or 0.0) / 2 + _FREE_MM
    best: list[tuple[float, str]] = []
    for axis, ends in enumerate(_SIDES):
        at, whole = cut.frame.origin[axis], work.form.size[axis]
        if abs(cut.frame.z[axis]) > 1 - _LEAN:
            continue
        free = ((at - half, ends[0]), (whole - at - half, ends[1]))
        told = [(room, f"0 mm to {work.mm(int(room))} off its {end}") for room, end in free]
        best.append(max(told))
        if all(room >= _BEARS_MM for room, _ in told):
            return f"one on either side of the cut: from {told[0][1]}, and from {told[1][1]}"
    room, said = max(best)
    if room < _BEARS_MM:
        return "on a plate of scrap bolted over its edges, clear of the cut"
    return f"both from {said}, one along each edge"
