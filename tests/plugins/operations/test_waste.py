"""What lies under work that is drilled right through: a waste board, where nothing else would.

Wood splinters where the drill leaves it, and a table has no room under it: common practice, no
source.
"""

from __future__ import annotations

import pytest

from binder_plugins.operations.facts import SetUp
from tests.plugins.operations.conftest import RouteOf

WIDE = (
    "{{material: {material}, {shape}: {{length: {long} mm, width: {wide} mm, thickness: 20 mm}}, "
)
HOLE = "features: {{hole: {{drilled: 8 mm, on: top, depth: {deep}}}}}}}"


def drilled(route_of: RouteOf, material: str, long: int, wide: int, deep: str) -> SetUp:
    shape = "board" if material == "oak" else "plate"
    part = (WIDE + HOLE).format(material=material, shape=shape, long=long, wide=wide, deep=deep)
    setups = route_of(part).setups
    return next(one for one in setups if any(act.act == "drill" for act in one.acts))


@pytest.mark.parametrize(
    ("material", "long", "wide", "deep", "is_under"),
    [
        # Too wide for the vice: on the table.
        ("oak", 220, 150, "through", True),
        ("mild steel", 220, 150, "through", True),
        ("oak", 220, 150, "10 mm", False),
        # In the vice metal lies on parallels, wood on the board.
        ("oak", 60, 40, "through", True),
        ("mild steel", 60, 40, "through", False),
    ],
)
def test_a_drill_comes_out_in_waste(
    material: str, long: int, wide: int, deep: str, route_of: RouteOf, *, is_under: bool
) -> None:
    setup = drilled(route_of, material, long, wide, deep)
    assert ("on a waste board" in setup.grip.holder) == is_under
    assert ("waste board" in setup.true) == is_under
    assert ("breaks through" in setup.true) == (is_under and material == "oak")
    assert not (is_under and "parallels" in setup.grip.holder)
