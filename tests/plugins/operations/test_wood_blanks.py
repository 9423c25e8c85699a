"""A board is planed by its faces flat on the bench, by edges and ends in the vice.

Common practice, no source: jaws cover the faces that they grip.
"""

from __future__ import annotations

from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import ToolsFact
from binder_plugins.operations.facts import SetUp
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf

BOARD = "{{material: oak, {0}board: {{length: 240 mm, width: 140 mm, thickness: {1} mm}}}}"


def _planing(setups: tuple[SetUp, ...]) -> list[SetUp]:
    return [one for one in setups if any(act.act == "square" for act in one.acts)]


def test_faces_lie_on_the_bench_and_edges_stand_in_the_vice(route_of: RouteOf) -> None:
    """The built-in bench vice opens 110 mm: 22 mm of board go in, 140 mm would not."""
    flat, upright = _planing(route_of(BOARD.format("", 22)).setups)
    assert "vice" not in flat.grip.holder
    assert [act.what.endswith("to 22 mm") for act in flat.acts] == [True]
    assert upright.grip.holder == "bench vice"
    assert "an edge or an end up" in upright.grip.on
    assert [act.what.rpartition("to ")[2] for act in upright.acts] == ["140 mm", "240 mm"]


def test_a_board_bought_as_thick_keeps_its_faces(route_of: RouteOf) -> None:
    (upright,) = _planing(route_of(BOARD.format("stock: 142 mm x 22 mm board, ", 22)).setups)
    assert upright.grip.holder == "bench vice"


def test_a_block_too_thick_for_the_vice_stays_on_the_bench(route_of: RouteOf) -> None:
    part = BOARD.format("", 120)
    assert all("vice" not in one.grip.holder for one in _planing(route_of(part).setups))


def test_its_aids_are_listed(plan: Plan) -> None:
    part = BOARD.format("", 22)
    design = plan(f"{HEAD}  part: {part}\n").design
    assert design is not None
    (found,) = [one for one in collect_tools(design).facts if isinstance(one, ToolsFact)]
    assert {"plane", "bench stop", "digital caliper"} <= set(found.by_piece["part 2"])
    assert {"square", "rule"} <= set(found.by_piece["part 3"])
