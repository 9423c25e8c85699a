"""Worked examples, each reckoned by hand from the rule in its docstring.

The rules are common practice, no source, unless one is named. Lengths sold: ISO 888.
"""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.fastening import (
    SHORT,
    STANDS_OUT,
    Grip,
    Length,
    NoLength,
    NotDefined,
    NutEnd,
    TappedHole,
    choose_bolt,
    choose_cross_pin,
    choose_dowel,
    choose_grub,
    choose_length,
    choose_rivet,
    choose_stud,
    choose_through_pin,
    choose_wood_screw,
    judge_length,
    judge_wood_screw,
    rivet_allowance,
)

SOLD = (4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0, 30.0)


def chosen(found: Length | NoLength) -> Length:
    assert isinstance(found, Length), found
    return found


def refused(found: Length | NoLength) -> NoLength:
    assert isinstance(found, NoLength), found
    return found


def test_cap_screw_in_a_blind_hole() -> None:
    """M3, plate 5, hole 8 full in steel: least 3, wanted 6: 11 down to 10; 5 in, 3 left."""
    found = chosen(choose_length(SOLD, Grip(5), TappedHole(8, 0.5), 3))
    assert (found.chosen_mm, found.engagement_mm, found.spare_mm) == (10, 5, 3)


def test_never_bottoms_though_more_is_wanted() -> None:
    """Plate 5, hole 5.2 full: 5 + 5.2 - 0.5 = 9.7, so 10 bottoms and 8 it is."""
    found = chosen(choose_length(SOLD, Grip(5), TappedHole(5.2, 0.5), 3))
    assert (found.chosen_mm, found.engagement_mm) == (8, 3)


def test_one_pitch_short_of_the_end_is_enough() -> None:
    """Plate 5, hole 5.5 full: 5 + 5.5 - 0.5 = 10 exactly."""
    found = chosen(choose_length(SOLD, Grip(5), TappedHole(5.5, 0.5), 3))
    assert (found.chosen_mm, found.spare_mm) == (10, 0.5)


def test_counterbored_head_shortens_the_grip() -> None:
    """Plate 8, head sunk 3.4: grip 4.6; steel 3, wanted 6: 10.6 down to 10; 5.4 in."""
    found = chosen(choose_length(SOLD, Grip(8, sunk_mm=3.4), TappedHole(10, 0.5), 3))
    assert found.chosen_mm == 10
    assert found.engagement_mm == pytest.approx(5.4)


def test_washer_and_point_lengthen_it() -> None:
    """Plate 3, washer 0.5, point 0.5, aluminium 6, wanted 12: 16 down to 16; 12 in."""
    grip = Grip(3, washer_mm=0.5, point_mm=0.5)
    found = chosen(choose_length(SOLD, grip, TappedHole(20, 0.5), 6))
    assert (found.chosen_mm, found.engagement_mm) == (16, 12)


def test_inch_screw() -> None:
    """4 BA in brass, plate 1/8 in: 3.175 + 5.4 = 8.575 least; 3/8 in = 9.525 is the one below
    3.175 + 10.8 and above the least; 1/2 in = 12.7 too, and the hole of 12 lets it in."""
    sold = (6.35, 9.525, 12.7, 15.875)
    found = chosen(choose_length(sold, Grip(3.175), TappedHole(12, 0.66), 5.4))
    assert found.chosen_mm == 12.7
    found = chosen(choose_length(sold, Grip(3.175), TappedHole(8, 0.66), 5.4))
    assert found.chosen_mm == 9.525


def test_through_hole_ends_flush_or_below() -> None:
    """Plate 3 on a 5 plate tapped through: 8 ends flush, 10 would stand out by 2."""
    hole = TappedHole(5, 0.5, is_through=True)
    found = chosen(choose_length(SOLD, Grip(3), hole, 3))
    assert (found.chosen_mm, found.spare_mm) == (8, 0)
    assert judge_length(10, Grip(3), hole, 3).faults == ("stands out",)
    allowed = TappedHole(5, 0.5, is_through=True, may_stand_out_mm=2)
    found = chosen(choose_length(SOLD, Grip(3), allowed, 3))
    assert (found.chosen_mm, found.engagement_mm) == (8, 5)


