"""A bore with a floor: no drill goes through it, and the tool leaves it flat."""

from __future__ import annotations

import math
import re

from tests.plugins.operations.conftest import RouteOf

BUSH = (
    "{material: bronze, stock: 20 mm round bar, turned: [{name: outside, diameter: 18 mm, length:"
    " 21 mm}], features: {bore: {bored: 14 mm, on: outside, depth: %g mm}}}"
)


def test_the_point_of_a_drill_stays_off_the_floor(route_of: RouteOf) -> None:
    """A point of 118° is d / 2 × tan 31° long (geometry): the drill stops by so much short."""
    acts = route_of(BUSH % 20).acts
    drills = [act for act in acts if act.act == "drill"]
    assert drills
    for act in drills:
        found = re.search(r"⌀([\d.]+) mm, ([\d.]+) mm deep", act.what)
        assert found is not None
        across, deep = map(float, found.groups())
        assert deep + across / 2 * math.tan(math.radians(31)) < 20
    bore = next(act for act in acts if act.act == "bore")
    assert "its floor faced flat: 1 mm of it is left" in bore.what
    assert "square to the floor" in bore.tool


def test_a_floor_with_metal_behind_it_is_not_measured(route_of: RouteOf) -> None:
    bore = next(act for act in route_of(BUSH % 10).acts if act.act == "bore")
    assert "its floor faced flat" in bore.what
    assert "of it is left" not in bore.what


def test_a_bore_right_through_has_no_floor(route_of: RouteOf) -> None:
    acts = route_of((BUSH % 20).replace("20 mm}}}", "through}}}")).acts
    assert not any("floor" in f"{act.what} {act.tool}" for act in acts)
