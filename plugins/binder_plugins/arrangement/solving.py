"""Planes to the place of a part: the first three that stand across one another settle it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from binder_plugins.arrangement.space import carried
from binder_plugins.arrangement.ties import RANK_GUESS, RANK_MIDDLE, RANK_ROW, Hold
from binder_solid.forms import Frame, Vector
from binder_solid.space import dot, length, plus

_FLAT = 1e-6
TOLERANCE = 0.02
"""How far in mm two joints may ask for different places before it is told."""


@dataclass(frozen=True, slots=True)
class Settled:
    """Where a part's origin comes to, the pairs that disagree, and what is only guessed.

    `open` are the directions for which no joint and no word says anything.
    """

    origin: Vector
    clashes: tuple[tuple[Hold, Hold, float], ...]
    guessed: tuple[Hold, ...]
    open: int


@dataclass(slots=True)
class _Work:
    known: list[tuple[Vector, Hold]]
    place: Vector = (0.0, 0.0, 0.0)


def settle(holds: Iterable[Hold], turned: Frame) -> Settled:
    """Takes planes by their rank; what is not asked for at all stays at 0."""
    work = _Work([])
    clashes: list[tuple[Hold, Hold, float]] = []
    guessed: list[Hold] = []
    taken = list(holds)
    for hold in sorted(taken, key=lambda one: one.rank):
        value = _value(hold, taken) - _reach(hold, turned)
        rest = hold.normal
        for basis, _ in work.known:
            rest = plus(rest, basis, -dot(rest, basis))
        miss = value - dot(hold.normal, work.place)
        size = length(rest)
        if size > _FLAT:
            basis = plus((0.0, 0.0, 0.0), rest, 1.0 / size)
            work.place = plus(work.place, basis, miss / size)
            work.known.append((basis, hold))
            if hold.rank == RANK_GUESS:
                guessed.append(hold)
        elif abs(miss) > TOLERANCE and hold.rank <= RANK_ROW:
            clashes.append((_rival(hold, work), hold, miss))
    return Settled(work.place, tuple(clashes), tuple(guessed), 3 - len(work.known))


def _value(hold: Hold, holds: list[Hold]) -> float:
    """Of several that only want the middle of the same joint, the middle of them all."""
    if hold.rank != RANK_MIDDLE:
        return hold.value
    alike = [
        one.value * (1.0 if dot(one.normal, hold.normal) > 0 else -1.0)
        for one in holds
        if one.rank == RANK_MIDDLE
        and one.source == hold.source
        and abs(dot(one.normal, hold.normal)) > 1.0 - _FLAT
    ]
    return sum(alike) / len(alike)


def _reach(hold: Hold, turned: Frame) -> float:
    """How far the held point lies along the normal from the part's own origin."""
    if hold.own is not None:
        return dot(hold.normal, carried(hold.own, turned))
    reaches = [dot(hold.normal, carried(corner, turned)) for corner in hold.box]
    return max(reaches) if hold.side > 0 else min(reaches)


def _rival(hold: Hold, work: _Work) -> Hold:
    """The plane taken before that settles the same direction most."""
    return max(work.known, key=lambda one: abs(dot(one[0], hold.normal)))[1]
