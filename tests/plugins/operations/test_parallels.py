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


SLOTTED = (
    "{{material: mild steel, block: {{length: 14 mm, width: {wide} mm, height: {high} mm}},"
    " features: {{eye: {{slotted: 8 mm, on: left, length: 10 mm, depth: {deep}}}}}}}"
)


@pytest.mark.parametrize(
    ("wide", "high", "deep", "holder", "on", "true"),
    [
        # 10 of 40 along the jaws' way: 15 free at each jaw, less 1 that the cutter may wander.
        (40, 60, "through", "on parallels", "front and back", "5 mm, against the jaws"),
        # 10 of 14 leave 1 mm beside it; 8 of 26 leave 8 the other way.
        (14, 26, "through", "on parallels", "top and underside", "5 mm, against the jaws"),
        # 10 of 18 leave 3 mm to each jaw; 8 of 90 is too long a grip.
        (18, 90, "through", "on parallels", "front and back", "3 mm, against the jaws"),
        # Neither way has room.
        (14, 14, "through", "on packing at both ends of the cut", "its sides", ""),
        (14, 26, "4 mm", "on parallels", "its sides", ""),
    ],
)
def test_a_cutter_does_not_come_out_on_a_parallel(
    wide: int, high: int, deep: str, holder: str, on: str, true: str, route_of: RouteOf
) -> None:
    """What is milled through a face of so much by so much; common practice, no source."""
    setups = route_of(SLOTTED.format(wide=wide, high=high, deep=deep)).setups
    setup = next(
        one for one in setups if any(act.feature == "eye" and act.act == "mill" for act in one.acts)
    )
    assert setup.grip.holder == f"machine vice, {holder}"
    assert setup.grip.on.endswith(on)
    assert setup.true.endswith(true)
    assert bool(setup.true) == bool(true)
