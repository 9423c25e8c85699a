"""Turns a change of temperature into what a length grows and what a float loses."""

from __future__ import annotations

from typing import Final

from binder_trade.explained import NotDefined, positive, within

# Linear expansion, 1/K × 1e-6, from memory of handbook tables near room temperature.
EXPANSION: Final = {
    "mild steel": 12.0,
    "silver steel": 11.0,
    "stainless steel": 16.5,
    "cast iron": 10.5,
    "brass": 19.0,
    "bronze": 18.0,
    "copper": 17.0,
    "aluminium": 23.0,
    "acetal": 110.0,
    "oak, along the grain": 5.0,
}
SOURCE: Final = "linear expansion a L ΔT; a from handbook tables (from memory)"


def expansion(metal: str) -> float:
    """The expansion of a material per kelvin; raises NotDefined for one that is not kept."""
    if metal in EXPANSION:
        return EXPANSION[metal] * 1e-6
    raise NotDefined(f"no expansion is kept for {metal}", "one of: " + ", ".join(EXPANSION))


def growth(length_mm: float, per_kelvin: float, warmer_k: float) -> float:
    """What a length in mm grows when it is warmer by so many kelvin; mm. Source: a L ΔT."""
    length = positive(length_mm, "the length")
    rate = within(per_kelvin, 0, 1e-3, "the expansion per kelvin")
    return length * rate * within(warmer_k, -300, 1500, "the change of temperature in K")


def float_when_warm(
    float_mm: float, space: tuple[float, str], inside: tuple[float, str], warmer_k: float
) -> float:
    """What is left of a float when space and parts, each (length, metal), warm alike; mm."""
    grown = growth(space[0], expansion(space[1]), warmer_k)
    lost = growth(inside[0], expansion(inside[1]), warmer_k)
    return within(float_mm, -1000, 1000, "the float") + grown - lost
