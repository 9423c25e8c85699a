"""What cures in an assembly leaves the rest to another evening; common practice, no source."""

from __future__ import annotations

from collections.abc import Callable

from binder.api import BuildSequence, Checklist, Design, TaskTime
from binder.compiler import Outcome, Phase
from binder.pages import text_of
from binder_plugins.buildorder.assembly import assembly_pages
from binder_plugins.operations.planning import WorkPlan

Compile = Callable[..., Outcome]
TEXT = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  axle: {material: silver steel, stock: drawn rod, turned: [{name: rod, diameter: 6 mm, length: 60 mm}]}
  hub: {material: brass, turned: [{diameter: 20 mm, length: 6 mm}], features: {bore: {reamed: 6 mm, on: left, depth: through}}}
  collar: {material: brass, turned: [{diameter: 12 mm, length: 6 mm}], features: {bore: {reamed: 6 mm, on: left, depth: through}}}
joints:
  hub on axle: {retained: [hub.bore, axle.rod]}
  collar on axle: {COLLAR: [collar.bore, axle.rod]MORE}
assemblies:
  all: {of: [axle, hub, collar], test: it rolls}
"""  # noqa: E501
CLAMPED = ("clamped", ", fastener: M3 grub screw")
BONDED = ("retained", "")


def design_of(compile_text: Compile, how: tuple[str, str], upto: Phase = Phase.CHECK) -> Design:
    text = TEXT.replace("COLLAR", how[0]).replace("MORE", how[1])
    design = compile_text(text, upto).design
    assert design is not None
    return design


def steps(design: Design) -> list[str]:
    (whole,) = assembly_pages(design, ())
    (sheet,) = whole.sections
    (ticks,) = (block for block in sheet.blocks if isinstance(block, Checklist))
    return [text_of(tick.text) for tick in ticks.checks]


def test_what_would_load_a_wet_joint_waits_for_another_evening(compile_text: Compile) -> None:
    design = design_of(compile_text, CLAMPED, Phase.COMPOSE)
    first, stop, last = steps(design)
    assert first.startswith("Degrease")
    assert stop.startswith("Stop here for this evening: leave it alone for 24 h")
    assert last.startswith("Slide the bore of the collar")
    plan = design.facts.about(WorkPlan, "")
    assert plan is not None
    evening = {job: one.number for one in plan.evenings for job in one.jobs}
    assert evening["begin all"] < evening["assemble all"]
    begun, rest = (design.facts.about(TaskTime, f"{verb} all") for verb in ("begin", "assemble"))
    assert begun is not None
    assert rest is not None
    assert (begun.wait_h, rest.wait_h) == (24, 0)
    assert [line.what for line in rest.lines] == ["collar on axle"]


def test_a_begun_assembly_waits_for_its_own_parts_alone(compile_text: Compile) -> None:
    sequence = design_of(compile_text, CLAMPED).facts.about(BuildSequence, "")
    assert sequence is not None
    waits = {step.task: {earlier for earlier, _ in step.after} for step in sequence.steps}
    assert waits["begin all"] == {"make axle", "make hub"}
    assert {"begin all", "make collar"} <= waits["assemble all"]


def test_what_cures_together_goes_up_at_one_go(compile_text: Compile) -> None:
    design = design_of(compile_text, BONDED)
    assert len(steps(design)) == 2
    assert "begin all" not in design.tasks
