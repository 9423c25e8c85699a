"""A face of a form as it is looked at: its corner, size, outline, and where it is cut."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import product

from binder_plugins.shapes.laying.holes import is_hole
from binder_solid.facts import FormFact, Located
from binder_solid.forms import Outline, Point, Vector
from binder_solid.outlines import circle
from binder_solid.space import cross, dot
from binder_solid.views import Cutting, Projection, axes_of, flat

# How deep under a face it is cut: enough to be in the metal, and above what lies deeper.
_SKIN = 0.2
_SAME = 1e-6


@dataclass(frozen=True, slots=True)
class Face:
    """A view of one face in mm; `corner` is its lower left one in the view."""

    name: Projection
    corner: Point
    size: Point
    cutting: Cutting
    thickness: float
    outline: Outline | None = None

    def on(self, point: Vector) -> Point:
        """Where a point of the part lies on the paper."""
        u, v = flat(point, self.name)
        return (u - self.corner[0], v - self.corner[1])


def box_face(name: Projection, form: FormFact, *, is_sheet: bool) -> Face:
    """One side of a box; sheet is cut in the middle of its web, a block close under the face."""
    corners = [flat((x, y, z), name) for x, y, z in product(*((0.0, end) for end in form.size))]
    least = (min(u for u, _ in corners), min(v for _, v in corners))
    most = (max(u for u, _ in corners), max(v for _, v in corners))
    out = cross(*axes_of(name))
    axis = next(n for n in range(3) if abs(out[n]) > 0.5)
    thick = form.size[axis]
    is_through = is_sheet and name in ("top", "underside")
    deep = _middle_of_web(form, thick) if is_through and name == "top" else min(_SKIN, thick / 4.0)
    at = thick - deep if out[axis] > 0 else deep
    size = (most[0] - least[0], most[1] - least[1])
    return Face(name, least, size, Cutting("flat", name, at), thick)


def _middle_of_web(form: FormFact, thick: float) -> float:
    """How deep to cut so that slots and pockets which do not go through are left out."""
    deep = {"top": 0.0, "underside": 0.0}
    for one in form.located:
        if one.face in deep and one.depth is not None and not is_hole(one):
            deep[one.face] = max(deep[one.face], one.depth)
    web = thick - deep["top"] - deep["underside"]
    return deep["top"] + web / 2.0 if web > 0.0 else thick / 2.0


def end_faces(form: FormFact) -> Iterator[tuple[Face, list[Located]]]:
    """The ends and shoulders of turned work that holes stand on, each with its holes."""
    ways: tuple[tuple[Projection, float], ...] = (("left", -1.0), ("right", 1.0))
    for name, way in ways:
        found = [
            one
            for one in form.located
            if one.face == "axis" and is_hole(one) and dot(one.frame.z, (way, 0.0, 0.0)) > 0.5
        ]
        rings = [one for one in found if len(one.spots) > 1]
        for x in sorted({round(one.frame.origin[0], 6) for one in rings}):
            here = [one for one in found if abs(one.frame.origin[0] - x) < _SAME]
            # A bore in another face that goes right through is seen in this one.
            bores = [one for one in form.located if _is_bore(one) and one not in here]
            yield _end_face(name, way, x, form), [*here, *bores]


def left_face(form: FormFact) -> tuple[Face, list[Located]]:
    """The first end of work about the axis, and the holes in it."""
    first = min(one.start for one in form.stretches)
    found = [one for one in form.located if one.face == "axis" and is_hole(one)]
    here = [one for one in found if abs(one.frame.origin[0] - first) < _SAME or one.depth is None]
    return _end_face("left", -1.0, first, form), here


def _is_bore(one: Located) -> bool:
    return one.face == "axis" and is_hole(one) and one.depth is None and len(one.spots) == 1


def _end_face(name: Projection, way: float, x: float, form: FormFact) -> Face:
    ends = [one.end if way > 0 else one.start for one in form.stretches]
    here = [one for one, end in zip(form.stretches, ends, strict=True) if abs(end - x) < _SAME]
    widest = max((max(one.across, one.end_across) for one in here or form.stretches), default=0.0)
    thick = max((one.end - one.start for one in here), default=form.size[0])
    radius = widest / 2.0
    at = x - way * min(_SKIN, thick / 4.0)
    outline = circle(radius, (radius, radius))
    cutting = Cutting("flat", name, at)
    return Face(name, (-radius, -radius), (widest, widest), cutting, thick, outline)
