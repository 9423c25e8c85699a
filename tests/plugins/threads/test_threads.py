"""What is reckoned for each thread of a model, and what a joint settles."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from pathlib import Path

import pytest

from binder.api import Design, HalfFact, Table, ThreadFact
from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder.pages import Place, text_of

Compile = Callable[..., Outcome]
INCH = Path(__file__).parents[3] / "specs" / "workshops" / "inch.yaml"
SPEC = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  rod:
    material: mild steel
    stock: round bar
    quantity: 2
    turned:
      - {name: shank, diameter: 6 mm, length: 20 mm}
      - {name: spigot, diameter: 4 mm, length: 12 mm}
    features:
      tip: {screwed: to suit, on: spigot, length: 10 mm}
  fork:
    material: brass
    block: {length: 20 mm, width: 12 mm, height: 10 mm}
    features:
      hole: {tapped: to suit, on: top, depth: through}
      pin: {tapped: M3, on: left, depth: 8 mm, off: 2, pattern: 6 mm apart}
  nut:
    material: brass
    block: {length: 12 mm, width: 12 mm, height: 8 mm}
joints:
  rod in nut: {threaded: [rod.tip, nut.top], fixed: true}
  rod in fork: {threaded: [rod.tip, fork.hole], thread: M4}
positions: {nut: {at: 30 mm above fork}}
"""


def design_of(outcome: Outcome) -> Design:
    assert not outcome.findings, [one.message for one in outcome.findings]
    assert outcome.design is not None
    return outcome.design


@pytest.fixture
def design(compile_text: Compile) -> Design:
    return design_of(compile_text(SPEC))


def fact(design: Design, subject: str) -> ThreadFact:
    found = design.facts.about(ThreadFact, subject)
    assert found is not None, subject
    return found


def test_a_tapped_hole_by_hand_reckoning(design: Design) -> None:
    # M3: 3 − 0.5 = 2.5 (ISO 2306); 8 + plug lead 2 × 0.5 + chips 2 × 0.5 = 10 mm.
    pin = fact(design, "fork.pin")
    assert (pin.designation, pin.drill, pin.drill_mm) == ("M3", "2.5 mm", 2.5)
    assert "77 % of 1.299 P" in pin.percent
    assert "92 % of 1.0825 P" in pin.percent
    assert (pin.full_depth, pin.drill_depth) == (Fraction(8), 10.0)
    assert (pin.count, pin.major, pin.pitch) == (2, 3.0, 0.5)


def test_a_hole_for_a_grub_screw_goes_through_into_the_bore(compile_text: Compile) -> None:
    """The wall of a boss of 18 mm on 6 mm is 6 mm: the leaf drills so far and comes out there."""
    hub = (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
        "  hub: {material: brass, stock: 18 mm round bar, turned: [{name: boss, diameter: 18 mm,"
        " length: 12 mm}], features: {bore: {reamed: 6 mm, on: boss, depth: through},"
        " grub: {tapped: M3, across: boss, depth: %s mm}}}\n"
    )

    def grub(depth: str) -> ThreadFact:
        found = compile_text(hub % depth).design
        assert found is not None
        return fact(found, "hub.grub")

    assert (grub("6").full_depth, grub("6").drill_depth) == (None, None)
    assert grub("4").full_depth == 4


def test_a_joint_settles_both_halves_and_tells_the_next(design: Design) -> None:
    for subject in ("rod.tip", "fork.hole", "nut.rod_in_nut"):
        assert fact(design, subject).designation == "M4"
    hole = fact(design, "fork.hole")
    assert (hole.drill, hole.full_depth, hole.drill_depth) == ("3.3 mm", None, None)


def test_an_outside_thread_has_its_blank_and_wires(design: Design) -> None:
    # M4: 4 − 0.1 × 0.7 = 3.93; no drill of 1 mm and up lies in a pitch of 0.7, so the best
    # wire, 0.57735 × 0.7 = 0.404: 3.545 + 3 × 0.4041 − 0.866 × 0.7 = 4.152.
    tip = fact(design, "rod.tip")
    assert not tip.is_internal
    assert tip.turn_to == pytest.approx(3.93)
    assert tip.over_wires.startswith("4.152 mm")
    assert tip.count == 2


