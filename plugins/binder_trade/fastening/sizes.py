"""A size as a maker writes it, kept exact, turned into millimetres."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Final

UNITS: Final = {
    "mm": "mm",
    "in": "in",
    "ins": "in",
    "inch": "in",
    "inches": "in",
    '"': "in",
    "thou": "thou",
}
_MM: Final = {"mm": Fraction(1), "in": Fraction(254, 10), "thou": Fraction(254, 10_000)}


@dataclass(frozen=True, slots=True)
class Size:
    """A number with the unit that was written, '' where none was."""

    value: Fraction
    unit: str
    text: str
    is_fraction: bool = False

    def in_unit(self, unit: str) -> Size:
        """The same number, in this unit where none was written."""
        return self if self.unit else Size(self.value, unit, self.text, self.is_fraction)

    @property
    def mm(self) -> float:
        """Millimetres; the unit must be known by now. One inch is 25.4 mm exactly."""
        return float(self.value * _MM[self.unit])

    @property
    def says(self) -> str:
        """As it is bought: `1/4 in`, `16 mm`."""
        return f"{self.text} {self.unit}".strip()
