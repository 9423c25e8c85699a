"""Speed ratios, or one stepped pulley, to the pair of pulleys that keeps one belt for all steps."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Final

from binder_trade.belts.run import GEOMETRY, Layout, Run, length_of, run
from binder_trade.explained import NotDefined, Step, amount, mm, positive, within
from binder_trade.roots import root_between

EXACT: Final = "exact length solved for the diameters, " + GEOMETRY
_LEAST_MM: Final = 1e-6


@dataclass(frozen=True, slots=True)
class Cone:
    """Two stepped pulleys that keep one belt; diameters at the belt's neutral line, mm.

    `runs` holds a run for each step: first is the driver, second the driven. `ratios` are
    turns of the driven for one of the driver. `most_apart_mm` is the spread of the lengths.
    """

    runs: tuple[Run, ...]
    length_mm: float
    ratios: tuple[float, ...]
    most_apart_mm: float
    steps: tuple[Step, ...]


def cone_from_ratios(
    ratios: Sequence[float], length_mm: float, centres_mm: float, layout: Layout = "open"
) -> Cone:
    """Both pulleys from the ratios wanted (driven turns / driver turns) and one belt length; mm.

    Raises NotDefined where a step would be larger than the centres allow. Source: `EXACT`.
    """
    length, centres = _given(length_mm, centres_mm)
    pairs = [_for_ratio(_ratio(each), length, centres, layout) for each in ratios]
    return _cone(pairs, length, centres, layout)


def cone_from_first(
    driver_mm: float, ratios: Sequence[float], centres_mm: float, layout: Layout = "open"
) -> Cone:
    """Both pulleys from the driver's diameter on the first step and all ratios; mm."""
    first = positive(driver_mm, "the driver's diameter")
    centres = positive(centres_mm, "the centre distance")
    if not ratios:
        raise NotDefined("stepped pulleys without a step", "give a ratio for each step")
    length = run(first, first / _ratio(ratios[0]), centres, layout).length_mm
    return cone_from_ratios(ratios, length, centres, layout)


def cone_from_driver(
    drivers_mm: Sequence[float], length_mm: float, centres_mm: float, layout: Layout = "open"
) -> Cone:
    """The driven pulley that suits a driver whose diameters are given; mm."""
    length, centres = _given(length_mm, centres_mm)
    pairs = [
        (each, _mate(positive(each, "a step of the driver"), length, centres, layout))
        for each in drivers_mm
    ]
    return _cone(pairs, length, centres, layout)


def cone_as_given(
    drivers_mm: Sequence[float],
    driven_mm: Sequence[float],
    centres_mm: float,
    layout: Layout = "open",
) -> Cone:
    """Two stepped pulleys as they are: `most_apart_mm` tells whether one belt serves; mm."""
    if len(drivers_mm) != len(driven_mm):
        raise NotDefined("the pulleys have unequal numbers of steps", "give one mate a step")
    pairs = list(zip(drivers_mm, driven_mm, strict=True))
    if not pairs:
        raise NotDefined("stepped pulleys without a step", "give a diameter for each step")
    return _cone(pairs, run(*pairs[0], centres_mm, layout).length_mm, centres_mm, layout)


def speed_series(slowest: float, fastest: float, steps: int) -> tuple[float, ...]:
    """Speeds in a geometric series from the slowest to the fastest; any unit.

    Source: φ = (n most / n least)^(1/(z − 1)), Sharma, Production Engineering.
    """
    low, high = amount(slowest, "the slowest speed"), amount(fastest, "the fastest speed")
    count = int(within(steps, 2, 40, "the number of speeds"))
    if high <= low:
        raise NotDefined("the fastest speed is not above the slowest", "exchange the two")
    return tuple(low * (high / low) ** (each / (count - 1)) for each in range(count))


def _cone(
    pairs: Sequence[tuple[float, float]], length: float, centres: float, layout: Layout
) -> Cone:
    if not pairs:
        raise NotDefined("stepped pulleys without a step", "give a ratio for each step")
    runs = tuple(run(*pair, centres, layout) for pair in pairs)
    apart = max(each.length_mm for each in runs) - min(each.length_mm for each in runs)
    steps = tuple(
        Step(
            f"step {number}",
            f"length {each.length_mm:.3f} mm",
            f"{each.first_mm:.3f} and {each.second_mm:.3f} mm",
            EXACT,
        )
        for number, each in enumerate(runs, 1)
    )
    ratios = tuple(each.first_mm / each.second_mm for each in runs)
    spread = Step("the lengths differ by", "longest − shortest", mm(apart), EXACT)
    return Cone(runs, length, ratios, apart, (*steps, spread))


def _for_ratio(ratio: float, length: float, centres: float, layout: Layout) -> tuple[float, float]:
    most = 2 * centres / (1 + 1 / ratio)
    found = _solved(lambda d: length_of(d, d / ratio, centres, layout) - length, most)
    return found, found / ratio


def _mate(driver: float, length: float, centres: float, layout: Layout) -> float:
    most = 2 * centres - driver
    if most <= 0:
        raise NotDefined(
            f"a step of {driver:g} mm is larger than the centres allow", "set the centres wider"
        )
    return _solved(lambda d: length_of(driver, d, centres, layout) - length, most)


def _solved(sought: Callable[[float], float], most: float) -> float:
    try:
        return root_between(sought, _LEAST_MM, most)
    except ValueError:
        raise NotDefined(
            "no pulleys of this step suit a belt of that length at those centres",
            "take another belt length, wider centres or a milder ratio",
        ) from None


def _given(length_mm: float, centres_mm: float) -> tuple[float, float]:
    length = positive(length_mm, "the length of the belt")
    centres = positive(centres_mm, "the centre distance")
    if length <= 2 * centres:
        raise NotDefined(
            f"a belt of {length:g} mm does not reach round centres of {centres:g} mm",
            f"take one longer than {2 * centres:g} mm",
        )
    return length, centres


def _ratio(value: float) -> float:
    if math.isfinite(value):
        return within(value, 0.01, 100, "the ratio")
    raise NotDefined("the ratio is no number", "give driven turns for one turn of the driver")
