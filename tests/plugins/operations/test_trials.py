"""What turns between a shoulder and a keeper: tried in the grip, with all that closes it.

All: common practice, no source.
"""

from __future__ import annotations

import pytest

from binder.api import BuildSequence, ChainFact, Design
from binder_plugins.operations.facts import Route
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf

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


def planned(plan: Plan) -> Design:
    design = plan(SWIVEL).design
    assert design is not None
    return design


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
    assert (web.name, web.nominal) == ("web of the saddle under its recess", pytest.approx(6))


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