def test_what_is_wanted_may_be_said() -> None:
    """Plate 3, deep hole, wanted 3 only: 6 and no longer."""
    found = chosen(choose_length(SOLD, Grip(3), TappedHole(30, 0.5), 3, wanted_mm=3))
    assert found.chosen_mm == 6


def test_rounds_up_where_down_holds_too_little() -> None:
    """Plate 3.5, least 3, wanted 3: 6.5 down is 6 and holds 2.5; 8 holds 4.5 and fits in 6."""
    found = chosen(choose_length(SOLD, Grip(3.5), TappedHole(6, 0.5), 3, wanted_mm=3))
    assert (found.chosen_mm, found.engagement_mm) == (8, 4.5)


def test_nothing_sold_fits_and_the_ways_out_are_worked_through() -> None:
    """Plate 5.5, hole 4, least 3: between 8.5 and 9; cut 10 to 9; washers 1; deepen to 5; or sink
    0.5 for an 8."""
    found = refused(choose_length(SOLD, Grip(5.5), TappedHole(4, 0.5), 3))
    assert found.reason == "no length is sold between 8.5 mm and 9 mm"
    assert found.ways_out == (
        "cut a screw of 10 mm down to 9 mm",
        "put washers of 1 mm in all under the head of a screw of 10 mm",
        "deepen the full thread to 5 mm for a screw of 10 mm",
        "sink the head 0.5 mm for a screw of 8 mm",
    )
    assert found.nearest_mm == (8, 10)


def test_hole_too_shallow_and_screw_too_short() -> None:
    shallow = refused(choose_length(SOLD, Grip(5), TappedHole(3, 0.5), 3))
    assert "no room for 3 mm of thread" in shallow.reason
    short = refused(choose_length((4.0, 5.0), Grip(5), TappedHole(10, 0.5), 3))
    assert "holds too little" in short.reason
    assert short.ways_out == ("use a stud or a bolt and nut",)  # 3 of 5 is too much to sink
    short = refused(choose_length((6.0,), Grip(5), TappedHole(10, 0.5), 3))
    assert short.ways_out == ("sink the head 2 mm for a screw of 6 mm",)


def test_a_given_length_is_judged() -> None:
    """M3 x 16 through 8 into 7 full: 8 in, bottoms; M3 x 10: 2 in, too little."""
    hole = TappedHole(7, 0.5)
    assert judge_length(16, Grip(8), hole, 3).faults == ("bottoms out",)
    assert judge_length(10, Grip(8), hole, 3).faults == ("too little engagement",)
    assert judge_length(12, Grip(8), hole, 3).faults == ()
    assert judge_length(6, Grip(8), hole, 3).engagement_mm == 0


def test_bolt_and_nut() -> None:
    """M3, plates 8, two washers of 0.5, nut 2.4, one thread 0.5: 11.9 up to 12; 1.2 threads."""
    found = chosen(choose_bolt(SOLD, NutEnd(8, 1, 2.4, 0.5)))
    assert found.chosen_mm == 12
    assert found.spare_mm == pytest.approx(-0.6)
    assert "1.2 threads past the nut" in found.why


def test_bolt_that_stands_out_far_says_so() -> None:
    """Plates 8.2 instead: 12.1 up to 16, 8.8 threads past."""
    found = chosen(choose_bolt(SOLD, NutEnd(8.2, 1, 2.4, 0.5)))
    assert found.chosen_mm == 16
    assert "8.8 threads past the nut, more than the usual 2" in found.why


def test_bolt_whose_plain_shank_holds_the_nut_off() -> None:
    """M6 x 30 with 18 of thread: plain 12 in plates of 10: the nut stops 2 early."""
    found = refused(choose_bolt((30.0,), NutEnd(10, 0, 5.2, 1), threaded_mm=18))
    assert "2 mm too early" in found.reason
    assert chosen(choose_bolt((30.0,), NutEnd(12, 0, 5.2, 1), threaded_mm=18)).chosen_mm == 30
    assert refused(choose_bolt((30.0,), NutEnd(30, 0, 5.2, 1))).ways_out[0].endswith("36.2 mm")


