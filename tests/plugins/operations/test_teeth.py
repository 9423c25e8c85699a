"""Teeth: every toothed part is divided and cut, after the blank is turned."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest

from binder.api import Table
from binder.compiler import Phase
from binder.pages import text_of
from binder_plugins.operations.facts import Act, Route
from binder_plugins.operations.ratchets import RatchetCut, fed_each_way, ratchet_cut
from binder_plugins.operations.wanted_page import wanted_pages
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf, without

BORE = "features: {bore: {reamed: 4 mm, depth: through}}"
GEAR = f"{{material: brass, stock: 3 mm plate, gear: {{module: 0.5 mm, teeth: 54, width: 3 mm}}, {BORE}}}"  # noqa: E501
RATCHET = f"{{material: mild steel, stock: 2 mm plate, ratchet: {{teeth: 12, outside: 14 mm, depth: 1.2 mm, width: 2 mm}}, {BORE}}}"  # noqa: E501
SPROCKET = f"{{material: mild steel, stock: 30 mm round bar, sprocket: {{teeth: 12, pitch: 6 mm, roller: 4 mm, width: 3 mm}}, {BORE}}}"  # noqa: E501
RACK = "{material: mild steel, stock: 8 mm x 8 mm flat bar, rack: {module: 1 mm, teeth: 10, width: 8 mm, height: 8 mm}}"  # noqa: E501
PINION = (
    "{material: mild steel, stock: 12 mm round bar, turned: [{name: head, diameter: 10 mm,"
    " length: 6 mm}, {name: shank, diameter: 6 mm, length: 20 mm}],"
    " features: {cogs: {toothed: 18, module: 0.5 mm, on: head}}}"
)


def teeth(route: Route) -> Act:
    """The one act that cuts teeth."""
    (found,) = [act for act in route.acts if act.act == "cut-teeth"]
    return found


@pytest.mark.parametrize(
    ("part", "count", "deep"),
    [
        # Whole depth 2.25 m: ISO 53, profile A. Others as written; the sprocket's by geometry.
        (GEAR, 54, 1.125),
        (RATCHET, 12, 1.2),
        (SPROCKET, 12, None),
        (RACK, 10, 2.25),
        (PINION, 18, 1.125),
    ],
)
def test_teeth_are_cut(part: str, count: int, deep: float | None, route_of: RouteOf) -> None:
    route = route_of(part)
    act = teeth(route)
    assert f"{count} " in act.what
    assert act.run >= count
    assert act.speed
    if deep is not None:
        assert act.deep == pytest.approx(deep)
    assert not route.trouble


def test_a_gear_is_divided_on_a_mandrel_after_its_outside(route_of: RouteOf) -> None:
    """54 teeth by a dial of 0.1° and 5° a turn: 360/54 = 6.667° is a turn and 16.67 marks. One
    cutter of the involute set of eight does 35 to 54 teeth (any handbook)."""
    route = route_of(GEAR)
    setup = next(one for one in route.setups if any(a.act == "cut-teeth" for a in one.acts))
    act = teeth(route)
    assert (setup.place, setup.machine) == ("mill", "mill-drill")
    assert setup.grip.holder == "mandrel on the rotary table"
    assert "1 turn and 17 marks of 0.1°" in act.what
    assert "(35 to 54)" in act.tool
    turned = next(n for n, a in enumerate(route.acts) if a.act == "turn")
    assert turned < route.acts.index(act)


OWNED = "{gear_cutters: [{module: 0.5 mm, pressure_angle: 20 deg, numbers: [6]}]}"


def test_a_cutter_that_is_not_owned_is_told_and_a_fly_cutter_ground(route_of: RouteOf) -> None:
    """54 teeth want no. 6 of the module set (any handbook); of a fly cutter common practice."""
    assert teeth(route_of(GEAR, workshop=without(cutters=OWNED))).tool.startswith("gear cutter")
    lacking = teeth(route_of(GEAR)).tool
    assert lacking.startswith("fly cutter ground")
    assert lacking.endswith("no. 6 (35 to 54), not owned")
    none = teeth(route_of(GEAR, workshop=without("machines/others/grinder"))).tool
    assert none.startswith("gear cutter")
    assert none.endswith("not owned")


@pytest.mark.parametrize("has_grinder", [True, False])
def test_a_cutter_is_had_or_a_fly_cutter_is_made(plan: Plan, *, has_grinder: bool) -> None:
    """One or the other: nobody buys a cutter in whose place a fly cutter is made."""
    workshop = "" if has_grinder else without("machines/others/grinder")
    design = plan(f"{HEAD}  part: {GEAR}\n", workshop, upto=Phase.COMPOSE).design
    assert design is not None
    (section,) = wanted_pages(design, ())
    told = [
        text_of(row[0])
        for block in section.blocks
        if isinstance(block, Table)
        for row in block.rows
    ]
    assert ("fly cutter for the part" in told) == has_grinder
    assert any("no. 6" in tool for tool in told) != has_grinder
    assert "rotary table" in str(section.blocks[-1])


def test_a_pinion_without_a_bore_is_held_by_its_shank(route_of: RouteOf) -> None:
    route = route_of(PINION)
    setup = next(one for one in route.setups if any(a.act == "cut-teeth" for a in one.acts))
    assert setup.grip.on == "its shank"
    assert teeth(route).feature == "cogs"


def test_a_rack_goes_on_by_its_pitch(route_of: RouteOf) -> None:
    """p = π m = 3.142 mm; a rack is cut with the cutter for 135 teeth to a rack."""
    act = teeth(route_of(RACK))
    assert "3.142 mm along" in act.what
    assert "to rack" in act.tool


def test_without_a_mill_a_ratchet_is_filed_and_a_gear_is_told(route_of: RouteOf) -> None:
    shop = without("machines/mills")
    assert "file" in teeth(route_of(RATCHET, workshop=shop)).what
    wrong = [name for name, _ in route_of(GEAR, workshop=shop).trouble]
    assert "no-machine-for-it" in wrong


def test_where_the_cutter_stands_for_a_ratchet() -> None:
    """By hand: 4 teeth, 28 over the points, 6 deep. The back from (8, 0) to (0, 14) rises at
    atan2(14, −8) = 119.74°: 29.7° past upright; it passes the centre at 8 sin 119.74° = 6.95."""
    cut = ratchet_cut(4, 28.0, 6.0, 10.0)
    assert (cut.face_to, cut.turn, cut.back_to) == pytest.approx((8.0, 29.74, 6.946), abs=5e-3)
    # The foot of the face lies 8 cos 119.74° = −3.97 along the level back from over the axis.
    assert cut.stop == pytest.approx(-3.968, abs=5e-3)


def test_where_a_face_leans_over_its_back_the_cutter_stops_at_its_point() -> None:
    """By hand: 12 teeth, 28 over the points, 4 deep. From (10, 0) to (12.124, 7) at 73.1°: the face
    leans over; its point lies at 14 cos 73.1° = 4.07, its foot at 10 cos 73.1° = 2.9."""
    assert ratchet_cut(12, 28.0, 4.0, 3.0).stop == pytest.approx(4.065, abs=5e-3)


def _is_inside(point: tuple[float, float], corners: list[tuple[float, float]]) -> bool:
    """Whether a point lies in a polygon: a ray to the right crosses it an odd number of times."""
    x, y = point
    crossed = False
    for (a, b), (c, d) in pairwise((*corners, corners[0])):
        if (b > y) != (d > y) and x < a + (c - a) * (y - b) / (d - b):
            crossed = not crossed
    return crossed


def _swept(cut: RatchetCut, cutter: float, teeth: int, x: float, y: float) -> bool:
    """Whether a cut for any of the teeth takes a point away, its stopping face first upright."""
    for number in range(teeth):
        turn = math.radians(360 / teeth * number)
        u, v = x * math.cos(turn) - y * math.sin(turn), x * math.sin(turn) + y * math.cos(turn)
        if 0.0 <= u <= cutter and v >= cut.face_to:
            return True
        # Turned on until the back lies level: the back rises where the turn is one way round.
        level = math.asin(cut.back_to / cut.root)
        lean = level - math.pi / 2 if cut.stop >= 0 else math.pi / 2 - level
        u, v = u * math.cos(lean) - v * math.sin(lean), u * math.sin(lean) + v * math.cos(lean)
        if u >= cut.stop and v >= cut.back_to:
            return True
    return False


@pytest.mark.parametrize(
    ("teeth", "outside", "depth", "cutter"),
    [(12, 14.0, 1.2, 3.0), (8, 30.0, 3.0, 6.0), (24, 20.0, 0.8, 2.0), (4, 28.0, 6.0, 10.0)],
)
def test_no_cut_of_a_ratchet_goes_into_a_finished_tooth(
    teeth: int, outside: float, depth: float, cutter: float
) -> None:
    """The cutter's way over a fine net of points, against the teeth as they are drawn.

    What it may not touch is the wheel; what it leaves of the gaps lies in the corners at the foot
    of the faces, no wider than is told for the file.
    """
    cut = ratchet_cut(teeth, outside, depth, cutter)
    root, pitch = outside / 2 - depth, 2 * math.pi / teeth
    corners = [
        (size * math.sin(at), size * math.cos(at))
        for number in range(teeth)
        for size, at in ((root, number * pitch), (outside / 2, (number + 1) * pitch))
    ]
    step, gouged, left = outside / 300, 0, 0.0
    for n in range(-150, 151):
        for m in range(-150, 151):
            x, y = (n + 0.3) * step, (m + 0.37) * step
            if not root * math.cos(pitch / 2) < math.hypot(x, y) < outside / 2 - step:
                continue
            is_cut = _swept(cut, cutter, teeth, x, y)
            if _is_inside((x, y), corners):
                gouged += (
                    is_cut
                    and _is_inside((x * 0.995, y * 0.995), corners)
                    and _is_inside((x * 1.005, y * 1.005), corners)
                )
            elif not is_cut:
                left = max(left, (math.atan2(x, y) % pitch) * math.hypot(x, y))
    assert gouged == 0
    assert left <= cut.left + 2 * step


def test_the_first_cut_stops_over_the_rising_back() -> None:
    """By hand: the back from (0, 5.8) to (7 sin 30°, 7 cos 30°) = (3.5, 6.062) stands at
    5.8 + 0.262 × 3 / 3.5 = 6.025 under the far side of a cutter of 3; the root corner keeps
    (7 − 5.8) cos 85.72° = 0.09."""
    cut = ratchet_cut(12, 14.0, 1.2, 3.0)
    assert 6.025 < cut.face_to < 6.06
    assert cut.left == pytest.approx(0.09, abs=5e-3)
    assert ratchet_cut(4, 28.0, 6.0, 10.0).face_to == pytest.approx(8.0)


def test_the_stop_of_the_backs_is_told(route_of: RouteOf) -> None:
    shape = f"{{material: mild steel, stock: 8 mm plate, ratchet: {{teeth: 4, outside: 28 mm, depth: 6 mm, width: 8 mm}}, {BORE}}}"  # noqa: E501
    (cut,) = [one for one in route_of(shape).acts if one.act == "cut-teeth"]
    # With a cutter of 10 mm: −3.97 + 5 = 1.03.
    assert cut.size == pytest.approx(10.0)
    assert "axis is 1.03 mm short of the centre of the work" in cut.what
    # 4 mm beside its axis its side stands 5 − √(25 − 16) = 2 mm back from the face.
    assert "at the stop feed it 4.5 mm each way along the work" in cut.what


@pytest.mark.parametrize("width", [1.0, 2.4, 8.0, 17.3])
def test_a_cutter_that_is_fed_along_leaves_nothing_in_the_corner(width: float) -> None:
    """Where its axis passes, the round side reaches its whole radius; nowhere else (geometry)."""
    radius, fed = 5.0, fed_each_way(width)
    for y in (n * width / 40 - width / 2 for n in range(41)):
        beside = max(abs(y) - fed, 0.0)
        assert radius - math.sqrt(radius**2 - beside**2) == pytest.approx(0.0)
    # The mandrel's neck is as long as the radius and 2 mm.
    assert fed - width / 2 < 2.0


def test_the_span_over_the_first_teeth_sets_the_depth(route_of: RouteOf) -> None:
    """17 teeth of module 1, 20°: 4.666 mm over 2 (tables of the span for module 1, from memory);
    deeper by 1/(2 sin 20°) = 1.46 for what the span is too much."""
    part = "{material: brass, stock: 5 mm plate, gear: {module: 1 mm, teeth: 17, width: 5 mm}, "
    acts = route_of(part + BORE + "}").acts
    tried = [act for act in acts if "tried" in act.tags]
    assert [act.act for act in tried] == ["mill", "measure"]
    assert "3 spaces side by side" in tried[0].what  # two teeth stand between three
    assert "2 teeth, 4.666 mm" in tried[1].what
    assert "0.01 mm that it is too much go 0.015 mm deeper" in tried[1].what
    assert acts.index(tried[0]) < acts.index(tried[1])
    assert acts.index(tried[1]) < next(n for n, a in enumerate(acts) if a.act == "cut-teeth")


def test_a_rotary_table_stands_on_edge_under_an_upright_spindle(route_of: RouteOf) -> None:
    """Common practice, no source."""
    route = route_of(GEAR)
    (setup,) = [one for one in route.setups if any(a.act == "cut-teeth" for a in one.acts)]
    assert "on edge" in setup.true
    assert "axis level" in setup.true
    # The lathe's centre stands in the lathe: on the mill there is a footstock or none.
    assert "tailstock" not in setup.grip.support
