"""A bore with a floor: no drill goes through it, and the tool leaves it flat."""

from __future__ import annotations

import math
import re

import pytest

from tests.plugins.operations.conftest import RouteOf

BUSH = (
    "{material: bronze, stock: 20 mm round bar, turned: [{name: outside, diameter: 18 mm, length:"
    " 21 mm}], features: {bore: {bored: 14 mm, on: outside, depth: %g mm}}}"
)


@pytest.mark.parametrize(
    ("bore", "tool"),
    [
        (12, "small boring tool"),  # 7 / 8 × 8 = 7 mm from tip to back, the radius is 6: a pip.
        (14, "small boring tool"),  # 7 is no less than 7.
        (15, "boring bar (from ⌀8 mm)"),  # 7 < 7.5; the bar from 14: 12.25.
        (25, "boring bar (from ⌀8 mm)"),  # No drill here opens it for the bar from 14.
    ],
)
def test_a_bar_faces_a_floor_to_the_centre_or_is_not_told(
    bore: int, tool: str, route_of: RouteOf
) -> None:
    """Built-in bars enter 8 and 14 mm; tip to back 7 / 8 of that: common practice, no source."""
    part = (BUSH % 15).replace("14 mm", f"{bore} mm").replace("18 mm", "30 mm").replace("20", "32")
    found = next(act for act in route_of(part).acts if act.act == "bore")
    assert found.tool.startswith(tool)
    assert found.tool.endswith("square to the floor")


def test_a_bore_right_through_takes_the_bar_that_enters(route_of: RouteOf) -> None:
    part = (BUSH % 15).replace("14 mm", "12 mm").replace("depth: 15 mm", "depth: through")
    found = next(act for act in route_of(part).acts if act.act == "bore")
    assert found.tool == "boring bar (from ⌀8 mm)"


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
