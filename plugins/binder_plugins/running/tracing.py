"""Faults to the joints of a design that may have them, numbered along the motion."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import Design, Joint, load_data
from binder_plugins.running.moving import moving

PACKAGE = "binder_plugins.running"


@dataclass(frozen=True, slots=True)
class Cause:
    """The joints that may be at fault by their numbers, how to tell that one is, and the cure."""

    numbers: tuple[int, ...]
    look: str
    cure: str


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
    still = [one for one in design.joints.values() if one.name not in names and one.kind in kinds]
    return (*along, *still)


def faults(joints: tuple[Joint, ...]) -> tuple[Fault, ...]:
    """Those that the joints can have."""
    found = [Fault(row["sign"], tuple(_causes(row, joints))) for row in _rows()]
    return tuple(one for one in found if one.causes)


def fault_source() -> str:
    """What the table goes by."""
    return str(load_data(PACKAGE, "faults.yaml")["source"])


def _causes(row: Mapping[str, Any], joints: tuple[Joint, ...]) -> Iterator[Cause]:
    for cause in row["causes"]:
        numbers = [n for n, joint in enumerate(joints, 1) if joint.kind in cause["kinds"]]
        if numbers:
            yield Cause(tuple(numbers), cause["look"], cause["cure"])


@cache
def _rows() -> tuple[Mapping[str, Any], ...]:
    return tuple(load_data(PACKAGE, "faults.yaml")["faults"])
