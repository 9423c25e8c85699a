"""What the leaves say of fastened joints, and where metal is not where it seems: by hand.

Sources: DIN 974-1 for the seat of a cheese head (M4: 8), DIN 471 for circlips, ISO 273 for
clearance holes; the rest is common practice, no source. All in mm.
"""

from __future__ import annotations

from collections.abc import Callable
from math import sqrt

import pytest

from binder.api import Design, HalfFact, HardwareFact
from binder.compiler import Outcome

HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"
PARTS = """parts:
  post:
    material: mild steel
    turned:
      - {name: mast, diameter: 12 mm, length: 60 mm}
      - {name: tenon, diameter: 8 mm, length: 3 mm}
  cap:
    material: brass
    turned: [{name: ball, diameter: 12 mm, length: 7 mm}]
    features: {seat: {reamed: to suit, on: underside, depth: 3.2 mm}%s}
  block: {material: mild steel, block: {length: 40 mm, width: 40 mm, height: 30 mm}}
  foot:
    material: mild steel
    quantity: 2
    block: {length: 24 mm, width: 22 mm, height: 25 mm}
  bed: {material: mild steel, block: {length: 150 mm, width: 50 mm, height: 6 mm}}
  side: {material: mild steel, quantity: 2, plate: {length: 60 mm, width: 9 mm, thickness: 1.2 mm}}
  hub:
    material: mild steel
    turned:
      - {name: flange, diameter: 40 mm, length: 4 mm}
      - {name: barrel, diameter: 20 mm, length: 40 mm}
    features: {well: {drilled: 9 mm, on: left, depth: 12 mm}}
  pin:
    material: mild steel
    turned:
      - {name: journal, diameter: 4 mm, length: 18 mm}
      - {name: tail, diameter: 2 mm, length: %s}
    features: {clips: {grooved: to suit, on: journal, each_end: true}}
  arm:
    material: mild steel
    plate: {length: 30 mm, width: 9 mm, thickness: 3 mm}
    features: {tip: {drilled: %s, depth: through, at: 5 mm from right}}
  wheel:
    material: aluminium
    turned: [{name: boss, diameter: 15 mm, length: 12 mm}]
    features: {bore: {reamed: to suit, on: boss, depth: through}}
  shaft:
    material: silver steel
    turned: [{name: seat, diameter: 6 mm, length: 20 mm}]
    features: {spot: {flatted: 5.5 mm, on: seat, length: 6 mm}}
fabrications:
  jib:
    pieces: [2 off side]
    joined: riveted
    features: {foot: {drilled: to suit, depth: through, at: 5 mm from left}}
"""
CAP = "cap: {screwed: [cap.underside, post.tenon], fastener: M4 cheese head screw%s}"


def outcome_of(
    compile_text: Callable[..., Outcome],
    *joints: str,
    dome: str = "",
    tail: str = "5 mm",
    tip: str = "to suit",
) -> Outcome:
    lines = "".join(f"  {joint}\n" for joint in joints)
    return compile_text(f"{HEAD}{PARTS % (dome, tail, tip)}joints:\n{lines}")


def design_of(outcome: Outcome) -> Design:
    assert outcome.design is not None
    assert "plugin-failed" not in {one.code.name for one in outcome.findings}
    return outcome.design


def screw(design: Design, joint: str) -> HardwareFact:
    return next(one for one in design.facts.all(HardwareFact) if one.joint == joint)


def half(design: Design, subject: str) -> HalfFact:
    return next(one for one in design.facts.all(HalfFact) if one.subject == subject)


@pytest.mark.parametrize(
    ("head", "dome", "grip"),
    [
        ("", "", 7 - 3),  # the tenon fills 3 of the seat's 3.2
        (", head: spotfaced", "", 7 - 3 - 0.5),  # on a flat it only cleans up
        (", head: spotfaced", ", dome: {rounded: 6 mm, on: top, dummy: true}",
         7 - 3 - (6 - sqrt(36 - 16))),
    ],
)  # fmt: skip
def test_the_mate_fills_a_recess_and_a_dome_lets_the_head_down(
    head: str, dome: str, grip: float, compile_text: Callable[..., Outcome]
) -> None:
    """As reckoned for the crane: five_joints.md, 4."""
    design = design_of(outcome_of(compile_text, CAP % head, dome=dome))
    assert screw(design, "cap").grip == pytest.approx(grip, abs=0.005)


