"""A collar pinned on a rod, and two plates pinned on one another: one drill through both.

Common practice, no source: what the collar hides is marked on the collar, the rod gets a line at
its edge, and the bore is bored on its own leaf.
"""

from __future__ import annotations

import pytest

from binder.api import Design, HalfFact
from binder_plugins.operations.facts import Route
from tests.plugins.operations.conftest import HEAD, Plan

PAIR = f"""{HEAD}
  post: {{material: mild steel, stock: drawn rod,
    turned: [{{name: mast, diameter: 8 mm, length: 60 mm}}]}}
  collar: {{material: brass, stock: round bar,
    turned: [{{name: body, diameter: 20 mm, length: 12 mm}}],
    features: {{bore: {{reamed: to suit, on: body, depth: through}}}}}}
joints:
  collar on post: {{pinned: [collar.bore, post.mast], fastener: 2 mm dowel pin, made: MADE}}
stands: post
"""
PLATES = f"""{HEAD}
  arm: {{material: mild steel, block: {{length: 40 mm, width: 12 mm, height: 8 mm}}}}
  plate: {{material: brass, block: {{length: 60 mm, width: 30 mm, height: 6 mm}}}}
joints:
  arm on plate: {{pinned: [arm.top, plate.underside], fastener: 3 mm dowel pin,
    made: spotted through, pattern: "2 off, 20 mm apart"}}
stands: plate
"""


@pytest.fixture(params=["spotted through", "drilled together"])
def pair(plan: Plan, request: pytest.FixtureRequest) -> Design:
    outcome = plan(PAIR.replace("MADE", request.param))
    assert not outcome.findings
    assert outcome.design is not None
    return outcome.design


def words(design: Design, subject: str) -> list[str]:
    route = design.facts.about(Route, subject)
    assert route is not None
    return [act.what for act in route.acts]


def test_the_bore_is_bored_on_its_leaf_and_the_pin_hole_is_left(pair: Design) -> None:
    leaf = words(pair, "collar")
    assert any(one.startswith("ream ⌀8 mm") for one in leaf)
    assert not any("⌀2 mm" in one or "cross hole" in one for one in leaf)
    route = pair.facts.about(Route, "collar")
    assert route is not None
    assert [one.said for one in route.left] == ["collar on post pin: drilled together"]


def test_the_pin_hole_alone_is_drilled_through_both(pair: Design) -> None:
    # The collar is ⌀20 outside: the drill goes through that, the rod of ⌀8 lies within it. Flutes
    # of 24 mm (DIN 338, from memory) reach through 20, not through 20 + 8.
    route = pair.facts.about(Route, "drill collar on post")
    assert route is not None
    assert [act.size for act in route.acts if act.act == "drill"] == [2]
    assert max(act.deep for act in route.acts if act.act == "drill") == 20


def test_it_is_marked_and_held_in_order(pair: Design) -> None:
    # The rod is 60 long, the collar 12: (60 - 12) / 2 = 24 to its edge, 6 from there to its hole.
    route = pair.facts.about(Route, "drill collar on post")
    assert route is not None
    said = words(pair, "drill collar on post")
    assert "scribe the collar 6 mm from its left-hand end" in said[0]
    assert "scribe the post right round, 24 mm from its left-hand end" in said[1]
    assert "superglue" in said[2]
    assert "with the mark on top" in said[2]
    assert [act.act for act in route.acts[2:5]] == ["clamp-stack", "spot", "drill"]
    held = route.setups[0].grip
    assert held.holder.startswith("V-block")
    assert "the post, from 0 mm to 24 mm" in held.on
    assert held.on.endswith("the other stuck on it")
    assert said[-2].startswith("mark both for the way round")


def test_plates_are_marked_on_the_upper_and_pegged_after_the_first_hole(plan: Plan) -> None:
    design = plan(PLATES).design
    assert design is not None
    said = words(design, "drill arm on plate")
    assert said[0] == "mark out 2 holes on the top of the arm, which lies up"
    assert "a peg of its size goes in before the next is drilled" in said[1]


def test_the_bore_and_the_pin_hole_have_a_row_each(pair: Design) -> None:
    """The pin's hole is no size of the bore that an end of the joint names."""
    halves = {one.place: one.what for one in pair.facts.all(HalfFact) if one.item == "collar"}
    assert halves["collar_on_post_pin"] == "drill 2 mm across body"
    assert halves["bore"].startswith("ream ⌀8 mm")
