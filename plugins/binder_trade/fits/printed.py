"""Amounts of a sum to the text that is printed beside its formula."""

from __future__ import annotations

SUM = "arithmetic"


def micrometres(value: float) -> str:
    """An amount in µm with its sign, in tenths where it has any: `+12 µm`, `−3.5 µm`, `0 µm`."""
    rounded = round(float(value), 1)
    if rounded == 0:
        return "0 µm"
    sign = "+" if rounded > 0 else "−"
    return f"{sign}{abs(rounded):.{0 if rounded.is_integer() else 1}f} µm"


def span(low_um: float, high_um: float) -> str:
    """Two amounts in µm: `+10 µm to +40 µm`."""
    return f"{micrometres(low_um)} to {micrometres(high_um)}"


def millimetres(value: float) -> str:
    """An amount in mm as a micrometer reads: three decimals."""
    return f"{value:.3f} mm"


def figures(value: float, unit: str) -> str:
    """An amount to three figures with its unit, without a power of ten."""
    if value == 0:
        return f"0 {unit}"
    text = f"{value:.3g}"
    return f"{float(text):.0f} {unit}" if "e+" in text else f"{text} {unit}"