def test_a_recess_that_nothing_enters_stays_in_the_grip(
    compile_text: Callable[..., Outcome],
) -> None:
    joint = "cap: {screwed: [cap.underside, block.top], fastener: M4 cheese head screw}"
    assert screw(design_of(outcome_of(compile_text, joint)), "cap").grip == 7


def test_the_seat_of_the_head_is_told_with_its_hole(compile_text: Callable[..., Outcome]) -> None:
    """Two feet of two holes: four in the bed. M3 cap screw: counterbore 6.5, 3 + 0.4 deep."""
    joint = (
        "feet: {screwed: [bed.top, foot.underside], fastener: M3 cap screw, head: counterbored, "
        'pattern: "2 off, 14 mm apart"}'
    )
    design = design_of(outcome_of(compile_text, joint))
    assert half(design, "feet: bed.top").what == (
        "drill 3.4 mm through, counterbore ⌀6.5 × 3.4 mm deep on underside, "
        "4 off: 2 sets of 2 off, 14 mm apart"
    )
    assert half(design, "feet: foot.underside").what.endswith("full, 2 off, 14 mm apart")


def test_holes_in_both_ends_are_made_in_both(compile_text: Callable[..., Outcome]) -> None:
    joint = (
        "a: {screwed: [foot.underside, block.ends], fastener: M3 cap screw, "
        'pattern: "2 off, 14 mm apart"}'
    )
    design = design_of(outcome_of(compile_text, joint))
    (made,) = [one for one in design.parts["block"].features if one.implied_by == "a"]
    assert (made.entry.off, made.entry.each_end) == (2, True)  # type: ignore[attr-defined]
    assert str(made.entry.pattern) == "2 off, 14 mm apart"  # type: ignore[attr-defined]


def test_a_cross_pin_comes_through_both_plates(compile_text: Callable[..., Outcome]) -> None:
    """12 + 2 x 1.2 = 14.4: 14 is sold and ends inside, 16 stands 0.8 out (ISO 2338)."""
    joint = "jib: {pinned: [jib.foot, post.mast], fastener: 3 mm dowel pin}"
    design = design_of(outcome_of(compile_text, joint))
    assert screw(design, "jib").length == 16
    assert "0.8 mm out on each side" in screw(design, "jib").why
    assert half(design, "jib: jib.foot").what == "ream 3 mm through both plates"


TAIL = "tail: {riveted: [pin.tail, arm.tip]}"


def test_a_tail_and_its_hole_are_told(compile_text: Callable[..., Outcome]) -> None:
    """A 2.1 drill passes a tail of 2; 5 through 3 leaves 2, one diameter."""
    design = design_of(outcome_of(compile_text, TAIL))
    tip = next(one for one in design.parts["arm"].features if one.name == "tip")
    assert tip.entry.drilled.mm == pytest.approx(2.1)  # type: ignore[attr-defined]
    assert half(design, "tail: arm.tip").what.startswith("drill 2.1 mm")
    tail = half(design, "tail: pin.tail")
    assert "2 mm stands out" in tail.what
    assert tail.how == "riveted over"
    assert not [one for one in design.facts.all(HardwareFact) if one.joint == "tail"]


@pytest.mark.parametrize(
    ("tail", "tip", "code"),
    [
        ("3.5 mm", "2.1 mm", "rivet-too-short"),  # 0.5 out, 1 is the least
        ("2 mm", "2.1 mm", "rivet-too-short"),
        ("5 mm", "1.9 mm", "clearance-hole-too-small"),
        ("5 mm", "2.6 mm", "hole-sizes-differ"),
    ],
)
def test_a_tail_that_does_not_hold_is_told(
    tail: str, tip: str, code: str, compile_text: Callable[..., Outcome]
) -> None:
    found = [one.code.name for one in outcome_of(compile_text, TAIL, tail=tail, tip=tip).findings]
    assert code in found


@pytest.mark.parametrize(("tail", "how"), [
    ("4 mm", "riveted into the countersink"),
    ("7 mm", "file it to 2 mm above the plate, then rivet over"),
])  # fmt: skip
def test_a_tail_says_how_it_is_closed(
    tail: str, how: str, compile_text: Callable[..., Outcome]
) -> None:
    outcome = outcome_of(compile_text, TAIL, tail=tail)
    assert half(design_of(outcome), "tail: pin.tail").how == how
    assert not {"rivet-too-short", "hole-sizes-differ"} & {
        one.code.name for one in outcome.findings
    }


