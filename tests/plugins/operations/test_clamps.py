"""Where clamps stand on plates that are worked on the table, by what is cut there.

Common practice, no source: a clamp takes 8 mm of the edge and 20 mm along it, and the cutter
keeps 5 mm from it; nothing is clamped over what is cut away, nor where the cutter runs out.
"""

from __future__ import annotations

import pytest

from binder_plugins.operations.facts import SetUp
from binder_solid.along_axes import spans_of
from binder_solid.forms import Ball, Box, Cone, Cylinder, Frame
from tests.plugins.operations.conftest import RouteOf

PLATE = (
    "{{material: mild steel, stock: flat bar,"
    " block: {{length: 260 mm, width: 50 mm, height: 6 mm}}, features: {{{features}}}}}"
)
NEAR = "'100 mm from left, 5 mm from front'"


def on_table(route_of: RouteOf, features: str) -> SetUp:
    setups = route_of(PLATE.format(features=features)).setups
    return next(one for one in setups if "on the table" in one.grip.holder)


@pytest.mark.parametrize(
    ("features", "on", "told"),
    [
        # An open slot: the cutter comes out at both ends, both long edges are free.
        (
            "way: {slotted: 12 mm, on: top, length: 260 mm, depth: 3 mm}",
            "its front and back edges",
            "no clamp on its left or right edge, where the cutter runs out",
        ),
        # A hole of 4 mm, 5 mm from the front: its rim with 5 mm more is 93 to 107 from the left.
        (
            f"hole: {{drilled: 4 mm, on: top, depth: through, at: {NEAR}}}",
            "its front edge, 0 mm to 93 mm and 107 mm to 260 mm from left and its back edge",
            "the packing clear of what is drilled through",
        ),
        # In the middle, 21 mm from either edge, nothing is in the way of a clamp.
        ("hole: {drilled: 4 mm, on: top, depth: 3 mm}", "its ends and edges", ""),
    ],
)
def test_clamps_keep_clear_of_cuts(features: str, on: str, told: str, route_of: RouteOf) -> None:
    setup = on_table(route_of, features)
    assert setup.grip.on == on
    assert told in setup.true
    assert bool(told) == bool(setup.true)


def test_a_clamp_is_moved_where_no_edge_is_free(route_of: RouteOf) -> None:
    """A pocket leaves 3 mm all round: no clamp of 8 mm stands anywhere."""
    setup = on_table(route_of, "deep: {pocketed: 254 mm, on: top, width: 44 mm, depth: 3 mm}")
    assert setup.grip.on == "its ends and edges"
    assert setup.true.startswith("no edge is free: one clamp at a time is moved")


def test_what_is_round_reaches_as_far_as_the_square_about_it() -> None:
    """By hand: a bar of radius 2 along x from (1, 5, 7), 10 long."""
    along_x = Frame((1.0, 5.0, 7.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0))
    assert spans_of(Cylinder(2.0, 10.0, along_x)) == ((1.0, 11.0), (3.0, 7.0), (5.0, 9.0))
    assert spans_of(Cone(1.0, 2.0, 10.0, along_x)) == ((1.0, 11.0), (3.0, 7.0), (5.0, 9.0))
    assert spans_of(Box(1.0, 2.0, 3.0)) == ((0.0, 1.0), (0.0, 2.0), (0.0, 3.0))
    assert spans_of(Ball(1.0)) is None
