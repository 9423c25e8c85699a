"""Turns a dovetail and two equal pins into the sizes that a micrometer reads."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive
from binder_trade.slides.dovetail import PRACTICE, Dovetail

FORMULA_SOURCE: Final = "Machinery's Handbook, measuring dovetail slides"
# Where on the flank a pin may touch, in parts of it from the sharp corner: lower down it
# rests in the corner's relief, higher up on the broken edge.
_LOWEST: Final = 0.25
_HIGHEST: Final = 0.75


@dataclass(frozen=True, slots=True)
class PinRange:
    """Diameters in mm of the pins that touch the flanks where they should; best at their middle."""

    least_mm: float
    best_mm: float
    most_mm: float


@dataclass(frozen=True, slots=True)
class OverPins:
    """What the two halves measure with a pair of pins; mm.

    `contact_mm` is how far from the sharp corner, along the flat and along the flank, each
    pin touches: a relief cut in the corner must be smaller.
    """

    pin_mm: float
    male_over_mm: float
    female_between_mm: float
    contact_mm: float
    steps: tuple[Step, ...]


def pin_factor(angle_deg: float) -> float:
    """1 + cot(θ/2), what each millimetre of pin adds; source: Machinery's Handbook."""
    return 1 + 1 / math.tan(math.radians(angle_deg) / 2)


def pin_range(slide: Dovetail) -> PinRange:
    """The pins that serve both halves; mm. Source: geometry, d = 2 e tan(θ/2).

    The limits, a quarter and three quarters of the male's flank, are common practice.
    """
    flank = slide.male.depth_mm / math.sin(math.radians(slide.angle_deg))
    each = 2 * math.tan(math.radians(slide.angle_deg) / 2) * flank
    return PinRange(_LOWEST * each, each / 2, _HIGHEST * each)


def owned_pin(slide: Dovetail, owned_mm: Iterable[float]) -> float:
    """The owned drill shank or dowel nearest to the best pin; mm.

    Raises NotDefined where none touches the flanks well; it names the range.
    """
    fit = pin_range(slide)
    serving = [pin for pin in owned_mm if fit.least_mm <= pin <= fit.most_mm]
    if serving:
        return min(serving, key=lambda pin: (abs(pin - fit.best_mm), pin))
    raise NotDefined(
        "no pin that is owned touches the flanks near their middle",
        f"two equal pins of {fit.least_mm:.2f} to {fit.most_mm:.2f} mm serve,"
        f" best {fit.best_mm:.2f} mm",
    )


def over_pins(slide: Dovetail, pin_mm: float) -> OverPins:
    """What both halves measure over and between two pins; mm.

    Raises NotDefined for a pin that rides on an edge or does not go in. Source: Machinery's
    Handbook, measuring dovetail slides (x = a + D(1 + cot θ/2), y = b − D(1 + cot θ/2)),
    where a is the narrow side of the male and b the wide side of the female.
    """
    pin = positive(pin_mm, "the pin")
    contact = pin / 2 / math.tan(math.radians(slide.angle_deg) / 2)
    _check_contact(slide, pin, contact)
    share = pin * pin_factor(slide.angle_deg)
    between = slide.female.wide_mm - share
    if between <= 0:
        raise NotDefined(
            f"two pins of {pin:g} mm do not go side by side into the slot", "take thinner pins"
        )
    over = slide.male.narrow_mm + share
    return OverPins(pin, over, between, contact, _steps(over, between, contact))


def _check_contact(slide: Dovetail, pin: float, contact: float) -> None:
    flank = slide.male.depth_mm / math.sin(math.radians(slide.angle_deg))
    if contact < flank:
        return
    fit = pin_range(slide)
    raise NotDefined(
        f"a pin of {pin:g} mm rides on the edge of the dovetail",
        f"take pins of {fit.least_mm:.2f} to {fit.most_mm:.2f} mm",
    )


def _steps(over: float, between: float, contact: float) -> tuple[Step, ...]:
    return (
        Step("male over two pins", "x = a + d (1 + cot θ/2)", mm(over), FORMULA_SOURCE),
        Step("female between two pins", "y = b − d (1 + cot θ/2)", mm(between), FORMULA_SOURCE),
        Step("pin touches from the corner", "e = d/2 · cot θ/2", mm(contact), FORMULA_SOURCE),
    )


def male_to_suit(slide: Dovetail, pin_mm: float, measured_between_mm: float) -> float:
    """What the male must measure over the pins to run in a female that is made; mm.

    Source: the formulas of `over_pins`, the female's depth and the clearance kept.
    """
    return positive(measured_between_mm, "the size between the pins") + _apart(slide, pin_mm)


def female_to_suit(slide: Dovetail, pin_mm: float, measured_over_mm: float) -> float:
    """What the female must measure between the pins to take a male that is made; mm.

    Source as for `male_to_suit`.
    """
    return positive(measured_over_mm, "the size over the pins") - _apart(slide, pin_mm)


def _apart(slide: Dovetail, pin_mm: float) -> float:
    pins = over_pins(slide, pin_mm)
    return pins.male_over_mm - pins.female_between_mm


@dataclass(frozen=True, slots=True)
class Corners:
    """How the corners are eased; mm: saw-cut in the inside ones, flat on the outside ones."""

    relief_mm: float
    edge_flat_mm: float
    steps: tuple[Step, ...]


def corners(slide: Dovetail) -> Corners:
    """Reliefs and broken edges that keep clear of the pins' contact; mm. Common practice.

    The saw-cut is a twelfth of the flank (0.4 to 1 mm where that fits), the outside edge is
    broken by a little more, so that no edge touches a corner's fillet.
    """
    flank = slide.male.depth_mm / math.sin(math.radians(slide.angle_deg))
    relief = min(max(0.4, flank / 12), 1.0, _LOWEST * flank)
    edge = relief * 1.25
    return Corners(
        relief,
        edge,
        (
            Step("saw-cut in the inside corners", "flank / 12, 0.4 to 1 mm", mm(relief), PRACTICE),
            Step("flat on the outside edges", "1.25 × saw-cut", mm(edge), PRACTICE),
        ),
    )
