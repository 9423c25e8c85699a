"""The fine threads of pipes and fittings: how many hold, and how much metal stands round them.

A fitting is large for its pitch, so that rules by the diameter, made for screws, ask too much.
"""

from __future__ import annotations

from typing import Final

from binder_trade.threads import MOVING, Thread

# A 1/4 x 40 union goes in 3/16 in, which is seven threads and a half.
FITTING_THREADS: Final = 7
_FAMILIES: Final = ("ME", "brass", "BSP")
_WALL_BY_DIAMETER: Final = 0.25


def is_fitting(thread: Thread) -> bool:
    """Whether a thread belongs to fittings: pipe, model engineers' series, 26 to the inch."""
    return thread.family in _FAMILIES


def least_wall(thread: Thread) -> float:
    """The metal in mm that stands round a tapped hole: 0.25 D, for fittings one pitch if less.

    Source: common practice, no source.
    """
    by_diameter = _WALL_BY_DIAMETER * thread.major_mm
    return min(by_diameter, thread.pitch_mm) if is_fitting(thread) else by_diameter


def may_stand_in(one: Thread, asked: Thread) -> bool:
    """Whether a thread of its family may be offered for another.

    Pipe takes pipe alone, and a screw that moves one of its form: the other half is bought, or
    sits on a boiler already. Source: common practice.
    """
    if {one.family, asked.family} & {"BSP", *MOVING}:
        return one.family == asked.family
    return is_fitting(one) or not is_fitting(asked)