def test_each_half_is_told_to_its_part(design: Design) -> None:
    halves = [one for one in design.facts.all(HalfFact) if one.joint == "rod in fork"]
    told = {one.item: one for one in halves}
    assert told["fork"].what == "tap M4, drill 3.3 mm"
    assert told["fork"].is_master
    assert told["rod"].what == "thread M4, turn to 3.93 mm"
    assert told["rod"].mate == "fork.hole"


def test_every_figure_has_its_working(design: Design) -> None:
    drill = design.workings["fork.pin.drill"]
    assert drill.result.startswith("2.5 mm, ")
    assert "ISO 2306" in drill.source
    assert "10.00 mm" in design.workings["fork.pin.depth"].result
    assert design.workings["rod.tip.blank"].result == "3.93 mm"
    assert all(
        len(one.because.split()) <= 10
        for name, one in design.workings.items()
        if name.endswith((".drill", ".depth", ".blank"))
    )


def test_another_workshop_gives_other_drills(host: Host, tmp_path: Path) -> None:
    # No. 40 is 2.489 mm, the nearest to 2.5 among number, letter and fractional drills.
    spec = tmp_path / "trial.yaml"
    spec.write_text(SPEC, encoding="utf-8")
    outcome = compiled(Job(spec, INCH), host, Phase.CHECK)
    assert outcome.design is not None
    assert fact(outcome.design, "fork.pin").drill == "no. 40 drill"
    codes = {one.code.name for one in outcome.findings}
    assert codes == {"tap-or-die-not-owned"}


def test_the_page_lists_every_thread(compile_text: Compile) -> None:
    outcome = compile_text(SPEC, Phase.COMPOSE)
    assert outcome.binder is not None
    (page,) = [one for one in outcome.binder.sections if one.place is Place.THREADS]
    holes, outsides, lathe = [one for one in page.blocks if isinstance(one, Table)]
    # Both M4 go through and are made alike: one row says it for both.
    assert [text_of(row[0]) for row in holes.rows] == ["M4", "M3"]
    assert text_of(holes.rows[0][1]) == "fork, hole; nut, rod in nut"
    assert [text_of(row[0]) for row in outsides.rows] == ["M4"]
    assert "0.429 mm" in [text_of(cell) for cell in lathe.rows[0]]
    assert text_of(lathe.rows[0][-1]).startswith("none drawn; where one is wanted, 2.10 mm wide")


def test_a_model_without_threads_has_no_page(compile_text: Compile) -> None:
    text = (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"
        "parts:\n  pin: {material: brass, stock: 6 mm drawn rod, cut: 40 mm}\n"
    )
    outcome = compile_text(text, Phase.COMPOSE)
    assert outcome.binder is not None
    assert not [one for one in outcome.binder.sections if one.place is Place.THREADS]
    assert outcome.design is not None
    assert not outcome.design.facts.all(ThreadFact)


def test_a_left_hand_thread_says_so(compile_text: Compile) -> None:
    text = SPEC.replace("thread: M4}", "thread: M4 LH}")
    outcome = compile_text(text)
    assert outcome.design is not None
    assert fact(outcome.design, "fork.hole").designation == "M4 LH"


def test_the_run_out_groove_is_the_undercut_that_the_part_has(compile_text: Compile) -> None:
    """Drawn 1.2 wide and 0.4 deep on 3 mm: 3 - 2 × 0.4 = 2.2 mm across, whatever tables say."""
    text = (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n  shaft:\n"
        "    material: mild steel\n    turned:\n"
        "      - {name: journal, diameter: 6 mm, length: 20 mm}\n"
        "      - {name: tail, diameter: 3 mm, length: 8 mm}\n    features:\n"
        "      thread: {screwed: M3, on: tail, length: 6 mm}\n"
        "      relief: {undercut: 1.2 mm, on: tail, at: 0.6 mm from journal, depth: 0.4 mm}\n"
    )
    outcome = compile_text(text, Phase.COMPOSE)
    assert outcome.binder is not None
    (page,) = [one for one in outcome.binder.sections if one.place is Place.THREADS]
    lathe = [one for one in page.blocks if isinstance(one, Table)][-1]
    assert {text_of(row[-1]) for row in lathe.rows} == {"1.20 mm wide, 2.20 mm across"}
