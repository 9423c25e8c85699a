"""What the leaf tells is enough to do it: how far, at what angle, with which tool, how fast."""

from __future__ import annotations

from math import atan, degrees, pi

import pytest

from binder_plugins.operations.facts import Act, Route
from tests.plugins.operations.conftest import RouteOf, without

THREE = (
    "turned: [{name: hub, diameter: 24 mm, length: 6 mm}, {name: boss, diameter: 15 mm, "
    "length: 6 mm}, {name: nose, diameter: 10 mm, length: 6 mm}]"
)


def acts(route: Route, act: str, feature: str = "") -> list[Act]:
    """All acts of a kind, of a feature where one is named."""
    return [one for one in route.acts if one.act == act and feature in {"", one.feature}]


def part(more: str, metal: str = "mild steel", bar: str = "25 mm") -> str:
    """A part of round bar."""
    return f"{{material: {metal}, stock: {bar} round bar, {more}}}"


def test_steps_are_told_from_the_end_and_counted_by_that(route_of: RouteOf) -> None:
    found = {one.feature: one for one in acts(route_of(part(THREE)), "turn")}
    # Common practice, no source: from the bar the largest is turned over all that is thinner.
    assert "to 18 mm from the end" in found["hub"].what
    assert "to 12 mm from the end" in found["boss"].what
    assert "to 6 mm from the end" in found["nose"].what
    assert [found[name].deep for name in ("hub", "boss", "nose")] == [18.0, 12.0, 6.0]


def test_a_taper_tells_the_angle_of_the_top_slide(route_of: RouteOf) -> None:
    shape = "turned: [{name: foot, diameter: 22 mm, length: 6 mm}, {name: cone, taper: 22 mm to "
    route = route_of(part(f"{shape}16 mm, length: 32 mm}}]"))
    (taper,) = acts(route, "taper")
    # Half of the included angle, tan(a) = (D - d) / 2 L: any workshop text on taper turning.
    assert f"top-slide at {degrees(atan(6 / 64)):.1f}°" in taper.what


# What is cut with a tool that must stand square to the work: common practice, no source.
SQUARE = {"face", "bore", "turn", "undercut", "groove", "knurl", "chamfer", "form", "part-off"}
TAPERED = (
    "turned: [{name: foot, diameter: 24 mm, length: 6 mm}, {name: cone, taper: 20 mm to 16 mm,"
    " length: 20 mm}, {name: top, %s, length: 8 mm}]"
)
NECKED, TWICE = TAPERED % "diameter: 19 mm", TAPERED % "taper: 16 mm to 9 mm"


@pytest.mark.parametrize("shape", [NECKED, TWICE], ids=["necked", "twice"])
@pytest.mark.parametrize(
    "cut",
    [
        "ring: {grooved: 1 mm, on: foot, at: 2 mm from left}",
        "ring: {grooved: 1 mm, on: cone, at: 9 mm from left}",
        "edge: {chamfered: 0.5 mm, on: top}",
        "hole: {bored: 12 mm, on: top, depth: 10 mm}",
        "hole: {drilled: 5 mm, on: top, depth: through}",
    ],
)
def test_no_square_tool_cuts_while_the_top_slide_is_swung(
    shape: str, cut: str, route_of: RouteOf
) -> None:
    """The tool post stands on the top-slide and turns with it: geometry of the lathe."""
    is_swung = was_swung = False
    for act in route_of(part(f"{shape}, features: {{{cut}}}")).acts:
        is_swung = act.act == "taper" or (is_swung and act.act != "set-back")
        was_swung = was_swung or is_swung
        assert not (is_swung and act.act in SQUARE), act.what
    assert was_swung
    assert not is_swung


def test_what_is_cut_into_a_cone_waits_for_it(route_of: RouteOf) -> None:
    """Turned over it the cone would take the groove away again; all else goes before: geometry."""
    grooves = "on: cone, at: 9 mm from left}, other: {grooved: 1 mm, on: foot, at: 2 mm from left}"
    route = route_of(part(f"{NECKED}, features: {{ring: {{grooved: 1 mm, {grooves}}}"))
    order = [(one.act, one.feature) for one in route.acts]
    cone = order.index(("taper", "cone"))
    assert order.index(("groove", "other")) < cone < order.index(("groove", "ring"))
    assert order[cone + 1][0] == "set-back"


def test_one_setting_back_serves_tapers_that_follow_one_another(route_of: RouteOf) -> None:
    acts = [one.act for one in route_of(part(TWICE)).acts]
    assert acts.count("taper") == 2
    assert acts.count("set-back") == 1


SHOULDERED = (
    "turned: [{name: foot, diameter: 24 mm, length: 6 mm}, {name: cone, taper: %s,"
    " length: 20 mm}, {name: top, diameter: %s, length: 8 mm}]"
)


