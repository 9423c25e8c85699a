"""A badge glued flat on a finished face goes on after the finish; common practice, no source."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import BuildSequence, Checklist, Design, TaskTime
from binder.compiler import Outcome, Phase
from binder.pages import text_of
from binder_plugins.buildorder.assembly import assembly_pages

Compile = Callable[..., Outcome]
TEXT = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  board:
    material: oak
    board: {length: 120 mm, width: 80 mm, thickness: 20 mm}
    FINISH
  badge:
    material: brass
    plate: {length: 30 mm, width: 10 mm, thickness: 1 mm}
  foot:
    material: mild steel
    block: {length: 20 mm, width: 20 mm, height: 10 mm}
joints:
  badge on board: {glued: [badge.underside, board.front]}
  foot on board:  {screwed: [foot.top, board.underside], fastener: no. 6 brass wood screw}
  MORE
assemblies:
  all: {title: whole, of: [board, badge, foot], test: it stands}
positions: {badge: {at: middle of board}}
"""
COAT = "finish: two coats of oil"


def design_of(compile_text: Compile, finish: str = COAT, more: str = "") -> Design:
    text = TEXT.replace("    FINISH\n", f"    {finish}\n" if finish else "").replace("MORE", more)
    design = compile_text(text, Phase.COMPOSE).design
    assert design is not None
    return design


def order(design: Design) -> list[str]:
    found = design.facts.about(BuildSequence, "")
    assert found is not None
    return [step.task for step in found.steps]


def steps(design: Design) -> list[str]:
    (whole,) = assembly_pages(design, ())
    (sheet,) = whole.sections
    (ticks,) = (block for block in sheet.blocks if isinstance(block, Checklist))
    return [text_of(tick.text) for tick in ticks.checks]


def test_a_badge_waits_for_the_finish_of_what_it_is_glued_on(compile_text: Compile) -> None:
    design = design_of(compile_text)
    tasks = order(design)
    places = [
        tasks.index(one)
        for one in ("test all", "strip all", "finish board", "close all", "stick badge on board")
    ]
    assert places == sorted(places)
    (step,) = (one for one in steps(design) if "badge" in one.lower())
    assert step.startswith("Last of all, the finish dry")
    assert "scraped off under it" in step


def test_its_minutes_are_counted_there_and_once(compile_text: Compile) -> None:
    design = design_of(compile_text)
    lines = [line.what for one in design.facts.all(TaskTime) for line in one.lines]
    assert lines.count("badge on board") == 1
    time = design.facts.about(TaskTime, "stick badge on board")
    assert time is not None
    assert (time.act, time.wait_h) == ("glue", 24)


@pytest.mark.parametrize(
    ("finish", "more"),
    [
        ("", ""),  # nothing to wait for
        (COAT, "peg: {screwed: [badge.top, foot.front], fastener: M3 cheese head screw}"),
    ],
)
def test_what_is_bare_or_carries_more_is_glued_at_assembly(
    compile_text: Compile, finish: str, more: str
) -> None:
    design = design_of(compile_text, finish, more)
    assert not [name for name in design.tasks if name.startswith("stick ")]
    assert not [one for one in steps(design) if "finish dry" in one]
