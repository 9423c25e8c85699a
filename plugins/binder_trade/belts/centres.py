"""A belt's length and its pulleys to the centre distance, and to what takes up its slack."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from binder_trade.belts.run import GEOMETRY, Layout, Run, length_of, run
from binder_trade.explained import NotDefined, Step, mm, positive
from binder_trade.roots import root_between

SAG: Final = "geometry of a small jockey pressed on the middle of a span"


@dataclass(frozen=True, slots=True)
class Centres:
    """The centre distance that a belt of this length wants; mm."""

    centres_mm: float
    run: Run
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Jockey:
    """How far a jockey pulley must press a span, mm, for each step of the pulleys."""

    depths_mm: tuple[float, ...]
    travel_mm: float
    steps: tuple[Step, ...]


def centres_for(
    first_mm: float, second_mm: float, length_mm: float, layout: Layout = "open"
) -> Centres:
    """The centre distance in mm at which the belt is just taut, exact.

    Raises NotDefined where the belt is too short for the pulleys. Source: `GEOMETRY`.
    """
    one, two = positive(first_mm, "a pulley's diameter"), positive(second_mm, "a pulley's diameter")
    length = positive(length_mm, "the length of the belt")
    least = (one + two) / 2
    shortest = length_of(one, two, least, layout)
    if length <= shortest:
        raise NotDefined(
            f"a belt of {length:g} mm does not go round pulleys of {one:g} and {two:g} mm",
            f"take one longer than {shortest:.1f} mm, or smaller pulleys",
        )
    centres = root_between(lambda c: length_of(one, two, c, layout) - length, least, length)
    made = run(one, two, centres, layout)
    step = Step("centre distance", f"length solved for {length:.3f} mm", mm(centres), GEOMETRY)
    return Centres(centres, made, (step, *made.steps))


def change_of_centres(run_of: Run, longer_mm: float) -> float:
    """How far the centres move, mm, where the belt is longer (or shorter, below nothing)."""
    wanted = run_of.length_mm + longer_mm
    return (
        centres_for(run_of.first_mm, run_of.second_mm, wanted, run_of.layout).centres_mm
        - run_of.centres_mm
    )


def jockey(runs: Sequence[Run], length_mm: float) -> Jockey:
    """How deep a jockey presses the middle of one span to take up a belt that is too long; mm.

    Raises NotDefined where the belt is too short for one of the runs. The jockey is taken as
    small; the depth is reckoned from the straight span. Source: `SAG`.
    """
    length = positive(length_mm, "the length of the belt")
    longest = max((each.length_mm for each in runs), default=0.0)
    if not runs or length < longest - 1e-9:
        raise NotDefined(
            f"a belt of {length:g} mm is too short for a step that needs {longest:.2f} mm",
            "take the longest of the lengths",
        )
    depths = tuple(_depth(each.span_mm, max(0.0, length - each.length_mm)) for each in runs)
    travel = max(depths) - min(depths)
    steps = (
        Step("jockey presses", "√((s + slack)² − s²) / 2", mm(max(depths)), SAG),
        Step("travel of the jockey", "deepest − least deep", mm(travel), SAG),
    )
    return Jockey(depths, travel, steps)


def _depth(span: float, slack: float) -> float:
    return math.sqrt((span + slack) ** 2 - span**2) / 2
