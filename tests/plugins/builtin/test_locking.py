"""What is locked for good is locked last: behind running in, test, finish and closing.

Common practice, no source: compound that has set does not come apart for paint, nor for what is
found in running in. The cure of a day is the usual one on makers' sheets, from memory.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise

import pytest

from binder.api import BuildSequence, Checklist, Design, Section, TaskTime
from binder.compiler import Outcome
from binder.pages import Block, Paragraph, text_of
from binder_plugins.buildorder.assembly import assembly_pages
from binder_plugins.buildorder.timing import time_tasks
from binder_plugins.finishing.page import finishing_pages
from binder_plugins.operations.evening_pages import evening_pages
from binder_plugins.running.first_page import first_run_pages
from binder_solid.watched import slip_line, slips_unseen
from tests.plugins.operations.test_order import design_of, plan_of

JACK, CRANE = "screw-jack/screw-jack", "wharf-crane/wharf-crane"
PAIR = """format: 1
model: {title: Pair, issue: A, units: mm}
parts:
  stud: {material: mild steel, stock: 6 mm drawn rod, cut: 40 mm, FINISH\
turned: [{name: rod, diameter: 6 mm, length: 40 mm}],
    features: {thread: {screwed: M6, on: rod, length: 8 mm}}}
  cap: {material: brass, block: {length: 20 mm, width: 20 mm, height: 10 mm},
    features: {hole: {tapped: to suit, on: top, depth: 9 mm}}}
joints:
  stud in cap: {threaded: [stud.thread, cap.hole], fixed: true, locked_with: compound}
assemblies:
  pair: {of: [stud, cap]TEST}
"""


def order_of(design: Design) -> list[str]:
    sequence = design.facts.about(BuildSequence, "")
    assert sequence is not None
    return [step.task for step in sequence.steps]


def lines(blocks: tuple[Block, ...]) -> list[str]:
    return [
        text_of(one.text) for block in blocks if isinstance(block, Checklist)
        for one in block.checks
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("model", "last"),
    [
        (JACK, ["assemble jack", "run jack", "test jack", "lock jack"]),
        (CRANE, ["assemble crane", "run crane", "test crane", "strip crane", "finish quay",
                 "close crane", "lock crane"]),
    ],
)  # fmt: skip
def test_a_model_is_locked_last(model: str, last: list[str]) -> None:
    order = order_of(design_of(model))
    assert all(order.index(one) < order.index(other) for one, other in pairwise(last))
    assert order[-1] == last[-1]


@pytest.mark.parametrize(
    ("finish", "test", "earlier"),
    [
        ("", "", "assemble pair"),
        ("", ", test: it holds", "test pair"),
        ("finish: painted black, ", ", test: it holds", "close pair"),
    ],
)
def test_what_is_locked_waits_for_what_comes_last_before_it(
    compile_text: Callable[..., Outcome], finish: str, test: str, earlier: str
) -> None:
    text = PAIR.replace("FINISH", finish).replace("TEST", test)
    design = compile_text(text).design
    assert design is not None
    assert order_of(design)[-2:] == [earlier, "lock pair"]


@pytest.mark.parametrize("model", [JACK, CRANE])
def test_the_evening_that_locks_has_the_compound_laid_out_and_its_minutes(model: str) -> None:
    plan, design = plan_of(model), design_of(model)
    name = f"lock {'jack' if model == JACK else 'crane'}"
    laid = ("screwdriver or key", "thread-locking compound", "spirit to degrease with")
    assert plan.pieces[name].tools == laid
    assert plan.pieces[name].takes >= 10
    (at,) = (one for one in plan.evenings if name in one.jobs)
    assert at.jobs[-1] == name
    assert at.cures == (name,)
    before = plan.evenings[at.number - 2]
    assert "thread-locking compound" in before.next_tools
    told = replace(design, facts=design.facts.plus((plan,)))
    (section,) = evening_pages(told, ())
    words = [text_of(one.text) for one in section.blocks if isinstance(one, Paragraph)]
    assert any("Lay out for the next" in one and "thread-locking" in one for one in words)
    times = {one.subject: one for one in time_tasks(design).facts if isinstance(one, TaskTime)}
    assert times[name].wait_h == 24


@pytest.mark.parametrize("model", [JACK, CRANE])
def test_the_end_pages_tell_the_same(model: str) -> None:
    design = design_of(model)
    (run,) = first_run_pages(design)
    said = lines(run.blocks)
    whole = "jack" if model == JACK else "crane"
    joint = "keeper on pin" if model == JACK else "arm on crank shaft"
    assert f"ock the {_titled(design, whole)}: {joint}" in said[-1]
    assert ("finish it" in said[-1]) == (model == CRANE)
    assert sum("pencil line" in one for one in said) == 2
    # Common practice, no source: a line is drawn where it is seen, and a sole screw may turn with
    # what it clamps.
    ends = "head of the M3 × 5 mm cap screw to the keeper" if model == JACK else "crank shaft to"
    assert any(f"a pencil line from the {ends}" in one for one in said)
    again = "try the screw with its key each time as well, and read the end float of 'saddle on"
    assert any(again in one for one in said) == (model == JACK)
    (finishing,) = finishing_pages(design)
    first = next(one for one in finishing.blocks if isinstance(one, Paragraph))
    # The jack is told no finish, so nothing of it is taken apart for one.
    assert ("Nothing is locked yet" in text_of(first.text)) == (model == CRANE)
    assert ("No part is told a finish" in text_of(first.text)) == (model == JACK)
    sheet = _sheet(design, whole)
    words = " ".join(text_of(one.text) for one in sheet.blocks if isinstance(one, Paragraph))
    end = "tested, finished and together for good" if model == CRANE else "run in and tested"
    assert "Lock it last of all, when it is run in" in words
    assert end in words


LID = """format: 1
model: {title: Lid, issue: A, units: mm}
parts:
  base: {material: mild steel, block: {length: 30 mm, width: 30 mm, height: 12 mm}}
  lid: {material: brass, block: {length: 30 mm, width: 30 mm, height: 4 mm}}
joints:
  lid on base: {screwed: [lid.underside, base.top], fastener: M3 socket cap screw,
    pattern: "PATTERN", locked_with: compound}
assemblies:
  box: {of: [base, lid]}
"""


@pytest.mark.parametrize(
    ("pattern", "is_told"),
    [("single", True), ("2 off, 14 mm apart", False)],
)
def test_two_screws_keep_each_other_from_turning_with_the_lid(
    compile_text: Callable[..., Outcome], pattern: str, is_told: bool
) -> None:
    """Common practice, no source: on two screws it cannot turn, so each line tells a slip."""
    design = compile_text(LID.replace("PATTERN", pattern)).design
    assert design is not None
    joint = design.joints["lid on base"]
    assert bool(slips_unseen(joint, design)) == is_told
    assert slip_line(joint, design).endswith("cap screw to the lid")


def test_a_model_without_a_lock_says_nothing_of_it() -> None:
    design = design_of("tilt-hammer/tilt-hammer")
    assert not any(one.startswith("lock ") for one in order_of(design))
    (run,) = first_run_pages(design)
    (finishing,) = finishing_pages(design)
    words = " ".join(text_of(one.text) for one in finishing.blocks if isinstance(one, Paragraph))
    said = " ".join(lines(run.blocks)) + words
    assert not any(one in said for one in ("locked", "Lock the", "pencil line"))


def _titled(design: Design, name: str) -> str:
    return design.assemblies[name].title


def _sheet(design: Design, name: str) -> Section:
    (whole,) = assembly_pages(design, ())
    return next(one for one in whole.sections if one.id == f"assembly-{name}")
