"""Micrometres and millimetres to the text of a working."""

from __future__ import annotations


def signed(um: float) -> str:
    """Micrometres with their sign, as +12, −7.5 or 0."""
    if not um:
        return "0"
    return f"{'+' if um > 0 else '−'}{abs(um):g}"


def term(um: float) -> str:
    """Micrometres as they follow in a sum, as "+ 12" or "− 7.5"."""
    return f"{'−' if um < 0 else '+'} {abs(um):g}"


def plain(value: float) -> str:
    """An amount as it opens a sum, with the minus of the printer."""
    return f"{value:g}".replace("-", "−")


def size_text(size_mm: float) -> str:
    """A limit of size in mm to the half micrometre, as 19.980 or 20.0105."""
    text = f"{size_mm:.4f}"
    return text.removesuffix("0")
