"""The model put together to facts: where each copy stands, and what each joint lets move."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Contribution, Design, Diagnostic, Fact
from binder_plugins.arrangement import codes
from binder_plugins.arrangement.copies import Copy
from binder_plugins.arrangement.joined import Stand
from binder_plugins.arrangement.lying import missed
from binder_plugins.arrangement.model import Model
from binder_plugins.arrangement.space import carried, scaled, towards_reader
from binder_plugins.arrangement.standing import put_together
from binder_solid.forms import Vector
from binder_solid.placed import CentresFact, MotionFact, PlacedFact
from binder_solid.space import dot, length, minus, placed, plus

_MOTIONS = {
    "runs_in": "turn",
    "swivels": "turn",
    "hinged": "turn",
    "slides": "slide",
    "dovetailed": "slide",
    "leads": "screw",
}
_CENTRES = 0.02
MOST_TOLD = 6


def place_parts(design: Design) -> Contribution:
    """A `PlacedFact` for each copy that stands, a `MotionFact` for each pair that moves."""
    model = put_together(design)
    facts: list[Fact] = [_placed(stand) for stand in model.standing.values()]
    facts += _motions(model)
    findings = [*model.findings, *_missing(model), *_apart(model), *missed(model)]
    return Contribution(facts=facts, findings=findings)


def _placed(stand: Stand) -> PlacedFact:
    copy = stand.copy
    return PlacedFact(
        copy.name,
        copy.item,
        copy.number,
        stand.frame,
        copy.formed(copy.fact.form),
        copy.drawn,
        copy.corners,
        stand.way,
        stand.onto,
        stand.is_free,
        copy.is_opposite,
    )


def _motions(model: Model) -> Iterator[MotionFact]:
    for one in model.meetings:
        motion = _MOTIONS.get(one.joint.kind)
        stand = model.standing.get(one.one.name)
        if motion is None or stand is None or one.other.name not in model.standing:
            continue
        own = one.spot.along if one.spot.sort == "way" and one.spot.along else one.spot.way
        yield MotionFact(
            f"{one.joint.name}: {one.one.name}, {one.other.name}",
            one.joint.name,
            one.one.name,
            one.other.name,
            motion,
            placed(one.spot.point, stand.frame),
            towards_reader(carried(own, stand.frame)),
        )


def _missing(model: Model) -> Iterator[Diagnostic]:
    """Parts that nothing places: of an assembly, or without any, those that a joint names.

    What is joined together and hangs on nothing is told once; of many such groups the first
    speaks for all.
    """
    design = model.design
    if len(model.standing) < 2:
        return
    inside = _inside(design)
    left = [
        copy
        for name, copies in model.copies.items()
        for copy in copies
        if name in inside and copy.name not in model.standing
    ]
    groups = _together(left, model)
    for group in groups[: 1 if len(groups) > MOST_TOLD else None]:
        yield _not_placed(group, groups, model)


def _together(left: list[Copy], model: Model) -> list[list[Copy]]:
    """What is joined to one another, in the order written."""
    by_name = {copy.name: copy for copy in left}
    groups: list[list[Copy]] = []
    while by_name:
        waiting = [next(iter(by_name.values()))]
        group: list[Copy] = []
        while waiting:
            copy = waiting.pop()
            if by_name.pop(copy.name, None) is not None:
                group.append(copy)
                near = (one.other.name for one in model.meetings_with(copy))
                waiting += [by_name[name] for name in near if name in by_name]
        groups.append(group)
    return groups


def _not_placed(group: list[Copy], groups: list[list[Copy]], model: Model) -> Diagnostic:
    first = group[0]
    item = model.design.item(first.item)
    others = list(dict.fromkeys(copy.item for copy in group if copy.item != first.item))
    words = f"nothing says where '{first.name}' stands"
    if others:
        words += f", nor so {', '.join(others[:4])}{' ...' if len(others) > 4 else ''}"
    if len(groups) > MOST_TOLD:
        words += f"; the same is true of {len(groups) - 1} others"
    return codes.PART_NOT_PLACED.at(
        item.at if item is not None else first.fact.at,
        words,
        help=f"write where it stands: `positions: {first.item}: {{at: ...}}`",
    )


def _inside(design: Design) -> set[str]:
    """All that goes into an assembly, pieces of fabrications too; without one, what is joined."""
    if not design.assemblies:
        return {end.item for joint in design.joints.values() for end in joint.ends}
    found = {member.item for one in design.assemblies.values() for member in one.members}
    pieces = {
        piece.item
        for name in found & set(design.fabrications)
        for piece in design.fabrications[name].pieces
    }
    return found | pieces


def _apart(model: Model) -> Iterator[Diagnostic]:
    """Wheels that mesh stand as far apart as the mesh wants."""
    for fact in model.design.facts.all(CentresFact):
        joint = model.design.joints.get(fact.subject)
        ends = joint.items if joint is not None else ()
        pair = [one for name in ends for one in model.stands.get(name, ())[:1]]
        if joint is None or len(pair) != 2:
            continue
        apart = _between_axes(pair[0], pair[1])
        if abs(apart - fact.distance) > _CENTRES:
            yield codes.PARTS_DO_NOT_MEET.at(
                joint.at,
                f"'{joint.name}': the axes stand {apart:.2f} mm apart,"
                f" the mesh wants {fact.distance:.2f} mm",
                help="correct the centres of the holes that carry them",
            )


def _between_axes(one: Stand, other: Stand) -> float:
    axis: Vector = carried((1.0, 0.0, 0.0), one.frame)
    way = minus(placed(other.copy.middle, other.frame), placed(one.copy.middle, one.frame))
    return length(plus(way, scaled(axis, dot(way, axis)), -1.0))
