"""Sizes away from 20 °C."""

from __future__ import annotations

import pytest

from binder_trade.fits.metals import metal
from binder_trade.fits.warmth import clearance_at, growth_um


def test_steel_at_thirty_degrees() -> None:
    # ISO 1: 100 mm at 11.5e-6 and 30 °C is 11.5 µm long.
    assert growth_um(100, 11.5e-6, 30) == pytest.approx(11.5, abs=1e-4)


def test_aluminium_against_a_steel_rule() -> None:
    # Differential expansion: 200 mm at 28 °C, 23.4 and 11.5: 19.04 µm.
    apart = growth_um(200, 23.4e-6, 28) - growth_um(200, 11.5e-6, 28)
    assert apart == pytest.approx(19.04, abs=1e-3)


def test_expansion_of_a_rod() -> None:
    # Bansal, Strength of Materials, problem 1.28: 200 cm, 70 K, 12e-6: 0.168 cm.
    assert growth_um(2000, 12e-6, 90) == pytest.approx(1680, abs=1e-6)


def test_brass_a_hundred_millimetres_long() -> None:
    # Workshop rule: 100 mm of brass and 20 K are 0.04 mm.
    assert growth_um(100, metal("brass").expansion_per_k, 40) == pytest.approx(40, abs=2)


def test_an_aluminium_housing_opens_on_a_steel_shaft() -> None:
    warm = clearance_at(20, 10, metal("aluminium"), metal("steel"), 80)
    assert warm.change_um == pytest.approx(20 * 60 * (23.4 - 12.0) / 1000)
    assert warm.clearance_um == pytest.approx(10 + warm.change_um)
    cold = clearance_at(20, 10, metal("aluminium"), metal("steel"), -20)
    assert cold.change_um < 0


def test_nothing_changes_at_twenty() -> None:
    assert clearance_at(20, 10, metal("brass"), metal("steel"), 20).clearance_um == 10


def test_a_shaft_warmer_than_its_bush_closes_it() -> None:
    assert clearance_at(20, 10, metal("steel"), metal("steel"), 20, 60).change_um < 0
