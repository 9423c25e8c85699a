"""Says which threads are the same, which look the same, and which go together."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from binder_trade.threads.basic import FAMILIES
from binder_trade.threads.inches import is_close
from binder_trade.threads.series import all_threads
from binder_trade.threads.thread import Thread

# Wide enough for M3 beside 5 BA and for M3 beside 5-40 (common practice, no source).
_NEAR_DIAMETER: Final = 0.07
_NEAR_PITCH: Final = 0.3


@dataclass(frozen=True, slots=True)
class Mating:
    """Whether a screw goes into a nut, and where it does not, why."""

    is_mating: bool
    reason: str


def is_alike(one: Thread, other: Thread) -> bool:
    """Whether two threads are cut to one shape, whatever they are called: 1/4 x 26 and 1/4 BSF."""
    return (
        one.form.angle_deg == other.form.angle_deg
        and (one.is_left_hand, one.starts) == (other.is_left_hand, other.starts)
        and is_close(one.major_mm, other.major_mm)
        and is_close(one.pitch_mm, other.pitch_mm)
    )


def is_same(one: Thread, other: Thread) -> bool:
    """Whether two threads are one of one family: M3 and M3 x 0.5."""
    return one.family == other.family and is_alike(one, other)


def mates(screw: Thread, nut: Thread) -> Mating:
    """Whether a screw goes into a nut, with the first reason why it does not."""
    if is_alike(screw, nut):
        return Mating(is_mating=True, reason="")
    return Mating(is_mating=False, reason=_hindrance(screw, nut))


def _hindrance(screw: Thread, nut: Thread) -> str:
    if screw.is_left_hand != nut.is_left_hand:
        left = screw if screw.is_left_hand else nut
        return f"{left.designation} is left hand and the other is not"
    if screw.starts != nut.starts:
        return f"{screw.designation} has {screw.starts} starts and {nut.designation} {nut.starts}"
    if not is_close(screw.pitch_mm, nut.pitch_mm):
        return (
            f"the pitch of {screw.designation} is {screw.pitch_mm:.4g} mm and that of "
            f"{nut.designation} {nut.pitch_mm:.4g} mm"
        )
    if not is_close(screw.major_mm, nut.major_mm):
        return (
            f"{screw.designation} is {screw.major_mm:.4g} mm across and "
            f"{nut.designation} {nut.major_mm:.4g} mm"
        )
    return (
        f"{screw.designation} has flanks of {screw.form.angle_deg:g}° and "
        f"{nut.designation} of {nut.form.angle_deg:g}°: they bear on an edge only"
    )


def lookalikes(thread: Thread) -> tuple[Thread, ...]:
    """The listed threads that are taken for this one and do not fit it, nearest first.

    Near is 7 % of the diameter and 30 % of the pitch (common practice, no source).
    """
    near = (
        one
        for family in FAMILIES
        for one in all_threads(family)
        if _distance(thread, one) <= 1 and not _is_of_one_shape(thread, one)
    )
    return tuple(sorted(near, key=lambda one: _distance(thread, one)))


def _is_of_one_shape(one: Thread, other: Thread) -> bool:
    """As `is_alike`, for either hand: a list names the right-hand thread only."""
    return (
        one.form.angle_deg == other.form.angle_deg
        and is_close(one.major_mm, other.major_mm)
        and is_close(one.pitch_mm, other.pitch_mm)
    )


def _distance(one: Thread, other: Thread) -> float:
    """How far two threads lie apart; up to 1 they are taken for each other."""
    across = abs(other.major_mm / one.major_mm - 1) / _NEAR_DIAMETER
    along = abs(other.pitch_mm / one.pitch_mm - 1) / _NEAR_PITCH
    return max(across, along)
