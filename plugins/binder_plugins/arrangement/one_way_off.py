"""To which side a part comes off that goes on, or in, one way alone: as the bench is told."""

from __future__ import annotations

from binder.api import Design, FitFact, Joint
from binder_solid.eased_along import comes_from
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y
from binder_solid.stands_at import fixed_pair
from binder_solid.way_round import coming_out

_PRESSED = "pressed"


def way_off(copy: PlacedFact, onto: PlacedFact, design: Design) -> Vector | None:
    """The way in the model in which a copy comes off the one that it is on, or in.

    Told of what is pressed together, and of a rod that is eased for its mate from one end. None
    where the two go together from either side.
    """
    pressed = pressed_off(copy, onto, design)
    if pressed is not None:
        return pressed
    off = eased_off(copy, onto, design)
    if off is not None:
        return off
    back = eased_off(onto, copy, design)
    return _turned(back, -1) if back is not None else None


def pressed_off(copy: PlacedFact, onto: PlacedFact, design: Design) -> Vector | None:
    """As `way_off`, of two that are pressed together."""
    for joint in design.joints.values():
        if joint.kind == _PRESSED and {copy.item, onto.item} == set(joint.items):
            fit = design.facts.about(FitFact, joint.name)
            bush = fit.shaft.partition(".")[0] if fit is not None else ""
            inner, outer = (copy, onto) if copy.item == bush else (onto, copy)
            found = _out_of(joint, inner, outer, design)
            return _turned(found, 1 if inner is copy else -1) if found is not None else None
    return None


def eased_off(mate: PlacedFact, rod: PlacedFact, design: Design) -> Vector | None:
    """The way in which a mate comes off a rod that is eased for it from one end; else None."""
    for joint in design.joints.values():
        if {mate.item, rod.item} == set(joint.items):
            end, pair = comes_from(joint, design), fixed_pair(joint, design)
            if end and pair is not None and pair[0].item == rod.item:
                return _turned(rod.frame.x, 1 if end == "right" else -1)
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
