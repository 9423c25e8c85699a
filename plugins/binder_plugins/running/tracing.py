"""Faults to the joints of a design that may have them, numbered along the motion."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from string import ascii_lowercase
from typing import Any

from binder.api import Design, Diagnostic, Joint, TraceFact, load_data
from binder_plugins.running.conditions import has_of
from binder_plugins.running.moving import by_its_kind, moving

PACKAGE = "binder_plugins.running"


@dataclass(frozen=True, slots=True)
class Cause:
    """The joints that may be at fault by their numbers, how to tell that one is, and the cure.

    `figures` are the marks of the drive's figures to look at (`3a`).
    """

    numbers: tuple[int, ...]
    look: str
    cure: str
    figures: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Figure:
    """A figure of the drive with its mark: the number of its joint, and a letter."""

    mark: str
    fact: TraceFact


@dataclass(frozen=True, slots=True)
class Fault:
    """What is seen, and what may do it, the likeliest first."""

    sign: str
    causes: tuple[Cause, ...]


def numbered(design: Design) -> tuple[Joint, ...]:
    """What moves, outwards from what drives it; then what stands still and may come loose."""
    along = [one.joint for one in moving(design)]
    names = {one.name for one in along}
    kinds = {kind for row in _rows() for cause in row["causes"] for kind in cause["kinds"]}
    # What would run or slide by its kind, and is fixed or kept here, has none of their faults.
    still = [
        one
        for one in design.joints.values()
        if one.name not in names and one.kind in kinds and not by_its_kind(one)
    ]
    return (*along, *still)


def figures(joints: tuple[Joint, ...], design: Design) -> tuple[Figure, ...]:
    """What the drive should measure, joint by joint."""
    found = []
    for number, joint in enumerate(joints, 1):
        own = [one for one in design.facts.all(TraceFact) if one.joint == joint.name]
        found += [Figure(f"{number}{_letter(n)}", one) for n, one in enumerate(own)]
    return tuple(found)


def _letter(place: int) -> str:
    """a, b ... z, then aa."""
    return ascii_lowercase[place % 26] * (place // 26 + 1)


def remarked(
    joints: tuple[Joint, ...], findings: Sequence[Diagnostic]
) -> tuple[tuple[int, Diagnostic], ...]:
    """What the checks have said already of a joint, by its number: the first place to look."""
    return tuple(
        (number, one)
        for number, joint in enumerate(joints, 1)
        for one in findings
        if (one.span.file, one.span.line) == (joint.at.file, joint.at.line)
        or f"'{joint.name}'" in one.message
    )


def faults(
    joints: tuple[Joint, ...], design: Design, traced: Sequence[Figure] = ()
) -> tuple[Fault, ...]:
    """Those that the joints can have."""
    kinds = {joint.kind for joint in joints}
    rows = [row for row in _rows() if "needs" not in row or not kinds.isdisjoint(row["needs"])]
    has = [has_of(one, design) for one in joints]
    found = [Fault(row["sign"], tuple(_causes(row, joints, has, traced))) for row in rows]
    return tuple(one for one in found if one.causes)


def fault_source() -> str:
    """What the table goes by."""
    return str(load_data(PACKAGE, "faults.yaml")["source"])


def _causes(
    row: Mapping[str, Any],
    joints: tuple[Joint, ...],
    has: Sequence[frozenset[str]],
    traced: Sequence[Figure],
) -> Iterator[Cause]:
    for cause in row["causes"]:
        numbers = [
            n for n, joint in enumerate(joints, 1)
            if joint.kind in cause["kinds"] and _meets(cause, has[n - 1])
        ]  # fmt: skip
        if numbers:
            names = {joints[n - 1].name for n in numbers}
            words = tuple(cause.get("figures", ()))
            marks = [
                one.mark
                for one in traced
                if one.fact.joint in names and words and one.fact.what.startswith(words)
            ]
            yield Cause(tuple(numbers), cause["look"], cause["cure"], tuple(marks))


def _meets(cause: Mapping[str, Any], has: frozenset[str]) -> bool:
    return has.issuperset(cause.get("if", ())) and has.isdisjoint(cause.get("unless", ()))


@cache
def _rows() -> tuple[Mapping[str, Any], ...]:
    return tuple(load_data(PACKAGE, "faults.yaml")["faults"])
