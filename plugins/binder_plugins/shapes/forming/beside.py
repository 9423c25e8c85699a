"""Holes that a joint wants through a wall beside its slot, as for gib screws, to where they lie."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import AsideFact, Design, Part, exact, shown_length
from binder_plugins.shapes.forming.body import FACES, Body
from binder_plugins.shapes.forming.locating import Made
from binder_solid.facts import Located
from binder_solid.forms import Cylinder, Frame, Vector

_CLEAR = 1.0


def holes_beside(
    part: Part, body: Body, made: tuple[Made, ...], design: Design
) -> Iterator[Located]:
    """The holes of each such joint, in the face from which it says that they are drilled."""
    slots = {one.feature.name: one.located.frame for one in made}
    for fact in design.facts.all(AsideFact):
        slot = slots.get(fact.slot)
        if fact.item != part.name or fact.side not in FACES or body.is_turned:
            continue
        if slot is not None:
            yield _located(part, fact, body, slot, design.units)


def _located(part: Part, fact: AsideFact, body: Body, slot: Frame, units: str) -> Located:
    out = FACES[fact.side].z
    a, b, c = out
    inwards: Vector = (0.0 - a, 0.0 - b, 0.0 - c)
    frames = tuple(_frame(along, fact, body, slot, out) for along in fact.along)
    tools = tuple(
        Cylinder(
            fact.drill_mm / 2,
            fact.wall + fact.leans + _CLEAR,
            Frame(_plus(one.origin, out, _CLEAR), inwards, one.x),
        )
        for one in frames
    )
    note = _note(fact, _stations(fact, body, slot, frames, units), units)
    return Located(
        name=fact.place,
        kind="tapped",
        face=fact.side,
        frame=frames[0],
        spots=tuple(one.origin for one in frames),
        tools=tools,
        note=note,
        diameter=fact.drill_mm,
        depth=fact.tapped,
        is_thread=True,
        ids=(f"{part.name}.{fact.place}.tapped",),
        core=note,
        at=part.at,
    )


def _frame(along: float, fact: AsideFact, body: Body, slot: Frame, out: Vector) -> Frame:
    """From the middle of the slot, half of what the first and the last stand apart to each way."""
    middle = (fact.along[0] + fact.along[-1]) / 2
    spot = list(_plus(_plus(slot.origin, slot.x, along - middle), slot.z, -fact.below))
    axis = _axis(out)
    spot[axis] = body.most[axis] if out[axis] > 0 else body.least[axis]
    return Frame((spot[0], spot[1], spot[2]), out, slot.x)


def _stations(
    fact: AsideFact, body: Body, slot: Frame, frames: tuple[Frame, ...], units: str
) -> str:
    """Where they stand, in words: so many sizes beside one another would crowd a drawing."""
    run, up = _axis(slot.x), _axis(slot.z)
    first, top = ("left", "front", "underside")[run], slot.z[up] > 0
    along = [_size(one.origin[run] - body.least[run], units) for one in frames]
    face = (("left", "right"), ("front", "back"), ("underside", "top"))[up][top]
    # Who looks at the back has the left end of the part on his right.
    seen = " (on the right from behind)" if fact.side == "back" and first == "left" else ""
    return f"at {', '.join(along)} from {first}{seen}, {_size(fact.below, units)} from {face}"


def _note(fact: AsideFact, stations: str, units: str) -> str:
    many = f"{len(fact.along)} × " if len(fact.along) > 1 else ""
    outer = f", the outer {_size(fact.tapped, units)}" if fact.tapped < fact.wall else ""
    drill = f"drill {fact.drill} through into the slot"
    return f"{many}tap {fact.thread}{outer}, {drill}, {stations}"


def _size(mm: float, units: str) -> str:
    return shown_length(exact(round(mm, 1)), units)


def _axis(way: Vector) -> int:
    return max(range(3), key=lambda n: abs(way[n]))


def _plus(one: Vector, way: Vector, far: float) -> Vector:
    a, b, c = (x + far * w for x, w in zip(one, way, strict=True))
    return a, b, c
