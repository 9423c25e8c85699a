"""Cords, grooves, O-rings, V belts, flat belts and toothed belts as they are sold."""

import math
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from binder_trade.belts.flat import flat_pulley, least_flat_pulley
from binder_trade.belts.o_rings import ring_belts
from binder_trade.belts.round_belt import (
    cord,
    cord_mass_kg_m,
    cut_length,
    neutral_of,
    round_groove,
    stretch_of,
    stretch_range,
    vee_groove,
)
from binder_trade.belts.run import run
from binder_trade.belts.toothed import (
    fewest_in_mesh,
    near_centres,
    read_designation,
    section,
    toothed_drive,
    toothed_pulley,
)
from binder_trade.belts.vee import sections, vee_belt_groove
from binder_trade.explained import NotDefined

INCH, LBF = 25.4, 4.4482216152605
# A belt maker's cross-section table for urethane of 83A (tension 83A / 85A): cord mm, in, lbf.
CORDS = (
    (2, 0.44, 0.4),
    (3, 0.75, 1.1),
    (4, 0.83, 1.7),
    (5, 1.0, 2.5),
    (6.3, 1.5, 4.4),
    (8, 1.87, 6.9),
    (9.5, 2.25, None),
    (12.5, 3.0, None),
)


@pytest.mark.parametrize(("size", "least", "tension"), CORDS)
def test_cords_of_the_makers_table(size: float, least: float, tension: float | None) -> None:
    found = cord(size)
    assert found.least_pulley_mm == pytest.approx(least * INCH)
    if tension is None:
        assert found.tension_n is None
    else:
        assert found.tension_n == pytest.approx(tension * LBF)


# The rule for what the table leaves out stands near the table itself.
def test_a_cord_that_is_not_in_the_table() -> None:
    assert cord(2.5).least_pulley_mm == pytest.approx(15)
    assert "common practice" in cord(2.5).source
    rates = [least * INCH / size for size, least, _ in CORDS]
    assert min(rates) < 6 < max(rates)


# O-ring maker's design guide: 8 to 12 % on the inside, bottom at least 4 × the section, groove
# as deep and as wide as the section.
def test_o_rings_as_belts() -> None:
    assert stretch_range("o-ring")[:3] == (0.08, 0.10, 0.12)
    found = ring_belts(10, 12, 24, cord_mm=2)
    around = run(10, 12, 24).length_mm
    assert found
    assert abs(found[0].stretch - 0.10) == min(abs(each.stretch - 0.10) for each in found)
    for each in found:
        assert 1.08 <= around / (math.pi * each.ring.inside_mm) <= 1.12
        assert each.ring.cord_mm == 2
        assert each.stretch == pytest.approx(stretch_of(around, math.pi * each.ring.inside_mm))
    with pytest.raises(NotDefined) as caught:
        ring_belts(10, 12, 400)
    assert "look for an inside diameter" in caught.value.way_out


def test_a_groove_as_the_guide_has_it() -> None:
    made = round_groove(24, 3)
    assert (made.bottom_mm, made.depth_mm, made.width_mm, made.rim_mm) == (21, 3, 3, 27)
    assert neutral_of(made.bottom_mm, 3) == 24
    with pytest.raises(NotDefined) as caught:
        round_groove(14, 3)
    assert "15 mm or more" in caught.value.way_out


# Geometry: the cord touches both flanks, so its middle is d / 2 from each.
@given(angle=st.floats(30, 100), size=st.floats(1, 6))
def test_a_cord_in_a_vee(angle: float, size: float) -> None:
    made = vee_groove(60, size, angle)
    above = (made.neutral_mm - made.bottom_mm) / 2
    assert above * math.sin(math.radians(angle / 2)) == pytest.approx(size / 2)
    assert made.rim_mm >= made.neutral_mm + size - 1e-9
    assert made.depth_mm * math.tan(math.radians(angle / 2)) * 2 == pytest.approx(made.width_mm)


def test_a_cord_cut_to_weld() -> None:
    made = cut_length(420, 3, 0.10)
    assert made.free_mm * 1.10 == pytest.approx(420)
    assert made.fitted_cord_mm**2 * 1.10 == pytest.approx(9)
    least, usual, most, _ = stretch_range("welded polyurethane")
    assert least < usual < most


def test_the_mass_of_a_cord() -> None:
    assert cord_mass_kg_m(3) == pytest.approx(0.00848, abs=1e-5)


# The maker's table again: its most working tension is what a tenth of stretch gives.
@pytest.mark.parametrize(("size", "least", "tension"), CORDS[:6])
def test_the_pull_of_a_stretched_cord(size: float, least: float, tension: float) -> None:
    assert cut_length(400, size, 0.10).pretension_n == pytest.approx(tension * LBF, rel=0.15)


def test_cords_that_cannot_be() -> None:
    with pytest.raises(NotDefined, match="the cord"):
        cord(100)
    with pytest.raises(NotDefined, match="the stretch"):
        cut_length(100, 3, 0.9)
    with pytest.raises(NotDefined, match="deeper than the pulley"):
        vee_groove(4, 3)
    with pytest.raises(NotDefined, match="no stretch known"):
        stretch_range("cheese")


