"""Gear geometry against published values; each names its source."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest

from binder_solid.faults import Unbuildable
from binder_solid.forms import Arc, Point, Raised
from binder_solid.gears import (
    Gear,
    angle_of_involute,
    centres,
    chordal,
    contact_ratio,
    involute,
    least_teeth,
    over_pins,
    path_of_contact,
    span,
    thickness_at,
)
from binder_solid.lines import area, corners, least_and_most
from binder_solid.solids import measured
from binder_solid.teeth import internal_outline, rack_outline, spur_outline
from tests.solid.needs_kernel import NEEDS_KERNEL


def test_diametral_pitch_pair() -> None:
    """T.H. Wentzell, Machine Design, Ex 11.3: 16 and 32 teeth of 8 DP, in inches."""
    pinion, wheel = Gear(25.4 / 8, 16), Gear(25.4 / 8, 32)
    assert pinion.pitch_diameter / 25.4 == pytest.approx(2, abs=1e-4)
    assert wheel.pitch_diameter / 25.4 == pytest.approx(4, abs=1e-4)
    assert pinion.circular_pitch / 25.4 == pytest.approx(0.3927, abs=1e-4)
    assert centres(pinion, wheel) / 25.4 == pytest.approx(3, abs=1e-4)


def test_old_form_of_14_and_a_half_degrees() -> None:
    """A machine-design text, Ex 18.1: module 10, 16 and 24 teeth, depth 2.157 m."""
    pinion, wheel = (Gear(10, z, 14.5, clearance=0.157) for z in (16, 24))
    assert pinion.whole_depth == pytest.approx(21.57, abs=0.01)
    assert (pinion.tip_diameter, wheel.tip_diameter) == pytest.approx((180, 260), abs=0.01)
    assert (pinion.root_diameter, wheel.root_diameter) == pytest.approx((136.86, 216.86), abs=0.01)
    bases = (pinion.base_diameter / 2, wheel.base_diameter / 2)
    assert bases == pytest.approx((77.45, 116.18), abs=0.01)


@pytest.mark.parametrize(
    ("pitch", "module"),
    [(8, 3.175), (10, 2.54), (12, 2.1166667), (16, 1.5875), (20, 1.27), (48, 0.5291667)],
)
def test_module_of_a_diametral_pitch(pitch: int, module: float) -> None:
    """m = 25.4 / DP, 25.4 being exact."""
    assert Gear(25.4 / pitch, 20).module == pytest.approx(module, abs=1e-6)


@pytest.mark.parametrize(("outside", "teeth"), [(52.0, 24), (44.0, 20)])
def test_outside_diameter_of_a_full_depth_gear(outside: float, teeth: int) -> None:
    """OD = (z + 2) m, read the other way round: both are module 2."""
    assert Gear(2, teeth).tip_diameter == pytest.approx(outside, abs=5e-4)


def test_basic_rack() -> None:
    """ISO 53:1998 profile A (from memory): addendum 1, dedendum 1.25, whole depth 2.25 modules."""
    gear = Gear(1, 30)
    assert (gear.tip_diameter, gear.root_diameter, gear.whole_depth) == (32, 27.5, 2.25)


def test_least_teeth_without_undercut() -> None:
    """T. Bevan, The Theory of Machines, Ex 4: 18 teeth with a rack, commonly quoted as 17."""
    assert math.ceil(least_teeth(20)) == 18
    assert least_teeth(20) == pytest.approx(17.097, abs=5e-4)


def test_path_and_arc_of_contact() -> None:
    """R.S. Khurmi and J.K. Gupta, Theory of Machines, Ex 12.3: module 12, 30 and 80 teeth."""
    one, other = Gear(12, 30, addendum=10 / 12), Gear(12, 80, addendum=10 / 12)
    path = path_of_contact(one, other)
    assert path == pytest.approx(52.3, abs=0.1)
    assert path / math.cos(math.radians(20)) == pytest.approx(55.61, abs=0.1)
    assert contact_ratio(one, other) == pytest.approx(1.475, abs=0.005)


def test_arc_of_contact() -> None:
    """B.K. Sarkar, Theory of Machines, ch. 4, ill. 1: module 5, 48 and 30 teeth."""
    path = path_of_contact(Gear(5, 48), Gear(5, 30))
    assert path / math.cos(math.radians(20)) == pytest.approx(26.7, abs=0.1)


def test_chordal_thickness_of_a_shifted_gear() -> None:
    """A published table of gear calculations (Elements of Metric Gear Technology, table 10-1)."""
    gear = Gear(10, 12, shift=0.3)
    assert gear.tooth_thickness == pytest.approx(17.8918, abs=2e-4)
    assert chordal(gear) == pytest.approx((17.8256, 13.6657), abs=2e-4)
    half = math.degrees(gear.tooth_thickness / gear.pitch_diameter)
    assert half == pytest.approx(8.5427, abs=2e-4)


def test_chordal_thickness() -> None:
    """P.C. Sharma, A Textbook of Production Engineering, Ex 16.1: module 5, 34 teeth."""
    assert chordal(Gear(5, 34)) == pytest.approx((7.851, 5.091), abs=1e-3)


@pytest.mark.parametrize(
    ("teeth", "spanned", "size"), [(12, 2, 4.5963), (20, 3, 7.6604), (30, 4, 10.7526)]
)
def test_span(teeth: int, spanned: int, size: float) -> None:
    """Evaluated from the closed formula of ISO 21771, not a published number; module 1."""
    assert span(Gear(1, teeth), spanned) == pytest.approx(size, abs=1e-4)
    assert span(Gear(1, teeth)) == span(Gear(1, teeth), spanned)


def test_span_grows_by_the_base_pitch() -> None:
    gear = Gear(1.5, 25, shift=0.2)
    assert span(gear, 4) - span(gear, 3) == pytest.approx(gear.base_pitch, rel=1e-12)


def test_over_pins() -> None:
    """A published table of sizes over pins (from memory): module 1, 20 teeth, pins of 1.7."""
    assert over_pins(Gear(1, 20), 1.7) == pytest.approx(22.2941, abs=2e-4)
    value = 1.7 / Gear(1, 20).base_diameter - math.pi / 40 + involute(math.radians(20))
    assert value == pytest.approx(0.0268197, abs=2e-7)
    assert math.degrees(angle_of_involute(value)) == pytest.approx(24.135, abs=1e-3)


def test_pins_of_an_odd_gear_lie_a_little_aside() -> None:
    even, odd = over_pins(Gear(1, 20), 1.7), over_pins(Gear(1, 21), 1.7)
    assert 0.9 < odd - even < 1.0


def test_pins_too_thin_are_refused() -> None:
    with pytest.raises(Unbuildable, match="fall"):
        over_pins(Gear(1, 20), 0.2)


@pytest.mark.parametrize("value", [0.0, 1e-9, 1e-4, 0.0149, 0.3, 2.0, 10.0])
def test_the_angle_of_an_involute_is_found_again(value: float) -> None:
    assert involute(angle_of_involute(value)) == pytest.approx(value, rel=1e-10, abs=1e-15)


def test_centres_of_a_shifted_pair() -> None:
    """cos alpha_w = C0 cos alpha / C and x1 + x2 = (z1 + z2)(inv a_w - inv a) / 2 tan a."""
    one, other = Gear(3, 12, shift=0.6), Gear(3, 24, shift=0.36)
    apart = centres(one, other)
    working = math.acos(54 * math.cos(math.radians(20)) / apart)
    shifts = 36 * (involute(working) - involute(math.radians(20)))
    assert shifts / (2 * math.tan(math.radians(20))) == pytest.approx(0.96, rel=1e-9)


@pytest.mark.parametrize("gear", [Gear(1, 20), Gear(0.5, 54), Gear(2, 9, shift=0.4)])
def test_the_outline_touches_tip_and_root(gear: Gear) -> None:
    radii = [math.hypot(*point) for point in corners(spur_outline(gear), 1.0)]
    assert max(radii) == pytest.approx(gear.tip_diameter / 2, rel=1e-9)
    assert min(radii) == pytest.approx(gear.root_diameter / 2, rel=1e-9)
    assert least_and_most(spur_outline(gear))[1][0] == pytest.approx(gear.tip_diameter / 2)


def _area_by_strips(gear: Gear) -> float:
    """Simpson's rule over rings of the thickness that the closed formula gives each of them."""
    base, root, tip = (d / 2 for d in (gear.base_diameter, gear.root_diameter, gear.tip_diameter))
    foot, count = max(base, root), 20_000
    width = (tip - foot) / count
    arcs = [thickness_at(gear, 2 * (foot + width * n)) for n in range(count + 1)]
    flanks = width / 3 * (arcs[0] + arcs[-1] + 4 * sum(arcs[1::2]) + 2 * sum(arcs[2:-1:2]))
    neck = thickness_at(gear, 2 * foot) / foot * (foot**2 - min(root, foot) ** 2) / 2
    return math.pi * root**2 + gear.teeth * (flanks + neck)


