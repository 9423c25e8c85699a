"""Taper bores: the hole under them, the top-slide, the trial in blue. Geometry of the cone."""

from __future__ import annotations

import math
import re

import pytest

from binder.api import Design
from binder.compiler import Phase
from binder_plugins.operations.aids.facts import ToolsFact
from binder_plugins.operations.facts import Act, Route
from binder_plugins.operations.planning import WorkPlan
from tests.plugins.operations.conftest import BUILT_IN, HEAD, Plan, RouteOf

SQUARE = {"face", "bore", "turn", "groove", "part-off", "chamfer", "undercut", "nick"}
# From ISO 1119, table 1 (from memory): the included angle of 1 : 5, 1 : 10, 1 : 12.
INCLUDED = {5: 11.421186, 10: 5.724810, 12: 4.771888}
JOINED = (
    "  arbor: {material: mild steel, stock: 16 mm round bar, turned: ["
    "{name: shank, diameter: 16 mm, length: 20 mm},"
    " {name: nose, taper: 12 mm to 10 mm, length: 20 mm}]}\n"
    "joints: {cone: {tapered: [ENDS]}}\n"
)
ENDS_OF = ("part.bore, arbor.nose", "arbor.nose, part.bore")
STRAIGHT = "bored: 14 mm, narrows_to: 12 mm"
TO_SUIT = "bored: to suit, on: right, depth: through"


def hub(bore: str, long: float = 20) -> str:
    """A hub with a bore on its axis."""
    return (
        "{material: mild steel, stock: 30 mm round bar, turned: [{name: rim, diameter: 28 mm,"
        f" length: {long} mm}}], features: {{bore: {{{bore}}}}}}}"
    )


def only(route: Route, name: str) -> Act:
    (found,) = (act for act in route.acts if act.act == name)
    return found


def both(plan: Plan, ends: str) -> tuple[Act, Act]:
    """The taper of the bore and that of the nose."""
    design = plan(f"{HEAD}  part: {hub(TO_SUIT)}\n{JOINED.replace('ENDS', ends)}").design
    assert design is not None
    return taper_of(design, "part"), taper_of(design, "arbor")


def taper_of(design: Design, name: str) -> Act:
    route = design.facts.about(Route, name)
    assert route is not None
    return only(route, "taper")


def handle(mouth: float, end: float) -> str:
    """Where the handle's end lies, as the tool goes from one diameter to the next to the chuck.

    y grows towards the maker; the tool cuts the near side, at half of the diameter. The handle is
    at the tailstock's end of the line along which the slide goes.
    """
    return "towards you" if mouth / 2 > end / 2 else "away from you"


@pytest.mark.parametrize(
    ("mouth", "small", "long"), [(12, 10, 20), (14, 12, 24), (16, 11, 25), (13, 12, 30)]
)
def test_no_drill_is_as_wide_as_the_small_end(
    mouth: float, small: float, long: float, route_of: RouteOf
) -> None:
    bore = f"bored: {mouth} mm, narrows_to: {small} mm, on: right, depth: through"
    route = route_of(hub(bore, long))
    largest = max(act.size for act in route.acts if act.act == "drill")
    cut = only(route, "taper")
    # Common practice, no source: a finishing allowance of half a millimetre on the diameter.
    assert largest <= small - 0.5
    assert not [act for act in route.acts if act.act in {"bore", "ream"}]
    assert f"deepest at the mouth, {round((mouth - largest) / 2, 2):g} mm a side" in cut.what
    assert f"at the small end {round((small - largest) / 2, 2):g} mm" in cut.what
    assert cut.cuts > 1


@pytest.mark.parametrize("rate", sorted(INCLUDED))
def test_the_slide_stands_at_half_of_the_angle(rate: int, route_of: RouteOf) -> None:
    bore = f"bored: 16 mm, narrows_to: {16 - 24 / rate} mm, on: right, depth: through"
    cut = only(route_of(hub(bore, 24)), "taper")
    assert f"top-slide at {INCLUDED[rate] / 2:.1f}°" in cut.what


@pytest.mark.parametrize("end", ["left", "right"])
def test_the_bore_is_made_from_its_mouth(end: str, route_of: RouteOf) -> None:
    """Its mate goes in there, and the tool comes nearer to the axis on its way to the chuck."""
    route = route_of(hub(f"bored: 12 mm, narrows_to: 10 mm, on: {end}, depth: through"))
    cut = only(route, "taper")
    assert cut.end == end
    assert "small end towards the chuck" in cut.what
    assert f"swung {handle(12, 10)}, the tool on the near wall" in cut.what


