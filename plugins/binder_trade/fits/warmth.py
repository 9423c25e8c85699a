"""A fit at another temperature than the 20 °C at which sizes hold (ISO 1)."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.explained import Step, positive, within
from binder_trade.fits.metals import Metal
from binder_trade.fits.printed import micrometres

REFERENCE_DEG = 20.0
SOURCE = "ISO 1: sizes hold at 20 °C"
_MOST_UM = 1e6


@dataclass(frozen=True, slots=True)
class Warm:
    """A clearance at temperature in µm, its change from 20 °C, and the change of each half."""

    clearance_um: float
    change_um: float
    hole_um: float
    shaft_um: float
    steps: tuple[Step, ...]


def growth_um(length_mm: float, expansion_per_k: float, temperature_deg: float) -> float:
    """How much a length in mm has grown in µm at a temperature in °C; less than nothing when cold.

    Raises NotDefined. Source: ISO 1 (20 °C), free expansion.
    """
    length = positive(length_mm, "the length")
    expansion = within(expansion_per_k, -1e-2, 1e-2, "the expansion")
    return 1000 * length * expansion * _over_reference(temperature_deg)


def clearance_at(
    nominal_mm: float,
    clearance_um: float,
    hole: Metal,
    shaft: Metal,
    hole_deg: float,
    shaft_deg: float | None = None,
) -> Warm:
    """A clearance at 20 °C in µm to that where hole and shaft have their temperatures in °C.

    Without a temperature of its own the shaft has that of the hole. A hole grows as if it were
    full. Raises NotDefined. Source: ISO 1 and free expansion.
    """
    before = within(clearance_um, -_MOST_UM, _MOST_UM, "the clearance")
    hole_um = growth_um(nominal_mm, hole.expansion_per_k, hole_deg)
    shaft_at = hole_deg if shaft_deg is None else shaft_deg
    shaft_um = growth_um(nominal_mm, shaft.expansion_per_k, shaft_at)
    change = hole_um - shaft_um
    steps = (
        Step(
            "hole grows",
            f"expansion × d × ({hole_deg:g} − 20 °C)",
            micrometres(hole_um),
            hole.source,
        ),
        Step(
            "shaft grows",
            f"expansion × d × ({shaft_at:g} − 20 °C)",
            micrometres(shaft_um),
            shaft.source,
        ),
        Step("clearance", "at 20 °C + hole − shaft", micrometres(before + change), SOURCE),
    )
    return Warm(before + change, change, hole_um, shaft_um, steps)


def _over_reference(temperature_deg: float) -> float:
    return within(temperature_deg, -273.15, 2000.0, "the temperature") - REFERENCE_DEG
