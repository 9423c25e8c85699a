"""Holes in which another part's tail is riveted: sunk on the side where the tail comes out."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import PlaceFact
from binder_plugins.operations.bench import drill_for, place_of, vice_for
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.hole_kinds import through
from binder_plugins.operations.parallels import in_vice
from binder_plugins.operations.sides import SAID, SHEET_MM
from binder_plugins.operations.words import holding_min
from binder_solid.tail_end import tail_end
from binder_trade.fastening import TAIL_SEAT_DEG, tail_mouth

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import HalfFact
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

_OUTER = "outer face"
_NEAR = 1e-6


def sunk_for_tails(work: Work) -> Iterator[SetUp]:
    """One set-up for each such hole, after it is drilled: the piece lies the other way up."""
    workshop = work.design.workshop
    for one in work.form.located if work.form is not None else ():
        half = _riveted(work, one)
        if half is None or work.is_wholly_left(one.name):
            continue
        machine = drill_for(workshop, one.diameter or 0.0)
        face = _far_face(work, one, half)
        grip = _grip(work)
        yield SetUp(1, place_of(workshop, machine), machine, grip, f"{face} up; the hole",
                    (_sunk(work, one, half, face, machine),), "", "",
                    holding_min(grip.kind))  # fmt: skip


def _grip(work: Work) -> Grip:
    """Sheet lies on wood, so that the tool does not lift it."""
    if work.form is not None and min(work.form.size) < SHEET_MM:
        vice = vice_for(work.design.workshop)
        return Grip(f"clamped on wood in the {vice or 'drilling machine'}", "vice", "its face")
    high = work.form.size[2] if work.form is not None else 0.0
    return Grip(in_vice(work.design.workshop, high) or "clamps", "vice", "its sides")


def _riveted(work: Work, one: Located) -> HalfFact | None:
    """The half of a joint that rivets a step of another part in a hole."""
    for half in work.halves.get(one.name, ()):
        joint = work.design.joints.get(half.joint)
        tail = work.design.facts.about(PlaceFact, half.mate)
        if joint is not None and joint.kind == "riveted" and tail is not None:
            return half if tail.form == "step" and tail.diameter else None
    return None


def _sunk(work: Work, one: Located, half: HalfFact, face: str, machine: str) -> Act:
    tail = work.design.facts.about(PlaceFact, half.mate)
    size = work.form.size if work.form is not None else (0.0, 0.0, 0.0)
    across = float(tail.diameter) if tail is not None and tail.diameter else 0.0
    hole = one.diameter or across
    mouth = tail_mouth(across, hole, max(through(one, size), _NEAR))
    deep = work.mm(round((mouth - hole) / 2, 2))
    each = f" of each of the {work.count}" if work.count > 1 else ""
    return work.act(
        "countersink",
        f"countersink the {one.name.replace('_', ' ')} ⌀{work.mm(mouth)} × {TAIL_SEAT_DEG:g}°, "
        f"{deep} deep, on the {face}{each}: the tail that comes out there is spread into it",
        machine=machine,
        feature=one.name,
        tool=_tool(work, mouth),
        size=mouth,
        times=len(one.spots),
        meets=(one.name,),
    )


def _tool(work: Work, mouth: float) -> str:
    owned = sorted(
        one.diameter.mm
        for one in work.design.workshop.entry.cutters.countersinks
        if one.diameter.mm >= mouth and abs(float(one.angle.exact) - TAIL_SEAT_DEG) < _NEAR
    )
    return f"{work.mm(owned[0])} countersink" if owned else f"countersink, {TAIL_SEAT_DEG:g}°"


def _far_face(work: Work, one: Located, half: HalfFact) -> str:
    """Where the tail comes out; of several alike, which may stand either way round, the outer."""
    return SAID.get(tail_end(work.name, one, half.mate.partition(".")[0], work.design), _OUTER)
