"""Cords in the way, pawls that do not hold, loads that tip: by hand, from places as they stand.

What clears and what does not is plane geometry, worked beside each case.
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from math import asin, cos, hypot, sin
from pathlib import Path
from shutil import copytree

import pytest

from binder.api import CordFact
from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder_plugins.drive.cords.runs import runs_of
from binder_plugins.drive.pages_pawls import nose_outline, teeth_outline
from binder_solid.pawls import PawlFact
from binder_trade.mechanisms.tipping import tipping

Compile = Callable[..., Outcome]
CRANE = Path(__file__).parents[3] / "specs" / "wharf-crane"
SPEC = """format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  base: {material: mild steel, block: {length: 60 mm, width: 100 mm, height: 10 mm}}
  drum: {material: brass, turned: [{name: barrel, diameter: 10 mm, length: 20 mm},
    {name: end, diameter: 4 mm, length: 3 mm}]}
  wheel: {material: mild steel, ratchet: {teeth: 12, outside: 20 mm, depth: 2 mm, width: 3 mm},
    features: {bore: {reamed: 4 mm, depth: through}}}
  top: {material: brass, turned: [{name: rim, diameter: 16 mm, length: 4 mm}]}
  eye: {material: brass, block: {length: 4 mm, width: 4 mm, height: 4 mm}}
  post: {material: brass, block: {length: 10 mm, width: 4 mm, height: HIGH mm}}
bought:
  cord: {what: braided cord, sizes: {length: 1 m}}
joints:
  wheel on drum: {glued: [wheel.bore, drum.end]}
drive:
  hand: {turns: [drum], by: hand, speeds: [60 r/min], radius: 20 mm, force: 10 N}
  rope: {winds: [drum.barrel, cord], rope: 1 mm, load: LOAD kg, hangs: true, over: [top],
    sheaves: 1}
stands: base
positions:
  drum: {at: "middle of base, 0 mm behind base.front, 40 mm above base.top"}
  top: {at: "middle of base, 140 mm behind base.front, 100 mm above base.top"}
  post: {at: "middle of base, 70 mm behind base.front, 0 mm above base.top"}
  eye: {at: "middle of base, 20 mm behind base.front, 0 mm above base.top"}
assemblies:
  all: {of: [base, drum, wheel, top, post, eye]}
