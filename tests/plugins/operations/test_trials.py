"""What turns between a shoulder and a keeper: tried in the grip, with all that closes it.

All: common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from binder.api import Blank, BuildSequence, ChainFact, Design
from binder.pages import text_of
from binder_plugins.buildorder.floating import floats_in
from binder_plugins.buildorder.timing import time_tasks
from binder_plugins.drawings.sizes import sizes_of
from binder_plugins.inspection.page import inspection_pages
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import ToolsFact, Whose
from binder_plugins.operations.facts import Route
from binder_plugins.operations.planning import WorkPlan, plan_work
from binder_plugins.running.tracing import faults, numbered
from binder_solid.facts import FormFact
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf, without

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
    turned:
      - {name: boss, diameter: 16 mm, length: 6 mm}
      - {name: rim, diameter: 20 mm, length: 5 mm}
    features:
      socket: {reamed: to suit, on: boss, depth: through}
      cup: {recessed: 11 mm, on: rim, depth: 5 mm}
  keeper:
    material: brass
    stock: round bar
    turned: [{name: plate, diameter: 9 mm, length: 1.5 mm}]
joints:
  turning: {swivels: [saddle.socket, screw.pin], duty: turns by hand, master: saddle.socket}
  kept: {screwed: [keeper.underside, screw.pin], fastener: M3 socket cap screw}
assemblies:
  head: {of: [screw, saddle, keeper], test: it turns}
"""
)

LED = (
    HEAD
    + """  screw:
    material: mild steel
    stock: drawn rod
    turned: [{name: shank, diameter: 10 mm, length: 60 mm}]
    features: {thread: {screwed: M10, on: shank, length: 40 mm}}
  nut:
    material: brass
    block: {length: 30 mm, width: 30 mm, height: 16 mm}
    features: {thread: {tapped: to suit, on: top, at: middle, depth: through}}
  base:
    material: mild steel
    block: {length: 60 mm, width: 30 mm, height: 10 mm}
joints:
  led: {leads: [screw.thread, nut.thread]}
"""
)
HELD = "  held: {screwed: [nut.underside, base.top], fastener: M4 socket cap screw}\n"


def planned(plan: Plan) -> Design:
    design = plan(SWIVEL).design
    assert design is not None
    return design


def timed(design: Design) -> Design:
    """With the time of every task, which a check does not reckon."""
    return replace(design, facts=design.facts.plus(time_tasks(design).facts))


def route(design: Design, name: str) -> Route:
    found = design.facts.about(Route, name)
    assert found is not None
    return found


def test_a_float_is_tried_when_all_that_it_wants_is_cut_and_still_in_its_grip(plan: Plan) -> None:
    (setup,) = (
        one
        for one in route(planned(plan), "screw").setups
        if any(act.what.startswith("try") for act in one.acts)
    )
    assert setup.acts[-1].what == (
        "try the saddle, the keeper and its screw on before it leaves the chuck: it turns freely, "
        "and has 0.1 mm to 0.3 mm of float"
    )
    assert {"turn", "drill", "tap"} <= {act.act for act in setup.acts[:-1]}


def test_what_it_is_tried_with_is_made_before(plan: Plan) -> None:
    sequence = planned(plan).facts.about(BuildSequence, "")
    assert sequence is not None
    order = [step.task for step in sequence.steps]
    assert order.index("make screw") > max(order.index("make keeper"), order.index("make saddle"))
    (screw,) = (step for step in sequence.steps if step.task == "make screw")
    assert "make keeper" in [earlier for earlier, _ in screw.after]


def test_between_the_shoulders_is_what_the_recess_leaves(plan: Plan) -> None:
    """11 mm less the 5 of the recess: 6 mm, and the float is 0.2."""
    (chain,) = planned(plan).facts.all(ChainFact)
    assert chain.closed_by == "kept"
    web = chain.links[-1]
    assert web.name == "web of the saddle under its recess"
    assert web.nominal == pytest.approx(6)


