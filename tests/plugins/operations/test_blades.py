"""The blade of a grooving tool against the height that its blank has to pass: plain subtraction.

By how much it is longer than that is common practice, no source.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

import pytest

from binder.api import DrawnBox, Polyline, SmallWork
from binder.pages import text_of
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.facts import Route
from binder_plugins.operations.leaf import operations
from binder_solid.facts import FormFact
from tests.plugins.operations.conftest import Plan, without
from tests.plugins.operations.test_order import MODELS, design_of
from tests.plugins.operations.test_stopped_and_held import KNOB
from tests.plugins.operations.test_tools_for_tools import designed, stub_of

_LONG = re.compile(r"([\d.]+) mm long at least")
NECKED = (
    "  pin: {material: brass, stock: 20 mm round bar, turned: [{name: head, diameter: 18 mm,"
    " length: 9 mm}, {name: shank, diameter: %s mm, length: 30 mm}], features: {neck: {%s: 1 mm,"
    " on: shank, at: %s mm from left, depth: 0.5 mm}}}\n"
)


def blade_of(works: Iterable[SmallWork]) -> float:
    """How long in mm the blade of the only grooving tool is told."""
    (step,) = (one.steps[0] for one in works if re.match("grooving|undercut", one.subject))
    found = _LONG.search(step)
    assert found is not None, step
    return float(found[1])


@pytest.mark.parametrize("kind", ["grooved", "undercut"])
@pytest.mark.parametrize(
    ("shank", "at", "goes_in"),
    # Half of (18 - (8 - 2 × 0.5)) beside the head; far from it only as deep as the groove.
    [(8, 9.5, 5.5), (12, 9.5, 3.5), (8, 25, 0.5)],
)
def test_a_blade_is_longer_than_from_the_floor_to_the_step_beside_it(
    kind: str, shank: int, at: float, goes_in: float, plan: Plan
) -> None:
    design = designed(plan, NECKED % (shank, kind, at), without("cutters/parting_tool"))
    told = blade_of(design.facts.all(SmallWork))
    assert goes_in < told <= goes_in + 1


def test_a_blade_that_serves_a_stub_passes_the_bar_that_is_its_shoulder(plan: Plan) -> None:
    """The sizes are those which the steps of the stub print."""
    design = designed(plan, KNOB % 5.5)
    stub = stub_of(design)
    neck = re.search(r"shoulder to ⌀([\d.]+) mm", stub.steps[0])
    assert neck is not None
    goes_in = (float(stub.section[0]) - float(neck[1])) / 2
    assert goes_in < blade_of(design.facts.all(SmallWork)) <= goes_in + 1


@pytest.mark.parametrize(("model", "count"), [(MODELS[0], 3), (MODELS[1], 0), (MODELS[2], 1)])
def test_every_tool_that_is_ground_to_groove_tells_its_blade(model: str, count: int) -> None:
    made = [one for one in collect_tools(design_of(model)).facts if isinstance(one, SmallWork)]
    steps = [one.steps[0] for one in made if re.match("grooving|undercut", one.subject)]
    assert len(steps) >= count
    assert all(_LONG.search(step) for step in steps)


def test_a_stub_is_drawn_as_thick_as_the_bar_that_it_is_made_of(plan: Plan) -> None:
    """To one scale with the part on it: both heights are taken off the drawing."""
    design = designed(plan, KNOB % 5.5)
    route, form = design.facts.about(Route, "knob"), design.facts.about(FormFact, "knob")
    assert route is not None
    assert form is not None
    groups = operations(route, design).groups
    (held,) = (one for one in groups if "screwed stub" in text_of(one.title))
    assert held.picture is not None
    shapes = held.picture.drawing.shapes
    ys = [y for one in shapes if isinstance(one, Polyline) for _, y in one.points]
    (bar,) = (one for one in shapes if isinstance(one, DrawnBox) and not one.tint)
    drawn = bar.height / (max(ys) - min(ys))
    assert drawn == pytest.approx(float(stub_of(design).section[0]) / form.size[1])
