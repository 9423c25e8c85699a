"""Compound indexing: two circles of one plate, the second moved with the plate itself."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from binder_trade.explained import NotDefined, Step, within
from binder_trade.gears.dividing.plates import Plates

RULE: Final = "turns = n₁ / h₁ ± n₂ / h₂ on one plate, counted round the whole work"
_ROUNDS: Final = 8


@dataclass(frozen=True, slots=True)
class CompoundIndexing:
    """Two moves, added or taken away (`second` under nothing), each on its circle.

    `rounds` is how often the work goes round before every place has been cut.
    """

    plate: str
    first: int
    first_circle: int
    second: int
    second_circle: int
    rounds: int
    steps: tuple[Step, ...]


def compound(divisions: int, ratio: int, plates: Plates) -> CompoundIndexing:
    """Two moves that together give a division; the smallest that there are.

    The work may go round a few times, moved by several divisions at once. Raises NotDefined
    where no pair of circles serves. Source: exact fractions.
    """
    within(divisions, 2, 100_000, "a number of divisions")
    within(ratio, 1, 1000, "the ratio of the worm")
    found = [
        (abs(first) + abs(second), rounds, name, first, one, second, two)
        for rounds in range(1, _ROUNDS + 1)
        if _covers(divisions, rounds)
        for name, row in plates.items()
        for one in row
        for two in row
        if one < two
        for first, second in _moves(Fraction(ratio * rounds, divisions), one, two)
    ]
    if not found:
        raise NotDefined(
            f"no two circles of one plate make {divisions} divisions",
            "index differentially, or take another number",
        )
    _, rounds, name, first, one, second, two = min(found)
    return CompoundIndexing(name, first, one, second, two, rounds, _steps(first, one, second, two))


def _covers(divisions: int, rounds: int) -> bool:
    """Whether steps of so many divisions come to every place."""
    return Fraction(rounds, divisions).denominator == divisions


def _moves(turns: Fraction, one: int, two: int) -> list[tuple[int, int]]:
    """All pairs within a turn on the second circle that come to the turns."""
    found = []
    for second in range(-two + 1, two):
        first = (turns - Fraction(second, two)) * one
        if second and first.denominator == 1 and first:
            found.append((int(first), second))
    return found


def _steps(first: int, one: int, second: int, two: int) -> tuple[Step, ...]:
    sign = "+" if second > 0 else "−"
    words = f"{first} of {one} {sign} {abs(second)} of {two}"
    return (Step("two moves", "n₁ / h₁ ± n₂ / h₂", words, RULE),)
