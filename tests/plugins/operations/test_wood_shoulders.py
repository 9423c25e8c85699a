"""Tenons and halvings: all shoulders marked and sawn in one set-up, the cheeks after them.

Common practice, no source.
"""

from __future__ import annotations

from binder_plugins.operations.facts import Route, SetUp
from tests.plugins.operations.conftest import HEAD, Plan

BOARD = "board: {length: 120 mm, width: 30 mm, thickness: 20 mm}"
TENON = """
    a: {stepped: 15 mm, on: front, side: right, depth: 5 mm}
    b: {stepped: 15 mm, on: back, side: right, depth: 5 mm}
    c: {stepped: 15 mm, on: top, side: right, depth: 4 mm}
    d: {stepped: 15 mm, on: underside, side: right, depth: 4 mm}
"""
HALVING = "\n    a: {slotted: 30 mm, on: top, depth: 10 mm, length: 30 mm, at: 60 mm from left}\n"


def planned(plan: Plan, features: str, material: str = "oak", shape: str = BOARD) -> Route:
    text = f"{HEAD}  rail:\n   material: {material}\n   {shape}\n   features:{features}"
    design = plan(text).design
    assert design is not None
    route = design.facts.about(Route, "rail")
    assert route is not None
    return route


def _shoulders(route: Route) -> tuple[SetUp, SetUp]:
    """The set-up on the bench hook, and the next one."""
    (place,) = [n for n, one in enumerate(route.setups) if one.grip.holder == "bench hook"]
    return route.setups[place], route.setups[place + 1]


def test_all_shoulders_of_a_tenon_are_one_set_up(plan: Plan) -> None:
    route = planned(plan, TENON)
    sawn, pared = _shoulders(route)
    assert [act.feature for act in sawn.acts] == ["marks of the shoulders", "a", "b", "c", "d"]
    assert [act.feature for act in pared.acts] == ["a", "b", "c", "d"]
    assert all(act.tool == "tenon saw" for act in sawn.acts[1:])
    assert all("cheek" in act.what for act in pared.acts)
    marks = sawn.acts[0].what
    assert "a line all round, 15 mm from the right end" in marks
    assert "5 mm from the front and back, 4 mm from the top and underside" in marks


def test_a_halving_in_the_middle_has_two_shoulders_and_a_floor(plan: Plan) -> None:
    # 30 wide about 60: from 45, and to 75, which is 120 - 75 = 45 from the right.
    route = planned(plan, HALVING)
    sawn, pared = _shoulders(route)
    assert "on the top, 45 mm from the left end; on the top, 45 mm from the right end" in (
        sawn.acts[0].what
    )
    assert "the two shoulders on the top" in sawn.acts[1].what
    assert "pare the floor on the top" in pared.acts[0].what


def test_metal_is_milled_face_by_face(plan: Plan) -> None:
    shape = "block: {length: 120 mm, width: 30 mm, height: 20 mm}"
    route = planned(plan, TENON, "brass", shape)
    assert not any(one.grip.holder == "bench hook" for one in route.setups)


def test_what_runs_along_the_grain_has_no_shoulder(plan: Plan) -> None:
    rebate = "\n    a: {stepped: 5 mm, on: top, side: front, depth: 5 mm}\n"
    assert not any(one.grip.holder == "bench hook" for one in planned(plan, rebate).setups)
