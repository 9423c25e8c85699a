"""What pressing does to the bore of a bush."""

from __future__ import annotations

import pytest

from binder_trade.explained import NotDefined
from binder_trade.fits.bush import bush_advice, bush_wall_is_thin, press_bush
from binder_trade.fits.cylinders import joint
from binder_trade.fits.metals import metal


def test_a_thin_bush_in_a_block_closes_by_nearly_all_of_the_interference() -> None:
    # Limiting case: a thin soft bush in a stiff block; its bore moves with its outside.
    made = joint(22.225, metal("phosphor bronze"), metal("cast iron"), None, 21.2)
    pressed = press_bush(made, 0.025)
    assert 0.85 * 0.025 < pressed.closes_mm < 0.025


def test_a_thick_bush_closes_by_less() -> None:
    thin = press_bush(joint(20, metal("brass"), metal("steel"), None, 17), 0.02)
    thick = press_bush(joint(20, metal("brass"), metal("steel"), None, 8), 0.02)
    assert thick.closes_mm < 0.7 * thin.closes_mm


def test_closing_seen_at_the_bench() -> None:
    # A workshop report (page of a model engineers' forum): 7/8 in oil-soaked bronze bush on a
    # 3/4 in shaft, pressed with the usual 1 to 2 thou, closed by 1.5 thou. From memory of the
    # iron housing: a large block.
    made = joint(22.225, metal("sintered-bronze"), metal("cast iron"), None, 19.05)
    nip = 0.0508
    assert press_bush(made, nip).closes_mm == pytest.approx(0.0381, abs=0.012)


def test_bore_left_is_bore_less_closing() -> None:
    pressed = press_bush(joint(10, metal("bronze"), metal("steel"), 30, 6), 0.02)
    assert pressed.bore_mm == pytest.approx(6 - pressed.closes_mm)
    assert pressed.closes_mm == pressed.grip.bore_closes_mm
    assert pressed.advice == "press it in, then ream it in line"


def test_hoop_stress_at_the_bore_gives_the_same_closing() -> None:
    # Independent way: strain at the bore is its hoop stress over the modulus.
    bronze = metal("bronze")
    pressed = press_bush(joint(10, bronze, metal("steel"), 30, 6), 0.02)
    strain = -pressed.grip.shaft_bore_hoop_mpa / bronze.modulus_mpa
    assert pressed.closes_mm == pytest.approx(6 * strain, rel=1e-12)


def test_sintered_bronze_is_never_reamed() -> None:
    # Workshop practice: reaming smears the pores; a ball or mandrel sizes.
    assert metal("sintered bronze").porous
    assert bush_advice(0.02, porous=True).startswith("never ream")


@pytest.mark.parametrize(
    ("bore", "outside", "thin"),
    [(6, 7.4, True), (6, 7.7, False), (20, 23, True), (20, 24.1, False)],
)
def test_thin_walls(bore: float, outside: float, thin: bool) -> None:
    # Common practice, no source: a tenth of the bore, and 0.8 mm.
    assert bush_wall_is_thin(bore, outside) is thin


def test_a_solid_bush_is_refused() -> None:
    with pytest.raises(NotDefined, match="bore"):
        press_bush(joint(10, metal("bronze"), metal("steel"), 30), 0.02)
