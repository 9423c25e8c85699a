"""A feature to the view that shows it best, and the point there that its leader touches."""

from __future__ import annotations

import math
from dataclasses import dataclass

from binder_plugins.drawings.flanks import flanks_of
from binder_solid.along_axes import spans_of
from binder_solid.facts import FormFact, Located
from binder_solid.forms import Arc, Raised, Revolved, Straight, Vector
from binder_solid.opposite import BEHIND
from binder_solid.views import Projection, flat

_FACES: dict[str, Projection] = {
    "top": "top",
    "underside": "underside",
    "front": "front",
    "back": "back",
    "left": "left",
    "right": "right",
}
EDGES = ("chamfered", "rounded")
_INTO = 1.0 - math.sqrt(0.5)


@dataclass(frozen=True, slots=True)
class Pointing:
    """A view, a place in it, and the radius of the circle that the leader touches there."""

    view: str
    place: tuple[float, float]
    radius: float = 0.0
    others: tuple[tuple[float, float], ...] = ()


def pointed_at(one: Located, fact: FormFact, views: tuple[str, ...]) -> Pointing:
    """Where a leader to a feature points."""
    if one.kind in EDGES and one.tools:
        return _turned_edge(one, fact) if fact.stretches else _edge(one, fact, views)
    view = view_of(one, fact, views)
    flanks = tuple(flat(at, _named(view)) for at in flanks_of(one))
    if flanks:
        return Pointing(view, flanks[0], others=flanks[1:])
    if one.kind == "stepped" and one.tools:
        return Pointing(view, flat(_on_step(one, fact), _named(view)))
    u, v = flat(one.spots[0], _named(view))
    radius = (one.diameter or 0.0) / 2
    if fact.stretches and view == "front":
        # The mouth of a hole on the axis is seen in the half that is cut.
        is_bore = one.face == "axis" and len(one.spots) == 1
        if is_bore and one.kind == "spotfaced":
            # Where it was begun there is air: its floor is seen.
            u -= one.frame.z[0] * (one.depth or 0.0)
        return Pointing(view, (u, v + radius) if is_bore else (u, v))
    others = (flat(spot, _named(view)) for spot in one.spots[1:])
    return Pointing(view, (u, v), radius, tuple(dict.fromkeys(others)))


def _on_step(one: Located, fact: FormFact) -> Vector:
    """The middle of what a step takes off: the middle of its face is left standing."""
    spans = spans_of(one.tools[0])
    if spans is None:
        return one.spots[0]
    ends = zip(spans, fact.size, strict=True)
    a, b, c = ((max(low, 0.0) + min(high, size)) / 2 for (low, high), size in ends)
    return a, b, c


def _turned_edge(one: Located, fact: FormFact) -> Pointing:
    """The slope of a broken corner, or of the mouth of a hole, in the half that is cut."""
    tool = one.tools[-1]
    if isinstance(tool, Revolved):
        first = tool.outline.segments[0]
        if isinstance(first, Arc):
            return Pointing("front", first.through)
        if isinstance(first, Straight):
            (x, r), (u, v) = tool.outline.start, first.to
            return Pointing("front", ((x + u) / 2, (r + v) / 2))
    u, v = flat(one.spots[0], "front")
    holes = [mate.diameter or 0.0 for mate in fact.located if _is_under(one, mate)]
    return Pointing("front", (u, v + max(holes, default=0.0) / 2))


def _is_under(one: Located, mate: Located) -> bool:
    return mate is not one and mate.kind not in EDGES and mate.spots[:1] == one.spots[:1]


def view_of(one: Located, fact: FormFact, views: tuple[str, ...]) -> str:
    """The view that looks at the face of a feature, or at what comes out behind it."""
    if fact.stretches:
        is_ring = one.face == "axis" and len(one.spots) > 1 and "right" in views
        return "right" if is_ring else "front"
    wanted = _FACES.get(one.face, "front")
    if wanted in views:
        return wanted
    behind = BEHIND[wanted]
    return behind if behind in views else views[0]


def _named(view: str) -> Projection:
    return _FACES.get(view, "front")


def _edge(one: Located, fact: FormFact, views: tuple[str, ...]) -> Pointing:
    """The corner of the view that looks along one of the edges, a little into the metal."""
    frames = [tool.frame for tool in one.tools if isinstance(tool, Raised)]
    for view, axis in (("top", 2), ("front", 1), ("right", 0), ("left", 0)):
        ends = [frame.origin for frame in frames if abs(frame.z[axis]) > 0.9]
        if view in views and ends:
            spot = max(ends, key=lambda at: (at[2], at[0], at[1]))
            return Pointing(view, flat(_inwards(spot, one, fact, axis), _named(view)))
    return Pointing(views[0], flat(one.spots[0], _named(views[0])))


def _inwards(spot: Vector, one: Located, fact: FormFact, axis: int) -> Vector:
    """From a sharp edge to the middle of what takes its place."""
    share = _INTO if one.kind == "rounded" else 0.5
    far = share * (one.diameter or 0.0)
    a, b, c = (
        place if n == axis else place + (far if place < size / 2 else -far)
        for n, (place, size) in enumerate(zip(spot, fact.size, strict=True))
    )
    return (a, b, c)
