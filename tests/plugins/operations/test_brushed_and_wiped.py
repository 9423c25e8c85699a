"""What swarf is brushed off with, what wipes, and what a bar is drawn out against is listed.

That chips come off with a brush, that rags with spirit go into a closed tin and that bores are
wiped before the first run is what the leaves say; how it is done is common practice, no source.
"""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from binder.api import Design, load_data
from binder_plugins.buildorder.timing import time_tasks
from binder_plugins.operations.aids.collecting import collect_tools, own_names
from binder_plugins.operations.aids.facts import ToolsFact, Whose
from binder_plugins.partslist.for_places import for_places
from binder_plugins.partslist.used_up import used_up
from tests.plugins.operations.conftest import HEAD, Plan, without
from tests.plugins.operations.test_supplies import SWIVEL, supplied

TURNED = (
    HEAD + "  trial: {material: mild steel, stock: 12 mm round bar, quantity: %s, turned: [{name:"
    " body, diameter: 10 mm, length: 12 mm}], features: {hole: {tapped: M4, on: body, depth:"
    " through}}}\n"
)
LOCKED = (
    HEAD
    + """  cap: {material: brass, stock: 20 mm round bar,
    turned: [{name: rim, diameter: 20 mm, length: 8 mm}],
    features: {hole: {tapped: M4, on: rim, depth: through}}}
  stud: {material: mild steel, stock: 4 mm drawn rod,
    turned: [{name: rod, diameter: 4 mm, length: 20 mm}],
    features: {thread: {screwed: M4, on: rod, length: 8 mm}}}
joints:
  stud in cap: {threaded: [stud.thread, cap.hole], fixed: true%s}
assemblies:
  box: {of: [cap, stud], test: it does not turn}
"""
)


def _tools(design: Design | None) -> ToolsFact:
    assert design is not None
    timed = replace(design, facts=design.facts.plus(time_tasks(design).facts))
    return next(one for one in collect_tools(timed).facts if isinstance(one, ToolsFact))


def test_a_brush_lies_ready_at_every_machine_and_at_no_bench(plan: Plan) -> None:
    laid = _tools(plan(TURNED % 1).design).by_piece
    with_brush = {piece for piece, names in laid.items() if "swarf brush" in names}
    at_lathe = {piece for piece, names in laid.items() if "three-jaw" in names}
    assert with_brush == at_lathe != set()
    assert set(laid) - with_brush


@pytest.mark.parametrize(
    ("owned", "whose"),
    [("[paint brush]", Whose.OWNED), ("[files]", Whose.HAD), ("[flux brush]", Whose.HAD)],
)
def test_a_brush_that_is_listed_is_owned(owned: str, whose: Whose, plan: Plan) -> None:
    tools = _tools(plan(TURNED % 1, without(hand_tools=owned)).design).tools
    assert [one.whose for one in tools if one.name == "swarf brush"] == [whose]


@pytest.mark.parametrize(("count", "is_stick"), [(1, False), (3, True)])
def test_a_stick_has_a_stop_for_its_bar(count: int, plan: Plan, *, is_stick: bool) -> None:
    names = [one.name for one in _tools(plan(TURNED % count).design).tools]
    assert any(name.startswith("stop for the bar") for name in names) == is_stick


@pytest.mark.parametrize("locked", ["", ", locked_with: thread-locking compound"])
def test_what_is_wiped_with_spirit_has_a_rag_and_a_tin_for_it(locked: str, plan: Plan) -> None:
    laid = _tools(plan(LOCKED % locked).design).by_piece
    wanted = {"clean rag", "metal tin with a lid"}
    assert (wanted <= set(laid.get("lock box", ()))) == bool(locked)


def test_before_the_first_run_there_is_a_brush_and_a_rag(plan: Plan) -> None:
    driven = SWIVEL + "drive: {hand: {turns: [saddle], by: hand, speeds: [20 r/min]}}\n"
    laid = _tools(plan(driven).design).by_piece
    assert {"swarf brush", "clean rag"} <= set(laid["run head"])


def test_cutting_oil_stands_where_the_list_of_tools_sends_for_oils(plan: Plan) -> None:
    """`Adhesives, solders, fluxes and oils stand under To buy and to find.`"""
    design = plan(TURNED % 1).design
    assert design is not None
    assert "cutting oil" not in {one.name for one in _tools(design).tools}
    assert used_up(supplied(design))["cutting oil"]


def test_no_oil_or_glue_stands_among_the_tools() -> None:
    for row in load_data("binder_plugins.operations", "tools.yaml")["tools"]:
        name = row.get("name", "")
        is_fluid = re.search(r"\boil\b|glue|paraffin|compound|^flux|solder$", name)
        if is_fluid and "brush" not in name:
            assert row.get("used_up") or row["own"] == "bought", name


def test_a_note_names_the_set_ups_of_a_leaf_together() -> None:
    names = ["body, set-up 2", "body, set-up 4", "saddle on screw", "screw, set-up 3"]
    assert for_places(names) == "for body, set-ups 2 and 4; saddle on screw; screw, set-up 3"
    assert for_places(["one joint", "two joint"]) == "for one joint, two joint"


def test_a_long_note_counts_what_it_does_not_name() -> None:
    """One more than six is named as well: `and 1 more` is no shorter."""
    names = [f"part {n}" for n in range(8)]
    assert for_places(names).endswith("part 5 and 2 more")
    assert for_places(names[:7]).endswith("part 6")


def test_names_as_long_as_one_another_have_one_order(plan: Plan) -> None:
    """`bench vice` and `micrometer` have ten letters each, and a set keeps no order."""
    design = plan(TURNED % 1).design
    assert design is not None
    names = own_names(design)
    assert names == sorted(names, key=lambda name: (-len(name), name))
    assert names.index("bench vice") < names.index("micrometer")
