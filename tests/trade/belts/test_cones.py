"""Stepped pulleys that keep one belt, speeds behind belts, series of speeds."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from binder_trade.belts.cone import (
    cone_as_given,
    cone_from_driver,
    cone_from_first,
    cone_from_ratios,
    speed_series,
)
from binder_trade.belts.run import Layout, run
from binder_trade.belts.speeds import (
    belt_speed_ms,
    driven,
    driven_diameter,
    speed_ladder,
    usual_slip,
)
from binder_trade.explained import NotDefined

# Khurmi & Gupta, Theory of Machines, Ex 11.3: driver 160 r/min, driven 60, 80, 100 r/min,
# the driver's first step 40 mm in radius, 720 mm apart.
KHURMI = (60 / 160, 80 / 160, 100 / 160)


def test_a_crossed_cone_of_a_textbook() -> None:
    made = cone_from_first(80, KHURMI, 720, "crossed")
    radii = [size / 2 for each in made.runs for size in (each.first_mm, each.second_mm)]
    assert radii == pytest.approx([40, 106.7, 48.9, 97.8, 56.4, 90.3], abs=0.06)
    sums = {round(each.first_mm + each.second_mm, 6) for each in made.runs}
    assert len(sums) == 1


# The same with an open belt, solved exactly by bisection apart from this project.
def test_an_open_cone_solved_exactly() -> None:
    made = cone_from_first(80, KHURMI, 720)
    assert made.length_mm == pytest.approx(1906.9442, abs=1e-3)
    radii = [size / 2 for each in made.runs[1:] for size in (each.first_mm, each.second_mm)]
    assert radii == pytest.approx([49.1876, 98.3753, 56.9678, 91.1485], abs=1e-3)


# Short centres, where the textbook's series errs: 30 / 90 at 100 mm, then 2 : 1 and 1 : 1.
def test_short_centres() -> None:
    made = cone_from_first(30, (1 / 3, 1 / 2, 1), 100)
    assert made.length_mm == pytest.approx(397.56496, abs=1e-3)
    pairs = [(each.first_mm, each.second_mm) for each in made.runs[1:]]
    assert pairs[0] == pytest.approx((41.028381, 82.056762), abs=1e-3)
    assert pairs[1] == pytest.approx((62.88688, 62.88688), abs=1e-3)
    series = 2 * 100 + math.pi * (30 + 90) / 2 + (90 - 30) ** 2 / 400
    assert series == pytest.approx(397.49556, abs=1e-4)
    assert abs(made.length_mm - series) > 0.06


@settings(deadline=None)
@given(
    ratios=st.lists(st.floats(0.3, 3), min_size=1, max_size=5),
    centres=st.floats(60, 400),
    layout=st.sampled_from(["open", "crossed", "quarter-turn"]),
)
def test_one_belt_for_all_steps(ratios: list[float], centres: float, layout: Layout) -> None:
    length = run(centres / 3, centres / 3, centres, layout).length_mm
    made = cone_from_ratios(ratios, length, centres, layout)
    assert made.most_apart_mm < 1e-9 * length
    assert made.ratios == pytest.approx(ratios)
    again = cone_from_driver([each.first_mm for each in made.runs], length, centres, layout)
    for one, two in zip(made.runs, again.runs, strict=True):
        assert two.second_mm == pytest.approx(one.second_mm, abs=1e-7)


# Two equal pulleys, one turned round: the steps of a three-step pulley of ratios r, 1, 1/r.
@settings(deadline=None)
@given(ratio=st.floats(1.1, 3))
def test_a_pulley_and_its_twin_turned_round(ratio: float) -> None:
    length = run(40, 40, 120).length_mm
    made = cone_from_ratios((ratio, 1, 1 / ratio), length, 120)
    driver = [each.first_mm for each in made.runs]
    assert [each.second_mm for each in made.runs] == pytest.approx(driver[::-1])


# A tilt hammer's pulleys, by hand: cord on 24, 32, 40 mm and the same turned round, 160 mm apart.
# The outer steps need L = 2 √(C² − 8²) + 32 π + 16 asin(8 / C); equal pulleys need 2 C + π d, so
# the middle step is d = (L − 2 C) / π, a tenth of a millimetre over 32.
def test_the_pulleys_of_a_tilt_hammer() -> None:
    length = 2 * math.sqrt(160**2 - 8**2) + 32 * math.pi + 16 * math.asin(8 / 160)
    made = cone_from_driver((24, (length - 320) / math.pi, 40), length, 160)
    assert made.runs[0].length_mm == pytest.approx(length)
    assert made.most_apart_mm < 0.01
    assert made.runs[1].second_mm == pytest.approx(made.runs[1].first_mm)
    assert made.runs[1].first_mm == pytest.approx(32.127, abs=1e-3)
    assert cone_as_given((24, 32, 40), (40, 32, 24), 160).most_apart_mm == pytest.approx(
        0.4, abs=0.01
    )


# A usual mistake: an open belt on steps whose sum is kept.
def test_steps_of_equal_sums_want_a_jockey_when_open() -> None:
    pairs = ((30, 90), (45, 75), (60, 60))
    drivers, mates = zip(*pairs, strict=True)
    assert cone_as_given(drivers, mates, 100).most_apart_mm == pytest.approx(
        run(30, 90, 100).length_mm - run(60, 60, 100).length_mm
    )
    assert cone_as_given(drivers, mates, 100, "crossed").most_apart_mm < 1e-9


def test_cones_that_cannot_be() -> None:
    with pytest.raises(NotDefined, match="does not reach"):
        cone_from_ratios((1, 2), 200, 100)
    with pytest.raises(NotDefined, match="suit a belt"):
        cone_from_driver([10, 150], 300, 100)
    with pytest.raises(NotDefined, match="larger than the centres"):
        cone_from_driver([250], 800, 100)
    with pytest.raises(NotDefined, match="the ratio"):
        cone_from_ratios((-1,), 400, 100)
    with pytest.raises(NotDefined, match="the ratio"):
        cone_from_ratios((math.nan,), 400, 100)
    with pytest.raises(NotDefined, match="without a step"):
        cone_from_first(30, (), 100)
    with pytest.raises(NotDefined, match="without a step"):
        cone_from_ratios((), 400, 100)
    with pytest.raises(NotDefined, match="without a step"):
        cone_as_given((), (), 100)
    with pytest.raises(NotDefined, match="unequal numbers"):
        cone_as_given((30, 40), (90,), 100)


# Khurmi & Gupta, Theory of Machines, Ex 11.1: 150 r/min, 750 on 450, 900 on 150 mm.
@pytest.mark.parametrize(("slip", "rpm", "within"), [(0, 1500, 0.5), (0.02, 1440, 1)])
def test_a_compound_drive(slip: float, rpm: float, within: float) -> None:
    made = driven(150, [(750, 450), (900, 150)], slip=slip)
    assert made.rpm == pytest.approx(rpm, abs=within)
    assert made.ratio == pytest.approx(rpm / 150, abs=within / 150)


# Sarkar, Theory of Machines, Illustration 1, p. 57: 300 to 400 r/min, 60 cm driver, 0.8 cm belt.
@pytest.mark.parametrize(
    ("thick", "slip", "size"), [(0, 0, 45.0), (0.8, 0, 44.8), (0.8, 0.05, 42.5)]
)
def test_thickness_and_slip(thick: float, slip: float, size: float) -> None:
    found, step = driven_diameter(60, 400 / 300, thick, slip)
    assert found == pytest.approx(size, abs=0.1)
    assert step.source
    assert driven(300, [(60, found)], thick, slip).rpm == pytest.approx(400)


# Sharma, A Textbook of Production Engineering, Ex 22.4: 21 m/min on 5 to 20 mm, six speeds.
def test_a_series_of_spindle_speeds() -> None:
    low, high = (21_000 / (math.pi * size) for size in (20, 5))
    assert speed_series(low, high, 6) == pytest.approx(
        [334.23, 441.0, 581.92, 767.85, 1013.18, 1336.9], abs=0.05
    )


def test_a_ladder_of_speeds() -> None:
    rungs = speed_ladder(100, [(0.5, 1, 2), (1, 3)])
    assert [round(each.rpm) for each in rungs] == [50, 100, 150, 200, 300, 600]
    assert rungs[2].steps_chosen == (1, 2)
    for stages in ([], [()], [(1.0,) * 50, (1.0,) * 50]):
        with pytest.raises(NotDefined, match="without steps"):
            speed_ladder(100, stages)
    with pytest.raises(NotDefined, match="a ratio"):
        speed_ladder(100, [(1, math.nan)])


def test_the_speed_of_a_belt_and_its_slip() -> None:
    assert belt_speed_ms(100, 60) == pytest.approx(0.1 * math.pi)
    assert usual_slip("toothed")[0] == 0
    assert 0.01 <= usual_slip("V")[0] < usual_slip("round")[0] <= 0.05
    with pytest.raises(NotDefined, match="no slip known"):
        usual_slip("string")


def test_speeds_that_cannot_be() -> None:
    with pytest.raises(NotDefined, match="no belt"):
        driven(100, [])
    with pytest.raises(NotDefined, match="thinner than nothing"):
        driven_diameter(10, 20, 1)
    with pytest.raises(NotDefined, match="not above the slowest"):
        speed_series(100, 100, 3)
    with pytest.raises(NotDefined, match="the slip"):
        driven(100, [(10, 20)], slip=-1)