@pytest.mark.parametrize(
    ("top", "tool"), [("10 mm", "knife tool"), ("19 mm", "knife tool"), ("22 mm", "parting tool")]
)
def test_the_shoulder_at_the_big_end_of_a_taper_is_faced_once_the_slide_is_back(
    top: str, tool: str, route_of: RouteOf
) -> None:
    """A flank on a swung slide leaves a shoulder as far from square as it stands: geometry.

    From the end are 8 + 20 mm of top and cone; past a top that is thicker than the cone's foot
    no knife tool comes down to it.
    """
    route = route_of(part(SHOULDERED % ("20 mm to 16 mm", top)))
    (faced,) = acts(route, "face-shoulder")
    assert "28 mm from the end, in to ⌀20 mm" in faced.what
    assert faced.tool == tool
    order = [one.act for one in route.acts]
    assert order[order.index("face-shoulder") - 1] == "set-back"
    assert not route.trouble


def test_a_taper_that_grows_thinner_up_to_a_shoulder_ends_in_a_neck(route_of: RouteOf) -> None:
    """2 of 20 mm of a cone that grows by 4 mm on the diameter: 16.4 mm under the tool."""
    route = route_of(part(SHOULDERED % ("16 mm to 20 mm", "20 mm")))
    (neck,) = (one for one in acts(route, "groove") if "neck" in one.tags)
    assert "to ⌀16.4 mm" in neck.what
    assert "ending 28 mm from the end" in neck.what
    order = [one.act for one in route.acts]
    assert order.index("groove") < order.index("taper")
    assert not acts(route, "face-shoulder")


@pytest.mark.parametrize("shape", [TWICE, SHOULDERED % ("24 mm to 16 mm", "16 mm")])
def test_a_taper_that_meets_no_larger_step_has_no_shoulder_to_face(
    shape: str, route_of: RouteOf
) -> None:
    found = acts(route_of(part(shape)), "face-shoulder")
    # In the one that tapers twice the foot stands above the first cone.
    assert [one.feature for one in found] == (["cone"] if shape is TWICE else [])


def test_a_pointed_tool_is_tried_in_its_neck_when_the_slide_is_swung(route_of: RouteOf) -> None:
    """The neck is cut square first; only on the swung slide does the tool stand as it cuts."""
    necked = [one.act for one in route_of(part(NECKED)).acts]
    cone = necked.index("taper")
    assert necked.index("groove") < necked.index("try-tool") == cone - 1
    assert "try-tool" not in [one.act for one in route_of(part(TWICE)).acts]


def test_a_groove_tells_its_place_and_depth(route_of: RouteOf) -> None:
    shape = "turned: [{name: rim, diameter: 20 mm, length: 10 mm}]"
    groove = "features: {ring: {grooved: 1 mm, on: rim, at: 4 mm from right}}"
    (found,) = acts(route_of(part(f"{shape}, {groove}")), "groove")
    # Common practice, no source: drawn half as deep as it is wide where nothing is told.
    assert "0.5 mm deep" in found.what
    assert "its middle 4 mm from this end" in found.what


def test_each_end_that_is_rounded_is_formed_where_it_is_free(route_of: RouteOf) -> None:
    shape = "turned: [{name: ball, diameter: 7 mm, length: 12 mm}]"
    route = route_of(part(f"{shape}, features: {{it: {{rounded: 2 mm, on: ball}}}}", "brass"))
    at = [setup.number for setup in route.setups for one in setup.acts if one.act == "form"]
    assert len(at) == len(set(at)) == 2  # Two corners are drawn, one in each grip.


def test_a_mouth_with_a_chamfer_is_sunk_once_before_the_tap(route_of: RouteOf) -> None:
    shape = "turned: [{name: body, diameter: 20 mm, length: 20 mm}]"
    hole = "hole: {tapped: M8, on: body, depth: through}, mouth: {chamfered: 1 mm, on: hole}"
    route = route_of(part(f"{shape}, features: {{{hole}}}"))
    (sunk,) = acts(route, "countersink")
    order = [one.act for one in route.acts]
    # Tapping drill of M8 6.8 mm (ISO 2306, from memory), and 1 mm at 45° on each side. Before the
    # tap: common practice, no source.
    assert "⌀8.8 mm" in sunk.what
    assert "countersink" in sunk.tool
    assert order.index("countersink") < order.index("tap")
    assert not acts(route, "chamfer")


