"""A tap turned by hand has its wrench, and something that keeps it square; common practice."""

from __future__ import annotations

import pytest

from binder.compiler import Phase
from binder_plugins.operations.aids.facts import ToolsFact
from binder_plugins.operations.facts import Act, Grip, Route, SetUp
from binder_plugins.operations.hand_tapped import hand_tapped
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf

BLOCK = (
    "{material: brass, stock: 20 mm square bar, block: {length: 30 mm, width: 20 mm,"
    " height: 20 mm}, features: {thread: {tapped: M3, on: top, at: middle, depth: 6 mm}}}"
)
STUD = (
    "{material: mild steel, stock: 10 mm round bar, turned: [{name: body, diameter: 10 mm,"
    " length: 15 mm}], features: {thread: {tapped: M3, on: right, depth: 6 mm}}}"
)


def _tap(route: Route) -> tuple[SetUp, Act]:
    return next((one, act) for one in route.setups for act in one.acts if act.act == "tap")


@pytest.mark.parametrize(("part", "by"), [(BLOCK, "in the chuck of the spindle"), (STUD, "centre")])
def test_what_stands_in_line_with_the_hole_keeps_the_tap_square(
    part: str, by: str, route_of: RouteOf
) -> None:
    setup, act = _tap(route_of(part))
    assert not act.speed
    assert act.tool.endswith(", tap wrench")
    assert act.what.count("kept square") == 1
    assert by in act.what
    assert setup.place == ("lathe" if by == "centre" else "mill")


@pytest.mark.parametrize(
    ("place", "speed", "words"),
    [("bench", "", "; kept square: tried with a square"), ("drill", "120", "")],
)
def test_at_the_bench_a_square_tells_and_under_power_neither(
    place: str, speed: str, words: str
) -> None:
    act = Act("a 1", "tap", "tap M6", tool="M6 taps: taper", speed=speed)
    setup = SetUp(1, place, "", Grip("bench vice", "bench", "its sides"), "", (act,))
    (done,) = hand_tapped(Route("a", "a", (setup,))).acts
    assert done.what.startswith(f"tap M6{words}")
    assert (done == act) == bool(speed)


def test_wrench_and_square_are_laid_out(plan: Plan) -> None:
    design = plan(f"{HEAD}  part: {BLOCK}\n", upto=Phase.COMPOSE).design
    assert design is not None
    (tools,) = design.facts.all(ToolsFact)
    assert "tap wrench" in {one.name for one in tools.tools}