def test_stud() -> None:
    """M4 in cast iron: 6 in, plate 8, washer 0.8, nut 3.2: 18.7 to 19.4; 20 cut to 19.4."""
    found = chosen(choose_stud(SOLD, 6, NutEnd(8, 0.8, 3.2, 0.7)))
    assert (found.chosen_mm, found.engagement_mm) == (20, 6)
    assert found.cut_to_mm == pytest.approx(19.4)


def test_rivet_snap_and_countersunk() -> None:
    """1 mm rivet through 3: snap 3 + 1.5 = 4.5, so 5 cut to 4.5; countersunk 3 + 1 = 4."""
    found = chosen(choose_rivet((3.0, 4.0, 5.0, 6.0), 3, 1))
    assert (found.chosen_mm, found.cut_to_mm) == (5, 4.5)
    found = chosen(choose_rivet((3.0, 4.0, 5.0, 6.0), 3, 1, "countersunk"))
    assert (found.chosen_mm, found.cut_to_mm) == (4, None)
    assert "4.5 mm of wire" in refused(choose_rivet((3.0, 4.0), 3, 1)).ways_out[0]


def test_rivet_of_a_published_example() -> None:
    """A rivet maker's public example: two sheets of 1/8 in, shank 3/8 in: 0.8125 in."""
    found = chosen(choose_rivet((19.05, 22.225), 6.35, 9.525))
    assert found.steps[1].value == "20.64 mm"
    assert round(0.8125 * 25.4, 2) == 20.64
    assert rivet_allowance("snap") == 1.5
    with pytest.raises(NotDefined):
        rivet_allowance("square")


def test_wood_screw() -> None:
    """Public woodworking example: 3/4 in on thick wood wants 2 1/4 in, two thirds in the wood."""
    inches = tuple(25.4 * n / 4 for n in range(2, 14))
    found = chosen(choose_wood_screw(inches, Grip(19.05), 60, 4.5))
    assert found.chosen_mm == pytest.approx(57.15)


def test_wood_screw_through_a_thin_plate() -> None:
    """No. 6 (3.5 mm) through 3 into 18 of oak: 4 d is 14, so 17 to 20: 3/4 in."""
    sold = (12.7, 15.875, 19.05, 22.225, 25.4)
    found = chosen(choose_wood_screw(sold, Grip(3), 18, 3.5))
    assert found.chosen_mm == 19.05
    assert found.spare_mm == pytest.approx(1.95)
    assert "84% of it in the wood" in found.why


def test_wood_too_thin_for_two_thirds() -> None:
    """2.5 mm screw through 8 into 15: two thirds want 24, 22 fit: 3/4 in holds 11, over 3 d."""
    found = chosen(choose_wood_screw((12.7, 19.05, 25.4), Grip(8), 15, 2.5))
    assert found.chosen_mm == 19.05
    assert found.why.startswith("only 58%")
    assert refused(choose_wood_screw((19.05,), Grip(3), 12, 3.5)).ways_out


def test_a_given_wood_screw_is_judged() -> None:
    """1 in through 3 into 18 comes out by 4.4; 1/2 in holds 9.7, under 3 d of 10.5."""
    assert judge_wood_screw(25.4, Grip(3), 18, 3.5).faults == (STANDS_OUT,)
    assert judge_wood_screw(12.7, Grip(3), 18, 3.5).faults == (SHORT,)
    assert judge_wood_screw(19.05, Grip(3), 18, 3.5).faults == ()


def test_dowel() -> None:
    """3 mm dowel, holes 8 and 10: 9 to 12; sold 6, 8, 10, 12, 16: 12, 6 in each (2 d)."""
    found = chosen(choose_dowel((6.0, 8.0, 10.0, 12.0, 16.0), 3, 8, 10))
    assert (found.chosen_mm, found.engagement_mm, found.spare_mm) == (12, 6, 6)
    shallow = refused(choose_dowel((6.0, 8.0), 3, 4, 10))
    assert shallow.ways_out[0] == "deepen it to 4.5 mm"
    none = refused(choose_dowel((6.0, 16.0), 3, 5, 5))
    assert none.reason == "no dowel is sold between 9 mm and 10 mm"


