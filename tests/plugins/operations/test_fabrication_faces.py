"""Holes of joined pieces: each face that is drilled has a set-up, since the work is turned for it.

What a drill goes through is reckoned by hand from the sizes; the rest is common practice,
no source.
"""

from __future__ import annotations

import pytest

from binder_plugins.operations.facts import Route, SetUp
from tests.plugins.operations.conftest import HEAD, Plan

# Two plates of 6 mm and a block of 12 mm between them: 60 mm x 20 mm x 24 mm.
BOX = HEAD + (
    "  side: {material: mild steel, quantity: 2, plate: {length: 60 mm, width: 20 mm,"
    " thickness: 6 mm}}\n"
    "  core: {material: mild steel, block: {length: 60 mm, width: 20 mm, height: 12 mm}}\n"
    "fabrications:\n  box:\n    pieces: [2 off side, core]\n    joined: brazed\n"
    "    stack: [{piece: side}, {piece: core}, {piece: side}]\n    features:\n"
)


def _drillings(plan: Plan, features: str) -> list[SetUp]:
    design = plan(BOX + features).design
    route = design.facts.about(Route, "box") if design is not None else None
    assert route is not None
    return [one for one in route.setups if any(act.act == "drill" for act in one.acts)]


def _features(setup: SetUp) -> set[str]:
    return {act.feature for act in setup.acts if act.act == "drill"}


def test_holes_of_two_faces_have_two_set_ups(plan: Plan) -> None:
    found = _drillings(
        plan,
        "      eye: {drilled: 4 mm, on: top, depth: through, at: 10 mm from left}\n"
        "      way: {drilled: 3 mm, on: front, depth: through, at: 30 mm from left}\n",
    )
    assert [_features(one) for one in found] == [{"eye"}, {"way"}]
    assert ["top up" in one.grip.on for one in found] == [True, False]
    assert "front up" in found[1].grip.on


@pytest.mark.parametrize(
    ("on", "deep"),
    [("top", 24.0), ("front", 20.0), ("left", 60.0)],
)
def test_a_drill_goes_through_all_that_lies_its_way(plan: Plan, on: str, deep: float) -> None:
    (found,) = _drillings(plan, f"      way: {{drilled: 6 mm, on: {on}, depth: through}}\n")
    assert {act.deep for act in found.acts if act.act == "drill"} == {deep}


def test_blind_holes_of_opposite_faces_are_drilled_from_either(plan: Plan) -> None:
    """What goes through is drilled with those of the first face: the work is turned once."""
    found = _drillings(
        plan,
        "      upper: {drilled: 4 mm, on: top, depth: 8 mm, at: 10 mm from left}\n"
        "      lower: {drilled: 3 mm, on: underside, depth: 8 mm, at: 50 mm from left}\n"
        "      way: {drilled: 2 mm, on: top, depth: through, at: 30 mm from left}\n",
    )
    assert [_features(one) for one in found] == [{"upper", "way"}, {"lower"}]
    assert "top up" in found[0].grip.on
    assert "underside up" in found[1].grip.on


def test_holes_of_one_face_stay_together(plan: Plan) -> None:
    found = _drillings(
        plan,
        "      near: {drilled: 4 mm, on: top, depth: through, at: 10 mm from left}\n"
        "      far: {drilled: 4 mm, on: top, depth: 5 mm, at: 50 mm from left}\n",
    )
    assert [_features(one) for one in found] == [{"near", "far"}]
