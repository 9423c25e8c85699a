"""Turns a sheet between two faces into its thickness when it is pulled down."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive

SOURCE: Final = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Sheet:
    """A gasket material: thicknesses in mm, and how far it is pulled down in per cent."""

    name: str
    least_mm: float
    most_mm: float
    usual_mm: float
    pressed_least: float
    pressed_most: float
    suits: str


SHEETS: Final = (
    Sheet("oiled paper", 0.1, 0.5, 0.15, 5, 15, "oil, water, cool steam joints of small models"),
    Sheet("vegetable fibre", 0.25, 1.5, 0.5, 20, 40, "oil, fuel, water"),
    Sheet("cork and rubber", 1.5, 6, 1.5, 15, 35, "oil sumps, uneven faces"),
    Sheet("rubber", 0.5, 6, 1.5, 15, 40, "water, air; nitrile for oil"),
    Sheet("fibre-reinforced sheet", 0.25, 3, 0.5, 7, 17, "steam, hot water"),
    Sheet("graphite sheet", 0.2, 3, 0.5, 25, 45, "steam, exhaust"),
    Sheet("PTFE", 0.1, 3, 0.5, 5, 20, "all but high heat; it creeps: tighten again"),
    Sheet("copper, annealed", 0.5, 2, 1, 2, 8, "cylinder heads, high pressure"),
)


@dataclass(frozen=True, slots=True)
class Gasket:
    """A gasket pulled down; mm: the thickness free, and least and most as it stays."""

    sheet: Sheet
    free_mm: float
    closed_least_mm: float
    closed_most_mm: float
    steps: tuple[Step, ...]

    @property
    def closed_mm(self) -> float:
        """The thickness to reckon with in a stack of lengths; mm."""
        return (self.closed_least_mm + self.closed_most_mm) / 2


def gasket(material: str, thickness_mm: float | None = None) -> Gasket:
    """A gasket of this sheet and free thickness, else of its usual one; mm.

    Raises NotDefined for a sheet that is not kept or a thickness that it is not used in.
    Source: common practice, no source.
    """
    wanted = material.strip().casefold()
    found = next((sheet for sheet in SHEETS if sheet.name.casefold() == wanted), None)
    if found is None:
        raise NotDefined(
            f"no gasket of {material} is kept", "one of: " + ", ".join(each.name for each in SHEETS)
        )
    thickness = positive(found.usual_mm if thickness_mm is None else thickness_mm, "the thickness")
    if not found.least_mm <= thickness <= found.most_mm:
        raise NotDefined(
            f"{found.name} is not used {thickness:g} mm thick",
            f"{found.least_mm:g} to {found.most_mm:g} mm",
        )
    thin, thick = (
        thickness * (1 - part / 100) for part in (found.pressed_most, found.pressed_least)
    )
    text = f"{mm(thin)} to {mm(thick)}"
    return Gasket(
        found, thickness, thin, thick, (Step("pulled down", "t · (1 − pressed)", text, SOURCE),)
    )
