"""Pegs that are glued right through wood stand proud on purpose, and are cut flush when dry.

A peg is left long and cut flush after the glue has set: common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from binder.api import Design
from binder_plugins.buildorder.timing import time_tasks
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import ToolsFact, Whose
from binder_plugins.operations.planning import WorkPlan, plan_work
from tests.plugins.operations.conftest import HEAD, Plan, without

BOARD = (
    "  board: {material: oak, stock: 112 mm x 32 mm board, plate: {length: 100 mm, width: 60 mm,"
    " thickness: 30 mm}, features: {plugs: {drilled: 12 mm, on: top, at: '20 mm from left,"
    " 20 mm from front'}}}\n"
    "bought:\n  peg: {what: 'PEG', quantity: 1}\n"
    "joints:\n  peg in board: {glued: [peg, board.plugs], compound: wood glue}\n"
    "assemblies:\n  whole: {title: board with its peg, of: [board, peg]}\n"
)


def expanded(plan: Plan, peg: str, workshop: str = "") -> Design:
    """The board with its peg, with its times and tools."""
    outcome = plan(HEAD + BOARD.replace("PEG", peg), workshop)
    assert outcome.design is not None, [one.message for one in outcome.findings]
    design = outcome.design
    timed = replace(design, facts=design.facts.plus(time_tasks(design).facts))
    return replace(timed, facts=timed.facts.plus(collect_tools(timed).facts))


def planned(design: Design) -> WorkPlan:
    """The evenings."""
    return next(one for one in plan_work(design).facts if isinstance(one, WorkPlan))


def test_a_peg_that_stands_proud_is_pared_after_the_cure(plan: Plan) -> None:
    work = planned(expanded(plan, "oak dowel of 12 mm, 32 mm long"))
    (name,) = (one for one in work.pieces if one.endswith(", pared"))
    assert "2 mm longer than the hole" in work.pieces[name].what
    day = {job: one.day for one in work.evenings for job in one.jobs}
    glued = next(job for job in day if job == name.removesuffix(", pared"))
    assert day[name] > day[glued]
    before = next(one for one in work.evenings if name in one.jobs)
    ready = [one.next_tools for one in work.evenings if one.number == before.number - 1]
    assert "paring chisel" in (ready[0] if ready else before.tools)


@pytest.mark.parametrize(
    "peg", ["oak dowel of 12 mm, 30 mm long", "oak dowel", "dowel, 1/0 in long"]
)
def test_a_peg_that_fits_or_tells_no_length_is_left(peg: str, plan: Plan) -> None:
    work = planned(expanded(plan, peg))
    assert not [one for one in work.pieces if one.endswith(", pared")]


@pytest.mark.parametrize(
    ("workshop", "whose"),
    [("", Whose.HAD), (without(hand_tools="[wood chisels, files]"), Whose.OWNED)],
)
def test_the_chisel_is_listed(workshop: str, whose: Whose, plan: Plan) -> None:
    fact = expanded(plan, "oak dowel of 12 mm, 32 mm long", workshop).facts.about(ToolsFact, "")
    assert fact is not None
    assert [one.whose for one in fact.tools if one.name == "paring chisel"] == [whose]
