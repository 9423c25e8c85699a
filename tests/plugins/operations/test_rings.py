"""Holes beside the axis of turned work: not from the tailstock, with their place told."""

from __future__ import annotations

import math

import pytest

from tests.plugins.operations.conftest import RouteOf, without

# A flange of 2 mm before a neck of 8 mm; 9 mm out from the axis, ⌀3 passes the neck by far.
FLANGED = (
    "{material: brass, stock: 25 mm round bar, turned: [{name: neck, diameter: 8 mm, length: "
    "12 mm}, {name: flange, diameter: 24 mm, length: 2 mm}], features: {"
    "bore: {reamed: 5 mm, on: flange, depth: through}, "
    "tie: {drilled: 3 mm, on: flange, depth: %s, pattern: %s off on 18 mm PCD}}}"
)


def test_one_hole_beside_the_axis_is_not_drilled_from_the_tailstock(route_of: RouteOf) -> None:
    """What stands in the tailstock cuts on the axis alone."""
    route = route_of(FLANGED % ("2 mm", "1"))
    places = {setup.place for setup in route.setups for act in setup.acts if act.feature == "tie"}
    assert places == {"mill", "bench"}


def test_its_place_is_half_the_pitch_circle_from_the_axis(route_of: RouteOf) -> None:
    """18 mm of pitch circle: 9 mm from the axis, for one hole as for three."""
    for count in "13":
        acts = route_of(FLANGED % ("2 mm", count)).acts
        first = next(act for act in acts if act.feature == "tie")
        assert "9 mm from the axis" in first.what


def test_out_behind_its_flange_it_is_scraped_there(route_of: RouteOf) -> None:
    """2 mm deep in a flange of 2 mm it comes out beside the neck; 1 mm deep it does not."""
    out = route_of(FLANGED % ("2 mm", "1")).acts
    assert any(act.act == "clear" and act.feature == "tie" for act in out)
    drill = next(act for act in out if act.act == "drill" and act.feature == "tie")
    assert "the flange alone" in drill.what
    blind = route_of(FLANGED % ("1 mm", "1")).acts
    assert not any(act.act == "clear" for act in blind)


@pytest.mark.parametrize(
    ("across", "high", "start"), [(6, 2, "spot"), (8, 1, "pop"), (8, 2, "start"), (8, 4, "start")]
)
def test_no_tool_starts_a_hole_where_it_would_foul(
    across: float, high: float, start: str, route_of: RouteOf
) -> None:
    """⌀1.5 hole, 5 mm out beside a boss of ⌀8: 1 mm of room for a 3 mm centre drill, which
    wants 1.5 mm. Beside a boss of ⌀6 there are 2 mm. A punch of 60° is 0.58 mm thick to a side
    1 mm above its point, 1.15 mm at 2 mm."""
    part = (
        "{material: brass, stock: 15 mm round bar, turned: [{name: tail, diameter: 6 mm, "
        "length: 10 mm}, {name: flange, diameter: 14 mm, length: 4 mm}, "
        "{name: boss, diameter: %g mm, length: %g mm}], features: "
        "{tie: {drilled: 1.5 mm, on: flange, depth: 2 mm, pattern: 1 off on 10 mm PCD}}}"
    )
    acts = route_of(part % (across, high)).acts
    spot = next(act for act in acts if act.act == "spot" and act.feature == "tie")
    assert start != "spot" or math.isclose(spot.size, 3.0)
    assert spot.what.startswith(start)
    tool = {"spot": "centre drill", "pop": "centre punch", "start": "1.5 mm drill itself"}[start]
    assert tool in spot.tool


def test_without_a_mill_the_circle_is_scribed_before_it_is_drilled(route_of: RouteOf) -> None:
    """A drilling machine has no handwheels to count a pitch circle by."""
    acts = route_of(FLANGED % ("2 mm", "3"), "", without("machines/mills")).acts
    told = [act.act for act in acts if act.feature in {"tie", "marks tie"}]
    assert told.index("mark-out") < told.index("spot") < told.index("drill")
