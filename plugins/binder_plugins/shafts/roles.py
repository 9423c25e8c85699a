"""The pieces of a shaft's list: what each is to the shaft, how long, and how it is put on."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from binder.api import Bought, Design, End, Joint, Part, Piece, PlaceFact, Reference, Role

_FIXING = frozenset(
    (
        "retained",
        "clamped",
        "pinned",
        "pressed",
        "shrunk",
        "glued",
        "soft_soldered",
        "silver_soldered",
        "riveted",
        "threaded",
        "clipped",
        "seated",
        "tapered",
    )
)
# Of these, what leaves no way past the shaft.
FILLING = _FIXING - {"clipped", "threaded"}
_HOLDING = ("circlip", "collar", "nut", "pin", "clip", "shoulder")
_AXIAL = ("length", "thickness", "width")


def pieces_of(shaft: Part, along: list[Reference], design: Design) -> tuple[Piece, ...]:
    """The pieces in their order."""
    return tuple(_piece(shaft, reference, design) for reference in along)


def _piece(shaft: Part, reference: Reference, design: Design) -> Piece:
    joint = _joint_with(shaft, reference, design)
    item = design.item(reference.item)
    title = item.title if item is not None else reference.item
    if reference.item == shaft.name:
        title = f"{reference.place.replace('_', ' ')} of the shaft"
    return Piece(
        item=reference.item,
        place=reference.place,
        title=title,
        role=_role(shaft, reference, joint, design),
        joint=joint.name if joint is not None else "",
        length=_length(reference, design),
        across=_across(reference, design),
        enters=_enters(shaft, joint, design) if joint is not None else "either",
        at=reference.span,
    )


def _joint_with(shaft: Part, reference: Reference, design: Design) -> Joint | None:
    """The joint between the shaft and a piece; of several the one that names its place.

    Of those that name none what fixes it counts before what it slides or is set on by.
    """
    found = [
        joint
        for joint in design.joints.values()
        if {shaft.name, reference.item} <= set(joint.items) and shaft.name != reference.item
    ]
    named = [
        joint
        for joint in found
        if any(end.item == reference.item and end.place == reference.place for end in joint.ends)
    ]
    return next(iter(named or sorted(found, key=lambda one: one.kind not in FILLING)), None)


def _role(shaft: Part, reference: Reference, joint: Joint | None, design: Design) -> Role:
    if reference.item == shaft.name:
        return Role.FIXED
    if joint is not None:
        return _role_by(joint, shaft)
    item = design.item(reference.item)
    words = f"{item.what} {item.name}".lower() if isinstance(item, Bought) else ""
    return Role.FIXED if any(word in words for word in _HOLDING) else Role.LOOSE


def _role_by(joint: Joint, shaft: Part) -> Role:
    if joint.kind in _FIXING:
        return Role.FIXED
    carries = joint.ends[0].item == shaft.name and joint.kind in ("runs_in", "slides", "swivels")
    return Role.BEARING if carries else Role.LOOSE


def _place(name: str, design: Design) -> PlaceFact | None:
    return design.facts.about(PlaceFact, name)


def _length(reference: Reference, design: Design) -> Fraction | None:
    """Along the axis: a hole's metal, a step's length, or the whole of a part or bought item."""
    if reference.place:
        fact = _place(f"{reference.item}.{reference.place}", design)
        if fact is not None:
            # A groove is told by the step that it is in; a clip in it is thin.
            return None if fact.kind == "grooved" else _axial(fact)
    for name in _AXIAL:
        fact = _place(f"{reference.item}.{name}", design)
        if fact is not None and fact.form == "size":
            return fact.diameter
    whole = _place(f"{reference.item}.top", design)
    return whole.thickness if whole is not None else None


def _axial(fact: PlaceFact) -> Fraction | None:
    if fact.form == "step":
        return fact.length
    return fact.thickness if fact.depth is None else fact.depth


def _across(reference: Reference, design: Design) -> Fraction | None:
    """How large a piece looks beside the shaft."""
    names = ("outside", "rim", "top")
    facts = (_place(f"{reference.item}.{name}", design) for name in names)
    sizes = [fact.diameter or fact.width for fact in facts if fact is not None]
    return max((size for size in sizes if size is not None), default=None)


def _enters(shaft: Part, joint: Joint, design: Design) -> str:
    """From which end a piece passes over the steps between that end and its seat."""
    passed = ends_of(joint, shaft, design)
    if passed is None:
        return "either"
    left, right = passed
    if left and right:
        return "either"
    return "left" if left else "right" if right else "neither"


def ends_of(joint: Joint, shaft: Part, design: Design) -> tuple[bool, bool] | None:
    """Whether the bore of a joint passes over the shaft from its left and from its right.

    None where bore or seat is not known, or where the two are screwed together.
    """
    seat = _seat(joint, shaft, design)
    bore = _bore(joint, shaft, design)
    if seat is None or bore is None or seat.start is None or seat.diameter is None:
        return None
    steps = list(_steps(shaft, design))
    left = all(one <= bore for start, one in steps if start < seat.start)
    right = all(one <= bore for start, one in steps if start > seat.start)
    return left, right


def _seat(joint: Joint, shaft: Part, design: Design) -> PlaceFact | None:
    ends = [end for end in joint.ends if end.item == shaft.name]
    return _fact_at(ends[0], design) if ends else None


def _bore(joint: Joint, shaft: Part, design: Design) -> Fraction | None:
    if joint.kind in ("threaded", "leads", "riveted"):
        return None
    for end in joint.ends:
        fact = _fact_at(end, design)
        if end.item != shaft.name and fact is not None and fact.form == "hole" and fact.is_through:
            return fact.diameter
    return None


def _fact_at(end: End, design: Design) -> PlaceFact | None:
    return _place(str(end), design)


def _steps(shaft: Part, design: Design) -> Iterator[tuple[Fraction, Fraction]]:
    """Start and diameter of the named steps; unnamed ones are not known as places."""
    for fact in design.facts.where(PlaceFact, "item", shaft.name):
        if fact.form == "step" and fact.start is not None:
            yield fact.start, fact.diameter or Fraction(0)
