"""Shafts and sheets turned into the pins, grub screws and rivets that suit them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, positive
from binder_trade.fastening.reach import NEAR_ENOUGH
from binder_trade.fastening.steps import mm, step
from binder_trade.fastening.verdict import Verdict, at_most

PIN_SHARE: Final = 3.0
GRUB_USUAL: Final = 0.5
GRUB_LEAST: Final = 0.25
GRUB_MOST: Final = 2 / 3
_GRUB_SOURCE: Final = "half the shaft, as read in the design press; the range has no source"


@dataclass(frozen=True, slots=True)
class Chosen:
    """What was picked from those offered, its diameter in mm, and why."""

    name: str
    diameter_mm: float
    why: str
    steps: tuple[Step, ...]


def pin_in_shaft(pin_mm: float, shaft_mm: float) -> Verdict:
    """A cross pin is a third of its shaft at most; mm; common practice, no source."""
    most = positive(shaft_mm, "a shaft") / PIN_SHARE
    return at_most(
        "the pin",
        positive(pin_mm, "a pin"),
        most,
        step("thickest pin", "shaft / 3", mm(most)),
        (f"use a pin of {mm(most)} or less", "a flat and a grub screw", "retaining compound"),
    )


def pin_for(shaft_mm: float, pins_mm: tuple[float, ...]) -> Chosen:
    """The thickest pin sold that is no more than a third of the shaft; raises NotDefined."""
    most = positive(shaft_mm, "a shaft") / PIN_SHARE
    good = [pin for pin in sorted(pins_mm) if pin <= most + NEAR_ENOUGH]
    if not good:
        raise NotDefined(
            f"no pin is thin enough for a shaft of {mm(shaft_mm)}", "bond it, or turn a shoulder"
        )
    said = step("thickest pin", "shaft / 3", mm(most))
    return Chosen(mm(good[-1]), good[-1], "thickest sold within a third of the shaft", (said,))


def grub_for(shaft_mm: float, majors_mm: Mapping[str, float]) -> Chosen:
    """The thread, of those offered, nearest to half the shaft, the thinner of two; mm.

    Never under a quarter of the shaft nor over two thirds; raises NotDefined.
    """
    usual = GRUB_USUAL * positive(shaft_mm, "a shaft")
    least, most = GRUB_LEAST * shaft_mm, GRUB_MOST * shaft_mm
    good = {
        name: major
        for name, major in majors_mm.items()
        if least - NEAR_ENOUGH <= major <= most + NEAR_ENOUGH
    }
    if not good:
        raise NotDefined(
            f"none of these threads suits a shaft of {mm(shaft_mm)}",
            f"a grub screw of {mm(least)} to {mm(most)} does",
        )
    name = min(good, key=lambda one: (abs(good[one] - usual), good[one], one))
    said = step("grub screw", "about shaft / 2", mm(usual), _GRUB_SOURCE)
    return Chosen(name, good[name], "nearest to half the shaft", (said,))


def rivet_in_sheet(rivet_mm: float, thickest_mm: float) -> Verdict:
    """A rivet is three times the thickest sheet at most; mm; common practice, no source."""
    most = 3 * positive(thickest_mm, "a sheet")
    return at_most(
        "the rivet",
        positive(rivet_mm, "a rivet"),
        most,
        step("thickest rivet", "3 × thickest sheet", mm(most)),
        (f"use a rivet of {mm(most)} or less",),
    )
