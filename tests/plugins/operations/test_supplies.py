"""What the chart of oil and a steady use up stands among the things to buy, unless it is owned."""

from __future__ import annotations

from dataclasses import replace

import pytest

from binder.api import Design, SupplyFact, load_data
from binder_plugins.buildorder.timing import time_tasks
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import ToolsFact, Whose
from binder_plugins.operations.tasks import task_pieces
from binder_plugins.partslist.used_up import used_up
from binder_plugins.running.moving import moving
from binder_plugins.running.oiling import oil_for
from binder_plugins.running.supplies import supply_oils
from tests.plugins.operations.conftest import HEAD, Plan, without
from tests.plugins.operations.test_order import MODELS, design_of

SWIVEL = (
    HEAD
    + """  screw:
    material: mild steel
    stock: drawn rod
    turned:
      - {name: pin, diameter: 6 mm, length: 6.2 mm}
      - {name: shank, diameter: 10 mm, length: 40 mm}
  saddle:
    material: brass
    stock: 20 mm round bar
    turned: [{name: rim, diameter: 20 mm, length: 6 mm}]
    features: {socket: {reamed: to suit, on: rim, depth: through}}
joints:
  turning: {swivels: [saddle.socket, screw.pin], duty: turns by hand}
assemblies:
  head: {of: [screw, saddle], test: it turns}
"""
)


def supplied(design: Design) -> Design:
    """With what running and work use up."""
    facts = (*supply_oils(design).facts, *collect_tools(design).facts, *time_tasks(design).facts)
    return replace(design, facts=design.facts.plus(facts))


@pytest.mark.parametrize("model", MODELS)
def test_every_oil_of_the_chart_is_to_be_bought(model: str) -> None:
    """The built-in workshop lists none."""
    design = supplied(design_of(model))
    bought = {name for names in used_up(design).values() for name in names}
    oils = [(one.joint.name, oil) for one in moving(design) if (oil := oil_for(one)) is not None]
    wanted = [name for name, oil in oils if not oil.what.startswith("none")]
    assert wanted
    assert set(wanted) <= bought


@pytest.mark.parametrize(
    ("owned", "is_bought"),
    [("files", True), ("machine oil", False), ("oil can with ISO VG 32", False),
     ("cutting oil", True), ("grease", True)],
)  # fmt: skip
def test_an_oil_that_is_owned_is_not_bought(owned: str, plan: Plan, *, is_bought: bool) -> None:
    design = plan(SWIVEL, without(hand_tools=f"[{owned}]")).design
    assert design is not None
    assert ("machine oil, ISO VG 32" in used_up(supplied(design))) == is_bought


@pytest.mark.parametrize("owned", ["", "hand_tools"])
def test_what_cuts_and_what_washes_is_one_thing_in_one_list(plan: Plan, owned: str) -> None:
    """Aluminium is reamed with paraffin, and what moves is washed out with it: common practice,
    no source. Cut with and washed with, it is bought once, and is no tool."""
    shop = without(hand_tools="[paraffin]") if owned else ""
    spec = SWIVEL.replace("material: brass", "material: aluminium")
    design = plan(spec, shop).design
    assert design is not None
    whole = supplied(design)
    names = [name for name in used_up(whole) if "paraffin" in name]
    tools = whole.facts.about(ToolsFact, "")
    assert tools is not None
    had = [one.name for one in tools.tools if one.whose is Whose.HAD]
    assert not any("paraffin" in name for name in had)
    assert names == ([] if owned else ["paraffin"])
    if not owned:
        places = used_up(whole)["paraffin"]
        assert "what moves, when it has run in" in places
        assert any(one.startswith("saddle, set-up") for one in places)


def test_the_oil_lies_ready_where_the_joint_is_put_together(plan: Plan) -> None:
    design = plan(SWIVEL).design
    assert design is not None
    whole = supplied(design)
    ((piece, _),) = task_pieces(whole.tasks["assemble head"], whole)
    assert piece.tools == ("machine oil, ISO VG 32",)
    owned = plan(SWIVEL, without(hand_tools="[machine oil]")).design
    assert owned is not None
    ((bare, _),) = task_pieces(owned.tasks["assemble head"], supplied(owned))
    assert not bare.tools


def test_the_fingers_of_a_steady_have_their_oil() -> None:
    design = supplied(design_of("screw-jack/screw-jack"))
    (steady,) = (one for one in design.facts.all(SupplyFact) if one.of == "body, set-up 3")
    assert steady.what == "machine oil, ISO VG 32"
    assert "body, set-up 3" in used_up(design)[steady.what]


def test_each_row_that_is_put_in_says_what_is_bought() -> None:
    """Only what is kept dry, or takes a trace that may be left out, is bought for nothing."""
    for row in load_data("binder_plugins.running", "lubricants.yaml")["rows"]:
        assert ("buy" in row) == (not row["what"].startswith("none")) == ("has" in row), row