@NEEDS_KERNEL
@pytest.mark.parametrize("gear", [Gear(1, 20), Gear(0.5, 60), Gear(2, 9, shift=0.4)])
def test_the_body_of_a_gear_has_the_area_of_its_teeth(gear: Gear) -> None:
    """Flanks are splines through nine points: 5e-5, which is a tenth of a micrometre a flank."""
    body = measured(Raised(spur_outline(gear), 5))
    assert body.volume_mm3 / 5 == pytest.approx(_area_by_strips(gear), rel=5e-5)


def test_pins_laid_into_the_outline_touch_both_flanks() -> None:
    """The outline and the size over pins are reckoned apart: they must agree."""
    gear, pin = Gear(1, 20), 1.7
    radius = (over_pins(gear, pin) - pin) / 2
    middle = (
        radius * math.cos(math.pi / 20),
        radius * math.sin(math.pi / 20),
    )
    points = corners(spur_outline(gear), 1.0)
    near = min(_from_chord(middle, a, b) for a, b in pairwise(points))
    assert near == pytest.approx(pin / 2, abs=2e-3)  # flanks are told by chords here


def _from_chord(at: Point, start: Point, end: Point) -> float:
    dx, dy = end[0] - start[0], end[1] - start[1]
    share = ((at[0] - start[0]) * dx + (at[1] - start[1]) * dy) / (dx * dx + dy * dy)
    share = max(0.0, min(1.0, share))
    return math.hypot(at[0] - start[0] - share * dx, at[1] - start[1] - share * dy)


