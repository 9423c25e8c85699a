"""Each code of the plugin at its exact place, and a right spec that gets none of them."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome

Compile = Callable[..., Outcome]
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
RIGHT = (
    "table on bed: {dovetailed: [table.underside, bed.top], width: 24 mm, depth: 5 mm, gib: 2 mm}"
)


def slide(line: str, table: str = "", bed: str = "") -> str:
    """A table that slides on a bed, with features of each and one joint."""
    return (
        f"{HEAD}"
        "  bed: {material: cast iron, stock: casting,"
        f" block: {{length: 120 mm, width: 50 mm, height: 20 mm}}{bed}}}\n"
        "  table: {material: mild steel,"
        f" block: {{length: 60 mm, width: 56 mm, height: 14 mm}}{table}}}\n"
        f"joints:\n  {line}\n"
    )


def halves(slot: str, tail: str) -> str:
    """A slide whose two halves are both written."""
    return slide(
        "table on bed: {dovetailed: [table.slot, bed.tail], gib: 2 mm}",
        f", features: {{slot: {{{slot}, inside: true, on: underside}}}}",
        f", features: {{tail: {{{tail}, on: top}}}}",
    )


CASES = {
    "dovetail-size-missing": slide("⟪table on bed⟫: {dovetailed: [table.underside, bed.top]}"),
    "dovetail-halves-differ": halves(
        "dovetailed: ⟪24 mm⟫, depth: 5 mm", "dovetailed: 24 mm, depth: 4.7 mm"
    ),
    "dovetail-too-deep": slide(
        "table on bed: {dovetailed: [table.underside, bed.top], width: 24 mm, depth: ⟪12 mm⟫,"
        " gib: 2 mm}"
    ),
    "dovetail-cannot-be-cut": slide(
        "table on bed: {dovetailed: [table.underside, bed.top], width: 24 mm, angle: ⟪10 deg⟫}"
    ),
    "dovetail-pins-wrong": slide(
        "table on bed: {dovetailed: [table.underside, bed.top], width: 24 mm, gib: 2 mm,"
        " pins: ⟪9 mm⟫}"
    ),
    "dovetail-cutter-not-owned": slide(
        "table on bed: {dovetailed: [table.underside, bed.top], width: 24 mm, gib: 2 mm,"
        " depth: ⟪8 mm⟫}"
    ),
    "gib-screws-have-no-room": slide(
        "table on bed: {dovetailed: [table.underside, bed.top], width: 24 mm, depth: 2 mm,"
        " gib: ⟪1 mm⟫}"
    ),
    "gib-on-no-flank": slide(
        "table on bed: {dovetailed: [table.underside, bed.top], width: 24 mm, depth: 5 mm,"
        " gib: 2 mm, gib_side: ⟪top⟫}"
    ),
    "feed-screw-not-held": slide(
        f"{RIGHT}\n  ⟪feed⟫: {{leads: [screw.rod, table.nut]}}",
        ", features: {nut: {tapped: M6, on: left, depth: 10 mm}}",
    ).replace(
        "joints:",
        "  screw: {material: brass, turned: [{name: rod, diameter: 6 mm, length: 60 mm}],"
        " features: {thread: {screwed: M6, on: rod, length: 50 mm}}}\njoints:",
    ),
    "slide-not-adjustable": slide(
        "⟪table on bed⟫: {dovetailed: [table.underside, bed.top], width: 24 mm}"
    ),
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
def test_a_right_slide_does_not_get_it(code: str, compile_text: Compile) -> None:
    assert code not in {one.code.name for one in compile_text(slide(RIGHT)).findings}


def helps(compile_text: Compile, text: str, code: str) -> str:
    """The way out of the first finding of a code."""
    return next(one.help for one in compile_text(text).findings if one.code.name == code)


def test_the_ways_out_have_their_figures(compile_text: Compile) -> None:
    cutter = _marked(CASES["dovetail-cutter-not-owned"])[0]
    said = helps(compile_text, cutter, "dovetail-cutter-not-owned")
    assert "depth 5 mm instead of 8 mm" in said
    assert "say `width: 25 mm`" in helps(
        compile_text, _marked(CASES["dovetail-size-missing"])[0], "dovetail-size-missing"
    )
    # 24 mm at 60°: 2 mm of gib take 2.309 mm, 0.2 mm to set it.
    differ = _marked(CASES["dovetail-halves-differ"])[0]
    assert "26.509 mm" in helps(compile_text, differ, "dovetail-halves-differ")


def test_flanks_of_two_angles_do_not_bear(compile_text: Compile) -> None:
    text = halves(
        "dovetailed: 26.5 mm, depth: 5 mm, angle: 55 deg",
        "dovetailed: 24 mm, depth: 4.7 mm, angle: 60 deg",
    )
    messages = [
        one.message
        for one in compile_text(text).findings
        if one.code.name == "dovetail-halves-differ"
    ]
    assert any("60° and 55°" in message for message in messages)


def test_a_tail_that_bottoms_is_found(compile_text: Compile) -> None:
    text = halves("dovetailed: 26.5 mm, depth: 5 mm", "dovetailed: 24 mm, depth: 5 mm")
    messages = [one.message for one in compile_text(text).findings]
    assert any("bottoms in the slot" in message for message in messages)


def test_two_halves_that_go_together_are_left_alone(compile_text: Compile) -> None:
    text = halves("dovetailed: 26.5 mm, depth: 5 mm", "dovetailed: 24 mm, depth: 4.7 mm")
    assert not compile_text(text).findings


def test_one_that_stays_fixed_needs_no_gib(compile_text: Compile) -> None:
    line = "table on bed: {dovetailed: [table.underside, bed.top], width: 24 mm, fixed: true}"
    assert "slide-not-adjustable" not in {
        one.code.name for one in compile_text(slide(line)).findings
    }


def test_an_angle_of_nothing_breaks_nothing(compile_text: Compile) -> None:
    text = slide(
        "table on bed: {dovetailed: [table.slot, bed.top], gib: 2 mm, angle: ⟪0 deg⟫}",
        ", features: {slot: {dovetailed: 20 mm, inside: true, on: underside}}",
    )
    plain, place = _marked(text)
    found = [one for one in compile_text(plain).findings if one.code.name.startswith("dovetail")]
    assert [one.code.name for one in found] == ["dovetail-cannot-be-cut"]
    assert (found[0].span.line, found[0].span.column) == place[:2]


BAD = (
    "width: 0.001 mm",
    "width: 1000 mm",
    "width: 24 mm, depth: 400 mm",
    "width: 24 mm, angle: 90 deg",
    "width: 24 mm, angle: -60 deg",
    "width: 24 mm, gib: 90 mm",
    "width: 24 mm, clearance: 300 mm",
    "width: 24 mm, pins: 500 mm",
    "depth: 4 mm",
)


@pytest.mark.parametrize("words", BAD)
def test_bad_sizes_are_findings_and_nothing_breaks(words: str, compile_text: Compile) -> None:
    line = f"table on bed: {{dovetailed: [table.underside, bed.top], {words}}}"
    names = {one.code.name for one in compile_text(slide(line)).findings}
    assert names
    assert "plugin-broken" not in names
