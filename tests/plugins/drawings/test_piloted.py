"""Holes that are spotted from a mate stand on the drawing of the part that they are drilled in.

Every hole that is drilled is on the drawing of its part: common practice, no source.
"""

from __future__ import annotations

import pytest

from binder.compiler import Phase
from binder.pages import Table, text_of
from binder_plugins.drawings.piloted import pilot_rows
from binder_plugins.operations.facts import Route
from binder_solid.piloting import pilot_spots, pilots_in
from tests.plugins.operations.conftest import HEAD, Plan, plan
from tests.plugins.operations.test_order import MODELS, design_of

__all__ = ["plan"]

BOARD = (
    HEAD
    + """\
  base: {material: oak, board: {length: 240 mm, width: 140 mm, thickness: 22 mm}}
  foot: {title: foot plate, material: mild steel, plate: {length: 60 mm, width: 60 mm, thickness: 3 mm}}
joints:
  foot on base: {screwed: [foot.underside, base.top], fastener: "no. 6 x 3/4 in brass wood screw, countersunk", pattern: "PATTERN"}
stands: base
positions:
  foot: {at: "20 mm from base.right, middle of base"}
"""  # noqa: E501
)


@pytest.mark.parametrize(
    ("pattern", "said"),
    [("4 off at the corners, 6 mm in", "4 pilot holes"), ("", "1 pilot hole"),
     ("2 off, 40 mm apart", "2 pilot holes")],
)  # fmt: skip
def test_the_drawing_of_the_wood_tells_its_pilot_holes(plan: Plan, pattern: str, said: str) -> None:
    """3/4 in are 19.05 mm, 3 of them in the plate: 16 mm in the wood. 240 - 20 - 60 = 160 mm off
    the left, (140 - 60) / 2 = 40 off the front."""
    text = BOARD.replace(', pattern: "PATTERN"', f', pattern: "{pattern}"' if pattern else "")
    design = plan(text).design
    assert design is not None
    (row,) = pilot_rows("base", design)
    assert row.caption == f"{said} ⌀2, 16 deep, in top"
    assert row.text == "spotted from foot plate"
    assert not list(pilot_rows("foot", design))
    (one,) = pilots_in("base", design)
    assert one.where.startswith("its edges 160 mm off the left and 40 mm off the front of the")
    words = pilot_spots(design.joints["foot on base"], design)
    assert "spot through the holes of the foot plate" in words


def test_the_leaf_tells_from_what_they_are_spotted(plan: Plan) -> None:
    text = BOARD.replace("PATTERN", "4 off at the corners, 6 mm in")
    binder = plan(text, upto=Phase.COMPOSE).binder
    assert binder is not None
    leaves = [one for top in binder.sections for one in top.sections if one.id == "part-base"]
    rows = [
        [text_of(cell) for cell in row]
        for leaf in leaves
        for block in leaf.blocks
        if isinstance(block, Table)
        for row in block.rows
    ]
    (row,) = [row for row in rows if any("pilot hole" in cell for cell in row)]
    assert row[2].startswith("spotted from the foot plate: its edges 160 mm off the left")


@pytest.mark.parametrize("model", MODELS)
def test_every_drilled_hole_is_told_on_its_part(model: str) -> None:
    """Each act that drills names a feature that is drawn, or the drawing tells it is spotted."""
    design = design_of(model)
    for route in design.facts.all(Route):
        for act in route.acts:
            if act.act != "drill" or act.feature or "on the spots" not in act.what:
                continue
            told = [one for item in design.items() for one in pilots_in(item.name, design)]
            assert any(one.size in act.what and one.deep in act.what for one in told), act.what
            assert all(list(pilot_rows(one.half.item, design)) for one in told)
