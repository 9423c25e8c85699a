"""Pegs that stand out of a part are cut flush when the glue is hard, before the part is used.

How it is done is common practice, no source.
"""

from __future__ import annotations

import pytest

from binder.api import BuildSequence
from binder_plugins.operations.facts import Route
from tests.plugins.operations.conftest import HEAD, Plan
from tests.plugins.operations.test_order import design_of

BOARD = (
    "  base: {material: oak, board: {length: 200 mm, width: 80 mm, thickness: 30 mm}, features:"
    " {plugs: {drilled: 12 mm, on: top, depth: %s, off: 2, pattern: 40 mm apart}}}\n"
    "  foot: {material: brass, stock: 3 mm plate, plate: {length: 20 mm, width: 20 mm,"
    " thickness: 3 mm}}\n"
    'bought: {peg: {what: "oak dowel of 12 mm, %s long", quantity: 2}}\n'
    "joints: {pegs in base: {glued: [peg, base.plugs]}}\n"
    "assemblies: {board: {of: [base, 2 off peg]}, whole: {of: [board, foot]}}\n"
)


@pytest.mark.parametrize(
    ("deep", "long", "is_cut"),
    [("through", "32 mm", True), ("through", "30 mm", False), ("20 mm", "32 mm", False)],
)
def test_only_what_stands_out_is_cut(deep: str, long: str, is_cut: bool, plan: Plan) -> None:
    """Through 30 mm of oak a dowel of 32 mm stands out; in a blind hole it is left so."""
    design = plan(HEAD + BOARD % (deep, long)).design
    assert design is not None
    route = design.facts.about(Route, "trim base")
    assert (route is not None) == is_cut
    if route is not None:
        (setup,) = route.setups
        assert "chisel" in setup.acts[0].tool
        assert "both hands behind the edge" in setup.acts[0].what
        sequence = design.facts.about(BuildSequence, "")
        assert sequence is not None
        order = [step.task for step in sequence.steps]
        places = [order.index(one) for one in ("assemble board", "trim base", "assemble whole")]
        assert places == sorted(places)


def test_it_is_flush_before_it_is_drilled_or_measured_from() -> None:
    """The hammer's hangers are lined up by the underside of the base."""
    sequence = design_of("tilt-hammer/tilt-hammer").facts.about(BuildSequence, "")
    assert sequence is not None
    order = [step.task for step in sequence.steps]
    for later in ("line up line shaft in hanger", "pilot bed on base", "assemble line"):
        assert order.index("trim base") < order.index(later)
