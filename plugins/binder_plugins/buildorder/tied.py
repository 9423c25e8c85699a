"""A cord's ends: the hole that it is knotted in, and which of several bars it is made fast to."""

from __future__ import annotations

from math import dist

from binder.api import Assembly, CordFact, Design, Joint, PlaceFact, Size, TurningFact
from binder_plugins.buildorder.closing import inside_of
from binder_solid.placed import PlacedFact
from binder_solid.space import placed

# A hole for the end of a cord is no wider than so many cords; common practice, no source.
_WIDEST = 2.0
# What a layer of waxed thread adds to the thickness of a cord's end with its wraps, and the way
# that it wants beside, in mm; common practice, no source.
_WHIPPED_MM = 0.5


def tie_of(joint: Joint, design: Design) -> str:
    """`the tie hole of the barrel`, the hole that just takes the cord; '' without one."""
    hole, drum = _tie(joint, design), joint.ends[0].item
    return f"the {hole.place.replace('_', ' ')} hole of {_title(drum, design)}" if hole else ""


def _tie(joint: Joint, design: Design) -> PlaceFact | None:
    rope = getattr(joint.entry, "rope", None)
    drum = joint.ends[0].item
    if joint.kind != "winds" or not isinstance(rope, Size):
        return None
    for one in design.facts.all(PlaceFact):
        is_hole = one.item == drum and one.kind == "drilled" and one.diameter is not None
        if is_hole and one.diameter and rope.exact <= one.diameter <= _WIDEST * rope.exact:
            return one
    return None


def cut_to(joint: Joint, design: Design) -> str:
    """`, cut 790 mm long, its ends whipped`, where the way of the cord is known.

    Where the tie hole lets no whipping through, the end that goes in is stiffened instead.
    """
    cord = design.facts.about(CordFact, joint.name)
    if cord is None or not cord.cut:
        return ""
    hole, rope = _tie(joint, design), getattr(joint.entry, "rope", None)
    ends = "its ends whipped"
    if hole is not None and hole.diameter is not None and isinstance(rope, Size):
        name = hole.place.replace("_", " ")
        if float(hole.diameter - rope.exact) < _WHIPPED_MM:
            ends = (
                f"the end for the {name} hole rolled hard to a point with candle wax, the other "
                "end whipped"
            )
    return f", cut {cord.cut} long, {ends}"


def tied_first(joint: Joint, one: Assembly, design: Design) -> str:
    """What a step says where it closes in a drum whose cord goes on in an outer assembly."""
    for rope in design.joints.values():
        tie = tie_of(rope, design)
        drum, cord = rope.ends[0].item, rope.ends[-1].item
        if not tie or joint.kind != "runs_in" or cord in inside_of(one, design):
            continue
        bodies = [body for body in design.facts.all(TurningFact) if drum in body.items]
        if any(joint.ends[0].item in body.items for body in bodies):
            return (
                f"; before that push one end of {_title(cord, design)}{cut_to(rope, design)}, "
                f"through {tie} and knot it behind: a figure of eight, drawn tight; between the "
                "bearings the knot is out of reach"
            )
    return ""


def is_tied_before(joint: Joint, one: Assembly, design: Design) -> bool:
    """Whether the drum went in with an inner assembly, its cord knotted already."""
    drum = joint.ends[0].item
    inner = (design.assemblies.get(member.item) for member in one.members)
    return bool(tie_of(joint, design)) and any(
        within is not None and drum in inside_of(within, design) for within in inner
    )


def dead_end(name: str, over: list[str], design: Design) -> str:
    """The part that the other end is made fast to; of several the one nearest to a sheave."""
    copies = [one for one in design.facts.all(PlacedFact) if one.item == name]
    if len(copies) < 2 or not over:
        return _title(name, design)
    spots = [_middle(one) for one in copies]
    last = _spot(over[-1], design)
    if last is None:
        return _title(name, design)
    chosen = min(spots, key=lambda spot: dist(spot, last))
    for sheave in over:
        here = _spot(sheave, design)
        if here is not None and min(spots, key=lambda spot: dist(spot, here)) == chosen:
            return f"{_title(name, design)} that is nearest to {_title(sheave, design)}"
    return _title(name, design)


def _spot(name: str, design: Design) -> tuple[float, float, float] | None:
    return next((_middle(one) for one in design.facts.all(PlacedFact) if one.item == name), None)


def _middle(one: PlacedFact) -> tuple[float, float, float]:
    (a, b, c), (d, e, f) = one.corners
    return placed(((a + d) / 2, (b + e) / 2, (c + f) / 2), one.frame)


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return f"the {item.title if item is not None else name}"