"""


def spec(**told: str) -> str:
    text = SPEC
    usual = {"HIGH": "10", "LOAD": "0.1"}
    for word, value in {**usual, **told}.items():
        text = text.replace(word, value)
    return text


def names(outcome: Outcome) -> set[str]:
    """The codes that are found."""
    return {one.code.name for one in outcome.findings}


def crane(folder: Path, host: Host, *swaps: tuple[str, str]) -> Outcome:
    """The crane with some of its words changed."""
    whole = copytree(CRANE, folder / "crane")
    for old, new in swaps:
        found = [path for path in whole.glob("*.yaml") if old in path.read_text(encoding="utf-8")]
        assert len(found) == 1, old
        text = found[0].read_text(encoding="utf-8")
        found[0].write_text(text.replace(old, new), encoding="utf-8")
    return compiled(Job(whole / "wharf-crane.yaml", None, ()), host, Phase.CHECK)


def test_a_run_is_the_outer_tangent_of_drum_and_sheave(compile_text: Compile) -> None:
    """Radii 5.5 and 8.5 (to the middle of 1 mm cord), middles 143 mm and 63 mm apart.

    The outer tangent is sqrt(d² − (R − r)²) long, and leans by asin((R − r) / d) against the line
    of the middles: plane geometry.
    """
    design = compile_text(spec()).design
    assert design is not None
    (run,) = runs_of(design.joints["rope"], design)
    (start, end) = run.lines[1]
    apart = hypot(143, 63)
    assert hypot(end[1] - start[1], end[2] - start[2]) == pytest.approx((apart**2 - 9) ** 0.5)
    lean = asin(63 / apart) + asin(3 / apart)
    # Over the top of both: a right angle on from the way of the cord.
    assert start[1:] == pytest.approx((5 - 5.5 * sin(lean), 55 + 5.5 * cos(lean)))
    assert end[1:] == pytest.approx((148 - 8.5 * sin(lean), 118 + 8.5 * cos(lean)))


@pytest.mark.parametrize(("high", "stands"), [("70", False), ("90", True)])
def test_what_the_cord_goes_through_is_told(compile_text: Compile, high: str, stands: bool) -> None:
    """At the post, 70 to 74 behind, the cord is 55 + 5.5 + some 0.46 × 70, so about 92 mm up.

    A post of 70 mm reaches 80 mm up, one of 90 mm 100.
    """
    found = [
        one for one in compile_text(spec(HIGH=high)).findings if one.code.name == "cord-in-the-way"
    ]
    assert bool(found) == stands
    if stands:
        assert "'post'" in found[0].message


def test_a_load_past_the_edge_is_held_by_its_lever() -> None:
    """10 N 20 mm past: 200. 1 kg 30 mm and 0.5 kg 10 mm inside: 9.80665 (30 + 5) = 343.2."""
    made = tipping(10.0, 20.0, ((1.0, 30.0), (0.5, 10.0)))
    assert (made.tips_nmm, made.holds_nmm) == pytest.approx((200.0, 343.2327))
    assert made.times == pytest.approx(1.716, abs=1e-3)


@pytest.mark.parametrize(("load", "tips"), [("0.1", False), ("1", True)])
def test_a_load_that_tips_the_model_is_told_at_what_stands(
    compile_text: Compile, load: str, tips: bool
) -> None:
    """The line hangs at 148 + 8.5, 56.5 mm past the back edge: 55.4 N·mm for 0.1 kg.

    The base alone, 60 × 100 × 10 of steel (7.85 g/cm³), holds 0.471 kg × 50 mm: 231 N·mm, four
    times 55 and not once 554; the drum and post in front of the edge add a little.
    """
    outcome = compile_text(spec(LOAD=load))
    assert ("load-tips-the-model" in names(outcome)) == tips
    assert outcome.design is not None
    (cord,) = outcome.design.facts.all(CordFact)
    assert cord.tips_nmm == pytest.approx(float(load) * 9.80665 * 56.5, rel=1e-3)
    assert cord.holds_nmm is not None
    assert 231 < cord.holds_nmm < 260


def test_a_reason_on_what_stands_answers(compile_text: Compile) -> None:
    text = spec(LOAD="1").replace("base: {", "base: {because: clamped to the bench, ")
    found = [one for one in compile_text(text).findings if one.code.name == "load-tips-the-model"]
    assert [one.accepted for one in found] == ["clamped to the bench"]


def test_the_crane_stands_right(tmp_path: Path, host: Host) -> None:
    """The cord leaves over the top; what winds it in from there turns left, seen from the front.

    The top of the drum has to go away from the jib, to the left: anticlockwise. Two wheels in
    mesh turn against one another, so the crank goes clockwise.
    """
    outcome = crane(tmp_path, host)
    assert not outcome.findings
    assert outcome.design is not None
    (cord,) = outcome.design.facts.all(CordFact)
    assert cord.leaves.startswith("over the top")
    assert cord.winds == "seen from the crank arm: the drum anticlockwise, the crank arm clockwise"


@pytest.mark.parametrize(
    ("swap", "code"),
    [
        # The post up to 124 mm, where the cord passes about 100 mm up.
        (("picture(367 px)", "picture(520 px)"), "cord-in-the-way"),
        # Below the wheel: the weight swings the nose down and off, and the teeth pull at it.
        (("6 mm from front", "6 mm from back"), "pawl-falls-out"),
        (("6 mm from front", "6 mm from back"), "pawl-lets-go"),
        # The same bar with its pin 3 mm from the end.
        (("at: 9 mm from left}", "at: 3 mm from left}"), "pawl-without-tail"),
        # 19 mm from the pin, past the 17.4 at which the push of the tooth passes through it.
        (("cut: 24 mm ", "cut: 28 mm "), "pawl-does-not-seat"),
        # The lighter quay that the model once had.
        (
            ("length: 240 mm, width: 140 mm, thickness: 22 mm",
             "length: 140 mm, width: 120 mm, thickness: 18 mm"),
            "load-tips-the-model",
        ),
        # 1 mm of the tail left plain at the shoulder that the arm comes up to.
        (
            ("      relief: {undercut: 1.2 mm, on: tail, at: 0.6 mm from journal, depth: 0.4 mm}",
             "      "),
            "thread-to-shoulder",
        ),
        # The grooves of the head pin as far apart as they once stood.
        ((", each_end: true, at: 0.95 mm from left}", ", each_end: true}"), "end-float-off"),
        # The undercut told from the end of the shaft.
        (("at: 0.6 mm from journal", "at: 0.6 mm from left"), "beside-its-step"),
        # The seat of the wheel as long as the wheel: the rim of the bush meets both.
        (("diameter: 8 mm, length: 3.25 mm", "diameter: 8 mm, length: 3 mm"), "flush-at-bearing"),
    ],
)  # fmt: skip
def test_each_mend_of_the_crane_is_one_that_was_found(
    swap: tuple[str, str], code: str, tmp_path: Path, host: Host
) -> None:
    assert code in names(crane(tmp_path, host, swap))


def test_a_thread_short_of_its_shoulder(tmp_path: Path, host: Host) -> None:
    """M3 for 4 mm on a tail of 5: the first millimetre is ⌀3, and no M3 hole takes it."""
    outcome = crane(
        tmp_path, host,
        ("{screwed: M3, on: tail, length: 5 mm}", "{screwed: M3, on: tail, length: 4 mm}"),
        ("      relief: {undercut: 1.2 mm, on: tail, at: 0.6 mm from journal, depth: 0.4 mm}",
         "      "),
    )  # fmt: skip
    found = [one for one in outcome.findings if one.code.name == "hub-stops-short"]
    assert len(found) == 1
    assert "1 mm" in found[0].message


def test_a_pawl_with_a_spring_may_stand_anywhere(tmp_path: Path, host: Host) -> None:
    outcome = crane(
        tmp_path, host,
        ("6 mm from front", "6 mm from back"),
        ("falls by its own weight", "drawn in by a spring"),
    )  # fmt: skip
    assert "pawl-falls-out" not in names(outcome)
    assert "pawl-lets-go" in names(outcome)


def test_the_end_of_a_pawl_lies_on_a_face_as_it_is_pictured(tmp_path: Path, host: Host) -> None:
    """Pin 26 and 6 from the cheek's edges, axis 39.93 and 18: 13.93 and 12 apart, 18.386.

    The law of cosines gives 113.4° at the nose's corner, where a square end wants 101.3°.
    """
    design = crane(tmp_path, host).design
    assert design is not None
    (fact,) = design.facts.all(PawlFact)
    assert (fact.end, fact.side, fact.reach, fact.half) == ("right", "front", 15.0, 3.0)
    assert fact.nose.out_deg == pytest.approx(12.07, abs=0.1)
    (_, top, foot, *_) = nose_outline(fact)
    point, root = next(
        pair
        for pair in pairwise(teeth_outline(fact))
        if hypot(pair[1][0] - 15, pair[1][1] + 3) < 0.01
    )
    along = (top[0] - foot[0], top[1] - foot[1])
    face = (point[0] - root[0], point[1] - root[1])
    assert along[0] * face[1] - along[1] * face[0] == pytest.approx(0.0, abs=1e-6)
    assert hypot(*face) == pytest.approx(1.2)


def test_a_pawl_that_is_too_long_is_told_the_length_that_seats(tmp_path: Path, host: Host) -> None:
    """√(18.386² − 8.8²) = 16.14 from the pin, and 9 behind it."""
    found = [
        one for one in crane(tmp_path, host, ("cut: 24 mm ", "cut: 28 mm ")).findings
        if one.code.name == "pawl-does-not-seat"
    ]  # fmt: skip
    assert "16.1 mm, 25.1 mm over all" in str(found[0].help)


@pytest.mark.parametrize(("high", "left"), [("120", 98.0), ("60", 58.0)])
def test_a_block_comes_no_higher_than_the_rims_and_the_dead_end_let_it(
    high: str, left: float, compile_text: Compile
) -> None:
    """The axis of the upper sheave stands 118 mm over the bench: rims of 8 and 6 mm stop the lower
    one 14 mm under it, and it is 6 mm more to its lowest, 98 mm. Made fast to an eye whose
    underside stands 70 mm up, its top comes no higher, and it is 12 mm high: 58 mm."""
    text = spec().replace("over: [top],", "over: [top, low], dead_end: eye, lines: 2,")
    text = text.replace(
        '  eye: {at: "middle of base, 20 mm behind base.front, 0 mm',
        f'  eye: {{at: "middle of base, 120 mm behind base.front, {high} mm',
    ).replace("    sheaves: 1}", "    height: 160 mm}")
    low = (
        "  low: {material: brass, turned: [{name: rim, diameter: 12 mm, length: 4 mm}]}\n  eye: {m"
    )
    text = text.replace("  eye: {m", low, 1)
    text = text.replace(
        "positions:\n", 'positions:\n  low: {parallel: top, at: "40 mm below top, middle of top"}\n'
    )
    design = compile_text(text.replace("top, eye]", "top, low, eye]")).design
    assert design is not None
    (fact,) = design.facts.all(CordFact)
    assert fact.room_mm == pytest.approx(left)