@pytest.mark.parametrize(("thick", "deep"), [("1.5", 1.0), ("2.5", 2.0), ("0.8", 0.4)])
def test_soft_jaws_are_shallower_than_what_is_faced_in_them(
    thick: str, deep: float, route_of: RouteOf
) -> None:
    """Half a millimetre stands proud of the jaws when it is done; parting left as much more."""
    part = (
        f"{{material: brass, stock: round bar, turned: [{{name: plate, diameter: 9 mm, length:"
        f" {thick} mm}}]}}"
    )
    (grip,) = (one.grip for one in route_of(part).setups if "soft jaws" in one.grip.holder)
    assert grip.long == pytest.approx(deep)
    assert grip.stand_out == pytest.approx(float(thick) + 0.5 - deep)


def test_no_edge_is_broken_on_a_face_that_is_cut_again(route_of: RouteOf) -> None:
    part = "{material: brass, stock: round bar, turned: [{diameter: 16 mm, length: 12 mm}]}"
    acts = [act.act for act in route_of(part).acts]
    assert "face" in acts[acts.index("part-off") :]
    assert "nick" not in acts


def test_a_length_made_to_suit_is_drawn_so(plan: Plan) -> None:
    """Limits on it would be held against what the leaf asks for."""
    design = planned(plan)
    form = design.facts.about(FormFact, "screw")
    assert form is not None
    said = {getattr(one, "text", "") for one in sizes_of(form, ("front",), design)}
    assert "(6.2) to suit" in said


def test_the_test_of_the_assembly_asks_for_the_float(plan: Plan) -> None:
    design = planned(plan)
    (words,) = floats_in(design.assemblies["head"], design)
    assert words == "'turning' has 0.1 mm to 0.3 mm of end float (dial indicator, push and pull)"


@pytest.mark.parametrize(
    ("workshop", "how", "tool", "whose"),
    [
        ("", "dial indicator, push and pull", "dial indicator", Whose.OWNED),
        (
            without(hand_tools="[files, set of feelers]"),
            "feeler gauges: 0.1 mm goes in, 0.3 mm does not",
            "feeler gauges",
            Whose.OWNED,
        ),
        (
            without("measuring/dial indicator"),
            "feeler gauges: 0.1 mm goes in, 0.3 mm does not",
            "feeler gauges",
            Whose.HAD,
        ),
    ],
)
def test_a_float_names_what_tells_it_wherever_it_is_tried(
    workshop: str, how: str, tool: str, whose: Whose, plan: Plan
) -> None:
    """Feelers where they are owned, else an indicator: a float of a tenth is not felt."""
    design = plan(SWIVEL, workshop).design
    assert design is not None
    screw = route(design, "screw")
    (tried,) = (act for act in screw.acts if act.what.startswith("try the saddle"))
    assert tried.measure == how
    (words,) = floats_in(design.assemblies["head"], design)
    assert how in words
    told = collect_tools(timed(design)).facts
    fact = next(one for one in told if isinstance(one, ToolsFact))
    (known,) = (one for one in fact.tools if one.name == tool)
    assert known.whose is whose
    assert "test head" in [piece for piece, _ in known.uses]
    (section,) = inspection_pages(design, ())
    rows = [row for block in section.blocks for row in getattr(block, "rows", ())]
    (row,) = (row for row in rows if text_of(row[2]) == "end float")
    assert [text_of(row[3]), text_of(row[4])] == ["0.1 mm to 0.3 mm", how]
    assert any(isinstance(one, Blank) for one in row[5])


def test_the_instrument_of_a_float_lies_ready_for_its_test(plan: Plan) -> None:
    design = timed(planned(plan))
    whole = replace(design, facts=design.facts.plus(collect_tools(design).facts))
    (planned_work, *_) = plan_work(whole).facts
    assert isinstance(planned_work, WorkPlan)
    assert planned_work.pieces["test head"].tools == ("dial indicator",)


@pytest.mark.parametrize(("kind", "is_said"), [("screwed", True), ("", False)])
def test_only_a_nut_that_is_screwed_down_is_slacked(
    kind: str, plan: Plan, *, is_said: bool
) -> None:
    """A nut that is a thread cut in the body itself has no screws to slack."""
    text = LED + (HELD if kind else "")
    design = plan(text).design
    assert design is not None
    found = {one.sign: one.causes for one in faults(numbered(design), design)}
    looks = [cause.look for cause in found["It binds at one end of its travel"]]
    assert any("slacked" in look for look in looks) is is_said
    assert any("wound back" in look for look in looks) is not is_said