@pytest.mark.parametrize(("away", "by_hand"), [("3 mm", True), ("12 mm", False)])
def test_a_countersink_must_pass_the_shoulder(
    route_of: RouteOf, away: str, *, by_hand: bool
) -> None:
    shape = (
        "turned: [{name: rim, diameter: 40 mm, length: 8 mm}, "
        "{name: boss, diameter: 15 mm, length: 20 mm}]"
    )
    hole = f"features: {{grub: {{tapped: M3, across: boss, at: {away} from rim}}}}"
    route = route_of(part(f"{shape}, {hole}", bar="42 mm"))
    (sunk,) = acts(route, "countersink")
    # The one owned is 16 mm across, 8 mm to its side: arithmetic.
    assert ("scraper" in sunk.tool) == by_hand
    assert (sunk.speed == "by hand") == by_hand


def test_a_flat_floor_comes_from_what_goes_into_the_hole(route_of: RouteOf) -> None:
    shape = "turned: [{name: boss, diameter: 16 mm, length: 12 mm}]"
    sunk = "it: {drilled: 3.4 mm, on: boss, depth: through, counterbore: 6.5 mm}"
    (found,) = acts(route_of(part(f"{shape}, features: {{{sunk}}}", "brass")), "counterbore")
    # The least bore of the smallest bar in the built-in workshop is 8 mm.
    assert found.tool == "6.5 mm drill, its end ground flat"


def test_a_ratchet_cutter_is_narrower_than_the_gap(route_of: RouteOf) -> None:
    wheel = "ratchet: {teeth: 12, outside: 14 mm, depth: 1.2 mm, width: 2 mm}"
    bore = "features: {bore: {reamed: 5 mm, depth: through}}"
    shape = f"{{material: mild steel, stock: 16 mm round bar, {wheel}, {bore}}}"
    (cut,) = acts(route_of(shape), "cut-teeth")
    # The chord from root to root is what is free between two points: geometry.
    assert 0 < cut.size <= pi * (14 - 2.4) / 12
    assert cut.tool == "3 mm slot drill"
    assert "looking clockwise, seen from the right" in cut.what
    (filed,) = acts(route_of(shape, workshop=without("cutters/end_mills", "cutters/slot_drills")),
                    "cut-teeth")  # fmt: skip
    assert "files" in filed.tool


def test_wood_in_the_lathe_has_a_speed(route_of: RouteOf) -> None:
    shape = "turned: [{name: grip, diameter: 7 mm, length: 18 mm}]"
    route = route_of(f"{{material: beech, stock: 8 mm x 8 mm board, {shape}}}")
    turned = acts(route, "turn")
    # Small turnings in wood go at the highest speed of a metal lathe: common practice, no source.
    assert turned
    assert all(one.speed == "2300" for one in turned)


def test_flats_name_the_cutter_and_go_by_its_size(route_of: RouteOf) -> None:
    shape = (
        "turned: [{name: shank, diameter: 12 mm, length: 20 mm}, "
        "{name: head, hexagon: 10 mm, length: 6 mm}]"
    )
    (flats,) = acts(route_of(part(shape)), "mill-flat")
    # The widest owned up to 10 mm, and 20 m/min × 0.8 or less at it: common practice, no source.
    assert flats.tool.startswith("10 mm ")
    assert flats.size == 10.0


def test_a_saw_in_the_lathe_is_told_as_one(route_of: RouteOf) -> None:
    shape = "turned: [{name: body, diameter: 48 mm, length: 20 mm}]"
    (sawn,) = acts(route_of(part(shape, bar="50 mm")), "part-off")
    # The parting tool of the built-in workshop reaches 16 mm. Words: common practice, no source.
    assert sawn.tool == "hacksaw"
    assert "stop the spindle, lay a board on the bed" in sawn.what
    assert "centre height" not in sawn.spoils


def test_what_is_not_owned_holds_nothing(route_of: RouteOf) -> None:
    bar = (
        "{material: mild steel, stock: 20 mm x 10 mm flat bar, cut: 180 mm, features: "
        "{hole: {drilled: 3 mm, on: left, depth: 6 mm}}}"
    )
    # Held upright, since the mill's travel is 180 mm: common practice, no source.
    owned, bare = route_of(bar), route_of(bar, workshop=without("holding/angle_plate"))
    assert any("angle plate" in one.grip.holder for one in owned.setups)
    assert not any("angle plate" in one.grip.holder for one in bare.setups)


def test_the_ends_of_a_bar_name_their_cutter(route_of: RouteOf) -> None:
    route = route_of("{material: mild steel, stock: 20 mm x 10 mm flat bar, cut: 40 mm}")
    ends = [one for one in route.acts if one.feature in {"end 1", "end 2"}]
    # The widest owned up to 10 mm: common practice, no source.
    assert [(one.tool[:6], one.size) for one in ends] == [("10 mm ", 10.0)] * 2