def test_internal_teeth_leave_room_for_the_pinion() -> None:
    hole = internal_outline(Gear(1, 60))
    least, most = least_and_most(hole)
    assert most[0] == pytest.approx(31.25, abs=1e-6)
    radii = [math.hypot(*point) for point in corners(hole, 1.0)]
    assert min(radii) == pytest.approx(29, abs=1e-6)
    assert least[0] == pytest.approx(-31.25, abs=0.05)


def test_a_rack_has_equal_teeth_and_spaces_on_its_pitch_line() -> None:
    outline = rack_outline(1, 10, 5)
    least, most = least_and_most(outline)
    assert (least[0], most[0]) == pytest.approx((0, 10 * math.pi))
    assert (least[1], most[1]) == pytest.approx((-5, 1))
    lean = math.tan(math.radians(20))
    tooth = math.pi / 2 * 2.25 + lean * (1.25**2 - 1)
    assert area(outline) == pytest.approx(10 * tooth + 10 * math.pi * 3.75, rel=1e-9)


def test_tip_arcs_lie_on_the_tip_circle() -> None:
    gear = Gear(1, 20)
    arcs = [part for part in spur_outline(gear).segments if isinstance(part, Arc)]
    assert len(arcs) == 40
    tips = [arc for arc in arcs if math.hypot(*arc.through) > gear.pitch_diameter / 2]
    assert all(math.hypot(*arc.to) == pytest.approx(11, rel=1e-12) for arc in tips)
