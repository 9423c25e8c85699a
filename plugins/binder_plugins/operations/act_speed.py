"""How an act cuts on a machine: its speed, feed, cuts and minutes, and what is amiss with them."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder_making.cutting import Cut, Way, advise, drill_min, passes
from binder_making.cutting import turn_min as turn_minutes
from binder_making.times import act_time
from binder_plugins.operations import words
from binder_plugins.operations.out_of_balance import no_faster
from binder_trade.explained import NotDefined

if TYPE_CHECKING:
    from binder_plugins.operations.work import Work

# The size that an act cuts, its depth or length, and what is there before it, in mm.
Sizes = tuple[float, float, float]
_ALONG = frozenset({"turn", "taper"})
_UNDER_POWER = frozenset({"turn", "face", "bore", "drill", "taper"})
# Common practice, no source: a drill so small, in mm, and so many times too slow, snaps.
_TINY_MM, _FAR = 0.8, 4.0


@dataclass(frozen=True, slots=True)
class Pace:
    """How fast an act goes; `cuts` in how many cuts a diameter is reached, the rest in minutes."""

    speed: str
    feed: str
    ready: float
    run: float
    alone: float
    cuts: int
    by_motor: bool
    trouble: tuple[tuple[str, str], ...]


def pace_of(
    work: Work, act: str, machine: str, sizes: Sizes, *, finish: bool, amount: float
) -> Pace:
    """The pace of an act on a machine; `amount` is what its time goes by."""
    size, deep, start = sizes
    kind = words.row(act).get("speed", "")
    # The edge meets what is there before the cut: the bar's diameter in a first cut.
    cut, wrong = _cut(work, kind, max(size, start), machine, finish=finish, deep=deep)
    finer = None
    if kind in _ALONG and size < start:
        finer, _ = _cut(work, kind, size, machine, finish=finish)
    return Pace(
        _speeds(cut, finer),
        _feed(cut),
        *_minutes(act, cut, sizes, amount),
        _cuts(kind, cut, size, start),
        cut is not None and cut.by_motor,
        wrong,
    )


def _cut(
    work: Work, act: str, size: float, machine: str, *, finish: bool, deep: float = 0.0
) -> tuple[Cut | None, tuple[tuple[str, str], ...]]:
    there = work.machine(machine) if machine else None
    if there is not None and math.isfinite(work.most_rpm):
        there = no_faster(there, work.most_rpm)
    if not act or work.group is None or there is None or size <= 0:
        return None, ()
    try:
        cut = advise(work.group, act, size, there, finish=finish, deep_mm=deep)
    except NotDefined:
        return None, ()
    return cut, tuple(_troubles(cut, act, size, machine))


def _minutes(act: str, cut: Cut | None, sizes: Sizes, amount: float) -> tuple[float, float, float]:
    known = words.row(act)
    if "time" not in known:
        return 0.0, float(known["minutes"]), 0.0
    try:
        time = act_time(known["time"], amount or known.get("amount"), _cutting(act, cut, *sizes))
    except NotDefined:
        return 0.0, 5.0, 0.0
    return time.set_min, time.run_min, time.unattended_min


def _cutting(act: str, cut: Cut | None, size: float, deep: float, start: float) -> float | None:
    """Minutes of the cut by geometry, where speed and feed are known."""
    if cut is None or not cut.turning.rpm or not cut.feed_mm or deep <= 0:
        return None
    count = _cuts(act, cut, size, start)
    if count:
        return max(turn_minutes(deep, cut.feed_mm, cut.turning.rpm, count), 1.0)
    if act == "drill":
        return max(drill_min(deep, size, cut.feed_mm, cut.turning.rpm), 0.8)
    return None


def _troubles(cut: Cut, act: str, size: float, machine: str) -> list[tuple[str, str]]:
    found = []
    if cut.turning.way is Way.BY_HAND and act in _UNDER_POWER:
        words_of = f"{act} at ⌀{size:g} mm wants {cut.turning.wanted_rpm:.0f} r/min"
        found.append(("lowest-speed-too-fast", f"{words_of}, which the {machine} does not have"))
    if act == "drill" and size < _TINY_MM and cut.turning.wanted_rpm > _FAR * cut.turning.rpm > 0:
        words_of = f"a ⌀{size:g} mm drill wants {cut.turning.wanted_rpm:.0f} r/min"
        has = f"the {machine} turns {cut.turning.rpm:g} at most"
        found.append(("drill-turns-too-slowly", f"{words_of}; {has}"))
    if act == "drill" and cut.load is not None and not cut.load.is_carried:
        words_of = f"a ⌀{size:g} mm drill wants {cut.load.asked_w:.0f} W of the {machine}"
        found.append(("motor-too-weak", f"{words_of}; its motor has {cut.load.motor_w:.0f} W"))
    return found


def _speeds(cut: Cut | None, last: Cut | None) -> str:
    """The speed of the first cut, and that of the last where the work is thinner by then."""
    first, then = _speed(cut), _speed(last)
    return f"{first} to {then}" if then and then != first else first


def _speed(cut: Cut | None) -> str:
    if cut is None:
        return ""
    return f"{cut.turning.rpm:g}" if cut.turning.rpm else "by hand"


def _feed(cut: Cut | None) -> str:
    if cut is None or not cut.feed_mm or not cut.turning.rpm:
        return ""
    if cut.turning.light_feed:
        return "light"
    each = "/z" if cut.is_per_tooth else ""
    return f"{cut.feed_mm:.2g}{each}"


def _cuts(act: str, cut: Cut | None, size: float, start: float) -> int:
    """In how many cuts a diameter is brought to another; 0 where it is not, or not known."""
    if cut is None or act not in {"turn", "bore", "taper"} or start <= 0:
        return 0
    return min(max(passes(start, size, cut.depth_mm or 0.5), 1), 400)
