"""The last of two pinned stops is set to the row with a feeler, and drilled where that puts it.

Common practice, no source; the float wanted, 0.1 mm to 0.2 mm, has its middle at 0.15 mm.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import BuildSequence, Design
from binder.compiler import Outcome, Phase
from binder_plugins.operations.facts import Route, leaf_id
from binder_plugins.operations.together_pages import together_pages
from binder_solid.float_tried import end_floats
from binder_solid.pinned_stop import pinned_stop

Compile = Callable[..., Outcome]

COLLAR = "{material: mild steel, stock: round bar, turned: [{name: rim, diameter: 14 mm, length: 8 mm}], features: {bore: {reamed: to suit, on: rim, depth: through}, pin: {reamed: to suit, across: rim, at: 4 mm from left, depth: through}}}"  # noqa: E501
STAND = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  shaft:
    material: silver steel
    stock: drawn rod
    turned: [{name: journal, diameter: 6 mm, length: 50 mm}]
    features:
      near: {reamed: to suit, across: journal, at: 5 mm from left, depth: through}
      far: {reamed: to suit, across: journal, at: 33.15 mm from left, depth: through}
  near_collar: COLLAR
  far_collar: COLLAR
  stand: {material: mild steel, block: {length: 20 mm, width: 20 mm, height: 30 mm}, features: {bore: {reamed: to suit, on: left, depth: through}}}
joints:
  shaft in stand: {runs_in: [shaft.journal, stand.bore], duty: slow and oiled}
  near on shaft: {slides: [shaft.journal, near_collar.bore]}
  far on shaft: {slides: [shaft.journal, far_collar.bore]}
  near pinned: {pinned: [near_collar.pin, shaft.near], fastener: 2 mm x 14 mm steel dowel pin, made: drilled together}
  far pinned: {pinned: [far_collar.pin, shaft.far], fastener: 2 mm x 14 mm steel dowel pin, made: drilled together}
shafts:
  shaft: {along: [near_collar, stand.bore, far_collar]}
stands: stand
assemblies:
  all: {of: [stand, shaft, near_collar, far_collar]}
""".replace("COLLAR", COLLAR)  # noqa: E501


@pytest.fixture
def stand(compile_text: Compile) -> Design:
    design = compile_text(STAND, Phase.CHECK).design
    assert design is not None
    return design


def _marks(design: Design, task: str) -> str:
    return " ".join(
        act.what
        for route in design.facts.all(Route)
        if route.subject == task
        for act in route.acts
        if act.act == "mark-out"
    )


def test_the_last_stop_is_set_by_a_feeler(stand: Design) -> None:
    last = _marks(stand, "drill far pinned")
    assert "0.15 mm of feeler between it and the stand" in last
    assert "from its right-hand end" not in last  # where it comes on the shaft is not drawn
    assert "feeler" not in _marks(stand, "drill near pinned")


def test_a_feeler_is_at_hand_for_it(stand: Design) -> None:
    tools = [act.tool for route in stand.facts.all(Route)
             if route.subject == "drill far pinned" for act in route.acts]  # fmt: skip
    assert any("feeler gauges" in tool for tool in tools)


def test_the_row_is_there_when_the_last_stop_is_drilled(stand: Design) -> None:
    (sequence,) = stand.facts.all(BuildSequence)
    order = [step.task for step in sequence.steps]
    last = order.index("drill far pinned")
    for earlier in ("make stand", "make near_collar", "drill near pinned"):
        assert order.index(earlier) < last


def test_a_pinned_stop_is_faced_not_moved(stand: Design) -> None:
    (found,) = end_floats(stand)
    assert found.little.startswith("face the ")
    assert found.little.endswith("where it stops the shaft")


def test_one_that_is_no_stop_is_set_as_drawn(compile_text: Compile) -> None:
    text = STAND.replace("stand.bore, far_collar]", "stand.bore]")
    design = compile_text(text, Phase.CHECK).design
    assert design is not None
    assert pinned_stop(design.joints["far pinned"], design) is None


SPOTTED = STAND.replace("drilled together", "spotted through")


@pytest.fixture(params=[STAND, SPOTTED], ids=["drilled together", "spotted through"])
def either(request: pytest.FixtureRequest, compile_text: Compile) -> Design:
    """The row with its pins told in either of the two ways: the pin goes through both alike."""
    design = compile_text(request.param, Phase.CHECK).design
    assert design is not None
    return design


def test_a_stop_that_is_spotted_through_is_set_alike(either: Design) -> None:
    assert "0.15 mm of feeler between it and the stand" in _marks(either, "drill far pinned")
    assert "feeler" not in _marks(either, "drill near pinned")
    # No leaf drills a hole that the row is to place.
    for name in ("shaft", "near_collar", "far_collar"):
        route = either.facts.about(Route, name)
        assert route is not None
        assert not any(act.feature in ("pin", "near", "far") for act in route.acts)


def test_no_place_as_drawn_stands_beside_the_feeler(either: Design) -> None:
    """Two places for one stop: the drawn one would be taken, for it needs no trial."""
    (section,) = together_pages(either, ())
    leaves = {one.id: str(one.blocks) for one in section.sections}
    assert "Place: " not in leaves[leaf_id("drill far pinned")]
    assert "Place: " in leaves[leaf_id("drill near pinned")]
