"""Threads in holes to what a drawing tells: thin lines beside the wall, and how deep to drill.

Source: ISO 6410-1: the major diameter of an inside thread is a continuous thin line, dashed where
it is hidden, to the full depth of the thread; the drilled hole goes on with its own wall.
"""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, ThreadFact, exact, shown_length
from binder_drafting import ThreadLine
from binder_solid.facts import FormFact, Located
from binder_solid.views import Edge, StraightLine, View

# The drill across the crests as a share of the major diameter, near enough for a line on paper.
ROOT = 0.85
_SAME = 1e-3
_Point = tuple[float, float]


def inside_thread(view: View, one: Located) -> Iterator[ThreadLine]:
    """Lines at the major diameter of a tapped hole that lies in the sheet.

    One runs beside each wall that the view shows, so that a section shows the half that it cuts.
    """
    radius = (one.diameter or 0.0) / 2
    way = view.flat(one.frame.z)
    for spot in one.spots:
        mouth = view.flat(spot)
        for edge in view.edges:
            # A section leaves hidden lines out.
            if view.faces and edge.kind == "hidden":
                continue
            yield from _beside(edge, mouth, way, radius, one.depth)


def _beside(
    edge: Edge, mouth: _Point, way: _Point, radius: float, depth: float | None
) -> Iterator[ThreadLine]:
    if not isinstance(edge.line, StraightLine):
        return
    ends = [_in_hole(point, mouth, way) for point in (edge.line.start, edge.line.end)]
    asides = [aside for _, aside in ends]
    if any(abs(abs(one) - radius) > _SAME for one in asides) or asides[0] * asides[1] < 0:
        return
    near, far = sorted(deep for deep, _ in ends)
    out = radius / ROOT
    # A chamfered mouth takes the crests away further in than the roots.
    start = max(0.0, near - (out - radius))
    end = far if depth is None else min(far, depth)
    if end <= near + _SAME:
        return
    side = out if asides[0] > 0 else -out
    yield ThreadLine(
        _on_sheet(start, side, mouth, way),
        _on_sheet(end, side, mouth, way),
        is_hidden=edge.kind == "hidden",
        gap=out - radius,
    )


def _in_hole(point: _Point, mouth: _Point, way: _Point) -> _Point:
    """How deep a point of the sheet lies under a mouth, and how far aside of the axis."""
    u, v = point[0] - mouth[0], point[1] - mouth[1]
    return -(u * way[0] + v * way[1]), u * -way[1] + v * way[0]


def _on_sheet(deep: float, aside: float, mouth: _Point, way: _Point) -> _Point:
    return (
        mouth[0] - deep * way[0] - aside * way[1],
        mouth[1] - deep * way[1] + aside * way[0],
    )


def drilled_to(fact: FormFact, design: Design) -> dict[str, str]:
    """What is said of a blind tapped hole, by its name: thread and drill, each with its depth."""
    found: dict[str, str] = {}
    for one in fact.located:
        thread = design.facts.about(ThreadFact, f"{fact.subject}.{one.name}")
        if one.kind != "tapped" or one.depth is None or thread is None:
            continue
        if thread.drill_mm and (thread.drill_depth or 0.0) > one.depth + _SAME:
            full, across, deep = (
                shown_length(exact(round(mm, places)), design.units)
                for mm, places in (
                    (one.depth, 3),
                    (thread.drill_mm, 2),
                    (thread.drill_depth or 0.0, 1),
                )
            )
            found[one.name] = f"tap {thread.designation} × {full}, drill ⌀{across} × {deep}"
    return found
