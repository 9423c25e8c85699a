"""Turns the lengths along a shaft into the float that is left, and the part made to suit."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, not_negative, positive

SUM: Final = "sum of the chain"
CHANCE: Final = "root of the sum of squares, all tolerances at the same spread"


@dataclass(frozen=True, slots=True)
class Length:
    """One length of a chain in mm: nominal, and how much more and less it may be."""

    name: str
    length_mm: float
    plus_mm: float = 0.0
    minus_mm: float = 0.0

    @property
    def least_mm(self) -> float:
        """The shortest that it may be; mm."""
        return self.length_mm - self.minus_mm

    @property
    def most_mm(self) -> float:
        """The longest that it may be; mm."""
        return self.length_mm + self.plus_mm


@dataclass(frozen=True, slots=True)
class Stack:
    """Parts within a space, and the float between them; mm.

    `least_mm` and `most_mm` are the worst case. `likely_least_mm` and `likely_most_mm` are
    the root-sum-square band about the middle of the worst case: advice, for chains of more
    than three. A negative `least_mm` can lock.
    """

    space: Length
    parts: tuple[Length, ...]
    nominal_mm: float
    least_mm: float
    most_mm: float
    likely_least_mm: float
    likely_most_mm: float
    steps: tuple[Step, ...]


def stack(parts: Iterable[tuple[str, float, float, float]], gap: Length) -> Stack:
    """The float of parts (name, length, plus, minus) in the space `gap`; mm.

    Raises NotDefined for an empty chain or a tolerance that is not a size. Source: the sum
    of the chain, and the root of the sum of squares.
    """
    chain = tuple(_checked(Length(*each)) for each in parts)
    if not chain:
        raise NotDefined("nothing stands in the space", "name the parts from end to end")
    space = _checked(gap)
    least = space.least_mm - sum(part.most_mm for part in chain)
    most = space.most_mm - sum(part.least_mm for part in chain)
    nominal = space.length_mm - sum(part.length_mm for part in chain)
    bands = [(each.plus_mm + each.minus_mm) / 2 for each in (space, *chain)]
    middle, likely = (least + most) / 2, math.hypot(*bands)
    return Stack(
        space,
        chain,
        nominal,
        least,
        most,
        middle - likely,
        middle + likely,
        (
            Step("float as drawn", "space − Σ parts", mm(nominal), SUM),
            Step("least float", "shortest space − Σ longest parts", mm(least), SUM),
            Step("most float", "longest space − Σ shortest parts", mm(most), SUM),
            Step("likely band", "middle ± √Σ t²", f"± {mm(likely)}", CHANCE),
        ),
    )


def _checked(length: Length) -> Length:
    positive(length.length_mm, f"the length of {length.name}")
    not_negative(length.plus_mm, f"the upper tolerance of {length.name}")
    not_negative(length.minus_mm, f"the lower tolerance of {length.name}")
    return length


@dataclass(frozen=True, slots=True)
class Closing:
    """The part that is made last, and the sum that gives its length; mm.

    `target_mm` puts the float in the middle of what is wanted, `least_mm` and `most_mm` are
    the ends; `sum_text` is printed beside the box where the measured lengths go.
    """

    name: str
    target_mm: float
    least_mm: float
    most_mm: float
    sum_text: str


def made_to_suit(
    chain: Stack,
    name: str,
    wanted: tuple[float, float],
    measured: Mapping[str, float] | None = None,
) -> Closing:
    """The length of one part that brings the float between the two wanted; mm.

    `measured` has what was made so far, by name, the space too; the rest stands as drawn.
    Raises NotDefined where the part is not in the chain or no length is left for it.
    """
    low, high = sorted(not_negative(each, "the float wanted") for each in wanted)
    found = dict(measured or {})
    others = [part for part in chain.parts if part.name != name]
    if len(others) != len(chain.parts) - 1:
        raise NotDefined(
            f"{name} is not one part of this stack",
            "one of: " + ", ".join(part.name for part in chain.parts),
        )
    room = _as_made(chain.space, found) - sum(_as_made(part, found) for part in others)
    if room - high <= 0:
        raise NotDefined(
            f"the others leave {room:.2f} mm for {name}", "shorten one of them or the float"
        )
    text = " − ".join([chain.space.name, *(part.name for part in others)])
    return Closing(
        name, room - (low + high) / 2, room - high, room - low, f"{text} − {(low + high) / 2:g}"
    )


def _as_made(length: Length, measured: Mapping[str, float]) -> float:
    if length.name not in measured:
        return length.length_mm
    return positive(measured[length.name], f"the measured length of {length.name}")
