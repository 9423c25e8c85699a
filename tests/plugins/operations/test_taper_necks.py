"""A neck behind a collar is so wide that the pointed tool of the taper goes down into it."""

from __future__ import annotations

from math import radians, sin, tan

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_plugins.operations.facts import Act, Route
from binder_plugins.operations.taper_necks import neck_between, point_width, stopped_short
from tests.plugins.operations.conftest import RouteOf

COLLARED = (
    "{material: mild steel, stock: %s mm round bar, turned: [{name: foot, diameter: %s mm, length:"
    " 5 mm}, {name: waist, taper: 22 mm to 16 mm, length: %s mm}, {name: collar, diameter: 20 mm,"
    " length: 8 mm}]}"
)
LONG = st.floats(1.0, 60.0)
ACROSS = st.floats(2.0, 40.0)


def _of(route: Route, act: str) -> Act:
    return next(one for one in route.acts if one.act == act and one.feature == "waist")


def test_the_point_is_as_wide_as_its_flanks_lean() -> None:
    """Walls of 1.8 and 4.3 mm: (4.3 + 0.573) tan 28° + (1.8 + 0.573) tan 2° = 2.67 mm, by hand.

    The flanks of 2° and 28° meet 0.2 / sin 15° - 0.2 = 0.573 mm under the round of the point.
    """
    assert point_width(1.8, 4.3) == pytest.approx(2.67, abs=0.005)


def test_the_point_stops_short_of_the_shoulder_that_its_flank_would_cut(
    route_of: RouteOf,
) -> None:
    """A foot 1.5 mm over the taper, the flank 28 degrees off square: 1.5 tan 28 = 0.80 mm, by
    hand."""
    assert stopped_short(1.5) == pytest.approx(0.7976, abs=1e-4)
    taper = _of(route_of(COLLARED % (25, 25, 32)), "taper").what
    assert "stop its point 0.8 mm short of the foot" in taper


def test_a_neck_is_plunged_wider_than_the_parting_tool_where_the_point_wants_it(
    route_of: RouteOf,
) -> None:
    """2.9 mm, where the cone of 32 mm is 16 + 6 × 2.9 / 32 mm; a second plunge takes half again."""
    route = route_of(COLLARED % (25, 25, 32))
    neck, tried = _of(route, "groove"), _of(route, "try-tool")
    assert "⌀16.6 mm, 2.9 mm wide, with the parting tool, 2 mm wide, in 2 plunges" in neck.what
    assert tried.what.endswith("stays clear of it down to the bottom")
    # Three minutes for a groove: common practice, no source.
    assert neck.run == pytest.approx(1.5 * 3)


def test_one_plunge_does_where_the_walls_are_low(route_of: RouteOf) -> None:
    """Bar of 22 mm: (22 - 16.4) / 2 = 2.8 mm; 3.373 tan 28° + 2.373 tan 2° + 0.2 is 2.08 mm.

    That is more than 2 mm; of 20 mm bar the wall is 1.8 mm high and 1.55 mm are enough.
    """
    wide = _of(route_of(COLLARED % (22, 22, 32)), "groove")
    assert "2.1 mm wide" in wide.what
    low = neck_between(32.0, (16.0, 22.0), (20.0, 20.0), 2.0)
    assert (low.wide, low.plunges, low.is_entered) == (2.0, 1, True)


def test_a_taper_too_short_for_the_point_is_tried_in_the_mouth_of_its_neck(
    route_of: RouteOf,
) -> None:
    """A cone of 1.5 mm is shorter than the 2 mm of the parting tool itself."""
    tried = _of(route_of(COLLARED % (25, 25, 1.5)), "try-tool")
    assert "in the mouth of the neck" in tried.what
    assert "bottom" not in tried.what


@given(LONG, ACROSS, st.floats(0.1, 10.0), st.floats(0.1, 10.0), st.floats(0.5, 4.0))
def test_what_is_entered_is_as_wide_as_the_point_and_never_under_the_cone(
    long: float, near: float, wall: float, grows: float, blade: float
) -> None:
    front, bar = near + wall, near + grows + wall
    made = neck_between(long, (near, near + grows), (front, bar), blade)
    assert made.across >= near + grows * min(made.wide / long, 1.0) - 1e-6
    assert made.wide >= blade - 1e-9
    if made.is_entered:
        under = 0.2 / sin(radians(15)) - 0.2
        low, high = (max(one - made.across, 0.0) / 2 + under for one in (front, bar))
        assert made.wide >= high * tan(radians(28)) + low * tan(radians(2)) - 1e-6
        assert made.wide <= long
    else:
        assert made.plunges == 1