# ISO 4183 (from memory): angle by datum diameter, and widths that follow from it.
@pytest.mark.parametrize(
    ("name", "datum", "angle", "rim"),
    [
        ("Y", 40, 32, 43.2),
        ("Z", 63, 34, 67),
        ("Z", 100, 38, 104),
        ("A", 90, 34, 95.5),
        ("SPZ", 71, 34, 75),
    ],
)
def test_vee_grooves(name: str, datum: float, angle: float, rim: float) -> None:
    made = vee_belt_groove(name, datum)
    assert (made.angle_deg, made.rim_mm) == pytest.approx((angle, rim))
    assert not made.is_too_small
    assert "from memory" in made.source


# DIN 2217 (from memory): a Z groove of 34° is 9.7 wide at the rim.
def test_the_top_of_a_groove() -> None:
    assert vee_belt_groove("Z", 63).width_at_rim_mm == pytest.approx(9.7, abs=0.05)
    assert vee_belt_groove("A", 90, 2).face_mm == 33


def test_sections_grow() -> None:
    classical = [vee_belt_groove(name, 200) for name in ("Y", "Z", "A", "B")]
    for small, large in pairwise(classical):
        assert small.width_at_rim_mm < large.width_at_rim_mm
        assert small.depth_mm < large.depth_mm
        assert small.least_datum_mm < large.least_datum_mm
    assert vee_belt_groove("A", 60).is_too_small
    assert "Y" in sections()
    with pytest.raises(NotDefined, match="no V belt"):
        vee_belt_groove("Q", 60)


# ISO 22 (from memory): 0.3 mm of crown from 40 to 112 mm, 1.0 mm at 500.
@pytest.mark.parametrize(("size", "crown"), [(40, 0.3), (112, 0.3), (125, 0.4), (500, 1.0)])
def test_crowns(size: float, crown: float) -> None:
    assert flat_pulley(size, 20).crown_mm == crown


def test_a_small_flat_pulley() -> None:
    made = flat_pulley(25, 20)
    assert made.face_mm == pytest.approx(23)
    assert made.crown_mm == pytest.approx(0.23)
    assert "common practice" in made.steps[-1].source
    with pytest.raises(NotDefined, match="no crown"):
        flat_pulley(900, 20)
    assert least_flat_pulley(1.5, "leather")[0] == 30
    with pytest.raises(NotDefined, match="no flat belt"):
        least_flat_pulley(1.5, "paper")


# ANSI/RMA IP-24: 300L075 is 30.0 in long, 80 teeth, 3/4 in wide.
def test_a_designation() -> None:
    found = read_designation("300L075")
    assert (found.section.name, found.teeth) == ("L", 80)
    assert found.length_mm == pytest.approx(762.0)
    assert found.width_mm == pytest.approx(0.75 * INCH)
    assert read_designation("80XL").teeth == 40
    with pytest.raises(NotDefined, match="no code"):
        read_designation("belt")


# ISO 5296 pitches in inches: 0.080, 1/5, 3/8, 1/2, 7/8, 1 1/4.
@pytest.mark.parametrize(
    ("name", "inches"),
    [
        ("MXL", 0.080),
        ("XXL", 0.125),
        ("XL", 0.2),
        ("L", 0.375),
        ("H", 0.5),
        ("XH", 0.875),
        ("XXH", 1.25),
    ],
)
def test_pitches(name: str, inches: float) -> None:
    assert section(name).pitch_mm == pytest.approx(inches * INCH)


# ISO 5294 (from memory): an XL pulley of 20 teeth: pitch diameter 32.34, outside 31.83.
def test_a_toothed_pulley() -> None:
    made = toothed_pulley("xl", 20)
    assert made.pitch_diameter_mm == pytest.approx(32.34, abs=0.005)
    assert made.outside_mm == pytest.approx(31.83, abs=0.005)
    assert toothed_pulley("T5", 8).is_too_small


@settings(deadline=None)
@given(first=st.integers(12, 40), second=st.integers(12, 40), more=st.integers(5, 80))
def test_whole_teeth(first: int, second: int, more: int) -> None:
    count = first + second + more
    made = toothed_drive("T5", first, second, count)
    one, two = (toothed_pulley("T5", each).pitch_diameter_mm for each in (first, second))
    assert run(one, two, made.centres_mm).length_mm == pytest.approx(count * 5)
    below, above = near_centres("T5", first, second, made.centres_mm + 0.01)
    assert (below.belt_teeth, above.belt_teeth) == (count, count + 1)
    assert below.centres_mm < above.centres_mm
    assert made.teeth_in_mesh <= min(first, second) / 2


def test_equal_pulleys_mesh_half() -> None:
    made = toothed_drive("XL", 20, 20, 80)
    assert made.teeth_in_mesh == 10
    assert made.centres_mm == pytest.approx((80 - 20) / 2 * 5.08)
    assert fewest_in_mesh() == 6


def test_toothed_belts_that_cannot_be() -> None:
    with pytest.raises(NotDefined, match="no toothed belt"):
        section("Q")
    with pytest.raises(NotDefined, match="number of teeth of the pulley"):
        toothed_pulley("XL", 0)
    with pytest.raises(NotDefined, match="does not go round"):
        toothed_drive("XL", 40, 40, 30)
