"""Each code of forms and shapes at its exact place, and a right spec that gets none of them."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_plugins.shapes.form_codes import FORM_CODES
from binder_plugins.shapes.shape_codes import SHAPE_CODES

Compile = Callable[..., Outcome]
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
BLOCK = "block: {length: 40 mm, width: 30 mm, height: 20 mm}"
BAR = "turned: [{name: rod, diameter: 20 mm, length: 30 mm}]"


def part(shape: str, *features: str) -> str:
    """A spec of one part."""
    rows = "".join(f"      {one}\n" for one in features)
    table = f"    features:\n{rows}" if rows else ""
    return f"{HEAD}  part:\n    material: mild steel\n    {shape}\n{table}"


def named(shape: str, *features: str) -> str:
    """A spec of one part that is itself what is marked."""
    return part(shape, *features).replace("  part:", "  ⟪part⟫:")


def riveted(stands: str) -> str:
    """A bar between two sheets that is drilled for their rivets, standing in some way."""
    holes = 'depth: through, off: 2, pattern: "10 mm apart"'
    return (
        f"{HEAD}  side: {{material: brass, stock: 1 mm sheet, plate: {{length: 20 mm, width: 8 mm,"
        f" thickness: 1 mm}}, features: {{rivets: {{drilled: 1 mm, {holes}}}}}}}\n"
        "  bar: {material: brass, stock: 12 mm x 6 mm flat bar, cut: 14 mm,"
        f" features: {{rivets: {{drilled: 1 mm, on: front, {holes}}}}}}}\n"
        "fabrications:\n  box: {pieces: [2 off side, bar], joined: riveted,"
        f" stack: [{{piece: side}}, {{piece: ⟪bar⟫, stands: {stands}}}, {{piece: side}}]}}\n"
    )


# Those of the language, which stand in tests/cases.
ELSEWHERE = {"hand-of-round-work", "hands-alike", "stack-of-others", "stack-not-laid-out"}
CASES = {
    "step-named-like-face": part(
        "turned: [{name: ⟪top⟫, diameter: 8 mm, length: 20 mm}, {name: foot, diameter: 12 mm,"
        " length: 6 mm}]"
    ),
    "beside-its-step": part(
        "turned: [{name: body, diameter: 8 mm, length: 20 mm}, {name: tail, diameter: 5 mm,"
        " length: 6 mm}]",
        "relief: {undercut: 1 mm, on: tail, at: ⟪0.5 mm from left⟫, depth: 0.4 mm}",
    ),
    "place-not-read": part(BLOCK, "hole: {drilled: 3 mm, on: top, at: ⟪near the left⟫}"),
    "pattern-not-laid-out": part(
        "disc: {diameter: 40 mm, thickness: 4 mm}",
        "⟪holes⟫: {drilled: 3 mm, on: top, depth: through, off: 5}",
    ),
    "hole-out-of-metal": part(
        BLOCK, "⟪hole⟫: {drilled: 6 mm, on: top, depth: through, at: 2 mm from left}"
    ),
    "rivet-stopped": riveted("flat"),
    "wall-too-thin": part(
        BLOCK, "⟪hole⟫: {drilled: 6 mm, on: top, depth: through, at: 4 mm from left}"
    ),
    "features-overlap": part(
        BLOCK,
        "one: {drilled: 6 mm, on: top, depth: through, at: 15 mm from left}",
        "⟪two⟫: {drilled: 5 mm, on: top, depth: through, at: 20 mm from left}",
    ),
    "pocket-corner-too-sharp": part(
        BLOCK, "⟪pocket⟫: {pocketed: 20 mm, width: 12 mm, depth: 4 mm, on: top}"
    ),
    "cutter-cannot-reach": part(BLOCK, "slot: {slotted: 3 mm, on: top, depth: ⟪10 mm⟫}"),
    "too-big-for-machine": named(
        "flywheel: {outside: 240 mm, rim: 20 mm, width: 10 mm, hub: 40 mm, hub_length: 20 mm,"
        " web: 6 mm}"
    ),
    "edge-too-large": part(
        "plate: {length: 40 mm, width: 10 mm, thickness: 3 mm}",
        "ends: {rounded: ⟪6 mm⟫, on: corners}",
    ),
    "angle-not-cut": part(BLOCK, "sink: {countersunk: 6 mm, on: top, angle: ⟪0 deg⟫}"),
    "outline-does-not-close": part(
        "sheet: {length: 20 mm, width: 10 mm, thickness: 1 mm, points: [{x: 0 mm, y: 0 mm},"
        " {x: 20 mm, y: 0 mm}, {x: ⟪20 mm⟫, y: 10 mm, arc: 2 mm}]}"
    ),
    "bend-has-no-room": part(
        "sheet: {length: 30 mm, width: 10 mm, thickness: 1 mm,"
        " bends: [{at: ⟪3 mm⟫, angle: 90 deg, inside: 4 mm}]}"
    ),
    "teeth-cannot-be-cut": part("gear: {module: 1 mm, teeth: 3, width: ⟪4 mm⟫}"),
    "sizes-out-of-order": part("tube: {outside: 10 mm, bore: ⟪10 mm⟫, length: 20 mm}"),
}
MORE = {
    "two points in one place beside a round corner": (
        "outline-does-not-close",
        part(
            "sheet: {length: 20 mm, width: 10 mm, thickness: 1 mm, points: [{x: 0 mm, y: 0 mm},"
            " {x: 20 mm, y: 0 mm, corner: 1 mm}, {x: ⟪20 mm⟫, y: 0 mm}, {x: 0 mm, y: 10 mm}]}"
        ),
    ),
    "a profile that runs backwards": (
        "outline-does-not-close",
        part(
            "profile: {points: [{at: 0 mm, diameter: 8 mm}, {at: 9 mm, diameter: 6 mm},"
            " {at: ⟪4 mm⟫, diameter: 2 mm}]}"
        ),
    ),
    "bent wire without room": (
        "bend-has-no-room",
        part(
            "wire: {diameter: 2 mm, bend: 9 mm,"
            " points: [{x: 0 mm, y: 0 mm}, {x: ⟪8 mm⟫, y: 0 mm}, {x: 8 mm, y: 30 mm}]}"
        ),
    ),
    "a hole swallowed": (
        "features-overlap",
        part(
            BLOCK,
            "⟪pilot⟫: {drilled: 4 mm, on: top, depth: 5 mm}",
            "bore: {bored: 12 mm, on: top, depth: 8 mm}",
        ),
    ),
    "a hole in a pocket": (
        "features-overlap",
        part(
            BLOCK,
            "pocket: {pocketed: 20 mm, width: 12 mm, depth: 5 mm, corner: 3 mm, on: top}",
            "⟪dimple⟫: {bored: 3 mm, on: top, depth: 4 mm}",
        ),
    ),
    "a step bored away": (
        "hole-out-of-metal",
        part(
            "turned: [{name: neck, diameter: 6 mm, length: 8 mm},"
            " {name: head, diameter: 20 mm, length: 20 mm}]",
            "⟪bore⟫: {drilled: 8 mm, on: head, depth: through}",
        ),
    ),
    "off the rim of a disc": (
        "hole-out-of-metal",
        part(
            "disc: {diameter: 20 mm, thickness: 4 mm}",
            "⟪holes⟫: {drilled: 3 mm, on: top, depth: through, off: 4, pattern: on 18 mm PCD}",
        ),
    ),
    "a closed dovetail": (
        "cutter-cannot-reach",
        part(
            BLOCK,
            "⟪slot⟫: {t_slotted: 6 mm, on: top, depth: 9 mm, head: 12 mm, head_depth: 4 mm,"
            " length: 20 mm}",
        ),
    ),
    "a bore too deep for the bar": (
        "cutter-cannot-reach",
        part(
            "turned: [{name: rod, diameter: 30 mm, length: 80 mm}]",
            "⟪bore⟫: {bored: 10 mm, on: rod, depth: 40 mm}",
        ),
    ),
    "too long": (
        "too-big-for-machine",
        named("turned: [{name: rod, diameter: 20 mm, length: 400 mm}]"),
    ),
    "a round larger than its step": (
        "edge-too-large",
        part(BAR, "dome: {rounded: ⟪12 mm⟫, on: top}"),
    ),
    "a gear of no pitch": ("size-missing", named("gear: {teeth: 20, width: 4 mm}")),
    "a web without its throw": (
        "size-missing",
        part("turned: [{name: arm, web: ⟪8 mm⟫, length: 3 mm}]"),
    ),
    "a ball longer than it is": (
        "sizes-do-not-add",
        part("turned: [{name: knob, ball: 8 mm, length: ⟪9 mm⟫}]"),
    ),
    "a hub over the rim": (
        "sizes-out-of-order",
        part(
            "flywheel: {outside: 40 mm, rim: 6 mm, width: 8 mm, hub: ⟪30 mm⟫, hub_length: 8 mm,"
            " web: 4 mm}"
        ),
    ),
    "a spring too short": (
        "sizes-out-of-order",
        part("spring: {kind: compression, wire: 1 mm, mean: 10 mm, coils: 20, free: ⟪15 mm⟫}"),
    ),
    "a vee that closes": (
        "sizes-out-of-order",
        part("pulley: {groove: vee, diameters: [40 mm], width: 12 mm, belt: ⟪6 mm⟫, depth: 9 mm}"),
    ),
    "an outline past the sheet": (
        "sizes-do-not-add",
        part(
            "sheet: {length: 20 mm, width: 10 mm, thickness: 1 mm, points: [{x: 0 mm, y: 0 mm},"
            " {x: ⟪25 mm⟫, y: 0 mm}, {x: 20 mm, y: 10 mm}]}"
        ),
    ),
}


def marked(text: str) -> tuple[str, tuple[int, int, int, int]]:
    """The text without its marks, and the line and column of both."""
    start = text.index("⟪")
    plain = text.replace("⟪", "", 1)
    end = plain.index("⟫")
    plain = plain.replace("⟫", "", 1)
    return plain, (*_place(plain, start), *_place(plain, end))


def _place(text: str, offset: int) -> tuple[int, int]:
    before = text[:offset]
    return before.count("\n") + 1, offset - before.rfind("\n")


def _check(code: str, case: str, compile_text: Compile) -> None:
    text, place = marked(case)
    outcome = compile_text(text)
    found = [one for one in outcome.findings if one.code.name == code]
    assert found, [(one.code.name, one.message) for one in outcome.findings]
    span = found[0].span
    assert (span.line, span.column, span.end_line, span.end_column) == place
    assert found[0].message


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_finding_points_at_the_mark(code: str, compile_text: Compile) -> None:
    _check(code, CASES[code], compile_text)


@pytest.mark.parametrize("name", sorted(MORE))
def test_further_ways_to_the_same_finding(name: str, compile_text: Compile) -> None:
    _check(*MORE[name], compile_text)


def test_every_code_has_its_case() -> None:
    named = {code.name for code in (*FORM_CODES, *SHAPE_CODES)}
    assert named == set(CASES) | ELSEWHERE


@pytest.mark.parametrize("stands", ["flat", "on edge"])
def test_a_bar_stands_so_that_its_rivets_pass(stands: str, compile_text: Compile) -> None:
    """Its holes run from front to back: flat they lie across, on edge they go through."""
    text = riveted(stands).replace("⟪", "").replace("⟫", "")
    codes = [one.code.name for one in compile_text(text).findings]
    assert ("rivet-stopped" in codes) == (stands == "flat")


RIGHT = (
    part(
        BLOCK,
        "bore: {bored: 8 mm, on: front, depth: 12 mm}",
        "mouth: {chamfered: 0.5 mm, on: bore}",
        "oil: {drilled: 2 mm, on: top, depth: 8 mm}",
        "holes: {drilled: 3.4 mm, on: top, depth: through, off: 4,"
        " pattern: 'at the corners, 5 mm in'}",
        "heads: {counterbored: 6 mm, on: holes, depth: 3 mm}",
        "pocket: {pocketed: 16 mm, width: 10 mm, depth: 4 mm, corner: 2 mm, on: underside}",
        "edges: {chamfered: 0.5 mm, on: edges}",
    ),
    part(
        BAR,
        "bore: {reamed: 6 mm, on: rod, depth: through}",
        "wide: {bored: 10 mm, on: rod, depth: 8 mm}",
        "ring: {drilled: 2 mm, on: right, depth: 5 mm, off: 6, pattern: on 15 mm PCD}",
        "cross: {drilled: 2 mm, across: rod, depth: through, at: 8 mm from left}",
        "dome: {rounded: 1 mm, on: top}",
    ),
)


@pytest.mark.parametrize("text", RIGHT)
def test_a_right_part_gets_none(text: str, compile_text: Compile) -> None:
    outcome = compile_text(text)
    assert [(one.code.name, one.message) for one in outcome.findings] == []


BEHIND = "eye: {slotted: 9 mm, on: front, length: 12 mm, depth: through}"
COLLAR = "block: {length: 16 mm, width: 20 mm, height: 15 mm}"


@pytest.mark.parametrize(
    ("shape", "hole", "is_found"),
    [
        (COLLAR, "drilled: 1 mm, on: left, depth: 2 mm", True),
        (COLLAR, "drilled: 1 mm, on: left, depth: 1.6 mm", True),
        (COLLAR, "drilled: 1 mm, on: left, depth: 1.1 mm", False),
        (COLLAR, "drilled: 1 mm, on: left, depth: 5 mm", False),
        (COLLAR, "centred: 1 mm, on: left", True),
        (BLOCK, "drilled: 6 mm, on: top, depth: 19 mm", True),
        (BLOCK, "drilled: 6 mm, on: top, depth: 17 mm", False),
    ],
)
def test_a_blind_hole_leaves_metal_behind_its_point(
    compile_text: Compile, shape: str, hole: str, is_found: bool
) -> None:
    """A wall of 2 mm beside an eye of 12 in 16 mm; the point of a drill is 0.3 of it long, and
    0.5 mm must stay. A hole that goes well into the eye is meant to. Common practice, no source.
    """
    features = [BEHIND] if shape == COLLAR else []
    outcome = compile_text(part(shape, f"pivot: {{{hole}}}", *features))
    found = [one for one in outcome.findings if one.code.name == "wall-too-thin"]
    assert bool(found) == is_found
