"""Routes of small parts against what an instructor would write on the board.

The lists are common practice, no source.
"""

from __future__ import annotations

import pytest

from binder_plugins.operations.facts import Act, Route
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf, without

BUSH = (
    "{material: bronze, stock: 12 mm round bar, turned: [{name: outside, diameter: 10 mm,"
    " length: 12 mm}], features: {bore: {reamed: 6 mm, on: outside, depth: through}}}"
)
SPINDLE = (
    "{material: mild steel, stock: 6 mm drawn rod, turned: [{name: rod, diameter: 6 mm,"
    " length: 60 mm}], features: {thread: {screwed: M6, on: rod, length: 10 mm}}}"
)
LEVER = (
    "{material: mild steel, stock: 12 mm x 6 mm flat bar, cut: 50 mm, features: {"
    "eye: {reamed: 5 mm, on: top, depth: through, at: 6 mm from left},"
    " end: {tapped: M4, on: top, depth: through, at: 6 mm from right}}}"
)
BRACKET = (
    "{material: cast iron, stock: casting, block: {length: 30 mm, width: 20 mm, height: 15 mm}}"
)
WHEEL = (
    "{material: brass, disc: {diameter: 28 mm, thickness: 3 mm},"
    " features: {bore: {reamed: 8 mm, depth: through}}}"
)
OILED = (
    "{material: bronze, stock: 16 mm round bar, turned: [{name: outside, diameter: 14 mm,"
    " length: 20 mm}], features: {bore: {reamed: 8 mm, on: outside, depth: through},"
    " oil: {drilled: 1.5 mm, across: outside, at: 10 mm from left, depth: 3.5 mm}}}"
)
TURN = ["lathe", "face", "turn"]
CLEAN = ["bench", "deburr"]
BOARD: dict[str, tuple[str, list[list[str]]]] = {
    "bush from the bar": (
        BUSH,
        [[*TURN, "centre", "drill", "ream", "part-off"], ["lathe", "face"], CLEAN],
    ),
    "threaded spindle of drawn rod": (
        SPINDLE,
        [
            ["saw", "saw"],
            ["lathe", "face", "turn", "chamfer", "die"],
            ["lathe", "face"],
            CLEAN,
        ],
    ),
    "lever of flat bar": (
        LEVER,
        [
            ["saw", "saw"],
            ["mill", "mill", "mill"],
            ["mill", "spot", "spot", "drill", "ream", "drill", "countersink", "tap"],
            CLEAN,
        ],
    ),
    "block of six faces": (
        BRACKET,
        [["saw", "saw"], ["mill", *["mill"] * 6], CLEAN],
    ),
    "disc on a mandrel": (
        WHEEL,
        [
            ["bench", "mark-out"],
            ["drill", "spot", "drill", "ream"],
            ["bench", "saw"],
            ["lathe", "turn"],
            CLEAN,
        ],
    ),
    "bush with an oil hole, its burr cleared by hand": (
        OILED,
        [
            [*TURN, "centre", "drill", "ream", "part-off"],
            ["lathe", "face"],
            ["drill", "spot", "drill"],
            ["bench", "clear", "deburr"],
        ],
    ),
}


def told(route: Route) -> list[list[str]]:
    """Each set-up as its place and its acts, pilots left out."""
    return [
        [one.place, *(act.act for act in one.acts if "pilot" not in act.tags)]
        for one in route.setups
    ]


@pytest.mark.parametrize("name", BOARD)
def test_the_route_is_what_stands_on_the_board(name: str, route_of: RouteOf) -> None:
    part, wanted = BOARD[name]
    found = told(route_of(part))
    # What is free to come in either turn is compared as a whole.
    assert [one[0] for one in found] == [one[0] for one in wanted]
    assert [sorted(one[1:]) for one in found] == [sorted(one[1:]) for one in wanted]


def test_the_largest_face_is_made_first_whichever_it_is(route_of: RouteOf) -> None:
    """60 × 9 × 48: the largest face is 60 × 48, so its opposite is 9 away, the next 48."""
    part = (
        "{material: cast iron, stock: casting, block: {length: 60 mm, width: 9 mm, height: 48 mm}}"
    )
    said = {act.feature: act.what for act in route_of(part).acts}
    assert said["face 1"].startswith("mill face 1, the largest (front")
    assert said["face 3"].endswith("to face 2, to 48 mm")
    assert said["face 4"].endswith("to face 1, to 9 mm")
    assert said["end 2"].endswith("to 60 mm")


def place(acts: tuple[Act, ...], act: str) -> int:
    """Where an act first stands."""
    return next(n for n, one in enumerate(acts) if one.act == act)


def test_a_bush_is_faced_first_and_parted_off_last(route_of: RouteOf) -> None:
    acts = route_of(BUSH).setups[0].acts
    assert acts[0].act == "face"
    assert acts[-1].act == "part-off"
    assert (
        place(acts, "centre") < place(acts, "drill") < place(acts, "ream") < place(acts, "part-off")
    )


