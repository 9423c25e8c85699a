"""Long parts that are fixed to one another, to the angle at which they stand."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import JointFact
from binder_solid.facts import FormFact
from binder_solid.laid_on import ENDS, facing, said_side, span_on, way_of
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, length, minus, placed, plus, unit
from binder_solid.stands_at import fixed_pair

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Joint
    from binder_solid.forms import Vector

_LONG = 1.5  # the longest side over the next: what is shorter has no line to set by
_SQUARE_DEG = 0.05
# By so much more to one side than to the other, before the eye tells them apart.
_STANDS_OUT_MM = 1.0


@dataclass(frozen=True, slots=True)
class Lean:
    """How a long part stands askew on another, `base`: `angle` in degrees, 0 to 90.

    `end` is that of the base to which its far end points, `way` in the model is square to the base
    towards the side to which it leans. `on` is what a flame has fixed on the base before in the
    joint `by`, None where nothing is there; `side` is the side of that which looks that way.
    """

    item: str
    base: PlacedFact
    angle: float
    end: str
    way: Vector
    on: PlacedFact | None
    by: str
    side: str


def leaning(joint: Joint, design: Design) -> Lean | None:
    """The slant at which two long parts meet; None where they do not, or that is not known.

    It is set off from the second of the two, or from the one that carries something with sides.
    """
    if len(joint.items) != 2:
        return None
    found = [
        one
        for pair in (joint.items, joint.items[::-1])
        if (one := _lean(pair[0], pair[1], design)) is not None
    ]
    return next((one for one in found if one.side), found[0] if found else None)


def leans_at(joint: Joint, design: Design) -> str:
    """`the jib at 40° to the slewing post, towards its right-hand end`; '' where not known.

    Told of two long parts that meet at a slant, to a tenth; what the other carries already tells
    to which side, and what stands out of that tells one side of it from the other.
    """
    one = leaning(joint, design)
    if one is None:
        return ""
    return (
        f"{_title(one.item, design)} at {one.angle:.3g}° to {_title(one.base.item, design)}, its "
        f"far end towards the {one.end}-hand end of that ({90 - one.angle:.3g}° from square across "
        f"it){_over(one, design)}"
    )


def _lean(item: str, base: str, design: Design) -> Lean | None:
    lines = [_line(name, design) for name in (item, base)]
    if lines[0] is None or lines[1] is None:
        return None
    (_, start, end), (stands, left, right) = lines[0], lines[1]
    axis = unit(minus(right, left))
    if _off(end, left, axis) < _off(start, left, axis):
        start, end = end, start
    along = dot(unit(minus(end, start)), axis)
    angle = math.degrees(math.acos(min(1.0, abs(along))))
    if not _SQUARE_DEG < angle < 90 - _SQUARE_DEG:
        return None
    far = minus(end, start)
    way = unit(plus(far, axis, -dot(far, axis)))
    by, on = _carried(base, {item, base}, design)
    side = facing(on, way, positive=True) if on is not None else ""
    return Lean(item, stands, angle, "right" if along > 0 else "left", way, on, by, side)


def _carried(base: str, but: set[str], design: Design) -> tuple[str, PlacedFact | None]:
    """What a flame has fixed round a part before it is drilled, with its joint; it has sides."""
    for joint in design.joints.values():
        said = design.facts.about(JointFact, joint.name)
        if said is None or not said.is_hot or base not in joint.items:
            continue
        pair = fixed_pair(joint, design)
        form = design.facts.about(FormFact, pair[1].item) if pair is not None else None
        if pair is not None and pair[0].item == base and form is not None and not form.stretches:
            return (joint.name, pair[1]) if pair[1].item not in but else ("", None)
    return "", None


def _over(one: Lean, design: Design) -> str:
    """`, over the back of the winch block, away from where the winch cheek stands out`."""
    if one.on is None or not one.side:
        return ""
    told = f", over the {said_side(one.side)} of {_title(one.on.item, design)}"
    axis = next(n for n, names in enumerate(ENDS) if one.side in names)
    sign = 1 if dot(way_of(one.on, axis), one.way) > 0 else -1
    for name in _fixed_to(one.on.item, {one.item, one.base.item}, design):
        spans = [span_on(one.on, each, axis) for each in design.facts.all(PlacedFact)
                 if each.item == name]  # fmt: skip
        if not spans:
            continue
        ends = (one.on.corners[0][axis], one.on.corners[1][axis])
        below = ends[0] - min(low for low, _ in spans)
        above = max(high for _, high in spans) - ends[1]
        if abs(above - below) > _STANDS_OUT_MM:
            is_there = (above > below) == (sign > 0)
            how = "on the side on which" if is_there else "away from the side on which"
            return f"{told}, {how} {_title(name, design)} will stand out"
    return told


def _fixed_to(item: str, but: set[str], design: Design) -> Iterator[str]:
    """The parts that are fixed to another."""
    for joint in design.joints.values():
        said = design.facts.about(JointFact, joint.name)
        if said is not None and said.group == "fixing" and item in joint.items:
            yield from (name for name in joint.items if name != item and name not in but)


def _off(point: Vector, on: Vector, along: Vector) -> float:
    """How far a point lies from a line."""
    way = minus(point, on)
    return length(plus(way, along, -dot(way, along)))


def _line(item: str, design: Design) -> tuple[PlacedFact, Vector, Vector] | None:
    """The longest piece of an item and its middle line, from its left end to its right."""
    whole = design.fabrications.get(item)
    names = [piece.item for piece in whole.pieces] if whole is not None else [item]
    copies = [one for one in design.facts.all(PlacedFact) if one.item in names]
    longest = max(copies, key=lambda one: max(_size(one)), default=None)
    if longest is None:
        return None
    size = _size(longest)
    axis = size.index(max(size))
    if size[axis] < _LONG * sorted(size)[1]:
        return None
    low, high = longest.corners
    ends = []
    for corner in (low, high):
        middle = [(a + b) / 2 for a, b in zip(low, high, strict=True)]
        middle[axis] = corner[axis]
        ends.append(placed((middle[0], middle[1], middle[2]), longest.frame))
    return longest, ends[0], ends[1]


def _size(one: PlacedFact) -> tuple[float, float, float]:
    (a, b, c), (d, e, f) = one.corners
    return (d - a, e - b, f - c)


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return f"the {item.title if item is not None else name}"
