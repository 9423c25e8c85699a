"""Joints to what is said and done at each, and to what is made before what."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Before,
    Contribution,
    Design,
    End,
    FitFact,
    HardwareFact,
    Joint,
    JointFact,
    Meeting,
    PlaceFact,
    Working,
)

_TOGETHER = {
    "spotted through": "its holes are spotted through the other half",
    "drilled together": "the two are drilled together",
    "reamed in line": "the two are reamed in line",
    "lapped together": "the two are lapped together",
    "set in mesh": "the second bore is put where the two run",
}
SOURCE = "common practice, no source"
Fitted = frozenset[frozenset[str]]
_ANY = Meeting("meets", "fixing", "put {a} and {b} together")


def state_joints(design: Design) -> Contribution:
    """The facts of all joints, and the order of making that follows from their masters."""
    joints, fitted = met(design), fitted_in(design)
    hardware: dict[str, list[HardwareFact]] = {}
    for one in design.facts.all(HardwareFact):
        hardware.setdefault(one.joint, []).append(one)
    firsts = {joint.name: first_half(joint, design, fitted) for joint in joints}
    return Contribution(
        facts=[_fact(joint, design, hardware.get(joint.name, [])) for joint in joints],
        befores=[one for joint in joints for one in _befores(joint, firsts[joint.name], design)],
        workings=[
            _working(joint, first, design) for joint in joints if (first := firsts[joint.name])
        ],
    )


def fitted_in(design: Design) -> Fitted:
    """The parts that some joint fits to one another."""
    return frozenset(
        frozenset(joint.items)
        for joint in design.joints.values()
        if meeting_of(joint).group == "fit"
    )


def met(design: Design) -> list[Joint]:
    """The joints of which their kind says how the halves meet."""
    return [joint for joint in design.joints.values() if joint.entry.meeting is not None]


def meeting_of(joint: Joint) -> Meeting:
    """How the halves of a joint meet."""
    return joint.entry.meeting or _ANY


def first_half(joint: Joint, design: Design, fitted: Fitted) -> End | None:
    """The half that is made first.

    The master where one is named; else what is not made here, the half that a fit does not
    make to suit, or the trade's usual one. A fixing beside a fit of the same two parts
    leaves the order to the fit.
    """
    if joint.master is not None:
        return joint.master
    row = meeting_of(joint)
    if row.group == "fixing" and frozenset(joint.items) in fitted:
        return None
    fact = design.facts.about(FitFact, joint.name)
    if fact is not None and fact.suit:
        return _other_than(fact, joint)
    bought = [end for end in joint.ends if end.item in design.bought]
    if bought and row.first:
        return bought[0]
    is_free = row.through and joint.made == "to drawing"
    if not row.first or is_free:
        return None
    return joint.ends[row.first - 1]


def _other_than(fact: FitFact, joint: Joint) -> End | None:
    """The half that the one made to suit is measured against."""
    first = fact.shaft if fact.suit in ("hole", fact.hole) else fact.hole
    return next((end for end in joint.ends if str(end) == first), None)


def title_of(end: End, design: Design) -> str:
    """`bore of the arm`."""
    item = design.item(end.item)
    name = item.title if item is not None else end.item
    return f"{end.place.replace('_', ' ')} of the {name}" if end.place else name


def _fact(joint: Joint, design: Design, hardware: list[HardwareFact]) -> JointFact:
    row = meeting_of(joint)
    names = [title_of(end, design) for end in joint.ends]
    a, b = f"the {names[0]}", " and ".join(f"the {name}" for name in names[1:])
    held = _hardware(joint, hardware, design)
    by = f", held by {held}" if held else ""
    step = _step_of(row, joint.ends[0], design).format(a=a, b=b)
    return JointFact(
        subject=joint.name,
        phrase=f"{names[0]} {row.says} {' and '.join(names[1:])}{by}",
        step=f"{step}{f' ({held})' if held else ''}",
        group=row.group,
        is_lasting=row.lasting,
        is_hot=row.heat,
        is_fitted=bool(row.first),
    )


def _step_of(row: Meeting, end: End, design: Design) -> str:
    """How a joint is put together, by the form of the half that is named first."""
    place = design.facts.about(PlaceFact, str(end))
    form = place.form if place is not None else ""
    special = {"hole": row.step_of_hole, "bore": row.step_of_hole, "step": row.step_of_end}
    return special.get(form) or row.step


def _hardware(joint: Joint, chosen: list[HardwareFact], design: Design) -> str:
    """`2 off M3 x 8 socket cap screw`, or the item that the maker names."""
    if chosen:
        return " and ".join(f"{one.count} off {one.what}" for one in chosen)
    item = design.item(joint.held_by) if joint.held_by else None
    return item.title if item is not None else ""


def _befores(joint: Joint, first: End | None, design: Design) -> Iterator[Before]:
    """The item of the first half is made before those of the others."""
    if first is None:
        return
    reason = _reason(joint, first)
    for item in joint.items:
        if item != first.item:
            yield from _between(first.item, item, reason, joint, design)


def _between(
    earlier: str, later: str, reason: str, joint: Joint, design: Design
) -> Iterator[Before]:
    is_made = later in design.parts or later in design.fabrications
    if not is_made:
        return
    kind = "measure" if earlier in design.bought else "make"
    if kind == "measure" and not design.bought[earlier].measured:
        return
    if kind == "make" and earlier not in design.parts and earlier not in design.fabrications:
        return
    yield Before(f"{kind} {earlier}", f"make {later}", reason, is_must=True, at=joint.at)


def _reason(joint: Joint, first: End) -> str:
    return f"{joint.name}: {_TOGETHER.get(joint.made) or why_first(joint, first)}"


def why_first(joint: Joint, first: End) -> str:
    """Why a half is made first, at most ten words: the trade's reason, or another's choice."""
    row = meeting_of(joint)
    usual = joint.ends[row.first - 1] if row.first else None
    chosen = usual is None or str(first) != str(usual)
    return "measured first, the other half is made to it" if chosen else row.why


def _working(joint: Joint, first: End, design: Design) -> Working:
    row = meeting_of(joint)
    named = (
        "named as master"
        if joint.master is not None
        else f"the usual first half where one {row.says} another"
    )
    return Working(
        id=f"{joint.name.replace(' ', '_')}.master",
        title=f"master of '{joint.name}'",
        given=(),
        formula=named,
        result=title_of(first, design),
        because=_reason(joint, first),
        source="the spec" if joint.master is not None else SOURCE,
        span=joint.at,
    )
