"""Two alike blocks are bored as a pair only where one shaft runs through both as they stand.

That a pair is bored in one setting: common practice, no source. Where the axes lie is geometry:
a block turned by half a turn has a bore that is 8 of 24 mm from one end 16 mm from there.
"""

from __future__ import annotations

import pytest

from binder_plugins.operations.cautioned import doing
from binder_plugins.operations.facts import Route, SetUp
from tests.plugins.operations.conftest import HEAD, Plan

STANDING = """\
  base: {material: oak, board: {length: 100 mm, width: 80 mm, thickness: 20 mm}}
  part:
    material: mild steel
    quantity: 2
    block: {length: 24 mm, width: 9 mm, height: 49 mm}
    features: {FEATURES}
joints:
  part on base: {glued: [part.underside, base.top]}
stands: base
positions:
  part: {copies: [{at: "30 mm from base.left, 10 mm from base.front"}, {SECOND}]}
"""
SEAT = "seat: {bored: 10 mm, on: front, depth: through, at: '38 mm from underside, 8 mm from left'}"


def _bored(plan: Plan, second: str, features: str = SEAT) -> SetUp:
    text = STANDING.replace("SECOND", second).replace("FEATURES", features)
    outcome = plan(HEAD + text)
    assert outcome.design is not None, [one.message for one in outcome.findings]
    route = outcome.design.facts.about(Route, "part")
    assert route is not None
    (found,) = [one for one in route.setups if any(act.act == "bore" for act in one.acts)]
    return found


@pytest.mark.parametrize(
    ("second", "is_row"),
    [
        ('at: "30 mm from base.left, 50 mm from base.front"', True),
        ('at: "31 mm from base.left, 50 mm from base.front"', False),
        ('at: "30 mm from base.left, 50 mm from base.front", turned: 180 deg', False),
        ('at: "22 mm from base.left, 50 mm from base.front", turned: 180 deg', True),
        ('at: "30 mm from base.left, 50 mm from base.front", turned: 90 deg', False),
    ],
)
def test_a_pair_is_one_where_its_bores_are_in_one_row(
    plan: Plan, second: str, is_row: bool
) -> None:
    setup = _bored(plan, second)
    assert ("clamp-stack" in [act.act for act in setup.acts]) == is_row
    assert (setup.at_once == 2) == is_row
    # Bored singly, they still get one height.
    assert ("the same packing" in setup.true) != is_row


@pytest.mark.parametrize(
    ("on", "flush"), [("front", "base and edges flush"), ("left", "base and one side flush")]
)
def test_a_pair_is_flush_by_faces_that_the_bore_leaves_free(
    plan: Plan, on: str, flush: str
) -> None:
    """Bored from the left, the left ends meet: they lie on one another, and are not flush."""
    features = f"seat: {{bored: 10 mm, on: {on}, depth: through, at: 38 mm from underside}}"
    second = 'at: "60 mm from base.left, 10 mm from base.front"'
    if on == "front":
        second = 'at: "30 mm from base.left, 50 mm from base.front"'
    assert flush in _bored(plan, second, features).acts[0].what


@pytest.mark.parametrize(("on", "has_bolts"), [("front", True), ("top", False)])
def test_bolts_hold_a_pair_only_where_holes_lie_along_the_bore(
    plan: Plan, on: str, has_bolts: bool
) -> None:
    hole = f"hole: {{drilled: 5 mm, on: {on}, depth: through, at: 4 mm from left}}"
    second = 'at: "30 mm from base.left, 50 mm from base.front"'
    clamp = _bored(plan, second, f"{SEAT}, {hole}").acts[0]
    assert ("through the ⌀5 mm hole" in clamp.tool) == has_bolts
    assert "no clamp" in clamp.tool


def test_a_pair_held_by_instant_glue_is_told_apart_and_cleaned(plan: Plan) -> None:
    """Instant glue lets go sheared, warm or in acetone: common practice, no source."""
    second = 'at: "30 mm from base.left, 50 mm from base.front"'
    glued = _bored(plan, second)
    assert "superglue" in glued.acts[0].tool
    apart = next(act for act in glued.acts if act.act == "separate")
    for words in ("100 °C", "acetone", "slide them", "scrape the film off"):
        assert words in apart.what
    assert "bond" in set(doing(glued))  # by which the cautions on glue and solvent find it
    assert "bond" not in set(doing(_bored(plan, second.replace("30 mm", "31 mm"))))


def test_a_pop_is_clocked_by_a_rod_that_stands_in_it(plan: Plan) -> None:
    """An indicator's ball does not ride in a pop: common practice, no source."""
    second = 'at: "30 mm from base.left, 50 mm from base.front"'
    assert "clocked true by a pointed rod in it" in _bored(plan, second).datum
