"""O-rings and their grooves against printed housing tables and ISO 3601-1 tolerances."""

import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.seals import (
    NotDefined,
    Remark,
    Ring,
    face_groove,
    for_bore,
    for_rod,
    housing,
    inch_ring,
    lead_in,
    passes_port,
    piston_groove,
    remarks,
    ring,
    rings,
    rod_groove,
    thinned,
)

INCH = 25.4

# A public housing table: cord, moving, standing, width, face, face width.
TABLE = (
    (1.5, 1.25, 1.10, 2.0, 1.10, 2.1),
    (1.8, 1.45, 1.30, 2.4, 1.30, 2.6),
    (2.0, 1.65, 1.50, 2.7, 1.50, 2.8),
    (2.5, 2.15, 1.90, 3.3, 1.90, 3.4),
    (2.65, 2.25, 2.00, 3.6, 2.00, 3.8),
    (3.0, 2.60, 2.30, 4.0, 2.30, 4.0),
    (3.55, 3.10, 2.70, 4.8, 2.70, 5.0),
    (5.3, 4.70, 4.30, 7.1, 4.30, 7.3),
    (7.0, 6.10, 5.80, 9.5, 5.80, 9.7),
)


@pytest.mark.parametrize("row", TABLE)
def test_the_housing_table(row: tuple[float, ...]) -> None:
    cord, moving, standing, width, face, face_width = row
    assert housing(cord, "moving").depth_mm == moving
    assert housing(cord, "standing").depth_mm == standing
    assert housing(cord, "moving").width_mm == width
    assert (housing(cord, "face").depth_mm, housing(cord, "face").width_mm) == (face, face_width)


# A second printed table (O-ring glands in inches, moving and standing): our depths, which are
# nominal, give a squeeze within what it prints, the cord at its own size.
@pytest.mark.parametrize(
    ("dash", "moving", "standing"),
    [("012", (15, 25), (18, 32)), ("112", (10, 18), (14, 25)), ("212", (9, 17), (14, 25))],
)
def test_squeeze_against_a_second_table(
    dash: str, moving: tuple[float, float], standing: tuple[float, float]
) -> None:
    kept = inch_ring(dash)
    for duty, (low, high) in (("moving", moving), ("standing", standing)):
        depth = housing(kept.cord_mm, "moving" if duty == "moving" else "standing").depth_mm
        squeeze = 100 * (1 - depth / kept.cord_mm)
        assert low <= squeeze <= high


# A seal maker's page of class B tolerances (ISO 3601-1): inside ± by diameter. (It prints the
# power as 0.93; its own figures, these, are those of 0.95.)
@pytest.mark.parametrize(
    ("inside", "tolerance"),
    [(5, 0.15), (10, 0.19), (20, 0.26), (40, 0.41), (80, 0.69), (160, 1.23), (320, 2.27)],
)
def test_tolerances_of_the_inside(inside: float, tolerance: float) -> None:
    assert ring(inside, 3).inside_tolerance_mm == pytest.approx(tolerance, abs=0.006)


# The same page: cord ± by its thickness.
@pytest.mark.parametrize(
    ("cord", "tolerance"), [(1.5, 0.08), (2.25, 0.08), (2.65, 0.09), (3.55, 0.10), (5.3, 0.13)]
)
def test_tolerances_of_the_cord(cord: float, tolerance: float) -> None:
    assert ring(20, cord).cord_tolerance_mm == tolerance


# A public chart of AS568: inside and cord in inches.
@pytest.mark.parametrize(
    ("dash", "inside", "cord"),
    [
        ("004", 0.070, 0.070),
        ("008", 0.176, 0.070),
        ("-012", 0.364, 0.070),
        ("AS568-014", 0.489, 0.070),
        ("016", 0.614, 0.070),
        ("020", 0.864, 0.070),
        ("110", 0.362, 0.103),
        ("120", 0.987, 0.103),
        ("210", 0.734, 0.139),
        ("214", 0.984, 0.139),
    ],
)
def test_inch_rings(dash: str, inside: float, cord: float) -> None:
    kept = inch_ring(dash)
    assert (kept.inside_mm / INCH, kept.cord_mm / INCH) == pytest.approx((inside, cord))


# A maker's table of moving AS568 seals: bore and floor of the piston groove, rod and floor of the
# gland, in inches. Its grooves are 0.055 in deep where the metric table has 1.45 mm (0.057 in).
@pytest.mark.parametrize(
    ("dash", "bore", "floor", "rod", "gland"),
    [
        ("010", 0.358, 0.245, 0.245, 0.358),
        ("012", 0.484, 0.370, 0.370, 0.484),
        ("014", 0.609, 0.495, 0.495, 0.609),
    ],
)
def test_grooves_of_inch_rings(
    dash: str, bore: float, floor: float, rod: float, gland: float
) -> None:
    kept = inch_ring(dash)
    assert piston_groove(kept, bore * INCH).diameter_mm / INCH == pytest.approx(floor, abs=0.003)
    assert rod_groove(kept, rod * INCH).diameter_mm / INCH == pytest.approx(gland, abs=0.003)
    assert not piston_groove(kept, bore * INCH).remarks


def test_a_piston_groove_in_full() -> None:
    groove = piston_groove(ring(9, 1.8), 12, "moving", 0.02)
    assert groove.diameter_mm == pytest.approx(12 - 2 * 1.45)
    assert groove.stretch == pytest.approx(100 * 0.1 / 9)
    cord = thinned(1.8, groove.stretch)
    assert groove.squeeze == pytest.approx(100 * (cord - 1.45) / cord)
    assert groove.fill == pytest.approx(100 * math.pi / 4 * cord**2 / (1.45 * 2.4))
    assert groove.squeeze_least < groove.squeeze < groove.squeeze_most
    assert groove.remarks == ()


