"""Discs of plate: what is left of it beyond the circle, for the clamps and for the vice.

A clamp reaches 8 mm on to the work and keeps 5 mm clear of a cut: common practice, no source.
"""

from __future__ import annotations

import pytest

from binder.api import BarUse
from binder_plugins.operations.facts import Route
from tests.plugins.operations.conftest import HEAD, Plan


def disc(across: float, hole: str) -> str:
    """A disc of 2 mm plate, which is sawn out 1.5 mm over size."""
    return (
        f"{HEAD}  part: {{material: brass, stock: 2 mm plate, disc: {{diameter: {across:g} mm,"
        f" thickness: 2 mm}}, features: {{{hole}}}}}\n"
    )


REAMED = "bore: {reamed: 6 mm, depth: through}"


@pytest.mark.parametrize(
    ("across", "hole", "long"),
    [
        # 15.5 / 2 less 3 are 4.75 mm beside the bore: 13 more at either end, 15.5 + 26.
        (14, REAMED, 41.5),
        # 29.5 / 2 less 3 are 11.75: 29.5 + 26.
        (28, REAMED, 55.5),
        # 33.5 / 2 less 3 are 13.75: the clamps lie on the disc.
        (32, REAMED, 33.5),
        # Without a hole a vice holds it while it is sawn: 33.5 / 2 is enough, 15.5 / 2 is not.
        (14, "", 41.5),
        (32, "", 33.5),
    ],
)
def test_a_small_disc_is_held_by_the_plate_beyond_its_circle(
    plan: Plan, across: float, hole: str, long: float
) -> None:
    design = plan(disc(across, hole)).design
    assert design is not None
    use = design.facts.about(BarUse, "part")
    assert use is not None
    assert (float(use.length), float(use.width or 0)) == (long, across + 1.5)
    assert float(use.over) == long - across - 1.5
    route = design.facts.about(Route, "part")
    assert route is not None
    held = [one.grip.on for one in route.setups if "the plate" in one.grip.on]
    assert any("13 mm of it beyond the circle" in on for on in held) == bool(use.over)
    mark = next(act for act in route.acts if act.act == "mark-out")
    assert (f"a piece at least {long:g} mm × {across + 1.5:g} mm" in mark.what) == bool(use.over)
