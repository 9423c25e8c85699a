"""Gaskets and packed glands."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.seals import SECTIONS, SHEETS, NotDefined, gasket, section_for, stuffing_box


# A power-plant training handbook on packing: the packed depth is 3 to 5 times the packing.
@pytest.mark.parametrize("rings", [3, 4, 5])
def test_the_packed_depth(rings: int) -> None:
    box = stuffing_box(6, 2, rings)
    assert box.packed_mm == rings * 2
    assert 3 <= box.packed_mm / box.section_mm <= 5


# A packing maker's rule: packing = (box − shaft) / 2.
@given(rod=st.floats(2, 40))
def test_the_packing_fills_the_box(rod: float) -> None:
    box = stuffing_box(rod)
    assert (box.box_mm - box.rod_mm) / 2 == pytest.approx(box.section_mm)
    assert box.section_mm in SECTIONS
    assert box.gland_bore_mm > rod
    assert box.gland_outside_mm < box.box_mm


# Geometry: a ring is cut to the circle through the middle of the packing.
def test_a_ring_is_cut_to_its_middle() -> None:
    assert stuffing_box(6, 2).ring_mm == pytest.approx(math.pi * 8)


def test_packing_grows_with_the_rod() -> None:
    sections = [section_for(rod) for rod in (3, 6, 10, 16, 25, 40)]
    assert sections == sorted(sections)


def test_no_packing_that_suits() -> None:
    with pytest.raises(NotDefined) as caught:
        section_for(6, owned=(6.0, 8.0))
    assert "about 2.0 mm" in caught.value.way_out
    with pytest.raises(NotDefined, match="number of rings"):
        stuffing_box(6, 2, 1)


# Published: EPDM rubber is designed for 25 to 40 %, 10 to 15 % at least; our range covers it.
def test_rubber_is_pressed_as_is_published() -> None:
    made = gasket("rubber", 2)
    assert made.closed_least_mm == pytest.approx(2 * 0.60)
    assert made.closed_most_mm == pytest.approx(2 * 0.85)
    assert made.closed_least_mm < made.closed_mm < made.closed_most_mm
    assert gasket("rubber").free_mm == 1.5


@pytest.mark.parametrize("sheet", SHEETS, ids=lambda each: each.name)
def test_every_sheet_is_thinner_when_pulled_down(sheet: object) -> None:
    name, least = getattr(sheet, "name", ""), getattr(sheet, "least_mm", 0.0)
    made = gasket(name, least)
    assert 0 < made.closed_least_mm < made.closed_most_mm < least


def test_a_sheet_that_is_not_kept() -> None:
    with pytest.raises(NotDefined) as caught:
        gasket("cheese", 1)
    assert "oiled paper" in caught.value.way_out
    with pytest.raises(NotDefined, match="9 mm thick"):
        gasket("Oiled Paper", 9)
    with pytest.raises(NotDefined, match="the thickness"):
        gasket("rubber", math.nan)
