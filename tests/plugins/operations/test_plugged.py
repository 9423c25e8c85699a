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
