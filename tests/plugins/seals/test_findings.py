"""Each code of the plugin at its exact place, and a right spec that gets none of them."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome

Compile = Callable[..., Outcome]
PARTS = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  barrel:
    material: brass
    turned: [{name: tube, diameter: 18 mm, length: 40 mm}]
    features: {bore: {bored: 12 mm, on: tube, depth: through}%s}
  piston:
    material: brass
    turned: [{name: body, diameter: 12 mm, length: 8 mm}]
    features: {band: {rounded: 0.2 mm, on: body}%s}
  rod:
    material: stainless steel
    turned: [{name: body, diameter: 4 mm, length: 60 mm}]
  cover:
    material: brass
    turned: [{name: boss, diameter: 14 mm, length: 16 mm}]
    features: {hole: {drilled: 4.2 mm, on: boss, depth: through}%s}
  lump:
    material: brass
    stock: casting
bought:
  tap: {what: a bought tap}
joints:
  %s
"""
RIGHT = (
    "piston in barrel: {sealed: [piston.body, barrel.bore], moving: true}\n"
    "  cover on barrel: {gasketed: [cover.underside, barrel.top], gasket: oiled paper}\n"
    "  screws: {screwed: [cover.underside, barrel.top], fastener: M3 x 20 cap screw}\n"
    "  rod in cover: {packed: [rod.body, cover.top]}"
)


def seal(line: str, barrel: str = "", piston: str = "", cover: str = "") -> str:
    """A cylinder with these features more, and these joints."""
    return PARTS % (barrel, piston, cover, line)


SEALED = "piston in barrel: {sealed: [piston.body, barrel.bore]"
GROOVED = (
    "piston in barrel: {sealed: [piston.groove, barrel.bore], ring: 9 mm x 1.8 mm, moving: true}"
)
CASES = {
    "seal-ring-unknown": seal(f"{SEALED}, ring: ⟪4.6 mm⟫}}"),
    "seal-size-missing": seal("⟪tap on lump⟫: {sealed: [tap, lump]}"),
    "seal-squeeze-out": seal(
        GROOVED, piston=", groove: {grooved: 2.4 mm, depth: ⟪1.7 mm⟫, on: body}"
    ),
    "seal-stretch-out": seal(f"{SEALED}, moving: true, ring: ⟪8 mm x 1.8 mm⟫}}"),
    "seal-fill-out": seal(f"{SEALED}, moving: true, ring: ⟪7.6 mm x 1.8 mm⟫}}"),
    "seal-groove-wrong": seal(
        GROOVED, piston=", groove: {grooved: 2.4 mm, depth: ⟪2 mm⟫, on: body}"
    ),
    "seal-lead-missing": seal(
        f"{SEALED}, moving: true}}", barrel=", edge: {chamfered: ⟪0.5 mm⟫, on: tube}"
    ),
    "gasket-missing": seal("⟪cover on barrel⟫: {gasketed: [cover.underside, barrel.top]}"),
    "gasket-unknown": seal(
        "cover on barrel: {gasketed: [cover.underside, barrel.top], gasket: ⟪felt⟫}"
    ),
    "gasket-not-held": seal(
        "⟪cover on barrel⟫: {gasketed: [cover.underside, barrel.top], gasket: oiled paper}"
    ),
    "packing-box-wrong": seal(
        "rod in cover: {packed: [rod.body, cover.box], packing: 1.5 mm}",
        cover=", box: {bored: ⟪10 mm⟫, on: boss, depth: 8 mm}",
    ),
    "packing-wrong": seal("rod in cover: {packed: [rod.body, cover.top], packing: ⟪6 mm⟫}"),
}


def _marked(text: str) -> tuple[str, tuple[int, int, int, int]]:
    start = text.index("⟪")
    plain = text.replace("⟪", "")
    end = plain.index("⟫")
    return plain.replace("⟫", ""), (*_place(plain, start), *_place(plain, end))


def _place(text: str, offset: int) -> tuple[int, int]:
    before = text[:offset]
    return before.count("\n") + 1, offset - before.rfind("\n")


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_finding_points_at_the_mark(code: str, compile_text: Compile) -> None:
    text, place = _marked(CASES[code])
    outcome = compile_text(text)
    found = [one for one in outcome.findings if one.code.name == code]
    assert found, [(one.code.name, one.message) for one in outcome.findings]
    span = found[0].span
    assert (span.line, span.column, span.end_line, span.end_column) == place
    assert found[0].help


