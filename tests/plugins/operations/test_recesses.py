"""A recess is opened before it is bored, where the hole lets no boring tool in.

Least bore of a bar: the workshop's own figure. A drill's point of 118 degrees: ISO 5419; its
height is r / tan(59 deg). The rest is common practice, no source.
"""

from __future__ import annotations

import math

import pytest

from tests.plugins.operations.conftest import RouteOf, without

CUP = (
    "{{material: brass, stock: 20 mm round bar, turned: [{{name: boss, diameter: 16 mm,"
    " length: 6 mm}}, {{name: rim, diameter: 20 mm, length: 9 mm}}], features: {{hole:"
    " {{reamed: {hole} mm, on: boss, depth: through}}, cup: {{recessed: 15 mm, on: rim,"
    " depth: 5 mm}}}}}}"
)


def test_a_slot_drill_opens_it_short_of_floor_and_wall(route_of: RouteOf) -> None:
    opened, bored = (one for one in route_of(CUP.format(hole=6)).acts if one.feature == "cup")
    assert (opened.act, bored.act) == ("drill", "bore")
    assert "slot drill" in opened.tool
    assert 6 < opened.size < 15
    assert opened.deep < 5
    # The bar's least bore stands in its name.
    assert float(bored.tool.split("⌀")[1].split(" ")[0]) <= opened.size


def test_a_drill_stops_where_its_point_leaves_the_floor_alone(route_of: RouteOf) -> None:
    route = route_of(CUP.format(hole=6), workshop=without("cutters/slot_drills"))
    opened, _ = (one for one in route.acts if one.feature == "cup")
    assert opened.tool.endswith("mm drill")
    point = (opened.size - 6) / 2 / math.tan(math.radians(59))
    assert opened.deep + point == pytest.approx(4.8)


def test_a_hole_that_lets_the_bar_in_is_left_alone(route_of: RouteOf) -> None:
    acts = [one for one in route_of(CUP.format(hole=10)).acts if one.feature == "cup"]
    assert [one.act for one in acts] == ["bore"]
