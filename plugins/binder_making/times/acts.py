"""An act and its size to the minutes for getting ready and for doing it."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined, positive


@dataclass(frozen=True, slots=True)
class ActTime:
    """Minutes of an act: `set_min` once, `run_min` each time, `unattended_min` passes alone."""

    act: str
    set_min: float
    run_min: float
    unattended_min: float
    says: str
    source: str


@cache
def table() -> Mapping[str, Any]:
    """The data file, read once."""
    content: Mapping[str, Any] = load_data("binder_making.times", "acts.yaml")
    return content


def acts() -> tuple[str, ...]:
    """All acts of which times are known."""
    return tuple(table()["acts"])


def act_time(act: str, size: float | None = None, cutting_min: float | None = None) -> ActTime:
    """The times of an act.

    `size` is what the act goes by (a bar's diameter, a hole's volume; see the data file);
    `cutting_min` is the cut itself by geometry, which then stands for the tabled run. Raises
    `NotDefined` for an act that is not known, or a size that is missing.
    Source: common practice, no source.
    """
    row = table()["acts"].get(act)
    if row is None:
        raise NotDefined(f"no time is known for '{act}'", "one of: " + ", ".join(acts()))
    run = _run(act, row, size)
    if cutting_min is not None:
        run = positive(cutting_min, "the time of the cut") / table()["cutting_share"]
    return ActTime(
        act,
        float(row["set"]),
        run,
        float(row.get("unattended", 0)),
        row["says"],
        table()["source"],
    )


def _run(act: str, row: Mapping[str, Any], size: float | None) -> float:
    run = row["run"]
    if not isinstance(run, list):
        return float(run)
    if size is None:
        raise NotDefined(f"the time for '{act}' goes by {row['by']}", "give the size")
    points = [(float(at), float(minutes)) for at, minutes in run]
    return _between(points, positive(size, row["by"]))


def _between(points: list[tuple[float, float]], size: float) -> float:
    """The straight line on double logarithms through the two points next to the size."""
    for low, high in pairwise(points):
        if size <= high[0] or high is points[-1]:
            slope = math.log(high[1] / low[1]) / math.log(high[0] / low[0])
            return low[1] * math.exp(slope * math.log(size / low[0]))
    return points[0][1]
