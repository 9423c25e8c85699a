"""Joints that are drilled together to the task in which one drill goes through both."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import chain

from binder.api import Before, Design, End, Joint, Task, TaskKind, TogetherFact
from binder_solid.drilled_as_one import TOGETHER, is_drilled_as_one

_THERE = "both are there to be drilled as one"
_BEFORE = "it is drilled and washed before it goes in"


@dataclass(frozen=True, slots=True)
class Drilling:
    """One task, what is done in it, and what comes before what."""

    task: Task
    fact: TogetherFact
    befores: tuple[Before, ...]


def drillings(joints: list[Joint], design: Design) -> Iterator[Drilling]:
    """A task for each set of parts of which holes are drilled in all at once.

    Several joints of the same parts are one task: parted between two holes they would move.
    """
    groups: dict[frozenset[str], list[tuple[Joint, tuple[str, ...]]]] = {}
    for joint in joints:
        items = [name for name in joint.items if _is_made(name, design)]
        places = tuple(place for end in joint.ends for place in _places(end, joint, design))
        if is_drilled_as_one(joint) and len(items) > 1 and len(places) > 1:
            groups.setdefault(frozenset(items), []).append((joint, places))
    for group in groups.values():
        items = [name for name in group[0][0].items if _is_made(name, design)]
        yield _drilling(group, items, design)


def _is_made(name: str, design: Design) -> bool:
    return name in design.parts or name in design.fabrications


def _places(end: End, joint: Joint, design: Design) -> Iterator[str]:
    """The hole of an end: the one that the joint makes there, else the feature that it names.

    The bore in which a pinned rod sits is named by the end, and is no hole of the pin.
    """
    owner = design.parts.get(end.item) or design.fabrications.get(end.item)
    features = owner.features if owner is not None else ()
    made = (one for one in features if one.implied_by == joint.name and one.name != end.place)
    named = (one for one in features if one.name == end.place)
    found = next(chain(made, named), None)
    if found is not None:
        yield f"{end.item}.{found.name}"


def _drilling(
    group: list[tuple[Joint, tuple[str, ...]]], items: list[str], design: Design
) -> Drilling:
    names = [item.title for name in items if (item := design.item(name)) is not None]
    said = f"the {names[0]} and {' and '.join(f'the {name}' for name in names[1:])}"
    joint = group[0][0]
    more = ", a pin in each hole before the next is drilled" if len(group) > 1 else ""
    task = Task(
        f"drill {joint.name}",
        f"drill {said} together",
        TaskKind.JOIN,
        items[0],
        f"put together as they will stand and clamped; one drill through both{more}, then marked",
        joint.at,
    )
    lines = tuple(places for _, places in group)
    fact = TogetherFact(
        task.id, TOGETHER, tuple(one.name for one, _ in group), lines,
        tuple(place for places in lines for place in places),
        f"{said} put together as they will stand, and clamped",
    )  # fmt: skip
    return Drilling(task, fact, tuple(_befores(task, joint, items, design)))


def _befores(task: Task, joint: Joint, items: list[str], design: Design) -> Iterator[Before]:
    for name in items:
        yield Before(f"make {name}", task.id, _THERE, at=joint.at)
    for name, assembly in design.assemblies.items():
        if any(member.item in items for member in assembly.members):
            yield Before(task.id, f"assemble {name}", _BEFORE, at=joint.at)
