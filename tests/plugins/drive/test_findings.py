"""Each code of the plugin at its exact place, and a right spec that gets none of them."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_plugins.drive.codes import CODES
from tests.plugins.drive.marks import marked
from tests.plugins.drive.train import HAND, spec

Compile = Callable[..., Outcome]
CORD = "bought:\n  cord: {what: braided cord}\n"
GEARS = "x: {meshes: [a, b], teeth: [18, 54], module: 1 mm}"
THIN = "rope: {winds: [b, cord], diameter: 8 mm, rope: 2 mm, load: 1 kg}"
ROPE = "rope: {winds: [b, cord], diameter: 20 mm, rope: 2 mm, load: 1 kg, hangs: true}"

TWICE = (
    "  w: {material: brass%s, disc: {diameter: 56 mm, thickness: 4 mm},"
    " features: {bore: {reamed: 6 mm, depth: through}}}\n"
    "  shaft_1: {material: silver steel, turned: [{name: seat, diameter: 6 mm, length: 20 mm}]}\n"
    "  shaft_2: {material: silver steel, turned: [{name: seat, diameter: 6 mm, length: 20 mm}]}\n"
)
ON_BOTH = "  j1: {glued: [w.bore, shaft_1.seat]}\n  j2: {glued: [w.bore, shaft_2.seat]}\n"

# code: the spec that earns it, the same mended
CASES = {
    "teeth-missing": (
        spec("a b", HAND, "x: {meshes: [⟪a⟫, b], module: 0.5 mm}"),
        spec("a b", HAND, GEARS),
    ),
    "belt-diameters": (
        spec("a b", HAND, "⟪x⟫: {belted: [a, b], diameters: [20 mm, 30 mm, 40 mm]}"),
        spec("a b", HAND, "x: {belted: [a, b], diameters: [20 mm, 30 mm]}"),
    ),
    "planetary-members": (
        spec("a b c", HAND, "⟪x⟫: {orbits: [a, b, c], teeth: [12, 18, 48], held: ring}"),
        spec("a b c d", HAND, "x: {orbits: [a, b, c, d], teeth: [12, 18, 48], held: ring}"),
    ),
    "planetary-teeth": (
        spec("a b c d", HAND, "⟪x⟫: {orbits: [a, b, c, d], teeth: [12, 18, 50], held: ring}"),
        spec("a b c d", HAND, "x: {orbits: [a, b, c, d], teeth: [12, 18, 48], held: ring}"),
    ),
    "planetary-held": (
        spec("a b c d", HAND, "x: {orbits: [a, b, c, d], teeth: [12, 18, 48], held: ⟪frame⟫}"),
        spec("a b c d", HAND, "x: {orbits: [a, b, c, d], teeth: [12, 18, 48], held: c}"),
    ),
    "drive-locks": (
        spec("a b", HAND, GEARS, "⟪y⟫: {chained: [a, b], teeth: [10, 30], pitch: 6 mm}"),
        spec("a b c", HAND, GEARS, "y: {chained: [b, c], teeth: [10, 30], pitch: 6 mm}"),
    ),
    "drive-in-a-ring": (
        spec("a b", HAND, "x: {meshes: [a, b], teeth: [20, 40], module: 1 mm}",
             "⟪y⟫: {rubs: [a, b], diameters: [20 mm, 40 mm]}"),
        spec("a b", HAND, "x: {meshes: [a, b], teeth: [20, 40], module: 1 mm}"),
    ),
    "not-driven": (
        spec("a b c d", HAND, GEARS, "⟪y⟫: {rubs: [c, d], diameters: [20 mm, 40 mm]}"),
        spec("a b c d", HAND, GEARS, "y: {rubs: [b, d], diameters: [20 mm, 40 mm]}"),
    ),
    "mover-not-said": (
        spec("a b", GEARS.replace("x:", "⟪x⟫:")),
        spec("a b", HAND, GEARS),
    ),
    "turns-wrong-way": (
        spec("a b", HAND, GEARS, "⟪work⟫: {works: [b], way: clockwise}"),
        spec("a b", HAND, GEARS, "work: {works: [b], way: anticlockwise}"),
    ),
    "speed-off": (
        spec("a b", HAND, GEARS, "⟪work⟫: {works: [b], least: 30 r/min, most: 40 r/min}"),
        spec("a b", HAND, GEARS, "work: {works: [b], least: 15 r/min, most: 40 r/min}"),
    ),
    "drive-too-weak": (
        spec("a b", "⟪hand⟫: {turns: [a], by: hand, speeds: [60 r/min], force: 1 N, radius: 20 mm}",
             GEARS, "work: {works: [b], torque: 0.2 N·m}"),
        spec("a b", "hand: {turns: [a], by: hand, speeds: [60 r/min], force: 5 N, radius: 20 mm}",
             GEARS, "work: {works: [b], torque: 0.2 N·m}"),
    ),
    "drum-too-small": (
        spec("a b", HAND, GEARS, THIN.replace("[b", "[⟪b⟫"), more=CORD),
        spec("a b", HAND, GEARS, THIN.replace("8 mm", "16 mm"), more=CORD),
    ),
    "load-not-held": (
        spec("a b", HAND, GEARS, ROPE.replace("rope:", "⟪rope⟫:", 1), more=CORD),
        spec("a b c", HAND, GEARS, ROPE, "pawl: {ratchets: [b, c], teeth: 12}", more=CORD),
    ),
    "which-shaft": (
        spec("a b", HAND, "x: {meshes: [a, ⟪w⟫], teeth: [18, 54], module: 1 mm}",
             parts=TWICE % ", quantity: 2", joints=ON_BOTH),
        spec("a b", HAND, "x: {meshes: [a, shaft_1], teeth: [18, 54], module: 1 mm}",
             parts=TWICE % ", quantity: 2", joints=ON_BOTH),
    ),
    "turns-nothing": (
        spec("a b c", HAND.replace("[a]", "[c]").replace("hand:", "⟪hand⟫:"), GEARS),
        spec("a b", HAND, GEARS),
    ),
}  # fmt: skip


def names(outcome: Outcome) -> list[str]:
    return [one.code.name for one in outcome.findings]


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_finding_points_at_the_mark(code: str, compile_text: Compile) -> None:
    text, at = marked(CASES[code][0])
    found = [one for one in compile_text(text).findings if one.code.name == code]
    assert found
    span = found[0].span
    assert (span.line, span.column, span.end_column) == at


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_mended_spec_has_not_that_finding(code: str, compile_text: Compile) -> None:
    assert code not in names(compile_text(CASES[code][1]))


def test_a_crank_on_a_shaft_with_a_wheel_is_a_whole_machine(compile_text: Compile) -> None:
    """A grindstone or a fan has one shaft and no drive beside the hand."""
    joints = "joints:\n  on: {glued: [b.top, a.underside]}\n"
    alone, beside = (
        spec("a b", HAND, more=joints),
        spec("a b c d", HAND, GEARS.replace("a, b", "c, d"), more=joints),
    )
    assert "turns-nothing" not in names(compile_text(alone))
    assert "turns-nothing" in names(compile_text(beside))


def test_every_code_has_a_case() -> None:
    assert {one.name for one in CODES} == set(CASES)
