"""Each code about shafts, bushes and what stands in the way, at its exact place."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_plugins.drive import shaft_codes
from tests.plugins.drive.marks import marked
from tests.plugins.drive.shaft_specs import HEAD, axle, belt, three

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
    "mesh-out-of-line": (three("120 mm", up="5 mm", marked=True), three("120 mm")),
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


def test_every_code_has_a_case() -> None:
    assert {one.name for one in shaft_codes.CODES} == set(CASES)