@pytest.mark.parametrize("code", sorted(CASES))
def test_a_right_cylinder_does_not_get_it(code: str, compile_text: Compile) -> None:
    names = {one.code.name for one in compile_text(seal(RIGHT)).findings}
    assert code not in names
    assert "plugin-broken" not in names


def first(compile_text: Compile, text: str, code: str) -> str:
    """Message and way out of the first finding of a code."""
    found = next(one for one in compile_text(text).findings if one.code.name == code)
    return f"{found.message}; {found.help}"


def test_the_ways_out_have_their_figures(compile_text: Compile) -> None:
    stretched = _marked(CASES["seal-stretch-out"])[0]
    said = first(compile_text, stretched, "seal-stretch-out")
    assert "9 × 1.8 mm suits: groove to ⌀9.1 mm" in said
    deep = _marked(CASES["seal-groove-wrong"])[0]
    # 12 mm bore: 1.7 mm deep leaves 1.7 mm of room for a 1.8 mm cord, and
    shallow = _marked(CASES["seal-squeeze-out"])[0]
    assert "presses the ring by 6 %" in first(compile_text, shallow, "seal-squeeze-out")
    # 2 mm deep leaves 2 mm of room for a 1.8 mm cord.
    assert "presses the ring by 0 %" in first(compile_text, deep, "seal-groove-wrong")
    box = _marked(CASES["packing-box-wrong"])[0]
    assert "bore it 7 mm" in first(compile_text, box, "packing-box-wrong")


def test_a_groove_too_narrow_is_found(compile_text: Compile) -> None:
    text = seal(GROOVED, piston=", groove: {grooved: 1.8 mm, depth: 1.45 mm, on: body}")
    assert "1.8 mm wide does not suit" in first(compile_text, text, "seal-groove-wrong")


def test_a_written_groove_that_suits_is_left_alone(compile_text: Compile) -> None:
    text = seal(GROOVED, piston=", groove: {grooved: 2.4 mm, depth: 1.45 mm, on: body}")
    assert not [one for one in compile_text(text).findings if one.code.name.startswith("seal-")]


def test_a_written_lead_that_is_flat_and_long_is_left_alone(compile_text: Compile) -> None:
    text = seal(
        f"{SEALED}, moving: true}}",
        barrel=", edge: {chamfered: 2.5 mm, angle: 15 deg, on: tube}",
    )
    assert "seal-lead-missing" not in {one.code.name for one in compile_text(text).findings}


def test_a_piston_far_too_small_has_no_groove(compile_text: Compile) -> None:
    text = seal("rod in barrel: {sealed: [rod.body, barrel.bore]}")
    outcome = compile_text(text)
    assert "leaves no metal for a groove" in first(compile_text, text, "seal-groove-wrong")
    assert outcome.design is not None
    assert not outcome.design.parts["rod"].features


def test_a_box_that_comes_out_at_the_back_is_found(compile_text: Compile) -> None:
    text = seal("rod in cover: {packed: [rod.body, cover.top], packing: 2 mm, rings: 8}")
    assert "comes out of the 'cover'" in first(compile_text, text, "packing-box-wrong")


BAD = (
    f"{SEALED}, ring: cheese}}",
    f"{SEALED}, ring: 0 mm x 0 mm}}",
    f"{SEALED}, ring: 900 mm x 8 mm}}",
    f"{SEALED}, ring: AS568-999}}",
    f"{SEALED}, ring: 3 deg}}",
    f"{SEALED}, bore: 0.001 mm}}",
    "cover on barrel: {gasketed: [cover.underside, barrel.top], gasket: rubber, thickness: 90 mm}",
    "rod in cover: {packed: [rod.body, cover.top], packing: 300 mm}",
    "rod in cover: {packed: [rod.body, cover.top], rings: 99}",
)


@pytest.mark.parametrize("line", BAD)
def test_bad_words_are_findings_and_nothing_breaks(line: str, compile_text: Compile) -> None:
    names = {one.code.name for one in compile_text(seal(line)).findings}
    assert "plugin-broken" not in names
    assert names & {*CASES} or "bore:" in line