def test_cross_pin() -> None:
    """Collar of 12.7: 12 from the list, 0.35 below at each end."""
    found = chosen(choose_cross_pin(SOLD, 12.7))
    assert found.chosen_mm == 12
    assert "0.35 mm below" in found.why
    assert refused(choose_cross_pin((10.0,), 8)).ways_out[0].startswith("cut it to 8 mm")


def test_pin_through_thin_plates() -> None:
    """12 and two plates of 1.2192 (18 swg): 14.44. 14 ends inside, 16 stands 0.78 out."""
    found = chosen(choose_through_pin((12.0, 14.0, 16.0, 18.0), 12 + 2 * 1.2192))
    assert found.chosen_mm == 16
    assert "0.78 mm out" in found.why
    assert chosen(choose_through_pin((14.0, 16.0), 14)).chosen_mm == 14
    assert refused(choose_through_pin((10.0,), 14)).ways_out[0] == "cut 14 mm of rod of that size"


def test_grub_screw() -> None:
    """Hub 18 on shaft 6, flat 0.5, M4 in brass 6: wall 6, 6.5 to 6.5: only a 6.5 would do."""
    found = refused(choose_grub((4.0, 5.0, 6.0, 8.0), 18, 6, 0.5, 6))
    assert "between 6.5 mm and 6.5 mm" in found.reason
    found = refused(choose_grub((4.0, 5.0, 6.0, 8.0), 12, 6, 0.5, 4))
    assert "a wall of 3 mm is too thin" in found.reason
    assert found.ways_out[0] == "make the hub 14 mm or more"
    good = chosen(choose_grub((4.0, 5.0, 6.0, 8.0), 18, 6, 0.5, 4))
    assert (good.chosen_mm, good.spare_mm) == (6, 0.5)
    with pytest.raises(NotDefined, match="no larger than its shaft"):
        choose_grub((4.0,), 6, 6, 0, 3)


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf, 0.0, -3.0])
def test_figures_that_make_no_sense_are_refused(value: float) -> None:
    hole = TappedHole(8, 0.5)
    with pytest.raises(NotDefined):
        choose_length(SOLD, Grip(value), hole, 3)
    with pytest.raises(NotDefined):
        choose_length(SOLD, Grip(5), TappedHole(value, 0.5), 3)
    with pytest.raises(NotDefined):
        choose_length(SOLD, Grip(5), hole, value)
    with pytest.raises(NotDefined):
        choose_length((value,), Grip(5), hole, 3)
    with pytest.raises(NotDefined):
        choose_bolt(SOLD, NutEnd(8, 1, value, 0.5))
    with pytest.raises(NotDefined):
        choose_rivet(SOLD, 3, value)
    with pytest.raises(NotDefined):
        choose_wood_screw(SOLD, Grip(3), value, 3)
    with pytest.raises(NotDefined):
        choose_dowel(SOLD, value, 5, 5)


def test_a_head_sunk_through_its_plate_is_refused() -> None:
    with pytest.raises(NotDefined, match="sunk through"):
        choose_length(SOLD, Grip(3, sunk_mm=3), TappedHole(8, 0.5), 3)
    with pytest.raises(NotDefined, match="no length is listed"):
        choose_length((), Grip(3), TappedHole(8, 0.5), 3)


@given(
    st.floats(0.5, 40),
    st.floats(1, 40),
    st.floats(0.2, 2),
    st.floats(0.5, 20),
    st.booleans(),
)
def test_what_is_chosen_holds_and_never_bottoms(
    plate: float, full: float, pitch: float, least: float, through: bool
) -> None:
    hole = TappedHole(full, pitch, is_through=through)
    found = choose_length(SOLD, Grip(plate), hole, least)
    if isinstance(found, Length):
        reach = found.chosen_mm - plate
        assert reach <= full - (0 if through else pitch) + 1e-5
        assert found.engagement_mm >= least - 1e-5
    else:
        good = [one for one in SOLD if not judge_length(one, Grip(plate), hole, least).faults]
        assert not good
        assert found.ways_out
