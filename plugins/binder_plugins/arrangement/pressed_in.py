"""A bush that is pressed in to the side on which it is drawn, where it goes in one way alone."""

from __future__ import annotations

from binder.api import Design, FitFact, Joint
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y
from binder_solid.stands_at import fixed_pair
from binder_solid.way_round import coming_out

_PRESSED = "pressed"


def way_off(copy: PlacedFact, onto: PlacedFact, design: Design) -> Vector | None:
    """The way in the model in which a copy comes off what it is pressed into, or is pressed on.

    None where the two are not pressed together, or go together from either side.
    """
    for joint in design.joints.values():
        if joint.kind == _PRESSED and {copy.item, onto.item} == set(joint.items):
            fit = design.facts.about(FitFact, joint.name)
            bush = fit.shaft.partition(".")[0] if fit is not None else ""
            inner, outer = (copy, onto) if copy.item == bush else (onto, copy)
            found = _out_of(joint, inner, outer, design)
            sign = 1 if inner is copy else -1
            return _turned(found, sign) if found is not None else None
    return None


def _out_of(joint: Joint, bush: PlacedFact, outer: PlacedFact, design: Design) -> Vector | None:
    """As the bush comes out of this copy, told by that one of which the way is known."""
    way, pair = coming_out(joint, bush.item, design), fixed_pair(joint, design)
    if way is None or pair is None:
        return None
    known = next(one for one in pair if one.item == outer.item)
    x, y, z = (dot(way, axis) for axis in _axes(known))
    if known.is_opposite != outer.is_opposite:  # Its mirror image, front for back.
        y = -y
    a, b, c = _axes(outer)
    return (
        x * a[0] + y * b[0] + z * c[0],
        x * a[1] + y * b[1] + z * c[1],
        x * a[2] + y * b[2] + z * c[2],
    )


def _axes(copy: PlacedFact) -> tuple[Vector, Vector, Vector]:
    return copy.frame.x, frame_y(copy.frame), copy.frame.z


def _turned(way: Vector, sign: int) -> Vector:
    return (sign * way[0], sign * way[1], sign * way[2])