# SAE AS4716 appendix A (from memory): 2 % of stretch takes 1.73 % off the cord, 5 % takes 3.395.
def test_a_stretched_ring_is_thinner() -> None:
    assert thinned(100, 2) == pytest.approx(98.27)
    assert thinned(100, 5) == pytest.approx(96.605)
    assert thinned(2, -1) == 2


def test_a_face_groove_bears_on_the_side_away_from_the_pressure() -> None:
    kept = ring(20, 2)
    assert face_groove(kept, inside_pressure=True).diameter_mm == 24
    assert face_groove(kept, inside_pressure=False).diameter_mm == 20
    assert face_groove(kept, inside_pressure=True).depth_mm == 1.5


def _codes(found: tuple[Remark, ...]) -> list[str]:
    return [each.code for each in found]


def test_out_of_range_is_remarked() -> None:
    assert _codes(piston_groove(ring(8, 1.8), 12).remarks) == ["seal-stretch-out"]
    assert _codes(rod_groove(ring(8, 1.8), 7.5).remarks) == ["seal-stretch-out"]


def test_a_ring_pressed_out_of_range_is_remarked() -> None:
    # A cord a whole size too thick or thin for its groove; the ring itself is snug.
    for cord, reason in ((1.9, "grips"), (1.55, "leaks")):
        found = remarks("piston", "moving", 100 * (cord - 1.45) / cord, 2.0, 70.0)
        assert [each.code for each in found] == ["seal-squeeze-out"]
        assert reason in found[0].why


def test_a_ring_that_does_not_fill_its_groove_is_remarked() -> None:
    assert [each.code for each in remarks("rod", "moving", 15, 0, 40)] == ["seal-fill-out"]
    assert [each.code for each in remarks("rod", "moving", 15, 0, 95)] == ["seal-fill-out"]


def test_a_ring_stretched_far_loses_its_squeeze() -> None:
    groove = piston_groove(ring(7.6, 1.8), 12, "moving")
    # 19.7 % of stretch takes 10.4 % off the cord (SAE AS4716, from memory): 1.61 mm is left.
    assert groove.squeeze == pytest.approx(10.1, abs=0.1)
    assert _codes(groove.remarks) == ["seal-stretch-out", "seal-fill-out"]


@pytest.mark.parametrize("kept", rings(), ids=lambda each: each.name)
def test_every_ring_that_is_kept_has_a_groove_and_suits_its_own_rod(kept: Ring) -> None:
    # On a rod of its own size a ring is free of stretch: squeeze and fill are the table's.
    assert rod_groove(kept, kept.inside_mm, "standing").remarks == ()


@pytest.mark.parametrize("bore", [8, 10, 12, 16, 18, 20, 25, 30])
def test_a_ring_for_every_bore(bore: float) -> None:
    for groove in for_bore(bore):
        assert groove.remarks == ()
        assert 0 <= groove.stretch <= 6
        assert groove.diameter_mm == pytest.approx(bore - 2 * groove.depth_mm)


def test_an_owned_ring_is_taken() -> None:
    owned = (ring(9, 1.8), ring(20, 3))
    assert [each.ring.name for each in for_bore(12, owned=owned)] == ["9 × 1.8 mm"]
    with pytest.raises(NotDefined) as caught:
        for_rod(50, owned=owned)
    assert "packing" in caught.value.way_out


# The lead-in is as high as the ring stands out, and more: else its edge cuts the ring.
def test_the_lead_in_is_higher_than_the_ring_stands_out() -> None:
    for cord, angle in itertools.product((1.5, 1.8, 2.65, 3.55, 5.3, 7.0), (15, 20)):
        height = lead_in(cord, angle).length_mm * math.tan(math.radians(angle))
        assert height > cord - housing(cord, "standing").depth_mm


def test_other_angles_of_the_lead_in_have_the_same_height() -> None:
    assert lead_in(1.8, 20).length_mm == 2.0
    height = lead_in(1.8, 15).length_mm * math.tan(math.radians(15))
    assert lead_in(1.8, 30).length_mm * math.tan(math.radians(30)) == pytest.approx(height)


def test_a_ring_over_a_port() -> None:
    assert passes_port(0, 20, 10, 3)
    assert passes_port(20, 9, 8, 3)
    assert not passes_port(0, 8, 10, 3)


def test_what_is_not_defined_says_so() -> None:
    with pytest.raises(NotDefined, match="too thin for a seal that moves"):
        piston_groove(ring(5, 1.0), 8, "moving")
    with pytest.raises(NotDefined, match=r"4\.6 mm"):
        housing(4.6, "face")
    with pytest.raises(NotDefined, match="AS568-999"):
        inch_ring("999")
    with pytest.raises(NotDefined, match="cuts through"):
        piston_groove(ring(2, 2), 3)
    with pytest.raises(NotDefined, match="as large as its depth"):
        piston_groove(ring(9, 1.8), 12, "moving", 2)


@given(
    inside=st.floats(allow_nan=True),
    cord=st.floats(allow_nan=True),
    bore=st.floats(allow_nan=True),
    play=st.floats(allow_nan=True),
)
def test_any_number_gives_a_groove_or_a_reason(
    inside: float, cord: float, bore: float, play: float
) -> None:
    for thickness in (cord, 1.8):
        try:
            kept = ring(inside, thickness)
            assert math.isfinite(piston_groove(kept, bore, "moving", play).squeeze)
            assert math.isfinite(rod_groove(kept, bore, "standing", play).fill)
            assert math.isfinite(lead_in(kept.cord_mm, play).length_mm)
        except NotDefined:
            continue
