"""Property classes of screws."""

from __future__ import annotations

import math

import pytest

from binder_trade.threads import NotDefined, proof_load_n, property_class, thread


def test_8_8_is_stronger_above_16_mm() -> None:
    # ISO 898-1: 580 and 800 MPa to 16 mm, 600 and 830 above.
    assert property_class("8.8", 16).proof_mpa == 580
    assert property_class("8.8", 18).proof_mpa == 600
    assert property_class("8.8", 18).ultimate_mpa == 830


def test_the_name_tells_the_strength() -> None:
    # ISO 898-1: the first figure is the nominal strength in hundreds of MPa; the least may be
    # up to 5 % above it.
    for name in ("4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9"):
        found = property_class(name, 10)
        nominal = 100 * int(name.split(".")[0])
        assert nominal <= found.ultimate_mpa <= 1.05 * nominal
        assert found.proof_mpa < found.ultimate_mpa


@pytest.mark.parametrize(
    ("name", "major"), [("7.7", 6), ("9.8", 20), ("8.8", 0), ("8.8", math.nan)]
)
def test_a_class_that_is_none_is_refused(name: str, major: float) -> None:
    with pytest.raises(NotDefined):
        property_class(name, major)


def test_a_thicker_screw_of_a_class_carries_more() -> None:
    loads = [proof_load_n(thread("metric", size), "8.8") for size in (3, 4, 5, 6, 8, 10, 12, 20)]
    assert loads == sorted(loads)
