"""Joints that a maker writes rightly: no false finding, and the figures of his trade.

Limits: ISO 286-2. Twist drills: AND10387, as the plugin's README names it. The rest is plain
geometry, or common practice, no source, where it says so.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from binder.api import Design, FitFact, HardwareFact, JointFact
from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder_plugins.buildorder.closing import joints_closed_in
from binder_plugins.joints.first import first_half, fitted_in, halves_of

Compile = Callable[..., Outcome]
SPECS = Path(__file__).parents[2] / "specs"
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"


def turned(name: str, material: str, size: str, length: str, features: str = "") -> str:
    """A plain turned part: one step called `rod`."""
    more = f", features: {{{features}}}" if features else ""
    step = f"{{name: rod, diameter: {size}, length: {length}}}"
    return f"  {name}: {{material: {material}, turned: [{step}]{more}}}\n"


def bored(size: str) -> str:
    return f"bore: {{{size}, on: rod, depth: through}}"


def codes(outcome: Outcome) -> set[str]:
    found = {one.code.name for one in outcome.findings}
    assert "plugin-broken" not in found
    return found


def design_of(outcome: Outcome) -> Design:
    assert outcome.design is not None
    return outcome.design


@pytest.fixture(scope="module")
def crane(host: Host) -> Outcome:
    return compiled(Job(SPECS / "wharf-crane" / "wharf-crane.yaml"), host, Phase.CHECK)


WHEEL = turned("wheel", "brass", "30 mm", "12 mm", bored("reamed: to suit"))
SHAFT = turned("shaft", "silver steel", "12 mm", "40 mm")


@pytest.mark.parametrize(
    "joint",
    [
        "clamped: [wheel.bore, shaft.rod], fastener: M5 grub screw",
        "keyed: [wheel.bore, shaft.rod], fastener: parallel key",
        "pinned: [wheel.bore, shaft.rod], fastener: 4 mm roll pin",
        "clipped: [wheel.bore, shaft.rod], fastener: 12 mm external circlip",
    ],
)
def test_a_fit_beside_what_fixes_it_is_no_loop(joint: str, compile_text: Compile) -> None:
    fit = "fit: {slides: [shaft.rod, wheel.bore]}"
    outcome = compile_text(f"{HEAD}{SHAFT}{WHEEL}joints:\n  fixed: {{{joint}}}\n  {fit}\n")
    assert not outcome.has_errors, outcome.findings


def test_a_pin_does_not_give_its_size_to_the_bore_it_crosses(compile_text: Compile) -> None:
    joint = "a: {pinned: [wheel.bore, shaft.rod], fastener: 4 mm roll pin}"
    design = design_of(compile_text(f"{HEAD}{SHAFT}{WHEEL}joints:\n  {joint}\n"))
    bore = next(one for one in design.parts["wheel"].features if one.name == "bore")
    assert getattr(bore.entry, "reamed", None) is not None
    assert "4 mm" not in str(getattr(bore.entry, "reamed", ""))


def test_a_piston_that_is_sealed_slides_too(compile_text: Compile) -> None:
    outcome = compile_text(
        f"{HEAD}{turned('piston', 'brass', '12 mm', '12 mm')}"
        f"{turned('barrel', 'brass', '20 mm', '40 mm', bored('bored: 12 mm'))}"
        "joints:\n  slides: {slides: [piston.rod, barrel.bore]}\n"
        "  sealed: {sealed: [piston.rod, barrel.bore], moving: true, ring: 9 mm x 1.8 mm}\n"
    )
    assert "surface-claimed" not in codes(outcome)


@pytest.mark.parametrize(
    ("thread", "size", "length"),
    [("1/4 x 40 ME", "1/4 in", 5), ("1/2 x 26 brass", "1/2 in", 8), ("1/8 BSP", "9.728 mm", 8)],
)
def test_a_pipe_fitting_may_be_short(
    thread: str, size: str, length: int, compile_text: Compile
) -> None:
    # Eight full threads hold; 1.5 D is a rule for screws. Common practice, no source.
    outcome = compile_text(
        f"{HEAD}{turned('union', 'brass', size, '20 mm')}"
        "  body: {material: brass, block: {length: 30 mm, width: 30 mm, height: 30 mm}}\n"
        "joints:\n  a: {threaded: [union.rod, body.top],"
        f" thread: {thread}, length: {length} mm}}\n"
    )
    assert "thread-engagement-short" not in codes(outcome)


def test_a_sintered_bush_needs_no_oil_hole_and_bears_by_its_own_length(
    compile_text: Compile,
) -> None:
    outcome = compile_text(
        f"{HEAD}{turned('shaft', 'silver steel', '6 mm', '40 mm')}"
        "bought:\n  bush: {what: sintered bronze bush,"
        " sizes: {bore: 6 mm, outside: 10 mm, length: 10 mm}, measure_first: [bore]}\n"
        "joints:\n  a: {runs_in: [shaft.rod, bush.bore]}\n"
    )
    assert "no-way-for-oil" not in codes(outcome)


BUSH = turned("bush", "bronze", "10 mm", "9 mm", bored("reamed: to suit"))
FRAME = (
    "  frame: {material: mild steel, block: {length: 40 mm, width: 9 mm, height: 20 mm},"
    " features: {seat: {reamed: to suit, on: front, depth: through}}}\n"
)
BUSHED = (
    f"{HEAD}{turned('axle', 'mild steel', '6 mm', '40 mm')}{BUSH}{FRAME}"
    "joints:\n  pressed: {pressed: [bush.rod, frame.seat]}\n"
    "  runs: {runs_in: [axle.rod, bush.bore]}\n"
)


def test_a_pressed_bush_with_a_bore_to_suit_is_sized_in_place(compile_text: Compile) -> None:
    tasks = design_of(compile_text(BUSHED)).tasks
    assert any("size the bush" in task.title for task in tasks.values())


@pytest.mark.parametrize(
    ("pin", "drill", "limits"),
    [
        # AND10387 over 1/8 in: +0.127/−0.025 mm, whatever the pin's size is. A caliper reads it.
        ("5.5 mm", "5.6 mm", (5.575, 5.727)),
        # Up to 1/8 in +0.102/−0.025, 2.575 to 2.702, and of that what its gauge can tell, the
        # shanks of drills by 0.1 mm: the limits are the gauge's two ends (ISO 1938).
        ("2.5 mm", "2.6 mm", (2.6, 2.7)),
    ],
)
def test_a_drilled_hole_has_the_limits_of_its_own_drill_or_gauge(
    pin: str, drill: str, limits: tuple[float, float], compile_text: Compile
) -> None:
    outcome = compile_text(
        f"{HEAD}{turned('pin', 'mild steel', pin, '20 mm')}"
        f"{turned('grip', 'brass', '12 mm', '18 mm', bored(f'drilled: {drill}'))}"
        "joints:\n  a: {swivels: [grip.bore, pin.rod]}\n"
    )
    fact = design_of(outcome).facts.about(FitFact, "a")
    assert fact is not None
    least = float(fact.nominal) + fact.hole_lower_um / 1000
    greatest = float(fact.nominal) + fact.hole_upper_um / 1000
    assert (least, greatest) == pytest.approx(limits, abs=0.002)


def test_a_class_that_is_asked_for_is_given_or_refused(compile_text: Compile) -> None:
    # 6 f7 is −10/−22 µm, drawn silver steel h8 is 0/−18: a class that was asked for is missed.
    outcome = compile_text(
        f"{HEAD}  axle: {{material: silver steel, stock: 6 mm drawn rod,"
        " turned: [{name: rod, diameter: 6 mm, length: 40 mm}]}\n"
        f"{turned('arm', 'bronze', '20 mm', '9 mm', bored('reamed: 6 mm'))}"
        "joints:\n  a: {runs_in: [axle.rod, arm.bore], fit: H7/f7}\n"
    )
    assert "fit-not-reachable" in codes(outcome)


def test_a_screw_grips_the_metal_that_is_left_under_a_seat(compile_text: Compile) -> None:
    # A cap of 7 mm whose seat is 3 mm deep over the post: the screw passes 4 mm of it.
    cap = "seat: {reamed: 8 mm, on: underside, depth: 3 mm}"
    outcome = compile_text(
        f"{HEAD}{turned('post', 'mild steel', '8 mm', '60 mm')}"
        f"{turned('cap', 'brass', '20 mm', '7 mm', cap)}"
        "joints:\n  seat: {seated: [cap.seat, post.rod]}\n"
        "  held: {screwed: [cap.underside, post.rod], fastener: M4 cap screw}\n"
    )
    (screw,) = design_of(outcome).facts.all(HardwareFact)
    assert screw.grip == pytest.approx(4)


def test_a_countersunk_wood_screw_has_its_countersink(crane: Outcome) -> None:
    kinds = {one.kind for one in design_of(crane).parts["foot_plate"].features}
    assert "countersunk" in kinds


def test_a_pin_through_a_fork_reaches_both_cheeks(crane: Outcome) -> None:
    # Two sides of 1.219 mm stand on a post of 12 mm: 14.4 mm at the least.
    pins = [one for one in design_of(crane).facts.all(HardwareFact) if one.joint == "jib on post"]
    assert pins
    assert all(one.length is not None and one.length >= 14 for one in pins)


@pytest.mark.parametrize("name", ["wharf-crane", "tilt-hammer", "screw-jack"])
def test_the_half_that_is_made_to_suit_is_not_made_first(name: str, host: Host) -> None:
    design = design_of(compiled(Job(SPECS / name / f"{name}.yaml"), host, Phase.CHECK))
    for fact in design.facts.all(FitFact):
        suited = {"hole": fact.hole, "shaft": fact.shaft}.get(fact.suit)
        halves = halves_of(design).get(fact.subject, [])
        first = first_half(design.joints[fact.subject], design, fitted_in(design), halves)
        assert first is None or suited is None or str(first) != suited, fact.subject


@pytest.mark.parametrize("name", ["mast", "winch"])
def test_the_flame_comes_before_the_press_and_the_oil(name: str, crane: Outcome) -> None:
    # Common practice, no source: solder first, then press and bond, then what runs in oil.
    design = design_of(crane)
    done = joints_closed_in(design.assemblies[name], design)
    facts = [design.facts.about(JointFact, joint.name) for joint in done]
    hot = [fact.is_hot for fact in facts if fact is not None]
    assert any(hot)
    assert hot == sorted(hot, reverse=True)
