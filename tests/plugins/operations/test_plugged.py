"""A hole that cuts the wall of a reamed one aside of its middle."""

from __future__ import annotations

import pytest

from tests.plugins.operations.conftest import RouteOf

SLIDE = (
    "{{material: brass, block: {{length: 34 mm, width: 24 mm, height: 8 mm}}, features: {{"
    "keeper: {{drilled: 1.5 mm, on: top, depth: 6 mm, at: '2.5 mm from left, {aside} mm from"
    " front'}}, socket: {{reamed: 3 mm, on: left, depth: 5 mm}}}}}}"
)


@pytest.mark.parametrize(("aside", "is_plugged"), [(13.6, True), (18, False)])
def test_the_wall_is_cut_after_reaming_with_a_plug_in_the_hole(
    aside: float, is_plugged: bool, route_of: RouteOf
) -> None:
    """1.6 mm aside of the middle a drill of 0.75 mm radius cuts a wall at 1.5 mm; at 6 mm it
    does not. A drill runs off into a hole that it half meets, and a reamer into its notch.
    Common practice, no source."""
    acts = route_of(SLIDE.format(aside=aside)).acts
    names = [one.act for one in acts]
    keeper = [one.act for one in acts if one.feature == "keeper"]
    if is_plugged:
        assert keeper == ["clamp-stack", "spot", "drill", "separate"]
        assert names.index("ream") < names.index("clamp-stack")
    else:
        assert keeper == ["spot", "drill"]


@pytest.mark.parametrize(("depth", "tool"), [("5 mm", "pliers"), ("through", "pin punch")])
def test_a_plug_in_a_blind_hole_is_drawn_by_its_end(
    depth: str, tool: str, route_of: RouteOf
) -> None:
    """A punch has nothing to drive from behind in a blind hole. Common practice, no source."""
    spec = SLIDE.format(aside=13.6).replace("on: left, depth: 5 mm", f"on: left, depth: {depth}")
    acts = [one for one in route_of(spec).acts if one.feature == "keeper"]
    assert acts[-1].tool == f"{tool}, 3 mm reamer"
    is_blind = depth != "through"
    assert ("standing out" in acts[0].what) == is_blind
    assert acts[-1].what.startswith("twist" if is_blind else "drive")
