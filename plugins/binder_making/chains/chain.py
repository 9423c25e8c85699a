"""The links of a tolerance chain to what is left at its end, and which link matters most.

Source: worst case, the sum of the tolerances; and the root of the sum of their squares, which
takes all links as independent and equally spread. With three links or fewer the worst case
is the one to go by (common practice, no source).
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from binder_trade.explained import NotDefined, Step, mm

_MOST_LINKS = 1000
_SUM = "sum of the chain"
_CHANCE = "root of the sum of squares, all links independent and equally spread"


@dataclass(frozen=True, slots=True)
class Link:
    """One size of a chain: nominal and deviations in mm (`lower` ≤ `upper`, with their signs).

    `factor` is what 1 mm of it does to the end: +1 opens the gap, −1 closes it; a size that
    enters as a radius has ±0.5. `of` are the ± of sizes that stray independently and add up to
    this one, where it is no single size; mm.
    """

    name: str
    nominal_mm: float
    upper_mm: float = 0.0
    lower_mm: float = 0.0
    factor: float = 1.0
    of: tuple[float, ...] = ()

    @property
    def middle_mm(self) -> float:
        """The middle of its limits; mm."""
        return self.nominal_mm + (self.upper_mm + self.lower_mm) / 2

    @property
    def half_mm(self) -> float:
        """Half of the width between its limits as it counts at the end; mm."""
        return abs(self.factor) * (self.upper_mm - self.lower_mm) / 2

    @property
    def likely_mm(self) -> float:
        """Its ± in the sum of squares: the root of its own where it is made of several; mm."""
        return abs(self.factor) * math.hypot(*self.of) if self.of else self.half_mm


@dataclass(frozen=True, slots=True)
class Contribution:
    """What a link adds: ± mm, and its shares (0 to 1) of the worst case and of the squares."""

    name: str
    half_mm: float
    share: float
    square_share: float


@dataclass(frozen=True, slots=True)
class Chain:
    """What is left at the end of a chain, in mm.

    `least_mm` to `most_mm` is the worst case; `likely_least_mm` to `likely_most_mm` the root
    sum square about the same middle. `contributions` has the largest first.
    """

    links: tuple[Link, ...]
    nominal_mm: float
    least_mm: float
    most_mm: float
    likely_least_mm: float
    likely_most_mm: float
    contributions: tuple[Contribution, ...]
    steps: tuple[Step, ...]

    @property
    def middle_mm(self) -> float:
        """The middle of the worst case; mm."""
        return (self.least_mm + self.most_mm) / 2

    @property
    def largest(self) -> Contribution:
        """The link that adds most: tighten this one first, or make it to suit."""
        return self.contributions[0]


def chain(links: Iterable[Link]) -> Chain:
    """The end of a chain. Raises `NotDefined` for no links, or limits that are none."""
    found = tuple(links)
    checked(found)
    nominal = sum(one.factor * one.nominal_mm for one in found)
    middle = sum(one.factor * one.middle_mm for one in found)
    worst = sum(one.half_mm for one in found)
    likely = math.hypot(*(one.likely_mm for one in found))
    return Chain(
        found,
        nominal,
        middle - worst,
        middle + worst,
        middle - likely,
        middle + likely,
        _contributions(found, worst, likely),
        (
            Step("as drawn", "Σ factor × nominal", mm(nominal), _SUM),
            Step("worst case", "middle ± Σ t", f"{mm(middle)} ± {mm(worst)}", _SUM),
            Step("likely", "middle ± √Σ t²", f"{mm(middle)} ± {mm(likely)}", _CHANCE),
        ),
    )


def _contributions(links: Sequence[Link], worst: float, likely: float) -> tuple[Contribution, ...]:
    found = [
        Contribution(
            one.name,
            one.half_mm,
            one.half_mm / worst if worst else 0.0,
            (one.likely_mm / likely) ** 2 if likely else 0.0,
        )
        for one in links
    ]
    return tuple(sorted(found, key=lambda one: -one.half_mm))


def checked(links: Sequence[Link]) -> None:
    """Raises `NotDefined` where the links are no chain."""
    if not 0 < len(links) <= _MOST_LINKS:
        raise NotDefined("a chain needs links, a thousand at most", "name the sizes in turn")
    if len({one.name for one in links}) < len(links):
        raise NotDefined("two links have the same name", "name each link by itself")
    for one in links:
        figures = (one.nominal_mm, one.upper_mm, one.lower_mm, one.factor)
        if not all(math.isfinite(figure) and abs(figure) <= 1e6 for figure in figures):
            raise NotDefined(f"{one.name} has a size that cannot be made", "mend it")
        if one.lower_mm > one.upper_mm or not one.factor:
            raise NotDefined(
                f"{one.name} has limits that cross, or no part in the chain",
                "write the upper deviation first, and a factor that is not 0",
            )
