"""Holes for bought rod."""

from __future__ import annotations

import pytest

from binder_trade.fits.drawn_rod import on_drawn_rod


def test_the_preferred_shaft_basis_fits_come_out_by_themselves() -> None:
    # ANSI B4.2: G7/h6, H7/h6, S7/h6 are the counterparts of H7/g6, H7/h6, H7/s6.
    assert on_drawn_rod("slides", 12, "h6").hole == "G7"
    assert on_drawn_rod("push", 12, "h6").hole == "H7"
    assert on_drawn_rod("drive", 12, "h6").hole == "S7"


def test_clearances_on_ground_rod() -> None:
    # ISO 286-2: F8/h6 at 20 mm is 20 to 66 µm.
    found = on_drawn_rod("runs", 20, "h6")
    assert (found.hole, found.got_um) == ("F8", (20, 66))
    assert found.reaches


def test_a_drawn_rod_cannot_hold_a_press_fit() -> None:
    # EN 10278: 6 mm rod h9 varies by 30 µm, more than H7/s6 has from least to most.
    found = on_drawn_rod("press", 6, "h9")
    assert not found.reaches
    assert found.got_um[1] > 0
    assert "turn the shaft" in found.says


def test_a_plain_reamer_on_drawn_rod() -> None:
    # 6 mm: reamer H7 is 0 to +12, rod h9 is −30 to 0 (ISO 286-2, EN 10278).
    assert on_drawn_rod("runs", 6, "h9").reamed_um == (0, 42)


@pytest.mark.parametrize("duty", ["runs", "slides", "press", "loose"])
@pytest.mark.parametrize("nominal", [2.0, 6.0, 25.0])
def test_no_other_hole_is_nearer(duty: str, nominal: float) -> None:
    from binder_trade.limits import NotDefined, fit

    found = on_drawn_rod(duty, nominal)
    missed = sum(abs(a - b) for a, b in zip(found.wanted_um, found.got_um, strict=True))
    for letter in "DEFGHKNPS":
        for grade in (7, 8, 9):
            try:
                pair = fit(nominal, f"{letter}{grade}", "h9")
            except NotDefined:
                continue
            other = abs(pair.clearance_min_um - found.wanted_um[0]) + abs(
                pair.clearance_max_um - found.wanted_um[1]
            )
            assert missed <= other
