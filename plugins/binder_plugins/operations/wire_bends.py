"""Bent wire: each bend by where it begins on the straight wire, its angle and the rod inside."""

from __future__ import annotations

import itertools
import math
from typing import TYPE_CHECKING

from binder_solid.forms import Bent, Cut, Joined

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located
    from binder_solid.forms import Vector

# What wire springs back is found on a scrap of it; common practice, no source.
_SPRINGS = "a little past it, since it springs back: try a scrap first"
_FLAT = 0.9


def bending(work: Work, holes: Sequence[Located]) -> Iterator[Act]:
    """The acts of bending, one for each corner, then a look at the drawing."""
    form = bent_in(work)
    if form is None:
        return
    rod = work.mm(round(2 * form.bend - form.wire, 3))
    for number, (start, turn) in enumerate(bends(form), 1):
        first = f"{_plane(form, holes)}; {_SPRINGS}" if number == 1 else ""
        yield work.act(
            "bend",
            f"bend {turn:.0f}° round a {rod} rod, the bend beginning "
            f"{work.mm(round(start, 1))} from that end, measured along the wire{first}",
            feature="bends",
            tool="vice, rod and mallet",
        )


def bent_in(work: Work) -> Bent | None:
    """The bent wire that a part is, under the holes that are cut in it and a flat."""
    form = work.form.form if work.form is not None else None
    while isinstance(form, Cut | Joined):
        form = form.form if isinstance(form, Cut) else form.forms[0]
    return form if isinstance(form, Bent) else None


def bends(form: Bent) -> Iterator[tuple[float, float]]:
    """Where each bend begins along the middle of the wire in mm, and its turn in degrees."""
    legs = [_between(a, b) for a, b in itertools.pairwise(form.points)]
    along, taken = 0.0, 0.0
    for one, other in itertools.pairwise(legs):
        cosine = _dot(one, other) / (math.hypot(*one) * math.hypot(*other))
        turn = math.acos(max(-1.0, min(1.0, cosine)))
        tangent = form.bend * math.tan(turn / 2)
        along += math.hypot(*one) - taken - tangent
        yield along, math.degrees(turn)
        along, taken = along + form.bend * turn, tangent


def _plane(form: Bent, holes: Sequence[Located]) -> str:
    """How the bends lie to a hole across the wire; nothing where it leans."""
    legs = [_between(a, b) for a, b in itertools.pairwise(form.points)]
    normal = next(
        (n for a, b in itertools.pairwise(legs) if math.hypot(*(n := _cross(a, b)))), None
    )
    if not holes or normal is None:
        return ""
    name = holes[0].name.replace("_", " ")
    lean = abs(_dot(normal, holes[0].frame.z)) / math.hypot(*normal)
    if lean > _FLAT:
        return f"; the {name} lies flat in the plane of the bends"
    return f"; the {name} stands square to the plane of the bends" if lean < 1 - _FLAT else ""


def _between(a: Vector, b: Vector) -> Vector:
    return (b[0] - a[0], b[1] - a[1], b[2] - a[2])


def _dot(a: Vector, b: Vector) -> float:
    return sum(p * q for p, q in zip(a, b, strict=True))


def _cross(a: Vector, b: Vector) -> Vector:
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])
