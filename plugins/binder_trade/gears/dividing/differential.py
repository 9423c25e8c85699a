"""Differential indexing: the plate geared to the spindle makes up what a near number lacks."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from binder_trade.explained import NotDefined, Step, within
from binder_trade.gears.dividing.plates import Plates
from binder_trade.gears.dividing.simple import Indexing, can_index, index
from binder_trade.gears.trains.search import Train, search

RULE: Final = "gearing = (A − z) ratio / A, spindle to plate; A the divisions indexed"
_NEAR: Final = 0.2
_REACH: Final = 60
_MOST_TRIED: Final = 40


@dataclass(frozen=True, slots=True)
class Differential:
    """Indexed as for `indexed_as` divisions, while a train turns the plate.

    `gearing` is turns of the plate for one of the spindle; `plate_follows` says that it goes
    the way of the crank, as more divisions are indexed than wanted.
    """

    divisions: int
    indexed_as: int
    indexing: Indexing
    gearing: Fraction
    train: Train
    plate_follows: bool
    steps: tuple[Step, ...]


def differential(divisions: int, ratio: int, plates: Plates, wheels: Iterable[int]) -> Differential:
    """The nearest number that divides simply, with an exact train for the rest.

    Raises NotDefined where the wheels have none. Source: (A − z) ratio / A.
    """
    within(divisions, 2, 100_000, "a number of divisions")
    owned = tuple(wheels)
    for near in _candidates(divisions, ratio, plates):
        gearing = Fraction((near - divisions) * ratio, near)
        found = search(abs(gearing), owned, keep=1)
        if found.trains and found.trains[0].error == 0:
            return _made(divisions, near, index(near, ratio, plates), found.trains[0], gearing)
    raise NotDefined(
        f"the wheels make no exact train for {divisions} divisions", "take another number"
    )


def _candidates(divisions: int, ratio: int, plates: Plates) -> list[int]:
    reach = min(_REACH, max(2, int(divisions * _NEAR)))
    some = range(max(2, divisions - reach), divisions + reach + 1)
    fits = [each for each in some if each != divisions and can_index(each, ratio, plates)]
    return sorted(fits, key=lambda each: (abs(each - divisions), each))[:_MOST_TRIED]


def _made(
    divisions: int, near: int, move: Indexing, train: Train, gearing: Fraction
) -> Differential:
    steps = (
        *move.steps,
        Step("gearing", f"({near} − {divisions}) × ratio / {near}", f"{gearing}", RULE),
        Step("train", "drivers over driven", train.name, "search of the wheels, exact"),
    )
    return Differential(divisions, near, move, gearing, train, gearing > 0, steps)
