"""Round holes straight through a plate told as holes in its outline, which the kernel likes better.

Four hundred cylinders cut from a plate take the kernel half a second, an outline with as many
holes a twentieth of that; the solid is the same.
"""

from __future__ import annotations

from dataclasses import replace

from .faults import Unbuildable
from .forms import Box, Cut, Cylinder, Form, Frame, Outline, Point, Raised
from .outline_sense import check_outline
from .outlines import circle, pierced, rectangle
from .space import dot, frame_y, minus, plus

_SAME = 1e-9


def punched(form: Cut) -> Form:
    """Gives the same body with its plain through holes in the outline, where it has such."""
    plate = _plate(form.form)
    if plate is None:
        return form
    holes: list[Outline] = []
    others: list[Form] = []
    for tool in form.tools:
        hole = _hole(tool, plate)
        others.append(tool) if hole is None else holes.append(hole)
    if len(holes) < 2:
        return form
    whole = replace(plate, outline=pierced(plate.outline, *holes))
    try:
        check_outline(whole.outline, "outline")
    except Unbuildable:
        return form
    return Cut(whole, tuple(others)) if others else whole


def _plate(form: Form) -> Raised | None:
    match form:
        case Raised() if not form.draft:
            return form
        case Box(length, width, height, frame):
            return Raised(rectangle(length, width, (0.0, 0.0)), height, frame)
        case _:
            return None


def _hole(tool: Form, plate: Raised) -> Outline | None:
    """Gives the circle that a cylinder leaves; nothing where it does not go straight through."""
    if not isinstance(tool, Cylinder) or abs(dot(tool.frame.z, plate.frame.z)) < 1.0 - _SAME:
        return None
    ends = sorted(
        dot(minus(end, plate.frame.origin), plate.frame.z)
        for end in (tool.frame.origin, plus(tool.frame.origin, tool.frame.z, tool.height))
    )
    if ends[0] > _SAME or ends[1] < plate.height - _SAME:
        return None
    return circle(tool.radius, _flat(tool.frame, plate.frame))


def _flat(place: Frame, on: Frame) -> Point:
    way = minus(place.origin, on.origin)
    return (dot(way, on.x), dot(way, frame_y(on)))
