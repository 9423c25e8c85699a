"""A spindle speed that is wanted to one that the machine has."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from binder_trade.explained import NotDefined, Step, positive

# So much too fast is the lowest speed taken before the work is done by hand.
_NEARLY = 0.8
_FAR = 2.0
_SOURCE = "common practice, no source: the next lower speed"


class Way(StrEnum):
    """How the speed was found."""

    OWNED = "owned"
    LOWEST = "lowest"
    BY_HAND = "by hand"
    HIGHEST = "highest"


@dataclass(frozen=True, slots=True)
class Speeds:
    """What a machine's spindle does in r/min: steps, or anything between two ends."""

    steps: tuple[float, ...]
    is_stepless: bool = False

    @staticmethod
    def between(low: float, high: float) -> Speeds:
        """A stepless drive."""
        return Speeds((low, high), is_stepless=True)


@dataclass(frozen=True, slots=True)
class Turning:
    """A speed to set, in r/min; 0 by hand.

    `light_feed` is said where the machine is far too slow for the cutter: feed lightly, so
    that it cuts instead of being pushed.
    """

    rpm: float
    wanted_rpm: float
    way: Way
    light_feed: bool
    why: str
    steps: tuple[Step, ...]


def spindle(wanted_rpm: float, speeds: Speeds) -> Turning:
    """The next lower speed that the machine has.

    Below its lowest the work is turned by hand, unless the lowest is near enough; above its
    highest the highest is taken. Raises `NotDefined` for a machine without speeds.
    """
    wanted = positive(wanted_rpm, "a spindle speed")
    owned = sorted(positive(one, "a speed of the machine") for one in speeds.steps)
    if not owned:
        raise NotDefined("the machine has no speeds", "name them in the workshop")
    if wanted < owned[0]:
        return _below(wanted, owned[0])
    if wanted > owned[-1]:
        far = wanted > _FAR * owned[-1]
        why = "the highest of the machine" + (", so feed lightly" if far else "")
        return _turning(owned[-1], wanted, Way.HIGHEST, why, light_feed=far)
    if speeds.is_stepless:
        return _turning(_rounded(wanted, owned), wanted, Way.OWNED, "stepless, rounded down")
    return _turning(_next_lower(wanted, owned), wanted, Way.OWNED, "the next lower one")


def _below(wanted: float, lowest: float) -> Turning:
    if wanted >= _NEARLY * lowest:
        return _turning(lowest, wanted, Way.LOWEST, "the lowest of the machine, a little fast")
    return _turning(0.0, wanted, Way.BY_HAND, f"the lowest, {lowest:g} r/min, is too fast")


def _next_lower(wanted: float, owned: Sequence[float]) -> float:
    return max(one for one in owned if one <= wanted)


def _rounded(wanted: float, owned: Sequence[float]) -> float:
    """Down to what can be set by eye: ten turns below 500, fifty above."""
    step = 10.0 if wanted < 500 else 50.0
    return max(wanted // step * step, owned[0])


def _turning(
    turns: float, wanted: float, way: Way, why: str, *, light_feed: bool = False
) -> Turning:
    shown = f"{turns:g} r/min" if turns else "by hand"
    steps = (
        Step("wanted", "from the cutting speed", f"{wanted:.0f} r/min", "n = 1000 v / (π d)"),
        Step("set", why, shown, _SOURCE),
    )
    return Turning(turns, wanted, way, light_feed, why, steps)
