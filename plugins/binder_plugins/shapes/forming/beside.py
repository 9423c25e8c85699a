"""Holes that a joint wants through a wall beside its slot, as for gib screws, to where they lie."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import AsideFact, Design, Part, exact, shown_length
from binder_plugins.shapes.forming.body import FACES, Body, cross
from binder_plugins.shapes.forming.locating import Made
from binder_solid.facts import Located, Told
from binder_solid.forms import Cylinder, Frame, Vector

_AXES = "xyz"
_CLEAR = 1.0


def holes_beside(
    part: Part, body: Body, made: tuple[Made, ...], design: Design
) -> Iterator[Located]:
    """The holes of each such joint, on the face to the right of the slot seen along its run.

    Which of the two sides it is, the maker is free to choose: the drawing shows one.
    """
    slots = {one.feature.name: one.located.frame for one in made}
    for fact in design.facts.all(AsideFact):
        slot = slots.get(fact.slot)
        if fact.item == part.name and slot is not None and not body.is_turned:
            yield _located(part, fact, body, slot, design.units)


def _located(part: Part, fact: AsideFact, body: Body, slot: Frame, units: str) -> Located:
    a, b, c = cross(slot.z, slot.x)
    out: Vector = (0.0 - a, 0.0 - b, 0.0 - c)
    face = next(name for name, frame in FACES.items() if frame.z == out)
    frames = tuple(_frame(along, fact, body, slot, out) for along in fact.along)
    tools = tuple(
        Cylinder(
            fact.drill_mm / 2,
            fact.wall + fact.leans + _CLEAR,
            Frame(_plus(one.origin, out, _CLEAR), (a, b, c), one.x),
        )
        for one in frames
    )
    key = f"{part.name}.{fact.place}"
    return Located(
        name=fact.place,
        kind="tapped",
        face=face,
        frame=frames[0],
        spots=tuple(one.origin for one in frames),
        tools=tools,
        note=_note(fact, units),
        told=tuple(_told(key, fact, body, slot, frames, units)),
        diameter=fact.drill_mm,
        depth=fact.tapped,
        is_thread=True,
        ids=(f"{key}.tapped",),
        core=_note(fact, units),
        at=part.at,
    )


def _frame(along: float, fact: AsideFact, body: Body, slot: Frame, out: Vector) -> Frame:
    """From the middle of the slot, half of what the first and the last stand apart to each way."""
    middle = (fact.along[0] + fact.along[-1]) / 2
    spot = list(_plus(_plus(slot.origin, slot.x, along - middle), slot.z, -fact.below))
    axis = _axis(out)
    spot[axis] = body.most[axis] if out[axis] > 0 else body.least[axis]
    return Frame((spot[0], spot[1], spot[2]), out, slot.x)


def _told(
    key: str, fact: AsideFact, body: Body, slot: Frame, frames: tuple[Frame, ...], units: str
) -> Iterator[Told]:
    """Each from the end that the slot is told from, and how far they stand under the face."""
    run, up = _axis(slot.x), _axis(slot.z)
    for number, one in enumerate(frames, 1):
        at, start = one.origin[run], body.least[run]
        text = shown_length(exact(round(abs(at - start), 1)), units)
        yield Told(f"{key}.at{number}", _AXES[run], start, at, text)
    top, below = slot.origin[up], shown_length(exact(round(fact.below, 2)), units)
    yield Told(f"{key}.below", _AXES[up], top, frames[0].origin[up], below)


def _note(fact: AsideFact, units: str) -> str:
    many = f"{len(fact.along)} × " if len(fact.along) > 1 else ""
    deep = shown_length(exact(round(fact.tapped, 1)), units)
    outer = f", the outer {deep}" if fact.tapped < fact.wall else ""
    return f"{many}tap {fact.thread}{outer}, through into the slot, drill {fact.drill}"


def _axis(way: Vector) -> int:
    return max(range(3), key=lambda n: abs(way[n]))


def _plus(one: Vector, way: Vector, far: float) -> Vector:
    a, b, c = (x + far * w for x, w in zip(one, way, strict=True))
    return a, b, c
