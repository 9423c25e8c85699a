"""Heat and cold for shrink fits."""

from __future__ import annotations

import pytest

from binder_trade.explained import NotDefined
from binder_trade.fits.metals import Metal, metal
from binder_trade.fits.shrink import cool_shaft, heat_ring

BOOK = Metal("steel", 200_000, 0.3, 12e-6, 250)


def test_heating_of_a_tyre() -> None:
    # Bhavikatti, Strength of Materials, example 8.17: 0.2 mm on 250 mm is 66.67 K. The book's
    # joint is 400 mm, where the change is 41.7 K: the sum is that of the joint diameter.
    assert heat_ring(250, 0.2, BOOK, 0.0).change_k == pytest.approx(66.67, abs=0.01)
    assert heat_ring(400, 0.2, BOOK, 0.0).change_k == pytest.approx(41.67, abs=0.01)


def test_clearance_is_a_thousandth_unless_given() -> None:
    # DIN 7190-1, clearance for joining (from memory).
    assert heat_ring(20, 0.02, BOOK).gap_mm == pytest.approx(0.04)
    assert heat_ring(20, 0.02, BOOK).temperature_deg == pytest.approx(20 + 0.04 / (20 * 12e-6))


def test_cold_is_the_mirror_of_heat() -> None:
    hot, cold = heat_ring(25, 0.01, BOOK, 0.005), cool_shaft(25, 0.01, BOOK, 0.005)
    assert hot.change_k == pytest.approx(-cold.change_k)
    assert cold.temperature_deg == pytest.approx(20 - 50)
    assert cold.says == "dry ice is needed"


def test_brass_needs_less_heat_than_steel() -> None:
    assert heat_ring(20, 0.02, metal("brass")).change_k < heat_ring(20, 0.02, BOOK).change_k


def test_what_no_heat_or_cold_does_is_refused() -> None:
    with pytest.raises(NotDefined, match="hot"):
        heat_ring(10, 0.1, BOOK, 0.1)
    with pytest.raises(NotDefined, match="no cold"):
        cool_shaft(10, 0.02, BOOK, 0.05)
