"""What an expression may look up: the sizes, the series and gauges, the picture."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import pairwise
from typing import Literal

from binder.source.tree import Written
from binder.units import Quantity

Origin = Literal["spec", "command line"]
Members = tuple[tuple[str, Quantity], ...]


@dataclass(frozen=True, slots=True)
class Named:
    """A size by name: what it comes to, the author's text with its place, and who gave it."""

    name: str
    quantity: Quantity
    text: Written
    origin: Origin = "spec"


@dataclass(frozen=True, slots=True)
class Series:
    """Sizes as sold, smallest first, each with its label; `source` is the standard or list.

    ValueError where the members are out of order, unlike in kind, or none.
    """

    name: str
    title: str
    members: Members
    source: str

    def __post_init__(self) -> None:
        amounts = [quantity.amount for _, quantity in self.members]
        kinds = {quantity.dimension for _, quantity in self.members}
        rising = all(small < large for small, large in pairwise(amounts))
        if len(kinds) != 1 or not rising:
            raise ValueError(f"series {self.name} does not rise")


@dataclass(frozen=True, slots=True)
class Gauge:
    """Sizes by gauge number or letter: `12` of swg, `3/0`, `F`; `source` is the standard.

    The names that designations know are swg, awg, number_drill and letter_drill.
    """

    name: str
    title: str
    sizes: Mapping[str, Quantity]
    source: str


@dataclass(frozen=True, slots=True)
class KnownLength:
    """A length known on the picture, and how well lengths can be read off beside it.

    `pixel_error` is one standard deviation of placing one end, in pixels; `tilt` an angle
    in degrees; `depth` the offset from the known length's plane over the distance.
    """

    pixels: Fraction
    length: Quantity
    text: Written
    pixel_error: Fraction = Fraction(1)
    tilt: Fraction = Fraction(0)
    depth: Fraction = Fraction(0)


@dataclass(frozen=True, slots=True)
class Environment:
    """Sizes, series and gauges by name, and the picture's known length, if there is one.

    `faulty` names the sizes that are written and could not be worked out, and `picture`
    where it is the picture: what follows from them is no new fault.
    """

    values: Mapping[str, Named] = field(default_factory=dict)
    series: Mapping[str, Series] = field(default_factory=dict)
    gauges: Mapping[str, Gauge] = field(default_factory=dict)
    picture: KnownLength | None = None
    faulty: frozenset[str] = frozenset()
