"""A groove that a keeper runs in gets its place from the keeper's hole: common practice, no source.

By hand: free lengths to ISO 2768-1 m stray by 0.1 mm each (up to 6 mm), which a keeper of 1.5 in
a groove of 1.6 does not have.
"""

from __future__ import annotations

import pytest

from binder_plugins.operations.facts import Route
from tests.plugins.operations.conftest import HEAD, Plan

PAIR = """\
  pin:
    material: mild steel
    stock: 8 mm round bar
    turned: [{{name: head, diameter: 8 mm, length: 8 mm}},
      {{name: tip, diameter: 3 mm, length: 5 mm}}]
    features: {{catch: {{grooved: 1.6 mm, on: tip, depth: 0.8 mm}}}}
  slide:
    material: brass
    block: {{length: 34 mm, width: 24 mm, height: 12 mm}}
    features:
      socket: {{reamed: to suit, on: left, depth: 5.1 mm}}
      keeper: {{drilled: {drilled} mm, on: top, depth: through,
        at: "{left} mm from left, {front} mm from front"}}
joints:
  pin in slide: {{swivels: [slide.socket, pin.tip], duty: turns by hand{held}}}
bought:
  wire: {{what: keeper of steel wire}}
"""


@pytest.mark.parametrize(
    ("drilled", "left", "front", "held", "is_tried"),
    [
        (1.5, 2.5, 13.6, ", held_by: wire", True),
        # Nothing keeps it: the groove is of another use.
        (1.5, 2.5, 13.6, "", False),
        # The hole goes by the socket, beside it and behind its floor.
        (1.5, 2.5, 16, ", held_by: wire", False),
        (1.5, 9, 13.6, ", held_by: wire", False),
        # Too thick for the groove.
        (2.0, 2.5, 13.8, ", held_by: wire", False),
    ],
)
def test_a_kept_groove_is_cut_where_the_keeper_marks_it(
    drilled: float, left: float, front: float, held: str, plan: Plan, *, is_tried: bool
) -> None:
    text = PAIR.format(drilled=drilled, left=left, front=front, held=held)
    outcome = plan(HEAD + text)
    assert outcome.design is not None
    route = outcome.design.facts.about(Route, "pin")
    assert route is not None
    (groove,) = [act for act in route.acts if act.act == "groove"]
    assert ("down its keeper hole" in groove.what) == is_tried
    assert ("at that mark" in groove.what) == is_tried
    assert ("1.5 mm drill" in groove.tool) == is_tried
    # The edge that lets the tip down to its floor is broken once, before the mark is taken:
    # common practice, no source.
    edges = [act for act in route.acts if act.act == "chamfer" and "leaves a cone" in act.what]
    assert ("break the end" in groove.what) == is_tried
    assert len(edges) == (0 if is_tried else 1)
