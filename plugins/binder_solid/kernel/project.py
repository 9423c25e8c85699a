"""Solids drawn from one side, with what is hidden told apart."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from binder_solid.extent import bounds_of
from binder_solid.forms import Form, Vector
from binder_solid.space import length, minus
from binder_solid.tidy import tidied
from binder_solid.views import CutFace, Edge, Projection, View, axes_of

from .extents import rough_envelope
from .flatten import flattened
from .hidden import has_free_edges, seen_edges, seen_of_each, slack
from .shapes import solid_of
from .words import Shape


def views(forms: Form | tuple[Form, ...], projections: Iterable[Projection]) -> tuple[View, ...]:
    """Draws one form, or several in one picture, from each side asked for; raises Unbuildable."""
    shapes = [solid_of(form) for form in (forms if isinstance(forms, tuple) else (forms,))]
    return tuple(drawn(shapes, side, axes_of(side)) for side in projections)


def drawn(
    shapes: Sequence[Shape],
    name: str,
    axes: tuple[Vector, Vector],
    faces: tuple[CutFace, ...] = (),
) -> View:
    """Draws shapes as seen with these directions to the right and upwards."""
    right, up = axes
    is_tilted = name != "isometric" and any(map(has_free_edges, shapes))
    edges = [
        Edge(kind, line)
        for kind, edge in seen_edges(shapes, right, up, is_tilted=is_tilted)
        if (line := flattened(edge, right, up)) is not None
    ]
    depth = max(length(minus(most, least)) for least, most in map(rough_envelope, shapes))
    tidy = tidied(edges, slack(depth) if is_tilted else 0.0)
    return View(name, right, up, tidy, bounds_of(tidy), faces)


def gathered(forms: tuple[Form, ...], side: Projection) -> tuple[View, ...]:
    """Draws what is seen of each of several forms that stand together; raises Unbuildable."""
    shapes = [solid_of(form) for form in forms]
    right, up = axes_of(side)
    is_tilted = side != "isometric" and any(map(has_free_edges, shapes))
    boxes = [rough_envelope(shape) for shape in shapes]
    depth = max(length(minus(most, least)) for least, most in boxes)
    found: list[View] = []
    for shape_edges in seen_of_each(shapes, right, up, is_tilted=is_tilted):
        edges = [
            Edge(kind, line)
            for kind, edge in shape_edges
            if (line := flattened(edge, right, up)) is not None
        ]
        tidy = tidied(edges, slack(depth) if is_tilted else 0.0)
        found.append(View(side, right, up, tidy, bounds_of(tidy)))
    return tuple(found)
