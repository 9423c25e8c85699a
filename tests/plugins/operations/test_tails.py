"""Tails riveted over: the hole is sunk where they come out, and nowhere else."""

from __future__ import annotations

import pytest

from binder_plugins.operations.facts import Route
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed
from tests.plugins.operations.conftest import HEAD, Plan

PIN = (
    "  pin: {material: mild steel, stock: drawn rod, turned: [{name: body, diameter: 4 mm, "
    "length: 10 mm}, {name: tail, diameter: 2 mm, length: 4.5 mm}]}\n"
)
ARM = (
    "  arm: {material: mild steel, stock: 10 mm x 3 mm flat bar, %scut: 30 mm, features: "
    "{tip: {drilled: 2.1 mm, depth: through, at: 5 mm from right}}}\n"
)
JOINT = "joints: {pin in arm: {riveted: [pin.tail, arm.tip]}}\n"


def _sunk(plan: Plan, arm: str, more: str = "") -> str:
    design = plan(HEAD + PIN + arm + JOINT + more).design
    assert design is not None
    route = design.facts.about(Route, "arm")
    assert route is not None
    (found,) = (act for act in route.acts if act.act == "countersink")
    return found.what


def test_a_riveted_tail_has_its_countersink_as_an_act(plan: Plan) -> None:
    """1.5 × 2 mm at 90°, (3 − 2.1) / 2 deep: common practice, no source."""
    what = _sunk(plan, ARM % "")
    assert "⌀3 mm × 90°" in what
    assert "0.45 mm deep" in what


@pytest.mark.parametrize(
    ("stands", "turned"), [("arm", ""), ("pin", ""), ("pin", "reversed: true")]
)
def test_it_is_on_the_face_away_from_the_pin(plan: Plan, stands: str, turned: str) -> None:
    """Where both stand is worked out; the pin's body must not be on the side that is sunk."""
    more = f"stands: {stands}\n" + (f"positions: {{arm: {{{turned}}}}}\n" if turned else "")
    design = plan(HEAD + PIN + ARM % "" + JOINT + more).design
    assert design is not None
    arm, pin = (
        next(one for one in design.facts.all(PlacedFact) if one.item == name)
        for name in ("arm", "pin")
    )
    body = placed((5.0, 0.0, 0.0), pin.frame)  # The middle of the pin's body.
    middle = placed((25.0, 5.0, 1.5), arm.frame)
    up = dot(minus(body, middle), arm.frame.z)
    assert abs(up) > 1.0
    assert ("underside" if up > 0 else "top") in _sunk(plan, ARM % "", more)


def test_of_two_alike_it_is_the_outer_face_of_each(plan: Plan) -> None:
    assert "outer face of each of the 2" in _sunk(plan, ARM % "quantity: 2, ")
