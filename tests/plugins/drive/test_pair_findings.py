"""Each code about gears, belts and what drives do, at its exact place; right specs get none."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder_plugins.drive import belt_codes, duty_codes, feed_codes, gear_codes
from tests.plugins.drive.marks import marked
from tests.plugins.drive.train import HAND, spec

Compile = Callable[..., Outcome]
GEARS = "x: {meshes: [a, b], teeth: [18, 54], module: 1 mm}"
CORD = "bought:\n  cord: {what: braided cord}\n"
FOUND = "scrap_box:\n  found: {what: clock wheel, sizes: {outside: %s, bore: 4 mm}}\n"
BELT = "bought:\n  cord: {what: round belt, sizes: {length: %s}}\n"
WHEEL = "  wheel: {material: cast iron, turned: [{name: rim, diameter: 200 mm, length: 20 mm}]}\n"
MADE = (
    "  wheel:\n    material: brass\n    turned: [{name: rim, diameter: %s, length: 4 mm}]\n"
    "    features: {bore: {reamed: %s, on: rim, depth: through}}\n"
)
DRUM = (
    "  drum:\n    material: brass\n    turned:\n      - {name: near, diameter: %s, length: 2 mm}\n"
    "      - {name: barrel, diameter: 10 mm, length: 20 mm}\n"
    "      - {name: far, diameter: 20 mm, length: 2 mm}\n"
)
# 15 in the nut, 20 of travel, and a pitch of 1.5 half cut under the head: 36.5 mm. Common practice.
JACK = (
    "  body:\n    material: brass\n    turned: [{name: body, diameter: 25 mm, length: 15 mm}]\n"
    "    features: {thread: {tapped: M10, on: body, depth: through}}\n"
    "  screw:\n    material: mild steel\n"
    "    turned: [{name: shank, diameter: 10 mm, length: 50 mm}]\n"
    "    features: {thread: {screwed: M10, on: shank, length: %s mm}}\n"
)
LEADS = "  nut: {leads: [screw.thread, body.thread]}\n"
GEAR = "  cut: {material: brass, gear: {module: %s, teeth: %s, width: 4 mm}}\n"
FAST = "motor: {turns: [a], by: motor, speeds: [3000 r/min]}"
ROCKS = "x: {rocks: [a, b], crank: %s, rod: 40 mm, rocker: 30 mm, frame: 50 mm}"
CAM = "x: {cams: [a, b], lift: 6 mm, base: %s, rise: %s, follower: %s%s}"

# code: the spec that earns it, the same mended
CASES = {
    "pitch-mismatch": (
        spec("a", HAND, "x: {meshes: [a, ⟪cut⟫], teeth: [18, 54], module: 1 mm}",
             parts=GEAR % ("0.8 mm", 54)),
        spec("a", HAND, "x: {meshes: [a, cut], teeth: [18, 54], module: 1 mm}",
             parts=GEAR % ("1 mm", 54)),
    ),
    "teeth-differ": (
        spec("a", HAND, "x: {meshes: [a, ⟪cut⟫], teeth: [18, 54], module: 1 mm}",
             parts=GEAR % ("1 mm", 50)),
        spec("a", HAND, "x: {meshes: [a, cut], teeth: [18, 54], module: 1 mm}",
             parts=GEAR % ("1 mm", 54)),
    ),
    "module-missing": (
        spec("a b", HAND, "⟪x⟫: {meshes: [a, b], teeth: [18, 54]}"),
        spec("a b", HAND, "x: {meshes: [a, b], teeth: [18, 54], dp: 48}"),
    ),
    "gear-impossible": (
        spec("a b", HAND, "x: {meshes: [⟪a⟫, b], teeth: [3, 54], module: 1 mm}"),
        spec("a b", HAND, GEARS),
    ),
    "no-bore-to-set": (
        spec("a b", HAND, GEARS.replace("x:", "⟪x⟫:").replace("}", ", made: set in mesh}")),
        spec("a b", HAND, GEARS),
    ),
    "centres-disagree": (
        spec("a b", HAND, GEARS.replace("}", ", centres: ⟪36 mm⟫}")),
        spec("a b", HAND, GEARS.replace("}", ", centres: 36.05 mm}")),
    ),
    "gear-blank-wrong": (
        spec("a", HAND, "x: {meshes: [a, wheel], teeth: [58, 54], module: 0.5 mm}",
             parts=(MADE % ("27 mm", "4 mm")).replace("wheel:", "⟪wheel⟫:")),
        spec("a", HAND, "x: {meshes: [a, wheel], teeth: [58, 54], module: 0.5 mm}",
             parts=MADE % ("28 mm", "4 mm")),
    ),
    "too-few-teeth": (
        spec("a b", HAND, "x: {meshes: [⟪a⟫, b], teeth: [10, 54], module: 1 mm}"),
        spec("a b", HAND,
             "x: {meshes: [a, b], teeth: [10, 54], module: 1 mm, shift: [0.45, -0.45]}"),
    ),
    "root-under-bore": (
        spec("a", HAND, "x: {meshes: [wheel, a], teeth: [18, 54], module: 0.5 mm}",
             parts=(MADE % ("10 mm", "7 mm")).replace("wheel:", "⟪wheel⟫:")),
        spec("a", HAND, "x: {meshes: [wheel, a], teeth: [18, 54], module: 0.5 mm}",
             parts=MADE % ("10 mm", "4 mm")),
    ),
    "contact-short": (
        spec("a b", HAND, "⟪x⟫: {meshes: [a, b], teeth: [18, 18], module: 1 mm, centres: 18.8 mm}"),
        spec("a b", HAND, "x: {meshes: [a, b], teeth: [18, 18], module: 1 mm, centres: 18.05 mm}"),
    ),
    "tips-interfere": (
        spec("a b", HAND, "⟪x⟫: {meshes: [a, b], teeth: [12, 100], module: 1 mm}"),
        spec("a b", HAND, "x: {meshes: [a, b], teeth: [20, 100], module: 1 mm}"),
    ),
    "salvaged-gear-taken-as": (
        spec("a", HAND, "⟪x⟫: {meshes: [a, found], teeth: [58, 54]}", more=FOUND % "28.02 mm"),
        spec("a", HAND, "x: {meshes: [a, found], teeth: [58, 54], module: 0.5 mm}",
             more=FOUND % "28.02 mm"),
    ),
    "salvaged-gear-differs": (
        spec("a", HAND, "⟪x⟫: {meshes: [a, found], teeth: [36, 54], module: 0.8 mm}",
             more=FOUND % "28.02 mm"),
        spec("a", HAND, "x: {meshes: [a, found], teeth: [58, 54], module: 0.5 mm}",
             more=FOUND % "28.02 mm"),
    ),
    "salvaged-gear-unknown": (
        spec("a", HAND, "⟪x⟫: {meshes: [a, found], teeth: [58, 54], module: 0.5 mm}",
             more=FOUND % "3 mm"),
        spec("a", HAND, "x: {meshes: [a, found], teeth: [58, 54], module: 0.5 mm}",
             more=FOUND % "28.02 mm"),
    ),
    "belt-lengths-differ": (
        spec("a b", HAND, "⟪x⟫: {belted: [a, b], belt: flat, section: 1 mm, centres: 90 mm, "
             "steps: [[24 mm, 40 mm], [30 mm, 30 mm]]}"),
        spec("a b", HAND, "x: {belted: [a, b], belt: flat, section: 1 mm, centres: 90 mm, "
             "steps: [[24 mm, 40 mm], [40 mm, 24 mm]]}"),
    ),
    "belt-wrap-short": (
        spec("a b", HAND, "⟪x⟫: {belted: [a, b], diameters: [12 mm, 90 mm], centres: 60 mm}"),
        spec("a b", HAND, "x: {belted: [a, b], diameters: [12 mm, 90 mm], centres: 200 mm}"),
    ),
    "belt-cannot-reach": (
        spec("a b", HAND, "⟪x⟫: {belted: [a, b], diameters: [60 mm, 90 mm], centres: 70 mm}"),
        spec("a b", HAND, "x: {belted: [a, b], diameters: [60 mm, 90 mm], centres: 170 mm}"),
    ),
    "belt-bends-too-sharp": (
        spec("a b", HAND, "⟪x⟫: {belted: [a, b], belt: round, section: 5 mm, "
             "diameters: [16 mm, 60 mm], centres: 200 mm}"),
        spec("a b", HAND, "x: {belted: [a, b], belt: round, section: 2 mm, "
             "diameters: [30 mm, 60 mm], centres: 200 mm}"),
    ),
    "belt-length-wrong": (
        spec("a b", HAND, "x: {belted: [a, b], belt: round, section: 3 mm, held_by: cord, "
             "diameters: [40 mm, 40 mm], centres: 100 mm}", more=BELT % "⟪250 mm⟫"),
        spec("a b", HAND, "x: {belted: [a, b], belt: round, section: 3 mm, held_by: cord, "
             "diameters: [40 mm, 40 mm], centres: 100 mm}", more=BELT % "296 mm"),
    ),
    "slip-impossible": (
        spec("a b", HAND, "x: {belted: [a, b], diameters: [20 mm, 40 mm], slip: ⟪1.5⟫}"),
        spec("a b", HAND, "x: {belted: [a, b], diameters: [20 mm, 40 mm], slip: 0.02}"),
    ),
    # T0 = 5 N, μ = 0.3 (told), 180°: T1/T2 = e^0.9425 = 2.566, pull 2 × 5 × 1.566 / 3.566 =
    # 4.39 N, on a radius of 20 mm 87.8 N·mm: 80 goes, 100 does not (capstan equation).
    "belt-pull-short": (
        spec("a b", HAND, "⟪x⟫: {belted: [a, b], diameters: [40 mm, 40 mm], centres: 100 mm, "
             "pull: 5 N, friction: 0.3}", "y: {works: [b], torque: 0.1 N·m}"),
        spec("a b", HAND, "x: {belted: [a, b], diameters: [40 mm, 40 mm], centres: 100 mm, "
             "pull: 5 N, friction: 0.3}", "y: {works: [b], torque: 0.08 N·m}"),
    ),
    "guard-wanted": (
        spec("a b", FAST, "⟪x⟫: {belted: [a, b], diameters: [40 mm, 40 mm], centres: 100 mm}"),
        spec("a b", HAND, "x: {belted: [a, b], diameters: [40 mm, 40 mm], centres: 100 mm}"),
    ),
    "cone-impossible": (
        spec("a b", HAND, "⟪x⟫: {belted: [a, b], ratios: [0.5, -2], smallest: 24 mm, "
             "centres: 180 mm}"),
        spec("a b", HAND, "x: {belted: [a, b], ratios: [0.5, 2], smallest: 24 mm, "
             "centres: 180 mm}"),
    ),
    "quarter-turn-close": (
        spec("a b", HAND, "⟪x⟫: {belted: [a, b], diameters: [40 mm, 60 mm], centres: 80 mm, "
             "quarter_turn: true}"),
        spec("a b", HAND, "x: {belted: [a, b], diameters: [40 mm, 60 mm], centres: 300 mm, "
             "quarter_turn: true}"),
    ),
    "rope-not-held": (
        spec("a", "hand: {turns: [drum], by: hand, speeds: [60 r/min]}",
             "⟪x⟫: {winds: [drum.barrel, cord], rope: 1 mm, load: 1 kg, height: 1 m}",
             parts=DRUM % "12 mm", more=CORD),
        spec("a", "hand: {turns: [drum], by: hand, speeds: [60 r/min]}",
             "x: {winds: [drum.barrel, cord], rope: 1 mm, load: 1 kg, height: 400 mm}",
             parts=DRUM % "20 mm", more=CORD),
    ),
    "rope-way-wrong": (
        spec("a b", HAND, "⟪x⟫: {winds: [a, cord], rope: 1 mm, diameter: 20 mm, load: 1 kg, "
             "lines: 2, over: [b]}", more=CORD),
        spec("a b", HAND, "x: {winds: [a, cord], rope: 1 mm, diameter: 20 mm, load: 1 kg, "
             "lines: 2, over: [b, b]}", more=CORD),
    ),
    "chain-length-wrong": (
        spec("a b", HAND, "x: {chained: [a, b], teeth: [21, 63], pitch: 12.7 mm, links: 120, "
             "centres: ⟪500 mm⟫}"),
        spec("a b", HAND, "x: {chained: [a, b], teeth: [21, 63], pitch: 12.7 mm, "
             "centres: 500 mm}"),
    ),
    "chain-teeth-few": (
        spec("a b", HAND, "x: {chained: [⟪a⟫, b], teeth: [8, 30], pitch: 8 mm, centres: 120 mm}"),
        spec("a b", HAND, "x: {chained: [a, b], teeth: [9, 30], pitch: 8 mm, centres: 120 mm}"),
    ),
    "tackle-impossible": (
        spec("a", HAND, "⟪x⟫: {winds: [a, cord], rope: 1 mm, diameter: 20 mm, load: 1 kg, "
             "lines: 40}", more=CORD),
        spec("a", HAND, "x: {winds: [a, cord], rope: 1 mm, diameter: 20 mm, load: 1 kg, "
             "lines: 4}", more=CORD),
    ),
    "hammer-does-not-land": (
        spec("a b", HAND, "⟪x⟫: {trips: [a, b], lifts: 6, lift: 20 mm}"),
        spec("a b", HAND, "x: {trips: [a, b], lifts: 4, lift: 5 mm}"),
    ),
    "lift-impossible": (
        spec("a b", HAND, "⟪x⟫: {trips: [a, b], lifts: 6, lift: 5 mm, over: 90 deg}"),
        spec("a b", HAND, "x: {trips: [a, b], lifts: 6, lift: 5 mm, over: 30 deg}"),
    ),
    "rim-too-fast": (
        spec("a", "motor: {turns: [wheel], by: motor, speeds: [3000 r/min]}",
             "⟪x⟫: {steadies: [wheel]}", parts=WHEEL),
        spec("a", "motor: {turns: [wheel], by: motor, speeds: [300 r/min]}",
             "x: {steadies: [wheel]}", parts=WHEEL),
    ),
    "flywheel-too-light": (
        spec("a b", HAND, "⟪x⟫: {steadies: [a], swing: 0.1}",
             "y: {trips: [a, b], lifts: 4, lift: 5 mm, falls: 100 g}"),
        spec("a b", FAST, "x: {steadies: [a], swing: 0.1}",
             "y: {trips: [a, b], lifts: 1, lift: 5 mm, falls: 10 g}"),
    ),
    "linkage-cannot-turn": (
        spec("a b", HAND, ROCKS.replace("x:", "⟪x⟫:") % "35 mm"),
        spec("a b", HAND, ROCKS % "12 mm"),
    ),
    "transmission-angle-poor": (
        spec("a b", HAND, ROCKS.replace("x:", "⟪x⟫:") % "19 mm"),
        spec("a b", HAND, ROCKS % "8 mm"),
    ),
    "cam-too-steep": (
        spec("a b", HAND, CAM.replace("x:", "⟪x⟫:") % ("12 mm", "40 deg", "roller",
                                                        ", roller: 4 mm")),
        spec("a b", HAND, CAM % ("60 mm", "120 deg", "roller", ", roller: 4 mm")),
    ),
    "cam-undercut": (
        spec("a b", HAND, CAM.replace("x:", "⟪x⟫:") % ("10 mm", "30 deg", "flat", "")),
        spec("a b", HAND, CAM % ("60 mm", "120 deg", "flat", "")),
    ),
    "cam-impossible": (
        spec("a b", HAND, "⟪x⟫: {cams: [a, b], lift: 6 mm, base: 20 mm, nose: 18 mm}"),
        spec("a b", HAND, "x: {cams: [a, b], lift: 6 mm, base: 20 mm, nose: 4 mm}"),
    ),
    "cam-strikes": (
        spec("a b", HAND, "⟪x⟫: {cams: [a, b], lift: 6 mm, base: 40 mm, nose: 6 mm, "
             "follower: flat}"),
        spec("a b", HAND, "x: {cams: [a, b], lift: 6 mm, base: 40 mm, nose: 6 mm, flank: 90 mm, "
             "follower: flat}"),
    ),
    "worm-impossible": (
        spec("a b", HAND, "⟪x⟫: {worms: [a, b], teeth: 6, module: 1 mm, diameter: 12 mm}"),
        spec("a b", HAND, "x: {worms: [a, b], teeth: 30, module: 1 mm, diameter: 12 mm}"),
    ),
    "worm-does-not-hold": (
        spec("a b", HAND, "⟪x⟫: {worms: [a, b], starts: 4, teeth: 30, module: 1 mm, "
             "diameter: 12 mm, holds: true}"),
        spec("a b", HAND, "x: {worms: [a, b], starts: 1, teeth: 30, module: 1 mm, "
             "diameter: 25 mm, holds: true}"),
    ),
    "lead-missing": (
        spec("a", "x: {feeds: [⟪a⟫], divisions: 40}"),
        spec("a", "x: {feeds: [a], divisions: 40, lead: 2 mm}"),
    ),
    "handwheel-wrong-way": (
        spec("a", "⟪x⟫: {feeds: [a], lead: 2 mm, clockwise: away}"),
        spec("a", "x: {feeds: [a], lead: 2 mm, hand: left, clockwise: away}"),
    ),
    "dial-awkward": (
        spec("a", "⟪x⟫: {feeds: [a], lead: 0.7 mm, divisions: 40}"),
        spec("a", "x: {feeds: [a], lead: 0.7 mm, divisions: 35}"),
    ),
    "thread-short-of-travel": (
        spec("", "lift: {feeds: [screw], travel: ⟪20 mm⟫, what_travels: screw}",
             parts=JACK % 35, joints=LEADS),
        spec("", "lift: {feeds: [screw], travel: 20 mm, what_travels: screw}",
             parts=JACK % "36.5", joints=LEADS),
    ),
    "scale-not-said": (
        spec("a b", HAND, "⟪x⟫: {prototype: [a], speed: 30 r/min}"),
        spec("a b", HAND, "x: {prototype: [a], speed: 30 r/min}").replace(
            "units: mm", 'units: mm, scale: "1:16"'),
    ),
    "speed-looks-wrong": (
        spec("a b", HAND, "⟪x⟫: {prototype: [a], speed: 3 r/min}").replace(
            "units: mm", 'units: mm, scale: "1:16"'),
        spec("a b", HAND, "x: {prototype: [a], speed: 30 r/min}").replace(
            "units: mm", 'units: mm, scale: "1:16"'),
    ),
}  # fmt: skip


def names(outcome: Outcome) -> list[str]:
    return [one.code.name for one in outcome.findings]


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_finding_points_at_the_mark(code: str, compile_text: Compile) -> None:
    text, at = marked(CASES[code][0])
    outcome = compile_text(text)
    found = [one for one in outcome.findings if one.code.name == code]
    assert found, [(one.code.name, one.message) for one in outcome.findings]
    span = found[0].span
    assert (span.line, span.column, span.end_column) == at
    assert found[0].help


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_mended_spec_has_not_that_finding(code: str, compile_text: Compile) -> None:
    found = names(compile_text(CASES[code][1]))
    assert code not in found
    assert "plugin-failed" not in found


@pytest.mark.parametrize(("teeth", "said"), [(127, True), (54, False)])
def test_a_number_that_cannot_be_divided(
    teeth: int, said: bool, host: Host, tmp_path: Path
) -> None:
    """127 is prime and on no circle of that shop, 54 is 20 holes of its 27: `cannot-divide`."""
    shop = Path(__file__).parents[3] / "specs" / "workshops" / "inch.yaml"
    path = tmp_path / "trial.yaml"
    path.write_text(
        spec("a", HAND, f"x: {{meshes: [a, wheel], teeth: [58, {teeth}], module: 0.5 mm}}",
             parts=MADE % (f"{(teeth + 2) / 2} mm", "4 mm")),
        encoding="utf-8",
    )  # fmt: skip
    found = names(compiled(Job(path, shop), host, Phase.CHECK))
    assert ("cannot-divide" in found) == said


def test_every_code_has_a_case() -> None:
    codes = (*gear_codes.CODES, *belt_codes.CODES, *duty_codes.CODES, *feed_codes.CODES)
    assert {one.name for one in codes} - {
        "cannot-divide",
        "linkage-stands-otherwise",
        "motion-clash",
        "pulley-differs",
        "shafts-stand-otherwise",
        "rope-too-short",
    } == set(CASES)


def test_what_takes_up_a_belt_that_is_too_long_for_a_step(compile_text: Compile) -> None:
    """By hand: 24 and 40 at 90 want 2 √(90² − 8²) + 32 π + 16 asin(8 / 90) = 281.24, twice 30
    want 180 + 30 π = 274.25. The slack of 6.99 goes into a span of 90: √(96.99² − 90²) / 2 =
    18.1 deep; or half of it between the shafts, 3.50."""
    text = CASES["belt-lengths-differ"][0].replace("⟪", "").replace("⟫", "")
    (found,) = [
        one for one in compile_text(text).findings if one.code.name == "belt-lengths-differ"
    ]
    assert "281.2 mm run and a jockey that goes 18.1 mm in" in found.help
    assert "shafts that move 3.50 mm further apart" in found.help
