"""Each code about shafts, bushes and what stands in the way, at its exact place."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_plugins.drive import shaft_codes
from tests.plugins.drive.marks import marked
from tests.plugins.drive.shaft_specs import HEAD, axle, belt, rows, three, unstopped

Compile = Callable[..., Outcome]
LONG = {"left": "90 mm", "right": "90 mm", "apart": "186.15 mm", "long": "230 mm"}
WORM = (
    HEAD + "parts:\n  worm: {material: mild steel, turned: [{name: thread, diameter: 18 mm, "
    "length: 40 mm}]}\nbought:\n  wheel: {what: 'worm wheel of 40 teeth, left hand'}\n"
    "drive:\n  hand: {turns: [worm], by: hand, speeds: [60 r/min]}\n"
    "  x: {worms: [worm, %s], teeth: 40, module: 1 mm, diameter: 16 mm%s}\n"
)
PULLEYS = (
    HEAD
    + """parts:
  plate:
    material: brass
    block: {length: 160 mm, width: 40 mm, height: 12 mm}
    features:
      one: {reamed: to suit, depth: through, at: 20 mm from left}
      two: {reamed: to suit, depth: through, at: 120 mm from left}
  a: {material: silver steel, turned: [{name: journal, diameter: 4 mm, length: 40 mm}]}
  b: {material: silver steel, turned: [{name: journal, diameter: 4 mm, length: 40 mm}]}
  small:
    material: brass
    disc: {diameter: 30 mm, thickness: 6 mm}
    features: {bore: {reamed: to suit, depth: through}}
  large:
    material: brass
    disc: {diameter: 50 mm, thickness: 6 mm}
    features: {bore: {reamed: to suit, depth: through}}
  under:
    material: brass
    disc: {diameter: 10 mm, thickness: %s}
    features: {bore: {drilled: 4.2 mm, depth: through}}
joints:
  a in plate: {runs_in: [a.journal, plate.one], duty: slow and oiled}
  b in plate: {runs_in: [b.journal, plate.two], duty: slow and oiled}
  small on a: {retained: [small.bore, a.journal]}
  large on b: {retained: [large.bore, b.journal]}
shafts:
  a: {along: [plate.one, small]}
  b: {along: [plate.two, under, large]}
stands: plate
drive:
  hand: {turns: [a], by: hand, speeds: [60 r/min]}
  %s: {belted: [small, large], belt: flat, diameters: [30 mm, 50 mm]}
"""
)

# A wheel of 2 on its axle, so far from the plate; a pawl of 2 lies on the plate beside it.
PAWL = (
    HEAD
    + """parts:
  plate:
    material: brass
    block: {length: 100 mm, width: 40 mm, height: 12 mm}
    features:
      one: {reamed: to suit, depth: through, at: 20 mm from left}
      two: {drilled: 2 mm, depth: through, at: 40 mm from left}
  a: {material: silver steel, turned: [{name: journal, diameter: 4 mm, length: 40 mm}]}
  wheel:
    material: mild steel
    ratchet: {teeth: 12, outside: 14 mm, depth: 1.2 mm, width: 2 mm}
    features: {bore: {reamed: to suit, depth: through}}
  pawl:
    material: mild steel
    block: {length: 16 mm, width: 6 mm, height: 2 mm}
    features: {hole: {drilled: 2.1 mm, depth: through, at: 3 mm from left}}
  under:
    material: brass
    disc: {diameter: 10 mm, thickness: %s}
    features: {bore: {drilled: 4.2 mm, depth: through}}
joints:
  a in plate: {runs_in: [a.journal, plate.one], duty: slow and oiled}
  wheel on a: {retained: [wheel.bore, a.journal]}
  pawl on plate: {hinged: [pawl.hole, plate.two]}
shafts:
  a: {along: [plate.one, under, wheel]}
stands: plate
drive:
  hand: {turns: [a], by: hand, speeds: [60 r/min]}
  %s: {ratchets: [wheel, pawl], teeth: 12}
"""
)

COLLAR = "{name: collar, diameter: 8 mm, length: 3 mm}, "

# code: the spec that earns it, the same mended
CASES = {
    "bush-overloaded": (
        axle(1, drive=belt("300 N"), thick="2 mm"),
        axle(drive=belt("60 N"), thick="8 mm"),
    ),
    "bush-too-fast": (axle(1, speed="8000 r/min"), axle(speed="600 r/min")),
    "shaft-bends": (axle(2, **LONG, drive=belt("60 N")), axle(drive=belt("60 N"))),
    "shaft-leans-in-bush": (
        axle(1, **LONG, thick="24 mm", across="3 mm", fit=", fit: H7/f7", drive=belt("30 N")),
        axle(thick="6 mm", across="5 mm", fit=", fit: H7/f7", drive=belt("30 N")),
    ),
    "shaft-too-thin": (
        axle(torque=", torque: 2 N·m").replace("  axle:\n", "  ⟪axle⟫:\n", 1),
        axle(torque=", torque: 0.1 N·m"),
    ),
    "shaft-whirls": (
        axle(**LONG, across="2 mm", speed="1500 r/min").replace("  axle:\n", "  ⟪axle⟫:\n", 1),
        axle(**LONG, across="2 mm", speed="300 r/min"),
    ),
    "thrust-not-met": (unstopped(marked=True), unstopped(collar=COLLAR)),
    "mesh-out-of-line": (three("120 mm", up="5 mm", marked=True), three("120 mm")),
    "pawl-out-of-line": (PAWL % ("1.1 mm", "⟪x⟫"), PAWL % ("0.1 mm", "x")),
    "belt-out-of-line": (PULLEYS % ("8 mm", "⟪x⟫"), PULLEYS % ("0.5 mm", "x")),
    "gear-hits-shaft": (three("84 mm", marked=True), three("90 mm")),
    "worm-hand-wrong": (WORM % ("⟪wheel⟫", ", hand: right"), WORM % ("wheel", ", hand: left")),
}


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


# Geometry: tips of 56 and a rod of 4 want 30 mm between the shafts; the far gear, 20 across its
# tips, stands beside the wheel by its row and wants 38 mm.
@pytest.mark.parametrize(
    ("third", "reached"), [("84 mm", ["c", "far"]), ("90.1 mm", ["far"]), ("94.2 mm", [])]
)
def test_a_third_shaft_by_rows_and_bores(
    third: str, reached: list[str], compile_text: Compile
) -> None:
    outcome = compile_text(rows(third))
    found = [one for one in outcome.findings if one.code.name == "gear-hits-shaft"]
    told = [one.message.rsplit("'", 2)[1] for one in found if "tips of 'wheel'" in one.message]
    assert sorted(told) == reached


# The rows put the pinion 2 mm from its cheek, and the wheel as far; then 5 mm.
@pytest.mark.parametrize(("spacer", "said"), [(2, False), (5, True)])
def test_wheels_out_of_line_by_their_rows(spacer: float, said: bool, compile_text: Compile) -> None:
    found = names(compile_text(rows("110 mm", spacer=spacer)))
    assert ("mesh-out-of-line" in found) == said


def test_every_code_has_a_case() -> None:
    assert {one.name for one in shaft_codes.CODES} == set(CASES)
