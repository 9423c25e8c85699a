"""Wire: an eye is flattened before it is drilled, wide enough for its hole."""

from __future__ import annotations

import math
import re

from tests.plugins.operations.conftest import RouteOf

EYE = (
    "{material: mild steel, stock: 3 mm wire, cut: 40 mm, features: {eye: {drilled: %g mm,"
    " across: outside, at: 3 mm from right, depth: through}}}"
)


def test_an_eye_is_flattened_before_it_is_drilled(route_of: RouteOf) -> None:
    """⌀1.6 in wire of 3 mm leaves 0.7 mm beside it; flat it is twice as wide as its hole. What
    is hammered keeps its section (no metal is lost): 7.07 mm². Common practice, no source."""
    acts = route_of(EYE % 1.6).acts
    told = [act.act for act in acts if act.feature == "eye"]
    assert told.index("flatten") < told.index("spot") < told.index("drill")
    flat = next(act.what for act in acts if act.act == "flatten")
    found = re.search(r"to ([\d.]+) mm thick, ([\d.]+) mm wide", flat)
    assert found is not None
    thick, wide = map(float, found.groups())
    assert math.isclose(wide, 2 * 1.6)
    assert math.isclose(thick * wide, math.pi / 4 * 9, rel_tol=0.02)


def test_a_small_hole_needs_no_flat(route_of: RouteOf) -> None:
    """⌀1 in wire of 3 mm has its own diameter beside it on either side."""
    acts = route_of(EYE % 1.0).acts
    assert not any(act.act == "flatten" for act in acts)


def test_its_place_along_is_told(route_of: RouteOf) -> None:
    spot = next(act for act in route_of(EYE % 1.0).acts if act.act == "spot")
    assert "3 mm from the right-hand end" in spot.what