def test_it_stands_out_by_its_length_and_the_parting_tool(route_of: RouteOf) -> None:
    """12 mm of bush, 1 mm to face, a parting tool of 2 mm, and 2 mm to clear the jaws: 17 mm."""
    setup = route_of(BUSH).setups[0]
    assert setup.grip.stand_out == pytest.approx(17)
    assert setup.until == "it is parted off"


def test_a_bore_is_reamed_in_the_grip_of_its_outside_and_cleared_of_the_oil_holes_burr(
    route_of: RouteOf,
) -> None:
    """A reamer in another grip follows the hole, not the outside; common practice, no source."""
    route = route_of(OILED)
    acts = route.acts
    cross = next(n for n, one in enumerate(acts) if one.feature == "oil" and one.act == "drill")
    assert place(acts, "ream") < place(acts, "part-off") < cross < place(acts, "clear")
    assert {"turn", "ream"} <= {act.act for act in route.setups[0].acts}
    assert "bore true to one another" in route.setups[0].true


def test_speeds_are_the_next_lower_ones_of_the_lathe(route_of: RouteOf) -> None:
    """n = 1000 v/(π d), any textbook; 25 m/min for mild steel with high-speed steel.

    Facing and both first cuts meet the bar of 22 mm, which wants 362 r/min: 340 is next below.
    At 20 mm it is 398, so 340 still; once there are 8 mm, 995, of which the lathe has 900.
    """
    part = (
        "{material: mild steel, stock: 22 mm round bar, turned: [{name: a, diameter: 20 mm,"
        " length: 10 mm}, {name: b, diameter: 8 mm, length: 12 mm}]}"
    )
    acts = [act for act in route_of(part).acts if "back" not in act.tags]
    speeds = {act.what.split(",")[0]: act.speed for act in acts if act.act in {"face", "turn"}}
    assert speeds == {"face the end": "340", "turn ⌀20 mm": "340", "turn ⌀8 mm": "340 to 900"}


def test_a_reamed_hole_is_drilled_a_little_under(route_of: RouteOf) -> None:
    """0.1 to 0.3 mm is left for a reamer; common practice, no source."""
    drilled = [act.size for act in route_of(BUSH).acts if act.act == "drill"]
    assert 5.7 <= drilled[-1] <= 5.9


def test_a_shop_without_a_mill_marks_out_and_files(route_of: RouteOf) -> None:
    found = told(route_of(LEVER, workshop=without("machines/mills")))
    assert found[1] == ["bench", "file", "file"]
    assert found[2][:2] == ["drill", "mark-out"]


def test_a_shop_without_collets_trues_in_the_four_jaw(route_of: RouteOf) -> None:
    part = (
        "{material: silver steel, stock: 8 mm drawn rod, turned: [{name: pin, diameter: 5 mm,"
        " length: 6 mm}, {name: rod, diameter: 8 mm, length: 40 mm}]}"
    )
    kinds = [one.grip.kind for one in route_of(part).setups if one.place == "lathe"]
    assert kinds[0] == "collet"
    fallback = route_of(part, workshop=without("holding/collets"))
    first = next(one for one in fallback.setups if one.place == "lathe")
    assert first.grip.kind == "four-jaw"


def test_rod_too_thin_for_any_chuck_goes_in_a_drill_chuck(route_of: RouteOf) -> None:
    part = "{material: silver steel, stock: 1.5 mm drawn rod, cut: 30 mm}"
    setup = next(one for one in route_of(part).setups if one.place == "lathe")
    assert setup.grip.holder == "spring collets"
    fallback = route_of(part, workshop=without("holding/collets"))
    first = next(one for one in fallback.setups if one.place == "lathe")
    assert first.grip.holder == "keyed chuck in the spindle"


def test_a_part_of_which_nothing_is_told_is_still_a_route(plan: Plan) -> None:
    outcome = plan(f"{HEAD}  part: {{material: brass}}\n")
    assert all(one.code.name != "plugin-failed" for one in outcome.findings)


def test_a_huge_number_off_stays_a_number(route_of: RouteOf) -> None:
    route = route_of(BUSH.replace("{material", "{quantity: 999, material"))
    assert route.count == 999
    assert len(route.setups) == 3


def test_hundreds_of_holes_are_one_act(route_of: RouteOf) -> None:
    part = (
        "{material: mild steel, plate: {length: 400 mm, width: 400 mm, thickness: 3 mm}, features:"
        " {holes: {drilled: 1 mm, on: top, depth: through, off: 999,"
        " pattern: in a row at 0.3 mm}}}"
    )
    drills = [act for act in route_of(part).acts if act.act == "drill"]
    assert len(drills) == 1
