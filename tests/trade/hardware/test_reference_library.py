"""Limits of pins, keyways and grooves against `pressfit`, a public library of limits and fits.

pressfit 0.1.0 has shafts c to u and holes H in grades 5 to 11; grade 12 is ten times grade 7
(ISO 286-1), and holes D, JS and P of grades 9 and 10 are shafts d, js and p turned over, as ISO
286-1 has it from IT8 up. No difference was found, so none is excused here.
"""

from __future__ import annotations

from importlib import import_module
from typing import Any

import pytest

from binder_trade import hardware

reference: Any = import_module("pressfit")  # it ships no types
tables: Any = import_module("pressfit.tables")

PIN_SIZES = (0.6, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20)
KEY_WIDTHS = (2, 3, 4, 5, 6, 8, 10, 12, 14, 16)
SHAFTS = (*range(3, 23), 24, 25, 26, 28, 30, 32, 35, 40, 45, 50)
BORES = (*range(8, 23), 24, 25, 26, 28, 30, 32, 35, 37, 40, 42, 47, 50)


def shaft_limits(size: float, letter: str, grade: int) -> tuple[float, float]:
    found = reference.fit(f"H7/{letter}{grade}", size)
    return found.shaft_es_um, found.shaft_ei_um


def tolerance(size: float, grade: int) -> float:
    if grade == 12:
        return float(10 * tables.it_value(size, 7))
    return float(tables.it_value(size, grade))


@pytest.mark.parametrize(("name", "letter", "grade"), [("m6", "m", 6), ("h8", "h", 8)])
def test_pins(name: str, letter: str, grade: int) -> None:
    for size in PIN_SIZES:
        assert hardware.dowel_limits_um(size, name) == shaft_limits(size, letter, grade), size


@pytest.mark.parametrize("width", KEY_WIDTHS)
def test_keyways(width: float) -> None:
    expected = {
        "free shaft": (tolerance(width, 9), 0.0),
        "free hub": tuple(-limit for limit in reversed(shaft_limits(width, "d", 10))),
        "normal hub": shaft_limits(width, "js", 9),
        "close": tuple(-limit for limit in reversed(shaft_limits(width, "p", 9))),
    }
    for fit, limits in expected.items():
        found = hardware.keyway_width(width, fit)
        assert (found.upper_um, found.lower_um) == limits, (width, fit)
    normal = hardware.keyway_width(width, "normal shaft")
    assert normal.upper_um - normal.lower_um == tolerance(width, 9)
    assert normal.upper_um == (-4 if width <= 3 else 0)  # ISO 286-1, N above IT8


def grade_of_groove(size: float) -> int:
    """DIN 471 gives h10 to 9.6 mm of groove, h11 to 21 mm, h12 beyond."""
    if size <= 10:
        return 10
    return 11 if size <= 22 else 12


@pytest.mark.parametrize("shaft", SHAFTS)
def test_grooves_of_shafts(shaft: float) -> None:
    found = hardware.circlip_shaft(shaft)
    assert found.groove_upper_um == 0
    assert -found.groove_lower_um == tolerance(found.groove_mm, grade_of_groove(found.groove_mm))


@pytest.mark.parametrize("bore", BORES)
def test_grooves_of_bores(bore: float) -> None:
    """DIN 472 gives H11 to 23 mm of groove, H12 beyond."""
    found = hardware.circlip_bore(bore)
    grade = 11 if found.groove_mm <= 23 else 12
    assert found.groove_lower_um == 0
    assert found.groove_upper_um == tolerance(found.groove_mm, grade)


@pytest.mark.parametrize("size", [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 8, 10, 12])
def test_holes_of_spring_pins(size: float) -> None:
    assert hardware.spring_pin(size).hole_upper_um == tolerance(size, 12)