@pytest.mark.parametrize("ends", ["part.bore, arbor.nose", "arbor.nose, part.bore"])
def test_a_hub_and_its_nose_are_cut_at_one_setting(plan: Plan, ends: str) -> None:
    """One setting makes both angles alike, whatever it is: common practice, no source.

    At the far wall y is minus half of the diameter: on its way to the chuck the tool comes nearer
    to the maker there, as it does on the near side of the nose. Geometry.
    """
    bore, nose = both(plan, ends)
    assert handle(-12, -10) == handle(10, 12)
    assert f"swung {handle(10, 12)}" in nose.what
    assert f"swung {handle(-12, -10)}" in bore.what
    assert "upside down on the far wall" in bore.what
    first, second = (nose, bore) if ends.startswith("part") else (bore, nose)
    assert "lock it and leave it so" in first.what
    assert "its angle not touched" in second.what
    told = f"top-slide at {INCLUDED[10] / 2:.3f}°"
    assert told in bore.what
    assert told in nose.what


@pytest.mark.parametrize(
    "bore",
    [
        "bored: 14 mm, narrows_to: 12 mm, on: right, depth: through",
        "bored: 14 mm, narrows_to: 12 mm, on: left, depth: through",
        "bored: 18 mm, narrows_to: 14 mm, on: right, depth: 15 mm",
        f"{STRAIGHT}, on: right, depth: through}}, seat: {{bored: 20 mm, on: right, depth: 4 mm",
    ],
)
def test_the_slide_is_set_back_before_a_square_tool(bore: str, route_of: RouteOf) -> None:
    is_swung, seen = False, 0
    for act in route_of(hub(bore)).acts:
        is_swung = act.act == "taper" or (is_swung and act.act != "set-back")
        seen += act.act == "set-back"
        assert not (is_swung and act.act in SQUARE), act.what
    assert seen == 1


def test_a_floor_is_faced_before_the_slide_is_swung(route_of: RouteOf) -> None:
    route = route_of(hub("bored: 18 mm, narrows_to: 14 mm, on: right, depth: 15 mm"))
    order = [act.act for act in route.acts]
    straight = only(route, "bore")
    assert order.index("drill") < order.index("bore") < order.index("taper")
    assert straight.size < 14
    assert "floor faced flat" in straight.what
    # The point of a drill stands ahead of its corners by 0.3 of its diameter (118°).
    for act in route.acts:
        if act.act == "drill":
            assert act.deep + act.size / 2 / math.tan(math.radians(59)) <= 15


def test_what_no_drill_comes_near_is_bored_straight_first(route_of: RouteOf) -> None:
    """The largest drill here is 13 mm; the small end is 20 mm."""
    route = route_of(hub("bored: 24 mm, narrows_to: 20 mm, on: right, depth: through"))
    straight, taper = only(route, "bore"), only(route, "taper")
    assert 13 < straight.size < 20
    assert [act for act in route.acts if act in (straight, taper)] == [straight, taper]
    assert f"deepest at the mouth, {(24 - straight.size) / 2:g} mm a side" in taper.what


def test_its_speed_goes_by_the_mouth(route_of: RouteOf) -> None:
    taper = only(
        route_of(hub("bored: 24 mm, narrows_to: 16 mm, on: right, depth: through")), "taper"
    )
    wide = only(route_of(hub("bored: 24 mm, on: right, depth: through")), "bore")
    narrow = only(route_of(hub("bored: 16 mm, on: right, depth: through")), "bore")
    assert taper.speed == wide.speed
    assert float(taper.speed) < float(narrow.speed)


def test_the_second_half_is_tried_on_the_first(plan: Plan) -> None:
    """1 in 10: 12 − 11.988 stand 0.12 mm off, 0.2 mm more on the diameter 2 mm more."""
    bore, nose = both(plan, "part.bore, arbor.nose")
    assert "write down how the slide reads" in nose.what
    assert "blue" not in nose.what
    assert "as it was left for the nose of the arbor" in bore.what
    assert "set by what was written down" in bore.what  # where it was moved all the same
    assert bore.measure == "its mate, tried in marking blue"
    assert "marking blue" in bore.tool
    away = [float(one) for one in re.findall(r"stands ([\d.]+) mm from", bore.what)]
    assert away == pytest.approx([(12 - 11.988 + 0.2) * 10, (12 - 11.988) * 10])
    assert "(1 mm more is 0.1 mm of ⌀" in bore.what


def test_its_tools_are_read_from_its_words(plan: Plan) -> None:
    text = f"{HEAD}  part: {hub(TO_SUIT)}\n{JOINED.replace('ENDS', 'part.bore, arbor.nose')}"
    design = plan(text, upto=Phase.COMPOSE).design
    assert design is not None
    tools = design.facts.about(ToolsFact, "")
    assert tools is not None
    names = {one.name for one in tools.tools}
    assert {"marking blue", "top-slide"} <= names
    assert not [one for one in names if "arbor" in one or "mate" in one or "mouth" in one]


