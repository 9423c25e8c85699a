"""One line of a sum as the bench reads it: what, by which formula, how much, on whose word."""

from __future__ import annotations

from dataclasses import dataclass

SUM = "arithmetic"


@dataclass(frozen=True, slots=True)
class Step:
    """A step of a sum: its name, the formula in signs or words, the value, the source."""

    name: str
    formula: str
    value: str
    source: str = SUM


def micrometres(value: float) -> str:
    """An amount in micrometres as it is printed, with its sign: `+12 µm`; tenths where it has."""
    rounded = round(value, 1) + 0.0
    return f"{rounded:+.0f} µm" if rounded == int(rounded) else f"{rounded:+.1f} µm"


def millimetres(value: float) -> str:
    """An amount in millimetres as it is printed: three decimals, as a micrometer reads."""
    return f"{value:.3f} mm"


def figures(value: float, unit: str) -> str:
    """An amount to three figures with its unit, without a power of ten."""
    if value == 0:
        return f"0 {unit}"
    text = f"{value:.3g}"
    return f"{float(text):.0f} {unit}" if "e" in text else f"{text} {unit}"
