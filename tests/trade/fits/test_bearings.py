"""Plain bearings: clearance, pressure and speed."""

from __future__ import annotations

import math

import pytest

from binder_trade.explained import NotDefined
from binder_trade.fits.bearings import (
    bush_material,
    clearance_by_speed,
    length_for_pv_mm,
    running_clearance,
    surface_speed_ms,
    usual_length_mm,
    wear,
)

PSI = 0.006894757
LBF = 4.448222
FPM = 0.00508


@pytest.mark.parametrize(
    ("material", "pv"),
    [  # Mott, Machine Elements, Table 16-1: psi ft/min × 3.5e-5
        ("SAE 660", 2.625),
        ("sintered bronze", 1.75),
        ("babbitt", 1.05),
        ("filled PTFE", 0.35),
        ("nylon 101", 0.105),
    ],
)
def test_limits_of_materials(material: str, pv: float) -> None:
    assert bush_material(material).pv == pv


def test_pressure_and_speed_of_a_printed_example() -> None:
    # Bearing maker's page: 35 lbf, 5/8 in, 1 1/32 in, 120 r/min: 54.3 psi, 19.635 ft/min, 1066.2.
    found = wear(35 * LBF, 0.625 * 25.4, 1.03125 * 25.4, 120, "nylon")
    assert found.pressure_mpa / PSI == pytest.approx(54.3, abs=0.05)
    assert found.speed_ms / FPM == pytest.approx(19.635, abs=0.001)
    assert found.pv / (PSI * FPM) == pytest.approx(1066.2, abs=1)
    assert found.pv_use == pytest.approx(1066.2 * 3.5025e-5 / 0.105, rel=0.001)
    assert found.serves


def test_length_by_pressure_and_speed() -> None:
    # Wentzell, Machine Design, example 19.1: 20 lbf, 500 r/min, pv 3000 (nylon): L = 0.8727 in;
    # on 3/4 in × 7/8 in then 30.48 psi and 98.17 ft/min.
    length = length_for_pv_mm(20 * LBF, 500, "nylon")
    assert length / 25.4 == pytest.approx(0.8727, abs=0.003)
    found = wear(20 * LBF, 19.05, 22.225, 500, "nylon")
    assert found.pressure_mpa / PSI == pytest.approx(30.48, abs=0.02)
    assert found.speed_ms / FPM == pytest.approx(98.17, abs=0.02)


def test_the_length_just_meets_the_limit_on_any_diameter() -> None:
    for diameter in (4.0, 20.0):
        length = length_for_pv_mm(300, 800, "leaded bronze")
        assert wear(300, diameter, length, 800, "leaded bronze").pv_use == pytest.approx(1)


def test_too_much_is_said() -> None:
    found = wear(2000, 6, 6, 3000, "nylon")
    assert not found.serves
    assert found.says == "too much pressure and pressure × speed for nylon"


def test_one_thou_and_one_an_inch() -> None:
    # Plant Engineering, sleeve bearings: "one thousandth, plus 1 per in. of diameter"; the same
    # line in the Mechanical Engineer's Data Handbook 2.9.4.
    assert running_clearance(50.8).clearance_um == pytest.approx(3 * 25.4)
    assert running_clearance(25.4).clearance_um == pytest.approx(50, abs=1)


@pytest.mark.parametrize(
    ("service", "constant", "part"),
    [  # Data Handbook 2.9.4 in mm and parts of an inch: 0.0175 D + 0.0075 and so on
        ("precision spindle", 0.0075, 0.0175),
        ("fast precision spindle", 0.010, 0.020),
        ("electric motor", 0.015, 0.020),
        ("general machinery", 0.025, 0.025),
        ("rough service", 0.1, 0.075),
    ],
)
def test_clearances_by_service(service: str, constant: float, part: float) -> None:
    for inches in (0.25, 1.0, 3.0):
        found = running_clearance(inches * 25.4, service).clearance_um / 1000
        assert found == pytest.approx(constant + part * inches, rel=0.03)


def test_a_bearing_makers_rule() -> None:
    # 0.0015 in per inch of bore, constant rotation.
    found = running_clearance(25.4, "self-lubricating bush")
    assert found.clearance_um == pytest.approx(1.5 * 25.4)


@pytest.mark.parametrize(("speed_ms", "per_mille"), [(1.0, 0.8), (16.0, 1.6)])
def test_clearance_by_speed(speed_ms: float, per_mille: float) -> None:
    # Vogelpohl's rule, from memory: 0.8 ‰ at 1 m/s; the fourth root doubles it at 16 m/s.
    turns = speed_ms * 60_000 / (math.pi * 20)
    assert clearance_by_speed(20, turns).clearance_um == pytest.approx(20 * per_mille)


def test_usual_length() -> None:
    # Common practice, no source: 1 to 1.5 diameters.
    assert usual_length_mm(8) == (8, 12)


def test_what_is_not_known_is_refused() -> None:
    with pytest.raises(NotDefined, match="did you mean brass"):
        bush_material("bras")
    with pytest.raises(NotDefined, match="ball races"):
        surface_speed_ms(100, 100_000)
    with pytest.raises(NotDefined, match="known are"):
        running_clearance(10, "hovering")
