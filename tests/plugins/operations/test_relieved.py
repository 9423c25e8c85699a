"""A thread that a larger hole meets from the other end is tapped through."""

from __future__ import annotations

import pytest

from tests.plugins.operations.conftest import RouteOf

BODY = (
    "{{material: mild steel, stock: 25 mm round bar, turned: [{{name: body, diameter: 25 mm,"
    " length: 45 mm}}], features: {{relief: {{drilled: 10.5 mm, on: left, depth: {deep} mm}},"
    " thread: {{tapped: M10, on: right, depth: 15 mm}}}}}}"
)


def test_the_drill_goes_past_a_thread_that_is_met_and_the_tap_runs_on(route_of: RouteOf) -> None:
    """15 + 8.5 mm to drill; no floor for chips; the burr of the relief is run out of the thread
    after it. Common practice, no source."""
    acts = route_of(BODY.format(deep=30)).acts
    drill = [one for one in acts if one.feature == "thread" and one.act == "drill"][-1]
    tap = next(one for one in acts if one.act == "tap")
    names = [one.act for one in acts if one.feature in {"thread", "relief"}]
    assert drill.deep == pytest.approx(23.5)
    assert "15 mm of full thread, on past it" in tap.what
    assert "blind" not in tap.spoils
    chase = next(one for one in acts if one.act == "chase")
    assert chase.tool == "M10 taps, tap wrench"
    assert tap.tool.partition(":")[0] == "M10 taps"
    assert names.index("chase") > max(n for n, one in enumerate(names) if one == "drill")


def test_a_thread_with_metal_left_before_the_relief_stays_blind(route_of: RouteOf) -> None:
    """5 mm of metal is left between the two. Common practice, no source."""
    acts = route_of(BODY.format(deep=25)).acts
    tap = next(one for one in acts if one.act == "tap")
    assert "blind" in tap.spoils
    assert all(one.act != "chase" for one in acts)
