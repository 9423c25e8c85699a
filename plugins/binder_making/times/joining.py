"""A joint and its screws to the minutes of putting it together, and to its cure."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data
from binder_making.times.acts import table as acts_table
from binder_trade.explained import NotDefined

# However slowly it goes, it is moved so often; common practice, no source.
_LEAST_PASSES = 3


@dataclass(frozen=True, slots=True)
class Joined:
    """Minutes at the bench, minutes that pass alone, hours of cure, and the act."""

    minutes: float
    alone_min: float
    wait_h: float
    act: str


@cache
def joining_table() -> Mapping[str, Any]:
    """The data file, read once."""
    content: Mapping[str, Any] = load_data("binder_making.times", "joining.yaml")
    return content


def joining(kind: str, count: int = 1, fasteners: int = 0) -> Joined:
    """The time of `count` joints of a kind with so many screws, pins or rivets together.

    A further joint of a batch takes half of the run, each fastener its own time. Raises
    `NotDefined` for no joint, or fewer than no fasteners. Source: common practice, no source.
    """
    if not 0 < count <= 1e5 or not 0 <= fasteners <= 1e5:
        raise NotDefined("no such number of joints or screws", "one joint or more")
    rules = joining_table()
    row = rules["kinds"].get(kind, rules["other"])
    further = float(acts_table()["further_of_a_batch"]) * (count - 1)
    minutes = row.get("set", 0) + row["run"] * (1 + further) + row.get("each", 0) * fasteners
    return Joined(
        float(minutes),
        float(row.get("alone", 0)),
        float(row.get("wait", 0)),
        row.get("act", "assemble"),
    )


def trying(moving: int) -> float:
    """Minutes to try an assembly in which so many joints move or drive."""
    row = joining_table()["test"]
    return float(row["set"] + row["each"] * moving)


def hand_passes(pass_min: float) -> dict[str, int]:
    """How often a model goes through its movement by hand: slowly, without load, at each load.

    `pass_min` is what once takes in minutes, 0 where it is not known: no oftener than the table
    says, and no longer than its minutes, but three times at the least.
    """
    row = joining_table()["running_in"]
    stages = {"few": "slow", "many": "free", "each": "share"}
    if pass_min <= 0:
        return {name: int(row[name]) for name in stages}
    return {name: min(int(row[name]), max(_LEAST_PASSES, int(row[minutes] / pass_min)))
            for name, minutes in stages.items()}  # fmt: skip


def running_in(*, is_loaded: bool, pass_min: float = 0.0) -> float:
    """Minutes to run in a whole model: slowly, without load, at a quarter and half of its load.

    `pass_min` are the minutes of one pass by hand, where they are known.
    """
    row = joining_table()["running_in"]
    if pass_min > 0:
        times = hand_passes(pass_min)
        count = times["few"] + times["many"] + (2 * times["each"] if is_loaded else 0)
        return float(math.ceil(count * pass_min))
    return float(row["slow"] + row["free"] + (2 * row["share"] if is_loaded else 0))


def under_load(pass_min: float = 0.0) -> float:
    """Minutes that a model first runs under the whole of its load."""
    if pass_min > 0:
        return float(math.ceil(hand_passes(pass_min)["each"] * pass_min))
    return float(joining_table()["running_in"]["share"])


def reading(sizes: int) -> float:
    """Minutes to measure so many sizes of one thing and write them down."""
    row = joining_table()["measure"]
    return float(row["set"] + row["each"] * sizes)


def in_place(what: str) -> float:
    """Minutes of work on what is in place: `in_line`, `sizing` or a `pawl`."""
    row = joining_table()[what]
    return float(row["set"] + row["run"])
