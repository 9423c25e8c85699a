"""What is said to be true to one another is cut in one grip. All: common practice, no source."""

from __future__ import annotations

from binder_plugins.operations.facts import Route, SetUp
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf

PULLEY = (
    "{material: aluminium, stock: 30 mm round bar, turned: [{name: boss, diameter: 12 mm, length:"
    " 8 mm}, {name: rim, diameter: 28 mm, length: 6 mm}], features: {bore: {reamed: 6 mm, on: boss,"
    " depth: through}, groove: {grooved: 3 mm, on: rim, depth: 1.5 mm},"
    " grub: {tapped: M3, across: boss, at: 4 mm from left, depth: 6 mm}}}"
)
BUSHED = (
    f"{HEAD}  bush: {{material: bronze, stock: round bar, turned: [{{name: outside, diameter: 10"
    " mm, length: 9 mm}], features: {bore: {reamed: 6 mm, on: outside, depth: through}}}\n"
    "  plate: {material: mild steel, block: {length: 24 mm, width: 24 mm, height: 9 mm},"
    " features: {seat: {reamed: 10 mm, on: top, depth: through}}}\n"
    "  shaft: {material: silver steel, stock: drawn rod, turned: [{name: journal, diameter: 6 mm,"
    " length: 40 mm}]}\n"
    "joints:\n  bush in plate: {pressed: [bush.outside, plate.seat]}\n"
    "  shaft in bush: {runs_in: [shaft.journal, bush.bore], duty: runs, made: %s}\n"
)


def setup_of(route: Route, act: str, feature: str) -> SetUp:
    """The set-up in which a feature is cut."""
    return next(
        one
        for one in route.setups
        if any(it.act == act and it.feature == feature for it in one.acts)
    )


def test_rim_and_groove_are_cut_in_the_grip_of_the_bore(route_of: RouteOf) -> None:
    """The hole of a grub screw does not postpone the bore; its burr is cleared by hand."""
    route = route_of(PULLEY)
    first = setup_of(route, "ream", "bore")
    assert first == setup_of(route, "groove", "groove") == setup_of(route, "turn", "rim")
    assert first.true == (
        "the turned outside, the groove and bore true to one another: all in this grip"
    )
    assert setup_of(route, "tap", "grub").number < setup_of(route, "clear", "bore").number


def test_a_bore_that_is_reamed_in_line_later_is_not_claimed(plan: Plan) -> None:
    design = plan(BUSHED % "reamed in line").design
    assert design is not None
    route = design.facts.about(Route, "bush")
    assert route is not None
    assert not any(one.true for one in route.setups)


def test_a_gear_blank_is_turned_with_its_bore_from_the_next_bar(route_of: RouteOf) -> None:
    """18 teeth of module 0.5 are 10 mm over all, so bar of 10 mm is too small to be turned."""
    route = route_of(
        "{material: mild steel, stock: round bar, gear: {module: 0.5 mm, teeth: 18, width: 4 mm},"
        " features: {bore: {reamed: 4 mm, depth: through}}}"
    )
    first = setup_of(route, "ream", "bore")
    assert {"turn", "ream", "part-off"} <= {act.act for act in first.acts}
    assert "turned outside and bore" in first.true


def test_a_drum_between_flanges_is_plunged_for(route_of: RouteOf) -> None:
    """A closed pocket has two walls: no tool of one hand cuts both."""
    route = route_of(
        "{material: brass, stock: 14 mm round bar, turned: [{name: spigot, diameter: 8 mm, length:"
        " 3 mm}, {name: flange, diameter: 12 mm, length: 2 mm}, {name: drum, diameter: 7 mm,"
        " length: 14 mm}, {name: flange2, diameter: 12 mm, length: 2 mm}]}"
    )
    drum = next(one for one in route.acts if one.feature == "drum" and one.act == "turn")
    assert "plunge" in drum.what
    assert drum.tool == "parting tool, then knife tools of both hands"
    spigot = [one for one in route.acts if one.feature == "spigot" and one.act == "turn"]
    assert spigot
    assert "both hands" not in spigot[0].tool
