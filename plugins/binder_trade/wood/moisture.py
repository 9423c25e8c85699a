"""Turns the air of a room into the moisture that wood settles at there."""

from __future__ import annotations

from typing import Final

from binder_trade.explained import within

SOURCE: Final = "USDA Wood Handbook FPL-GTR-190, ch. 4, equilibrium moisture content"


def moisture_at(humidity_percent: float, temperature_c: float) -> float:
    """Moisture of wood, per cent of its dry weight, in air of this humidity and temperature.

    Raises NotDefined outside 0 to 95 % and −1 to 55 °C. Source: USDA Wood Handbook, ch. 4,
    the sorption formula of Hailwood and Horrobin (constants from memory, checked against the
    handbook's table within 0.2 %).
    """
    h = within(humidity_percent, 0, 95, "the humidity in per cent") / 100
    t = within(temperature_c, -1, 55, "the temperature in °C")
    weight = 349 + 1.29 * t + 0.0135 * t**2
    k = 0.805 + 0.000736 * t - 0.00000273 * t**2
    first = 6.27 - 0.00938 * t - 0.000303 * t**2
    second = 1.91 + 0.0407 * t - 0.000293 * t**2
    kh, bound = k * h, first * k * h + 2 * first * second * (k * h) ** 2
    held = bound / (1 + first * kh + first * second * kh**2)
    return 1800 / weight * (kh / (1 - kh) + held)