def test_a_clamped_hub_tells_its_hole_and_its_bore_apart(
    compile_text: Callable[..., Outcome],
) -> None:
    """The wall is (15 - 6) / 2 = 4.5, the flat 0.5: M3 x 5 is flush and holds by 1.5 d."""
    design = design_of(
        outcome_of(compile_text, "a: {clamped: [wheel.bore, shaft.seat], fastener: M3 grub screw}")
    )
    hub = half(design, "a: wheel.a_grub")
    assert hub.what == "tap M3 across boss, through to the bore"
    assert "lightly in aluminium" in hub.how
    flat = half(design, "a: shaft.spot")
    assert flat.what == "flat under the grub screw, 5.5 mm to the opposite side"
    bore = next(
        one
        for one in design.facts.all(HalfFact)
        if (one.joint, one.item, one.place) == ("a", "wheel", "bore")
    )
    assert bore.lower == pytest.approx(6)
    assert screw(design, "a").why == "next sold down; flush with the hub"


def test_two_circlips_and_what_goes_between(compile_text: Callable[..., Outcome]) -> None:
    """DIN 471 for 4: groove 0.5 H13 (+0.14, ISO 286-2) wide, 3.8 h10 (0, -0.048). The grooves
    stand one width in from the ends of 18: 18 - 2 x 2 x 0.5 = 16 between them."""
    design = design_of(
        outcome_of(compile_text, "c: {clipped: [arm, pin.clips], fastener: external circlip}")
    )
    assert screw(design, "c").count == 2
    assert half(design, "c: pin.clips").what == (
        "groove 0.5 to 0.64 mm wide to ⌀3.8, 3.752 to 3.800, 2 off"
    )
    assert half(design, "c: arm").what == "between the circlips, 16 mm wide at the most"


@pytest.mark.parametrize("end", ["hub.left", "hub.flange"])
def test_a_flange_is_as_thick_as_it_is_where_its_holes_stand(
    end: str, compile_text: Callable[..., Outcome]
) -> None:
    """15 from the axis the drill meets 4 of flange, not 44, and not the well on the axis: grip 4,
    3 must hold in steel, M3 x 8 is the shortest sold (ISO 888); 4 + 2 threads of 0.5 = 5 full."""
    joint = (
        f"a: {{screwed: [{end}, block.top], fastener: M3 cap screw, pattern: 6 off on 30 mm PCD}}"
    )
    design = design_of(outcome_of(compile_text, joint))
    bolt = screw(design, "a")
    assert (bolt.grip, bolt.length, bolt.engagement) == (4, 8, 4)
    assert "5 mm full" in half(design, "a: block.top").what


def test_a_thread_in_a_flange_goes_through_it(compile_text: Callable[..., Outcome]) -> None:
    """Nothing blind fits into 4 of metal: 3 full, the lead of a plug tap and the point."""
    joint = (
        "a: {screwed: [block.top, hub.left], fastener: M3 cap screw, pattern: 3 off on 30 mm PCD}"
    )
    design = design_of(outcome_of(compile_text, joint))
    assert half(design, "a: hub.left").what == "tap M3, through, 3 off on 30 mm PCD"


def test_a_blind_thread_that_is_written_in_a_flange_is_judged_by_it(
    compile_text: Callable[..., Outcome],
) -> None:
    """3 full + 2 threads of lead is 4 and the flange is 4: the point of the drill comes out."""
    text = f"{HEAD}{PARTS % ('', '5 mm', 'to suit')}".replace(
        "features: {well:",
        "features: {taps: {tapped: M3, on: left, pattern: 3 off on 30 mm PCD, depth: 3 mm}, well:",
    )
    found = {one.code.name for one in compile_text(text).findings}
    assert found & {"drill-point-breaks-through", "blind-hole-too-shallow"}


@pytest.mark.parametrize(("metal", "length"), [("aluminium", 12), ("mild steel", 8)])
def test_no_more_thread_than_holds(
    metal: str, length: float, compile_text: Callable[..., Outcome]
) -> None:
    """5 of plate: 2 d = 6 in aluminium, so 11, and 12 is sold; in steel 3, so 8 (ISO 888)."""
    text = f"""{HEAD}parts:
  lid: {{material: mild steel, plate: {{length: 40 mm, width: 30 mm, thickness: 5 mm}}}}
  box: {{material: {metal}, block: {{length: 40 mm, width: 30 mm, height: 30 mm}}}}
joints:
  a: {{screwed: [lid.underside, box.top], fastener: M3 cap screw}}
"""
    assert screw(design_of(compile_text(text)), "a").length == length
