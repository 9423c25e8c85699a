"""What lies under work in the vice where a drill comes out: clear of it, or wood.

Common practice, no source: parallels are some 5 mm thick, thin ones 3, and lie along the jaws.
"""

from __future__ import annotations

import pytest

from binder.api import DrawnBox, Stroke
from binder_plugins.operations.facts import Grip, SetUp
from binder_plugins.operations.sketch import sketch
from binder_solid.facts import FormFact
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf

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


@pytest.mark.parametrize(
    ("stock", "size", "is_low"),
    [
        # The built-in jaws are 25 mm deep, and the cutter passes 3 mm over them.
        ("40 mm x 12 mm flat bar", (60, 40, 12), True),
        ("30 mm square bar", (60, 30, 30), False),
    ],
)
def test_low_work_is_milled_on_parallels(
    stock: str, size: tuple[int, int, int], route_of: RouteOf, *, is_low: bool
) -> None:
    """In words, sketch and lay-out alike. Common practice, no source."""
    long, wide, high = size
    part = (
        f"{{material: mild steel, stock: {stock}, block: {{length: {long} mm,"
        f" width: {wide} mm, height: {high} mm}}}}"
    )
    setup = next(one for one in route_of(part).setups if one.place == "mill")
    assert setup.grip.holder == f"machine vice{', on parallels' if is_low else ''}"


@pytest.mark.parametrize(
    ("holder", "drawn"),
    [
        ("machine vice", 0),
        ("machine vice, on parallels", 2),
        ("machine vice, on wood packing", 1),
        ("clamped on wood in the machine vice", 1),
    ],
)
def test_the_sketch_draws_what_the_words_lay_under_the_work(
    holder: str, drawn: int, plan: Plan
) -> None:
    part = "{material: mild steel, block: {length: 60 mm, width: 40 mm, height: 12 mm}}"
    design = plan(f"{HEAD}  part: {part}\n").design
    assert design is not None
    grip = Grip(holder, "vice", "its sides", 40.0)
    found = sketch(SetUp(1, "mill", "", grip, "top up", ()), design.facts.about(FormFact, "part"))
    assert found is not None
    thin = [one for one in found.shapes if isinstance(one, DrawnBox) and one.stroke == Stroke.THIN]
    assert len(thin) == drawn
