"""Work that turns about a bore beside its own middle: how fast, and how it is made fast."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_making.cutting import Machine, Speeds

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_solid.facts import Located

# Common practice, no source: held off its middle nothing turns faster in a small lathe, and the
# pull of the heavy side, in N, stays below what shakes it. Metal is taken as dense as bronze, in
# kg/mm³, so that no other makes it worse.
_FASTEST_RPM = 500.0
_PULL_N = 5.0
_DENSE = 8.8e-6
_BESIDE_MM = 1.0
SWING = "; swung round by hand before the motor: nothing strikes"


def swept(size: Sequence[float], one: Located) -> float:
    """The circle in mm that a part of three sizes sweeps when it turns about a hole."""
    axis = max(range(3), key=lambda n: abs(one.frame.z[n]))
    spans = [max(one.frame.origin[n], size[n] - one.frame.origin[n]) for n in range(3) if n != axis]
    return 2 * math.hypot(*spans)


def off_middle(size: Sequence[float], one: Located) -> float:
    """How far in mm a hole lies beside the middle of a part of three sizes, across the hole."""
    axis = max(range(3), key=lambda n: abs(one.frame.z[n]))
    spans = [one.frame.origin[n] - size[n] / 2 for n in range(3) if n != axis]
    return math.hypot(*spans)


def most_rpm(sizes: Sequence[float], beside: float, count: int = 1) -> float:
    """The most r/min for pieces of three sizes in mm that turn `beside` mm off their middle.

    Infinite where they turn about it. The pull of the heavy side is m r ω².
    """
    if beside < _BESIDE_MM:
        return math.inf
    heavy = _DENSE * math.prod(sizes) * count
    turns = math.sqrt(_PULL_N / (heavy * beside / 1000)) * 30 / math.pi
    return min(_FASTEST_RPM, turns)


def no_faster(machine: Machine, most: float) -> Machine:
    """A machine of which only the speeds up to `most` r/min are taken, its lowest at the least."""
    speeds = machine.speeds
    low = min(speeds.steps)
    if speeds.is_stepless:
        kept = Speeds.between(low, max(min(max(speeds.steps), most), low))
    else:
        kept = Speeds(tuple(_up_to(speeds.steps, most)) or (low,))
    return replace(machine, speeds=kept)


def _up_to(steps: Sequence[float], most: float) -> Iterator[float]:
    return (one for one in steps if one <= most)
