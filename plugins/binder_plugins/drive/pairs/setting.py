"""Gears that are set in mesh to the task in which the second bore is put where they run."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from binder.api import (
    Before,
    Contribution,
    Design,
    Diagnostic,
    Joint,
    Task,
    TaskKind,
    TogetherFact,
    exact,
    shown_length,
)
from binder_plugins.drive import gear_codes as codes
from binder_plugins.drive.pairs.chaining import SET
from binder_plugins.drive.pairs.facts import MeshFact
from binder_plugins.drive.pairs.frame import Seat, seats_in_one_part
from binder_plugins.drive.train.bodies import Body, bodies
from binder_trade.explained import NotDefined
from binder_trade.gears.pair import Mesh
from binder_trade.gears.strip import Strip, strip_for

_REAL = "the play is felt with the real gears"
_THERE = "the second bore is put in it"
_NOT_YET = "its bore is there when the gears are set"
_BARE = "the gears are set on plugs in bare bores, and the bush goes in afterwards"
_FIXING = ("pressed", "sized in place", "retained", "glued", "soft_soldered", "silver_soldered")
_LATER = ("reamed in line", "lapped together", "pressed", "sized in place", "retained", "glued")


@dataclass(frozen=True, slots=True)
class Setting:
    """A pair that is set in mesh: the bore that is there, and the one that is put to it."""

    fact: MeshFact
    strip: Strip
    first: Seat
    second: Seat
    other: str


def set_gears(design: Design) -> Contribution:
    """A task for each pair that is set in mesh, or what stands in its way."""
    tasks: list[Task] = []
    facts: list[TogetherFact] = []
    befores: list[Before] = []
    findings: list[Diagnostic] = []
    of = bodies(design)
    for fact in design.facts.all(MeshFact):
        joint = design.joints[fact.joint]
        if joint.made != SET or fact.mesh is None:
            continue
        found = _setting(fact, fact.mesh, of, design)
        if found is None:
            findings.append(_nowhere(joint))
            continue
        task = _task(found, joint, design)
        tasks.append(task)
        facts.append(_fact(found, task, design))
        befores += _befores(found, task, design)
    return Contribution(facts=facts, tasks=tasks, befores=befores, findings=findings)


def _nowhere(joint: Joint) -> Diagnostic:
    return codes.NO_BORE_TO_SET.at(
        joint.at,
        f"'{joint.name}' is set in mesh, and no one part has a bore for each of its shafts",
        help="leave `made:` out and say how far apart the shafts stand, or bore one part for both",
    )


def _setting(fact: MeshFact, made: Mesh, of: Mapping[str, Body], design: Design) -> Setting | None:
    """Both bores in the part that carries them; second is the one that no bush waits in."""
    wheels = (fact.wheel, fact.pinion)
    rows = [of[one].items if one in of else (one,) for one in wheels]
    pair = seats_in_one_part(rows[0], rows[1], design)
    if pair is None:
        return None
    by_wheel, by_pinion = pair
    try:
        strip = strip_for(made, fact.wanted)
    except NotDefined:
        return None
    if by_wheel.deep < by_pinion.deep:
        return Setting(fact, strip, by_pinion, by_wheel, fact.wheel)
    return Setting(fact, strip, by_wheel, by_pinion, fact.pinion)


def _task(one: Setting, joint: Joint, design: Design) -> Task:
    names = " and ".join(
        f"the {_title(name, design)}" for name in (one.fact.pinion, one.fact.wheel)
    )
    return Task(
        f"set {one.fact.subject.removesuffix(': 1')}",
        f"set {names} in mesh",
        TaskKind.JOIN,
        one.second.item,
        f"{_words(one.strip, design)}; the {one.second.place.replace('_', ' ')} of the "
        f"{_title(one.second.item, design)} is bored there",
        joint.at,
    )


def _fact(one: Setting, task: Task, design: Design) -> TogetherFact:
    second = f"{one.second.item}.{one.second.place}"
    return TogetherFact(
        task.id,
        SET,
        (one.fact.joint,),
        ((f"{one.first.item}.{one.first.place}",), (second,)),
        (second,),
        f"the {_title(one.other, design)}",
        _words(one.strip, design),
    )


def _words(strip: Strip, design: Design) -> str:
    """The strip between the teeth, and the play that it leaves."""
    thick, apart, play = (
        shown_length(exact(round(size, 3)), design.units)
        for size in (strip.thick_mm, strip.apart_mm, strip.play_mm)
    )
    return (
        f"a strip of {strip.name}, {thick} thick, between the teeth on both flanks holds the "
        f"centres {apart} wider than tight, and leaves {play} of play"
    )


def _befores(one: Setting, task: Task, design: Design) -> Iterator[Before]:
    at = task.at
    yield Before(f"make {one.second.item}", task.id, _THERE, at=at)
    for name in (one.fact.pinion, one.fact.wheel):
        yield Before(f"make {name}", task.id, _REAL, at=at)
    second = f"{one.second.item}.{one.second.place}"
    for other in design.facts.all(TogetherFact):
        if other.how in _LATER and _meets(other, one.second, second, design):
            yield Before(task.id, other.subject, _NOT_YET, at=at)
        elif other.how in _FIXING and _meets(other, one.first, "", design):
            yield Before(task.id, other.subject, _BARE, at=at)
    for name, assembly in design.assemblies.items():
        if any(member.item == one.second.item for member in assembly.members):
            yield Before(task.id, f"assemble {name}", _NOT_YET, at=at)


def _meets(other: TogetherFact, seat: Seat, place: str, design: Design) -> bool:
    """Whether a task goes through the bore, or fixes something in it."""
    if any(place in line for line in other.lines):
        return True
    ends = (
        end for name in other.joints if name in design.joints for end in design.joints[name].ends
    )
    return any(end.item == seat.item and end.place == seat.place for end in ends)


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return item.title if item is not None else name
