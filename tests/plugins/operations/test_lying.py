"""How parts that are drilled together lie: the V where the round is clear, the other packed up."""

from __future__ import annotations

from binder.api import TogetherFact
from binder_plugins.operations.facts import Act, Route, SetUp
from tests.plugins.operations.conftest import HEAD, Plan

# The post goes through a block 24 mm high, whose hole is in the middle of its 20 mm.
BLOCK = (
    "  lid: {material: mild steel, block: {length: 20 mm, width: 30 mm, height: 24 mm},"
    " features: {bore: {reamed: 12 mm, on: left, depth: through},"
    " foot: {reamed: 3 mm, on: top, depth: through}}}\n"
)
POST = (
    "  post: {{material: mild steel, turned: [{steps}], features: {{foot: {{reamed: 3 mm,"
    " across: mast, at: 12 mm from left, depth: through}}{more}}}}}\n"
)
PLAIN = "{name: mast, diameter: 12 mm, length: 60 mm}"
JOINTS = (
    "joints:\n  post in lid: {slides: [post.mast, lid.bore]}\n"
    "  pin: {pinned: [lid.foot, post.foot], fastener: 3 mm x 30 mm steel dowel pin,"
    " made: drilled together}\n"
)


def _clamped(plan: Plan, steps: str = PLAIN, more: str = "") -> tuple[SetUp, Act]:
    text = HEAD + POST.format(steps=steps, more=more) + BLOCK + JOINTS + "stands: post\n"
    design = plan(text).design
    assert design is not None
    fact = next(one for one in design.facts.all(TogetherFact) if one.how == "drilled together")
    route = design.facts.about(Route, fact.subject)
    assert route is not None
    setup = next(one for one in route.setups if any(a.act == "clamp-stack" for a in one.acts))
    return setup, next(one for one in setup.acts if one.act == "clamp-stack")


def test_the_v_lies_where_the_round_is_clear(plan: Plan) -> None:
    # Geometry, by hand: the block covers 12 - 10 = 2 mm to 22 mm, so 38 mm of 60 mm stay.
    setup, _ = _clamped(plan)
    assert setup.grip.kind == "vee"
    assert "from 0 mm to 38 mm off its right-hand end" in setup.grip.on


def test_a_flat_ends_it(plan: Plan) -> None:
    # A flat 10 mm long about 40 mm takes 35 mm to 45 mm: 13 mm and 15 mm are left of the round.
    flat = ", key: {flatted: 1 mm, across: mast, length: 10 mm, at: 40 mm from left}"
    setup, _ = _clamped(plan, more=flat)
    assert "from 22 mm to 35 mm off its left-hand end or from 0 mm to 15 mm off its right-hand" in (
        setup.grip.on
    )


def test_the_other_is_packed_level(plan: Plan) -> None:
    # Geometry, by hand: top to axis 6 mm, axis to the underside of the block 12 mm.
    _, clamp = _clamped(plan)
    assert "less 18 mm = ______" in clamp.what
    assert "height gauge" in clamp.tool


def test_a_post_without_room_for_a_v_lies_on_packing(plan: Plan) -> None:
    # Past the block 8 mm are left, less than the 12 mm that it is thick.
    setup, _ = _clamped(plan, steps="{name: mast, diameter: 12 mm, length: 30 mm}")
    assert setup.grip.kind != "vee"
    assert "nothing round is clear" in setup.grip.on
