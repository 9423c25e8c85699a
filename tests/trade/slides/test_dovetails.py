"""Dovetails against the handbook's formulas, and against circles laid into the corners."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.slides import (
    Dovetail,
    NotDefined,
    Wanted,
    corners,
    dovetail,
    female_to_suit,
    fit_cutter,
    hand_sliding,
    male_to_suit,
    over_pins,
    owned_pin,
    pin_factor,
    pin_range,
    straight_gib,
    taper_gib,
)

Point = tuple[float, float]


def slide(narrow: float = 30.0, depth: float = 10.0, angle: float = 60.0) -> Dovetail:
    return dovetail(Wanted(depth, angle, narrow_mm=narrow, relief_mm=0))


# Published: Machinery's Handbook formula x = a + D(1 + cot A/2); the example of a public
# machinist's page: a = 1 in, D = 1/4 in, 60° gives 1.6830 in. (The page calls a the wide flat;
# its own figure is right only for the narrow one, as the handbook's picture has it.)
def test_the_published_example_in_inches() -> None:
    made = slide(narrow=25.4, depth=12.0)
    assert over_pins(made, 6.35).male_over_mm / 25.4 == pytest.approx(1.6830, abs=5e-5)


# Published: another public machinist's page, 60°, 40 mm, pins of 10 mm: 40 + 10 × 2.7320508.
def test_the_published_example_in_millimetres() -> None:
    assert over_pins(slide(narrow=40, depth=20), 10).male_over_mm == pytest.approx(67.320508)


# Formulas of a published sheet of dovetail measuring; figures worked from them.
def test_a_slide_30_wide_and_10_deep_over_6_mm_pins() -> None:
    made = slide()
    pins = over_pins(made, 6)
    assert made.male.wide_mm == pytest.approx(41.547, abs=2e-4)
    assert pins.male_over_mm == pytest.approx(46.3923, abs=2e-4)
    assert pins.female_between_mm == pytest.approx(25.1547, abs=2e-4)


def test_a_female_50_wide_between_8_mm_pins() -> None:
    wanted = Wanted(10, 60, wide_mm=50, relief_mm=0)
    assert over_pins(dovetail(wanted), 8).female_between_mm == pytest.approx(28.143594)


# Published: the constant of 60° is 2.73205; 45° and 55° from the same formula.
@pytest.mark.parametrize(("angle", "factor"), [(60, 2.7320508), (45, 3.4142136), (55, 2.9209821)])
def test_what_a_millimetre_of_pin_adds(angle: float, factor: float) -> None:
    assert pin_factor(angle) == pytest.approx(factor, abs=1e-6)


def _distance(point: Point, start: Point, end: Point) -> float:
    (px, py), (ax, ay), (bx, by) = point, start, end
    return abs((bx - ax) * (ay - py) - (ax - px) * (by - ay)) / math.hypot(bx - ax, by - ay)


SLIDES = {
    "narrow": st.floats(10, 80),
    "depth": st.floats(4, 15),
    "angle": st.floats(40, 75),
    "part": st.floats(0.26, 0.74),
}


@given(**SLIDES)
def test_a_pin_so_placed_touches_flat_and_flank_of_the_male(
    narrow: float, depth: float, angle: float, part: float
) -> None:
    made = slide(narrow + 60, depth, angle)
    pin = part / 0.5 * pin_range(made).best_mm
    radius = pin / 2
    # The right corner stands on y = 0, the flank leans outwards over it.
    centre = (over_pins(made, pin).male_over_mm / 2 - radius, radius)
    root, top = (made.male.narrow_mm / 2, 0.0), (made.male.wide_mm / 2, depth)
    assert _distance(centre, root, top) == pytest.approx(radius, rel=1e-9)
    assert _distance(centre, (0.0, 0.0), (1.0, 0.0)) == pytest.approx(radius)


@given(**SLIDES)
def test_a_pin_so_placed_touches_floor_and_flank_of_the_female(
    narrow: float, depth: float, angle: float, part: float
) -> None:
    wanted = Wanted(depth, angle, narrow_mm=narrow + 60, relief_mm=0, clearance_mm=0.1)
    made = dovetail(wanted)
    pin = part / 0.5 * pin_range(made).best_mm
    radius = pin / 2
    # The floor is y = 0 and the flank leans inwards over it.
    centre = (over_pins(made, pin).female_between_mm / 2 + radius, radius)
    floor, mouth = (made.female.wide_mm / 2, 0.0), (made.female.narrow_mm / 2, depth)
    assert _distance(centre, floor, mouth) == pytest.approx(radius, rel=1e-9)


@given(angle=st.floats(40, 75), depth=st.floats(3, 20))
def test_the_best_pin_touches_the_middle_of_the_flank(angle: float, depth: float) -> None:
    made = slide(40, depth, angle)
    contact = over_pins(made, pin_range(made).best_mm).contact_mm
    assert contact * math.sin(math.radians(angle)) == pytest.approx(depth / 2)


def test_the_two_halves_agree_with_relief_clearance_and_gib() -> None:
    made = dovetail(Wanted(8, 60, narrow_mm=24, clearance_mm=0.04, gib_mm=3, relief_mm=0.3))
    assert made.male.depth_mm == pytest.approx(7.7)
    assert made.female.depth_mm == 8
    assert made.gib_width_mm == pytest.approx(3 / math.sin(math.radians(60)))
    assert made.female.narrow_mm == pytest.approx(24 + 0.04 + made.gib_width_mm)
    # Square to the flank the slide has half of the play on each side.
    assert made.flank_gap_mm == pytest.approx(0.02 * math.sin(math.radians(60)))


def test_starting_from_the_top_gives_the_same_slide() -> None:
    first = dovetail(Wanted(8, 55, narrow_mm=20))
    again = dovetail(Wanted(8, 55, wide_mm=first.male.wide_mm))
    assert again.male.narrow_mm == pytest.approx(20)


def test_a_female_that_is_made_moves_the_male() -> None:
    made = dovetail(Wanted(8, 60, narrow_mm=24, clearance_mm=0.04))
    drawn = over_pins(made, 5)
    # Cut 0.10 mm too wide, the slot takes a male 0.10 mm larger for the same play.
    assert male_to_suit(made, 5, drawn.female_between_mm + 0.1) == pytest.approx(
        drawn.male_over_mm + 0.1
    )
    assert female_to_suit(made, 5, drawn.male_over_mm) == pytest.approx(drawn.female_between_mm)


def test_the_owned_pin_nearest_to_the_best_is_taken() -> None:
    made = slide()  # best 6.67 mm
    assert owned_pin(made, (3, 5, 6, 7, 10.5)) == 7
    with pytest.raises(NotDefined) as caught:
        owned_pin(made, (1.0, 12.0))
    assert "3.33 to 10.00 mm" in caught.value.way_out


def test_a_pin_that_rides_on_the_edge_is_refused() -> None:
    with pytest.raises(NotDefined, match="rides on the edge"):
        over_pins(slide(depth=5), 8)


def test_two_pins_that_do_not_go_in_are_refused() -> None:
    with pytest.raises(NotDefined, match="side by side"):
        over_pins(slide(narrow=5, depth=10), 7)


@given(depth=st.floats(1, 40))
def test_the_corners_keep_clear_of_every_pin_that_serves(depth: float) -> None:
    made = slide(100, depth)
    least = over_pins(made, pin_range(made).least_mm)
    assert corners(made).relief_mm <= least.contact_mm + 1e-9


# Formula of the model engineers' rule: slide 0.3 + 0.45 D, close run 0.6 + 0.8 D (thou, D in in).
def test_the_play_of_a_hand_sliding_fit() -> None:
    play = hand_sliding(25.4)
    assert play.least_mm == pytest.approx(0.75 * 0.0254)
    assert play.most_mm == pytest.approx(1.4 * 0.0254)


def test_a_straight_gib_has_its_screws_evenly_along_it() -> None:
    made = dovetail(Wanted(8, 60, narrow_mm=24, gib_mm=3))
    gib = straight_gib(made, 90)
    assert gib.screws_mm == pytest.approx((15, 45, 75))
    assert gib.flank_mm == pytest.approx(gib.height_mm / math.sin(math.radians(60)))


def test_a_square_edged_strip_must_be_wider_than_the_flank_and_loses_its_corners() -> None:
    """A strip of thickness t, leaning at 60°, with square edges stands w sin 60° + t cos 60° high:
    1.5 × 3 stands 3.348 in a slot 3 deep. A parallelogram between flats of height 2.6 is 3.002
    along the flank, cut from 3.002 + 1.5 / tan 60° = 3.868 (geometry)."""
    made = dovetail(Wanted(3, 60, narrow_mm=14, clearance_mm=0.2, gib_mm=1.5))
    gib = straight_gib(made, 34)
    lean = math.radians(60)
    assert 3 * math.sin(lean) + 1.5 * math.cos(lean) == pytest.approx(3.348, abs=1e-3)
    assert gib.height_mm < made.male.depth_mm < made.female.depth_mm
    assert gib.flank_mm == pytest.approx(3.002, abs=1e-3)
    assert gib.blank_mm == pytest.approx(3.868, abs=1e-3)


# Common practice: a gib of 1 : 100 moves 10 mm endways for 0.1 mm across its faces.
def test_a_taper_gib() -> None:
    made = dovetail(Wanted(8, 60, narrow_mm=24, gib_mm=3))
    gib = taper_gib(made, 100, 100)
    assert (gib.thick_mm, gib.thin_mm) == pytest.approx((3.5, 2.5))
    # 1 mm along the flats is sin 60° across the strip.
    assert gib.advance_per_mm == pytest.approx(100 * math.sin(math.radians(60)))
    with pytest.raises(NotDefined, match="thin end"):
        taper_gib(made, 300, 50)
    with pytest.raises(NotDefined, match="no gib"):
        straight_gib(slide(), 50)


CUTTERS = ((60.0, 13.0, 5.0), (60.0, 20.0, 8.0), (45.0, 16.0, 6.0))


def test_the_cutter_of_the_right_angle_and_depth_is_taken() -> None:
    choice = fit_cutter(CUTTERS, Wanted(6, 60, narrow_mm=24))
    assert (choice.cutter.diameter_mm, choice.changes) == (20, ())


def test_the_cutter_that_is_owned_settles_angle_and_depth() -> None:
    choice = fit_cutter(((45, 16, 5),), Wanted(6, 60, narrow_mm=24))
    assert choice.wanted.angle_deg == 45
    assert choice.wanted.depth_mm == 5
    assert choice.changes == ("angle 45° instead of 60°", "depth 5 mm instead of 6 mm")
    assert dovetail(choice.wanted).male.narrow_mm == 24


def test_a_cutter_too_large_for_the_slot_does_not_serve() -> None:
    with pytest.raises(NotDefined) as caught:
        fit_cutter(((60, 40, 8),), Wanted(6, 60, narrow_mm=8))
    assert "60° cutter" in caught.value.way_out


REFUSED = (
    Wanted(8, 60),
    Wanted(8, 60, narrow_mm=20, wide_mm=30),
    Wanted(8, 60, wide_mm=8),
    Wanted(0, 60, narrow_mm=20),
    Wanted(8, 10, narrow_mm=20),
    Wanted(8, 60, narrow_mm=20, relief_mm=9),
    Wanted(8, 60, narrow_mm=20, clearance_mm=-1),
    Wanted(8, 60, narrow_mm=math.nan),
    Wanted(math.inf, 60, narrow_mm=20),
)


@pytest.mark.parametrize("wanted", REFUSED)
def test_what_cannot_be_cut_is_refused(wanted: Wanted) -> None:
    with pytest.raises(NotDefined):
        dovetail(wanted)


ANYTHING = st.floats(allow_nan=True, allow_infinity=True) | st.floats(0, 90)


@given(depth=ANYTHING, angle=ANYTHING, width=ANYTHING, gib=ANYTHING, pin=ANYTHING)
def test_any_number_gives_a_slide_or_a_reason(
    depth: float, angle: float, width: float, gib: float, pin: float
) -> None:
    try:
        made = dovetail(Wanted(depth, angle, narrow_mm=width, gib_mm=gib))
        size = over_pins(made, pin).male_over_mm
    except NotDefined:
        return
    assert math.isfinite(size)
