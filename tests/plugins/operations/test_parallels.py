"""What lies under work in the vice where a drill comes out: clear of it, or wood.

Common practice, no source: parallels are some 5 mm thick, thin ones 3, and lie along the jaws.
"""

from __future__ import annotations

import pytest

from binder_plugins.operations.facts import SetUp
from tests.plugins.operations.conftest import RouteOf

BLOCK = (
    "{{material: mild steel, block: {{length: 60 mm, width: {wide} mm, height: 12 mm}},"
    " features: {{holes: {{drilled: 4 mm, on: top, depth: {deep}, at: {places}}}}}}}"
)


def drilled(route_of: RouteOf, wide: int, places: str, deep: str = "through") -> SetUp:
    part = BLOCK.format(wide=wide, places=places, deep=deep)
    setups = route_of(part).setups
    return next(one for one in setups if any(act.act == "drill" for act in one.acts))


EDGE, MIDDLE = "4 mm from front", "middle"


@pytest.mark.parametrize(
    ("wide", "places", "deep", "holder", "is_told"),
    [
        # In the middle of 40 mm nothing is over the 5 mm at either jaw.
        (40, MIDDLE, "through", "machine vice, on parallels", False),
        # 4 mm from the edge: 2 to 6 with the radius, over a parallel; there is room beside it.
        (40, EDGE, "through", "machine vice, on parallels", True),
        # It does not come out below.
        (40, EDGE, "5 mm", "machine vice, on parallels", False),
        # Of 12 mm the hole with what a drill wanders leaves 7 to 12: not room for two.
        (12, EDGE, "through", "machine vice, on wood packing", False),
    ],
)
def test_a_drill_does_not_come_out_on_a_parallel(
    wide: int, places: str, deep: str, holder: str, route_of: RouteOf, *, is_told: bool
) -> None:
    setup = drilled(route_of, wide, places, deep)
    assert setup.grip.holder == holder
    assert ("parallels clear of the holes" in setup.true) == is_told