def test_where_it_bears_tells_which_way_the_angle_is_out(plan: Plan) -> None:
    """Geometry: half a degree less than the mate at 2.86°, both 12 mm at the mouth."""
    bore, _ = both(plan, "part.bore, arbor.nose")
    _, nose = both(plan, "arbor.nose, part.bore")
    less, right = math.tan(math.radians(2.36)), math.tan(math.radians(2.86))
    slow_bore = (12 - 2 * 20 * less) - (12 - 2 * 20 * right)  # Room at the small end.
    slow_nose = (12 - 2 * 20 * right) - (12 - 2 * 20 * less)
    assert ("mouth alone the slide is swung farther" in bore.what) == (slow_bore > 0)
    assert ("mouth alone the slide is swung farther" in nose.what) == (slow_nose > 0)
    assert "mouth alone the slide is swung less" in nose.what


def test_a_bore_made_first_is_what_the_nose_is_tried_in(plan: Plan) -> None:
    bore, nose = both(plan, "arbor.nose, part.bore")
    assert "write down how the slide reads" in bore.what
    assert "blue" not in bore.what + bore.tool
    assert "try it on the bore of the part in marking blue" in nose.what


@pytest.mark.parametrize("ends", ["part.bore, arbor.nose", "arbor.nose, part.bore"])
def test_nothing_comes_between_the_two_tapers(plan: Plan, ends: str) -> None:
    """What is set for the one half must stand for the other: common practice, no source."""
    text = f"{HEAD}  part: {hub(TO_SUIT)}\n{JOINED.replace('ENDS', ends)}"
    design = plan(text, upto=Phase.COMPOSE).design
    assert design is not None
    work = design.facts.about(WorkPlan, "")
    assert work is not None
    jobs = [job for evening in work.evenings for job in evening.jobs]
    cut = [n for n, job in enumerate(jobs) if (setup := work.pieces[job].setup) is not None
           and any(act.act == "taper" for act in setup.acts)]  # fmt: skip
    assert len(cut) == 2
    assert cut[1] == cut[0] + 1


def test_the_slide_stays_locked_between_the_two(plan: Plan) -> None:
    design = plan(
        f"{HEAD}  part: {hub(TO_SUIT)}\n{JOINED.replace('ENDS', 'part.bore, arbor.nose')}"
    ).design
    assert design is not None
    routes = [design.facts.about(Route, name) for name in ("arbor", "part")]
    first, second = ([a for a in one.acts if a.act == "set-back"] for one in routes if one)
    assert ["stays locked" in act.what for act in first] == [True]
    assert ["back to 0°" in act.what for act in second] == [True]


def test_no_mill_bores_a_taper(plan: Plan) -> None:
    text = (
        f"{HEAD}  part: {{material: mild steel, block: {{length: 60 mm, width: 40 mm,"
        " height: 15 mm}, features: {bore: {bored: 12 mm, narrows_to: 10 mm, on: top,"
        " depth: through, pattern: 2 off in a row at 25 mm}}}\n"
    )
    outcome = plan(text)
    assert "no-machine-for-it" in {one.code.name for one in outcome.findings}
    assert outcome.design is not None
    route = outcome.design.facts.about(Route, "part")
    assert route is not None
    assert not [act for act in route.acts if act.act in {"taper", "set-back"}]


def test_plates_with_a_taper_bore_are_not_stacked(plan: Plan) -> None:
    """Through a stack one taper would leave each plate another size: geometry."""
    text = (
        f"{HEAD}  part: {{material: brass, stock: sheet, quantity: 2, plate: {{length: 60 mm,"
        " width: 40 mm, thickness: 3 mm}, features: {bore: {BORE, on: top, depth: through}}}\n"
    )
    at_once = {}
    for bore in ("bored: 12 mm", "bored: 12 mm, narrows_to: 11.4 mm"):
        design = plan(text.replace("BORE", bore)).design
        assert design is not None
        route = design.facts.about(Route, "part")
        assert route is not None
        at_once[bore] = [one.at_once for one in route.setups if one.place == "lathe"]
    assert list(at_once.values()) == [[2], [1]]


@pytest.mark.parametrize(("enters", "is_deep"), [("14 mm", True), ("12 mm", False)])
def test_the_bar_must_go_in_at_the_small_end(enters: str, plan: Plan, *, is_deep: bool) -> None:
    """The bar that reaches 60 mm goes in at the mouth of 17 mm either way; the other 30 mm."""
    bore = "bored: 17 mm, narrows_to: 13 mm, on: right, depth: through"
    shop = BUILT_IN.replace("least_bore: 14 mm", f"least_bore: {enters}")
    codes = {one.code.name for one in plan(f"{HEAD}  part: {hub(bore, 40)}\n", shop).findings}
    assert ("bore-too-deep" in codes) == is_deep
    assert "cutter-cannot-reach" not in codes


def test_the_trials_in_blue_take_their_minutes(plan: Plan) -> None:
    """Three trials of four minutes, on the half that is cut last: common practice, no source."""
    pairs = zip(*(both(plan, ends) for ends in ENDS_OF), strict=True)
    for halves in pairs:
        (tried,) = (one for one in halves if "marking blue" in one.tool)
        (other,) = (one for one in halves if one is not tried)
        assert tried.run == pytest.approx(other.run + 12)
