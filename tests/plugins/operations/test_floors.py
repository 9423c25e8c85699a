"""A pin that reaches the floor of a blind reamed socket has its end chamfered."""

from __future__ import annotations

import pytest

from binder_plugins.operations.facts import Route
from tests.plugins.operations.conftest import HEAD, Plan

PAIR = """\
  pin:
    material: mild steel
    stock: 10 mm round bar
    turned: [{{name: head, diameter: 9 mm, length: 8 mm}},
      {{name: tip, diameter: 6 mm, length: 5 mm}}]
  cup:
    material: brass
    stock: 16 mm round bar
    turned: [{{name: body, diameter: 14 mm, length: 14 mm}}]
    features: {{socket: {{reamed: to suit, on: left, depth: {deep} mm}}}}
joints:
  pin in cup: {{swivels: [cup.socket, pin.tip], duty: turns by hand}}
"""


@pytest.mark.parametrize(("deep", "legs"), [(5.1, "0.6 mm"), (7, "")])
def test_the_end_clears_the_cone_that_the_reamer_leaves(deep: float, legs: str, plan: Plan) -> None:
    """A lead of a tenth of 6 mm, less 0.1 mm of room, and 0.1 mm to clear; nothing where the
    socket is 2 mm deeper than the pin. Common practice, no source."""
    outcome = plan(HEAD + PAIR.format(deep=deep))
    assert outcome.design is not None
    route = outcome.design.facts.about(Route, "pin")
    assert route is not None
    found = [one.what for one in route.acts if "the reamer leaves a cone" in one.what]
    assert [words.split(" × ")[0] for words in found] == (
        [f"chamfer the end {legs}"] if legs else []
    )
