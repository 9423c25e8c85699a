"""Figures of materials against published values, each with its source.

A pair is a published range: a single figure of ours must lie in it, a strength must equal it.
"""

from __future__ import annotations

import math
from typing import Any

import pytest

Record = dict[str, Any]
Range = tuple[float, float]


@pytest.mark.parametrize(
    ("key", "density", "modulus", "expansion"),
    [
        # Data sheets for CW614N (EN 12167) and CZ121.
        ("brass", 8.47, (97, 97), (20.9, 20.9)),
        # Stockholders' data sheets for PB102; C51000 sheets give 110 GPa, CW451K 121 GPa.
        ("phosphor-bronze", 8.85, (110, 121), (17.8, 17.8)),
        # EN 755-2 data sheets.
        ("aluminium", 2.7, (70, 70), (23.4, 23.4)),
        # Typical ranges, as read in a public table.
        ("stainless", 8.03, (190, 200), (16, 18)),
        ("brass-c36000", 8.5, (100, 110), (19, 21)),
        ("mild-steel", 7.85, (200, 210), (11, 13)),  # AISI 1018, nearest to EN3B
        ("leaded-bronze", 8.9, (90, 105), (17, 19)),
        ("acetal", 1.41, (2.8, 4.0), (80, 140)),
        ("ptfe", 2.17, (0.4, 0.75), (100, 200)),
        # EN 1982, CC491K-GS: from memory.
        ("gunmetal", 8.8, (83, 103), (18, 18)),
        # EN 754-2 and EN 755-2, typical: from memory.
        ("aluminium-2011", 2.84, (70, 70), (23, 23)),
    ],
)
def test_density_modulus_and_expansion(
    materials: dict[str, Record], key: str, density: float, modulus: Range, expansion: Range
) -> None:
    record = materials[key]
    assert record["density"] == density
    assert modulus[0] <= record["modulus"] <= modulus[1]
    assert expansion[0] <= record["expansion"] <= expansion[1]


@pytest.mark.parametrize(
    ("key", "tensile", "limit"),
    [
        # EN 12167 data sheet, 3 to 20 mm.
        ("brass", [360, 500], [220, 350]),
        # Data sheet, least values, 18 to 40 mm.
        ("phosphor-bronze", {"min": 460}, {"min": 380}),
        # EN 755-2:2008, bar to 20 mm.
        ("aluminium", {"min": 295}, {"min": 250}),
        # BS 970 data sheet for 230M07, least values by ruling section.
        ("free-cutting-steel", {"min": [370, 480]}, {"min": [240, 400]}),
        # BS 970 data sheet for 080M40, normalised, 254 mm.
        ("medium-carbon-steel", {"min": [510, 540]}, {"min": 245}),
        # Typical ranges, as read in a public table.
        ("stainless", [500, 625], [205, 290]),
        ("brass-c36000", [380, 450], [200, 250]),
        ("mild-steel", [440, 480], [345, 410]),
        ("leaded-bronze", [240, 310], [110, 150]),
        # EN 1982, CC491K-GS, least values: from memory.
        ("gunmetal", {"min": 200}, {"min": 90}),
        # EN 754-2, typical: from memory.
        ("aluminium-2011", [320, 365], [270, 290]),
        # BS 970, condition T.
        ("en16t", [850, 1000], {"min": 680}),
        ("en24t", [850, 1000], {"min": 680}),
        # EN 485-2:2008, H14.
        ("aluminium-1050", [105, 145], {"min": 85}),
    ],
)
def test_strength(materials: dict[str, Record], key: str, tensile: object, limit: object) -> None:
    assert materials[key]["tensile"] == tensile
    assert materials[key]["yield"] == limit


@pytest.mark.parametrize(
    # Typical ranges, as read in a public table.
    ("key", "tensile"),
    [("acetal", [60, 90]), ("ptfe", [20, 35])],
)
def test_tensile_strength_of_plastics(
    materials: dict[str, Record], key: str, tensile: list[float]
) -> None:
    assert materials[key]["tensile"] == tensile


def test_proof_stress_of_free_cutting_steel(materials: dict[str, Record]) -> None:
    # BS 970 data sheet for 230M07.
    assert materials["free-cutting-steel"]["proof"] == {"min": [225, 360]}


@pytest.mark.parametrize(
    # BS 970 data sheet for 080M40: ruling sections 65 and 20 mm.
    ("condition", "tensile", "limit"),
    [("Q, to 65 mm", [620, 770], 385), ("R, to 20 mm", [690, 850], 465)],
)
def test_en8_hardened_and_tempered(
    materials: dict[str, Record], condition: str, tensile: list[float], limit: float
) -> None:
    found = materials["medium-carbon-steel"]["other_conditions"][condition]
    assert found["tensile"] == tensile
    assert found["yield"] == {"min": limit}


def test_cold_drawn_free_cutting_steel(materials: dict[str, Record]) -> None:
    # EN 10277:2018, +C, 16 to 40 mm.
    found = materials["free-cutting-steel"]["other_conditions"]["cold drawn, 16 to 40 mm"]
    assert (found["tensile"], found["yield"]) == ([460, 710], {"min": 375})
    leaded = materials["leaded-steel"]
    assert (leaded["tensile"], leaded["yield"]) == ([460, 710], {"min": 375})


def test_silver_steel(materials: dict[str, Record]) -> None:
    # EN ISO 4957 and BS 1407: from memory but for the hardness after hardening.
    record = materials["silver-steel"]
    assert (record["density"], record["modulus"]) == (7.85, 210)
    assert record["hardness"] == {"scale": "HB", "value": {"max": 220}}
    assert record["hardened_hrc"] == 64


@pytest.mark.parametrize(
    # Mott, Machine Elements in Mechanical Design, Table 16-1, psi ft/min.
    ("key", "limit"),
    [("leaded-bronze", 75_000), ("sintered-bronze", 50_000), ("nylon", 3_000)],
)
def test_pressure_times_speed_of_plain_bearings(
    materials: dict[str, Record], key: str, limit: float
) -> None:
    psi, feet_a_minute = 0.006894757, 0.3048 / 60
    assert math.isclose(materials[key]["pv_limit"], limit * psi * feet_a_minute, rel_tol=2e-3)


@pytest.mark.parametrize(
    # Published factors of mass in kg/m for steel of 7850 kg/m³ (20 mm round, 10 mm hexagon and
    # square), and area times density for 25 mm round aluminium.
    ("key", "area", "mass"),
    [
        ("mild-steel", math.pi / 4 * 20**2, 2.466),
        ("mild-steel", math.sqrt(3) / 2 * 10**2, 0.680),
        ("mild-steel", 10**2, 0.785),
        ("aluminium", math.pi / 4 * 25**2, 1.325),
    ],
)
def test_mass_of_a_metre_of_bar(
    materials: dict[str, Record], key: str, area: float, mass: float
) -> None:
    assert abs(area * materials[key]["density"] / 1000 - mass) <= 0.002
