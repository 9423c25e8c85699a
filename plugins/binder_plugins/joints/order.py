"""Joints to what is said and done at each, and to what is made before what."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Before,
    Contribution,
    Design,
    End,
    Fact,
    FitFact,
    HalfFact,
    HardwareFact,
    Joint,
    JointFact,
    Meeting,
    PlaceFact,
    Working,
)
from binder_plugins.joints.feeling import felt
from binder_plugins.joints.first import (
    first_half,
    fitted_in,
    halves_of,
    is_rod,
    meeting_of,
    why_first,
)
from binder_plugins.joints.pieces import drilled_in_place
from binder_plugins.joints.piloting import pilotings
from binder_plugins.joints.together import drillings
from binder_plugins.joints.trimming import trimmings
from binder_solid.drilled_as_one import is_drilled_as_one
from binder_solid.filled import done_as

SPOTTED = "spotted through"
_TOGETHER = {
    SPOTTED: "its holes are spotted through the other half",
    "reamed in line": "its bearings are reamed in line",
    "lapped together": "the two are lapped together",
    "set in mesh": "the second bore is put where the two run",
}
_WITH_TAILS = 3
_PAIR = 2
# What sinks a bush into a bore for good, with the verb of its task.
_SUNK = {"retained": "bond", "glued": "bond", "pressed": "size"}
SOURCE = "common practice, no source"


def state_joints(design: Design) -> Contribution:
    """The facts of all joints, and the order of making that follows from their masters."""
    joints, fitted, halves = met(design), fitted_in(design), halves_of(design)
    hardware: dict[str, list[HardwareFact]] = {}
    for one in design.facts.all(HardwareFact):
        hardware.setdefault(one.joint, []).append(one)
    befores: list[Before] = []
    workings: list[Working] = []
    for joint in joints:
        mine = halves.get(joint.name, [])
        first = first_half(joint, design, fitted, mine)
        if first is not None and not is_drilled_as_one(joint):
            reason = _reason(joint, first, mine, design)
            befores += _befores(joint, first, reason, design, is_must=not is_rod(mine))
            befores += [*_bare_jigs(joint, first, design), *_bare_bores(joint, first, design)]
            workings.append(_working(joint, first, reason, design))
    drilled = list(drillings(joints, design))
    done = {name for one in drilled for name in one.fact.joints}
    facts: list[Fact] = [
        _fact(joint, design, hardware.get(joint.name, []), is_drilled=joint.name in done)
        for joint in joints
    ]
    drilled += [*drilled_in_place(design), *pilotings(joints, design)]
    drilled += list(trimmings(joints, design, [one.fact for one in drilled]))
    befores += [before for one in drilled for before in one.befores]
    facts += [one.fact for one in drilled]
    return Contribution(
        facts=facts, tasks=[one.task for one in drilled], befores=befores, workings=workings
    )


def met(design: Design) -> list[Joint]:
    """The joints of which their kind says how the halves meet."""
    return [joint for joint in design.joints.values() if joint.entry.meeting is not None]


def title_of(end: End, design: Design) -> str:
    """`bore of the arm`."""
    item = design.item(end.item)
    name = item.title if item is not None else end.item
    return f"{end.place.replace('_', ' ')} of the {name}" if end.place else name


def _fact(
    joint: Joint, design: Design, hardware: list[HardwareFact], *, is_drilled: bool
) -> JointFact:
    row = meeting_of(joint)
    names = [title_of(end, design) for end in joint.ends]
    a, b = f"the {names[0]}", " and ".join(f"the {name}" for name in names[1:])
    held = _hardware(joint, hardware, design)
    by = f", held by {held}" if held else ""
    kept = "".join(f"; {one.kept}" for one in hardware if one.kept)
    drilled = row.step_of_drilled if is_drilled else ""
    own_step = getattr(joint.entry, "own_step", None)
    own = own_step(design.units) if own_step is not None else ""
    told = own or drilled or _step_of(row, joint, design)
    step = felt(told.format(a=a, b=b), design.facts.about(FitFact, joint.name), design)
    return JointFact(
        subject=joint.name,
        phrase=f"{names[0]} {row.says} {' and '.join(names[1:])}{by}",
        step=f"{step}{f' ({held})' if held else ''}{kept}",
        group=row.group,
        is_lasting=row.lasting,
        is_hot=row.heat,
        is_fitted=bool(row.first),
    )


def _step_of(row: Meeting, joint: Joint, design: Design) -> str:
    """How a joint is put together, by the form of the half that is named first."""
    if row.step_of_wood and done_as(joint, design) == "wood_glued":
        return row.step_of_wood
    if row.step_of_ends and _is_at_both_ends(joint, design):
        return row.step_of_ends
    place = design.facts.about(PlaceFact, str(joint.ends[0]))
    form = place.form if place is not None else ""
    special = {"hole": row.step_of_hole, "bore": row.step_of_hole, "step": row.step_of_end}
    return special.get(form) or row.step


def _is_at_both_ends(joint: Joint, design: Design) -> bool:
    """Whether a turned pin has the same tail at its other end, and two parts for each pin."""
    pin, part = (design.parts.get(end.item) for end in joint.ends[:2])
    shape = pin.shape if pin is not None else None
    if pin is None or part is None or not isinstance(shape, list) or len(shape) < _WITH_TAILS:
        return False
    first, last = shape[0], shape[-1]
    is_tail = joint.ends[0].place in (first.name, last.name)
    is_alike = getattr(first, "diameter", None) == getattr(last, "diameter", None)
    return is_tail and is_alike and (part.quantity or 1) == 2 * (pin.quantity or 1)


def _hardware(joint: Joint, chosen: list[HardwareFact], design: Design) -> str:
    """`2 off M3 x 8 socket cap screw`, or the item that the maker names."""
    if chosen:
        return " and ".join(f"{one.count} off {one.what}" for one in chosen)
    item = design.item(joint.held_by) if joint.held_by else None
    return item.title if item is not None else ""


def _befores(
    joint: Joint, first: End, reason: str, design: Design, *, is_must: bool
) -> Iterator[Before]:
    """The item of the first half is made before those of the others."""
    for item in joint.items:
        if item != first.item:
            yield from _between(first.item, item, reason, joint, design, is_must=is_must)


def _between(
    earlier: str, later: str, reason: str, joint: Joint, design: Design, *, is_must: bool
) -> Iterator[Before]:
    is_made = later in design.parts or later in design.fabrications
    if not is_made:
        return
    kind = "measure" if earlier in design.bought else "make"
    if kind == "measure" and not design.bought[earlier].measured:
        return
    if kind == "make" and earlier not in design.parts and earlier not in design.fabrications:
        return
    yield Before(f"{kind} {earlier}", f"make {later}", reason, is_must=is_must, at=joint.at)


def _bare_jigs(joint: Joint, jig: End, design: Design) -> Iterator[Before]:
    """What leads the drill for another part is not put together with others before that."""
    if joint.made != SPOTTED or is_drilled_as_one(joint):
        return
    for name, assembly in design.assemblies.items():
        members = {member.item for member in assembly.members}
        for item in joint.items:
            if jig.item in members and item not in members and item in design.parts:
                why = f"the holes of the {design.parts[item].title} are spotted through it"
                yield Before(f"make {item}", f"assemble {name}", why, is_must=False, at=joint.at)


def _bare_bores(joint: Joint, jig: End, design: Design) -> Iterator[Before]:
    """Two plates are lined up by rods through their bores: no bush goes into these before that.

    A bush is bored to another size, and one with a rim keeps the plate off its place. Common
    practice, no source.
    """
    plate = design.parts.get(jig.item)
    if joint.made != SPOTTED or plate is None or (plate.quantity or 1) < _PAIR:
        return
    for other in met(design):
        verb = _SUNK.get(other.kind, "")
        if not verb or other.name == joint.name or jig.item not in other.items:
            continue
        for item in joint.items:
            if item in design.parts and item not in other.items:
                why = (
                    f"two of the {plate.title} are lined up by rods through their bare bores, "
                    f"where the {design.parts[item].title} is spotted through them"
                )
                yield Before(f"make {item}", f"{verb} {other.name}", why, is_must=False,
                             at=joint.at)  # fmt: skip


def _reason(joint: Joint, first: End, halves: list[HalfFact], design: Design) -> str:
    why = _TOGETHER.get(joint.made) or why_first(joint, first, halves, design)
    return f"{joint.name}: {why}"


def _working(joint: Joint, first: End, reason: str, design: Design) -> Working:
    is_named = joint.master is not None and str(joint.master) == str(first)
    named = (
        "named as master"
        if is_named
        else f"the first half where one {meeting_of(joint).says} another"
    )
    return Working(
        id=f"{joint.name.replace(' ', '_')}.master",
        title=f"master of '{joint.name}'",
        given=(),
        formula=named,
        result=title_of(first, design),
        because=reason,
        source="the spec" if is_named else SOURCE,
        span=joint.at,
    )
