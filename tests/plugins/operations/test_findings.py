"""Each code of the plugin at its exact place, and a right spec that gets none of them."""

from __future__ import annotations

import pytest

from binder_plugins.operations.codes import CODES
from tests.plugins.operations.conftest import BUILT_IN, HEAD, Plan, marked, without
from tests.plugins.operations.test_judged import CASES as JUDGED

BLOCK = "block: {length: 60 mm, width: 30 mm, height: 20 mm}"
POCKET = "{pocketed: 20 mm, width: 12 mm, depth: 4 mm, corner: 5 mm, on: top}"


def part(text: str, more: str = "", place: str = "⟪part⟫") -> str:
    """A spec of one part, which the finding points at."""
    return f"{HEAD}  {place}: {{{text}}}\n{more}"


def feature(shape: str, entry: str, name: str = "⟪it⟫") -> str:
    """A spec of one part of mild steel with a feature that the finding points at."""
    return part(f"material: mild steel, {shape}, features: {{{name}: {entry}}}", place="part")


FITTED = (
    "  ⟪part⟫: {material: mild steel, stock: 12 mm round bar, turned: ["
    "{name: a, diameter: 8 mm, length: 20 mm}, {name: flange, diameter: 12 mm, length: 4 mm},"
    " {name: b, diameter: 8 mm, length: 20 mm}]}\n"
    "  near: {material: brass, block: {length: 20 mm, width: 20 mm, height: 12 mm},"
    " features: {bore: {reamed: to suit, on: top, depth: through}}}\n"
    "  far: {material: brass, block: {length: 20 mm, width: 20 mm, height: 12 mm},"
    " features: {bore: {reamed: to suit, on: top, depth: through}}}\n"
    "joints:\n  one: {runs_in: [part.a, near.bore], duty: slow and oiled}\n"
    "  two: {runs_in: [part.b, far.bore], duty: slow and oiled}\n"
)
PINNED = (
    "  ⟪part⟫: {material: mild steel, stock: 6 mm round bar, turned: ["
    "{name: head, diameter: 6 mm, length: 3 mm}, {name: journal, diameter: 4 mm, length: 10 mm}]}\n"
    "  grip: {material: brass, stock: 10 mm round bar, turned: ["
    "{name: all, diameter: 10 mm, length: 10 mm}],"
    " features: {bore: {drilled: 4.1 mm, on: all, depth: through}}}\n"
    "joints:\n  swing: {swivels: [grip.bore, part.journal]}\n"
)
GLUED = (
    "  pin: {material: silver steel, stock: 5 mm drawn rod, turned: ["
    "{name: outside, diameter: 5 mm, length: 20 mm}]}\n"
    f"  part: {{material: mild steel, {BLOCK}, features: {{⟪hole⟫:"
    " {drilled: 5.1 mm, on: top, depth: 8 mm}}}\n"
    "joints:\n  pin in part: {retained: [pin.outside, part.hole]}\n"
)
CASES: dict[str, tuple[str, str]] = {
    "no-machine-for-it": (
        part(f"material: mild steel, {BLOCK}, features: {{it: {POCKET}}}"),
        without("machines/mills"),
    ),
    "nothing-to-grip": (
        part(
            "material: aluminium, stock: 120 mm round bar,"
            " turned: [{name: rim, diameter: 118 mm, length: 10 mm}]"
        ),
        "",
    ),
    "stands-out-too-far": (
        part(
            "material: mild steel, stock: 6 mm round bar,"
            " turned: [{name: pin, diameter: 4 mm, length: 40 mm}]"
        ),
        without("machines/lathes/bench lathe/tailstock"),
    ),
    "needs-steady": (
        part(
            "material: mild steel, stock: 5 mm round bar,"
            " turned: [{name: pin, diameter: 4 mm, length: 60 mm}]"
        ),
        "",
    ),
    "drill-cannot-reach": (
        feature(BLOCK, "{drilled: 1 mm, on: left, depth: 25 mm}"),
        "",
    ),
    "two-settings-for-true": (
        f"{HEAD}{FITTED}",
        without("holding/collets", "holding/chucks/four-jaw"),
    ),
    "thread-turns-the-work": (
        part(
            "material: mild steel, stock: 10 mm drawn rod, turned: [{name: head, diameter: 10 mm,"
            " length: 9 mm}, {name: shank, diameter: 10 mm, length: 30 mm}],"
            " features: {thread: {screwed: M10, on: shank, length: 30 mm}}"
        ),
        without("holding/collets"),
    ),
    "thin-part-crushed": (
        part(
            "material: mild steel, stock: 42 mm round bar,"
            " turned: [{name: ring, diameter: 40 mm, length: 10 mm}],"
            " features: {bore: {bored: 36 mm, on: ring, depth: through}}"
        ),
        "",
    ),
    "lowest-speed-too-fast": (
        part(
            "material: mild steel, stock: 105 mm round bar,"
            " turned: [{name: rim, diameter: 100 mm, length: 10 mm}]"
        ),
        "",
    ),
    "bar-will-not-pass": (
        part(
            "material: aluminium, stock: 65 mm round bar,"
            " turned: [{name: rim, diameter: 60 mm, length: 10 mm}]"
        ),
        "",
    ),
    "ream-blind": (
        feature(BLOCK, "{reamed: 6 mm, on: top, depth: 12 mm}"),
        without(reamers="{hand reamers: {sizes: [6 mm], by_hand: 'true'}}"),
    ),
    "flat-bottom-by-drill": (f"{HEAD}{GLUED}", ""),
    "cannot-be-measured": (f"{HEAD}{PINNED}", without(measuring="{}")),
    "motor-too-weak": (
        feature(BLOCK, "{drilled: 12 mm, on: top, depth: through}"),
        BUILT_IN.replace("power: 500 W", "power: 10 W"),
    ),
    "will-warp": (
        feature(
            "block: {length: 150 mm, width: 20 mm, height: 6 mm}",
            "{slotted: 6 mm, on: top, depth: 3 mm}",
        ),
        "",
    ),
    "cannot-set-over": (
        part(
            "material: mild steel, turned: [{name: j, diameter: 8 mm, length: 20 mm},"
            " {web: 10 mm, throw: 8 mm, length: 4 mm},"
            " {diameter: 8 mm, throw: 8 mm, length: 8 mm}]"
        ),
        without("holding/chucks/four-jaw"),
    ),
    "mill-travel-too-short": (
        part(
            "material: cast iron, block: {length: 300 mm, width: 30 mm, height: 40 mm},"
            " features: {it: {slotted: 6 mm, on: top, depth: 3 mm}}"
        ),
        "",
    ),
    "helix-not-cut-here": (
        (
            f"{HEAD}  ⟪one⟫: {{material: brass, stock: 30 mm round bar,"
            " turned: [{name: rim, diameter: 23.28 mm, length: 8 mm}]}\n"
            "bought:\n  other: {what: helical gear of 20 teeth}\n"
            "drive:\n  gears: {meshes: [one, other], teeth: [20, 20], module: 1 mm,"
            " helix: 20 deg}\n"
        ),
        "",
    ),
    "hole-too-large": (
        part(
            "material: mild steel, plate: {length: 300 mm, width: 100 mm, thickness: 5 mm},"
            " features: {it: {drilled: 20 mm, on: top, depth: through}}"
        ),
        "",
    ),
    "gear-cutter-not-owned": (
        part(
            "material: brass, stock: 3 mm plate,"
            " gear: ⟪{module: 0.5 mm, teeth: 54, width: 3 mm}⟫,"
            " features: {bore: {reamed: 4 mm, depth: through}}",
            place="part",
        ),
        without("machines/others/grinder"),
    ),
    "knurl-bends-it": (
        part(
            "material: mild steel, stock: 3 mm drawn rod,"
            " turned: [{name: stem, diameter: 3 mm, length: 20 mm}],"
            " features: {⟪it⟫: {knurled: 0.5 mm, on: stem, length: 6 mm}}",
            place="part",
        ),
        "",
    ),
}


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_finding_points_at_the_mark(code: str, plan: Plan) -> None:
    text, place = marked(CASES[code][0])
    outcome = plan(text, CASES[code][1])
    found = [one for one in outcome.findings if one.code.name == code]
    assert found, [(one.code.name, one.message) for one in outcome.findings]
    span = found[0].span
    assert (span.line, span.column, span.end_line, span.end_column) == place


def test_every_code_has_its_case() -> None:
    assert sorted([*CASES, *JUDGED, "operations-loop"]) == sorted(code.name for code in CODES)


def test_the_same_parts_in_a_workshop_that_has_all(plan: Plan) -> None:
    """What only the workshop lacks is found no more in the built-in one."""
    mine = {code.name for code in CODES}
    for code in ("no-machine-for-it", "stands-out-too-far", "two-settings-for-true", "ream-blind",
                 "thread-turns-the-work",
                 "cannot-be-measured", "cannot-set-over"):  # fmt: skip
        text, _ = marked(CASES[code][0])
        found = [one.code.name for one in plan(text).findings if one.code.name in mine]
        assert not found, code
