"""Shapes of the wider vocabulary: their volumes by closed formulas, and what they need of stock."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from binder.api import CutSize
from binder.compiler import Outcome
from binder_solid.facts import FormFact
from binder_solid.presence import is_kernel_there
from binder_solid.solid import Solid
from binder_solid.solids import measured

SolidOf = Callable[..., Solid]
FormOf = Callable[..., FormFact]
TURNED = "turned: [{name: a, diameter: 12 mm, length: 10 mm}, {name: b, %s}]"


def cylinder(diameter: float, length: float) -> float:
    """The volume of round bar."""
    return math.pi * diameter**2 / 4 * length


def cap(radius: float, height: float) -> float:
    """The volume of a ball's cap of a height."""
    return math.pi * height**2 * (3 * radius - height) / 3


def section(radius: float, thick: float, turn: float) -> float:
    """The area of a bend in sheet."""
    return turn / 2 * ((radius + thick) ** 2 - radius**2)


_QUARTER = math.pi / 4

CASES = {
    "tube": (
        "tube: {outside: 10 mm, bore: 8 mm, length: 20 mm}",
        cylinder(10, 20) - cylinder(8, 20),
    ),
    "whole ball": ("turned: [{name: ball, ball: 8 mm, length: 8 mm}]", math.pi * 8**3 / 6),
    "ball on a stem": (
        (
            "turned: [{name: stem, diameter: 4 mm, length: 10 mm},"
            " {name: ball, ball: 8 mm, length: 7 mm}]"
        ),
        cylinder(4, 10) + cap(4, 7),
    ),
    "eccentric step": (
        TURNED % "diameter: 6 mm, throw: 3 mm, length: 8 mm",
        cylinder(12, 10) + cylinder(6, 8),
    ),
    "crank": (
        (
            "turned: [{name: end, diameter: 6 mm, length: 10 mm},"
            " {name: arm, web: 8 mm, throw: 10 mm, length: 3 mm},"
            " {name: pin, diameter: 5 mm, throw: 10 mm, length: 6 mm},"
            " {name: arm2, web: 8 mm, throw: 10 mm, length: 3 mm},"
            " {name: tail, diameter: 6 mm, length: 10 mm}]"
        ),
        2 * cylinder(6, 10) + 2 * 3 * (80 + math.pi * 16) + cylinder(5, 6),
    ),
    "square step": (TURNED % "square: 8 mm, length: 5 mm", cylinder(12, 10) + 64 * 5),
    "cone by points": (
        "profile: {points: [{at: 0 mm, diameter: 10 mm}, {at: 12 mm, diameter: 0 mm}]}",
        math.pi * 25 * 12 / 3,
    ),
    "ball by points": (
        "profile: {points: [{at: 0 mm, diameter: 0 mm}, {at: 8 mm, diameter: 0 mm, arc: 4 mm}]}",
        math.pi * 8**3 / 6,
    ),
    "outline with an arc and a corner": (
        # A rectangle with a half round end and one round corner.
        (
            "sheet: {length: 40 mm, width: 20 mm, thickness: 2 mm, points: [{x: 0 mm, y: 0 mm},"
            " {x: 30 mm, y: 0 mm}, {x: 30 mm, y: 20 mm, arc: 10 mm},"
            " {x: 0 mm, y: 20 mm, corner: 4 mm}]}"
        ),
        2 * (30 * 20 + math.pi * 50 - (1 - _QUARTER) * 16),
    ),
    "hollow side": (
        (
            "sheet: {length: 20 mm, width: 20 mm, thickness: 1 mm, points: [{x: 0 mm, y: 0 mm},"
            " {x: 20 mm, y: 0 mm}, {x: 20 mm, y: 20 mm, hollow: 10 mm}, {x: 0 mm, y: 20 mm}]}"
        ),
        400 - math.pi * 50,
    ),
    "angle of sheet": (
        (
            "sheet: {length: 50 mm, width: 10 mm, thickness: 1 mm,"
            " bends: [{at: 20 mm, angle: 90 deg, inside: 2 mm}]}"
        ),
        10 * ((20 - 3) + (30 - 3) + section(2, 1, math.pi / 2)),
    ),
    "bent up and down": (
        (
            "sheet: {length: 60 mm, width: 10 mm, thickness: 1 mm,"
            " bends: [{at: 20 mm, angle: 90 deg, inside: 2 mm},"
            " {at: 40 mm, angle: 45 deg, inside: 3 mm, way: down}]}"
        ),
        10
        * (
            (17 + 17 - 4 * math.tan(math.pi / 8) + 20 - 4 * math.tan(math.pi / 8))
            + section(2, 1, math.pi / 2)
            + section(3, 1, math.pi / 4)
        ),
    ),
    "bent wire": (
        (
            "wire: {diameter: 2 mm, bend: 4 mm,"
            " points: [{x: 0 mm, y: 0 mm}, {x: 20 mm, y: 0 mm}, {x: 20 mm, y: 15 mm}]}"
        ),
        cylinder(2, 15 + 10 + math.pi / 2 * 5),
    ),
    "flat pulley": ("pulley: {groove: flat, diameters: [30 mm], width: 8 mm}", cylinder(30, 8)),
    "stepped pulley with round grooves": (
        # The groove by Pappus: a half disc of the belt below its middle, and a square above.
        (
            "pulley: {groove: round, diameters: [20 mm, 30 mm], width: 6 mm, belt: 3 mm,"
            " hub: 12 mm, hub_length: 5 mm}"
        ),
        cylinder(20, 6)
        + cylinder(30, 6)
        + cylinder(12, 5)
        - sum(
            2
            * math.pi
            * (math.pi * 1.5**2 / 2 * (r - 1.5 - 4 * 1.5 / (3 * math.pi)) + 4.5 * (r - 0.75))
            for r in (10, 15)
        ),
    ),
    "vee pulley": (
        "pulley: {groove: vee, diameters: [40 mm], width: 12 mm, belt: 6 mm, depth: 5 mm}",
        cylinder(40, 12)
        - 2
        * math.pi
        * (
            (3 - 5 * math.tan(math.radians(20))) * 2 * 5 * 17.5
            + 5 * 5 * math.tan(math.radians(20)) * (20 - 5 / 3)
        ),
    ),
    "flywheel with a web": (
        (
            "flywheel: {outside: 60 mm, rim: 6 mm, width: 10 mm, hub: 14 mm, hub_length: 16 mm,"
            " web: 4 mm}"
        ),
        cylinder(60, 10) - cylinder(48, 10) + cylinder(14, 16) + cylinder(48, 4) - cylinder(14, 4),
    ),
    "spoked flywheel": (
        # Spokes end in round faces: measured from a flat end at hub and rim, to 1 in 1000.
        (
            "flywheel: {outside: 60 mm, rim: 6 mm, width: 8 mm, hub: 14 mm, hub_length: 8 mm,"
            " spokes: 5, spoke: 3 mm}"
        ),
        cylinder(60, 8) - cylinder(48, 8) + cylinder(14, 8) + 5 * cylinder(3, 17),
    ),
    "ratchet": (
        # Twelve triangles from the middle, root radius 5, point radius 7, half a turn's share.
        "ratchet: {teeth: 12, outside: 14 mm, depth: 2 mm, width: 2 mm}",
        2 * 12 * 5 * 7 * math.sin(math.radians(30)) / 2,
    ),
    "rack": (
        # As much tooth as space at the pitch line: solid up to 1/8 m under it by ISO 53, A.
        "rack: {module: 1 mm, teeth: 10, width: 5 mm, height: 8 mm}",
        5 * math.pi * 10 * (8 - 1 - 1.25)
        + 5 * 10 * 2.25 * (math.pi / 2 + (1.25 - 1) * math.tan(math.radians(20))),
    ),
}
LOOSE = {"spoked flywheel": 1e-3}


@pytest.mark.parametrize("name", sorted(CASES))
def test_the_volume_of_a_shape(name: str, solid_of: SolidOf) -> None:
    shape, wanted = CASES[name]
    solid = solid_of(shape, allowed=("section-not-sold",))
    assert solid.pieces == 1
    assert solid.volume_mm3 == pytest.approx(wanted, rel=LOOSE.get(name, 1e-7))


NEEDED = {
    "tube: {outside: 10 mm, bore: 8 mm, length: 20 mm}": ("tube", (10, 1), 20),
    "gear: {module: 1 mm, teeth: 20, width: 5 mm, hub: 12 mm, hub_length: 6 mm}": (
        # Turned over all from the next bar up; common practice, no source.
        "round bar",
        (25,),
        11,
    ),
    "gear: {dp: 25.4, teeth: 20, width: 5 mm}": ("round bar", (25,), 5),
    "sheet: {length: 50 mm, width: 10 mm, thickness: 1 mm,"
    " bends: [{at: 20 mm, angle: 90 deg, inside: 2 mm}]}": (
        "sheet",
        (1,),
        # 0.64 T + 1.57 R for a right angle in soft steel: Machinery's Handbook, from memory.
        44 + 0.64 + math.pi / 2 * 2,
    ),
    "wire: {diameter: 2 mm, bend: 4 mm,"
    " points: [{x: 0 mm, y: 0 mm}, {x: 20 mm, y: 0 mm}, {x: 20 mm, y: 15 mm}]}": (
        "wire",
        (2,),
        25 + math.pi / 2 * 5,
    ),
    "spring: {kind: torsion, wire: 1 mm, mean: 10 mm, coils: 5, leg: 20 mm}": (
        "wire",
        (1,),
        5 * math.hypot(10 * math.pi, 1) + 40,
    ),
}


@pytest.mark.parametrize("shape", sorted(NEEDED))
def test_the_stock_that_a_shape_needs(shape: str, compile_text: Callable[..., Outcome]) -> None:
    text = (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
        f"  part:\n    material: mild steel\n    {shape}\n"
    )
    outcome = compile_text(text)
    assert outcome.design is not None
    cut = outcome.design.facts.about(CutSize, "part")
    assert cut is not None
    form, section_mm, length = NEEDED[shape]
    assert cut.form == form
    assert tuple(float(size) for size in cut.section) == pytest.approx(section_mm)
    assert float(cut.length) == pytest.approx(length, abs=1e-5)


MADE = {
    "gear": "gear: {module: 1 mm, teeth: 20, width: 5 mm, hub: 12 mm, hub_length: 6 mm}",
    "internal": "gear: {module: 1 mm, teeth: 40, width: 5 mm, internal: true, outside: 50 mm}",
    "sprocket": "sprocket: {pitch: 6 mm, roller: 4 mm, teeth: 12, width: 2.8 mm}",
    "handwheel": "handwheel: {outside: 50 mm, rim: 6 mm, hub: 12 mm, hub_length: 14 mm,"
    " spokes: 3, spoke: 4 mm}",
    "compression": "spring: {kind: compression, wire: 1 mm, outside: 10 mm, coils: 6, free: 25 mm}",
    "left hand": "spring: {kind: torsion, wire: 1 mm, mean: 10 mm, coils: 4, hand: left}",
    "extension": "spring: {kind: extension, wire: 0.8 mm, outside: 8 mm, coils: 10}",
}


@pytest.mark.parametrize("name", sorted(MADE))
def test_a_shape_is_one_solid_of_the_size_it_says(name: str, form_of: FormOf) -> None:
    if not is_kernel_there():
        pytest.skip("the kernel is not installed")
    form = form_of(MADE[name], allowed=("section-not-sold",))
    solid = measured(form.form)
    assert solid.pieces == 1
    assert solid.volume_mm3 > 0
    found = [most - least for least, most in zip(*solid.envelope, strict=True)]
    # Teeth and spokes need not stand square to the axes, and free-form faces are boxed loosely.
    assert found == pytest.approx(list(form.size), rel=0.04)


def test_the_flat_length_has_its_working(compile_text: Callable[..., Outcome]) -> None:
    text = (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
        "  part:\n    material: mild steel\n    sheet: {length: 50 mm, width: 10 mm,"
        " thickness: 1 mm, bends: [{at: 20 mm, angle: 90 deg, inside: 2 mm}]}\n"
    )
    design = compile_text(text).design
    assert design is not None
    # 17 + 27 + π/2 × 2 + 0.64, as the readme says.
    assert design.workings["part.developed"].result == "47.782 mm"


@pytest.mark.parametrize(
    ("shape", "said"),
    [
        # A millimetre to plane or mill off each face: common practice, no source.
        ("block: {length: 30 mm, width: 14 mm, height: 26 mm}", "at least 16 mm × 28 mm flat bar"),
        ("board: {length: 120 mm, width: 12 mm, thickness: 9 mm}", "at least 14 mm × 11 mm board"),
    ],
)
def test_a_section_that_is_chosen_has_metal_for_its_faces(
    shape: str, said: str, compile_text: Callable[..., Outcome]
) -> None:
    material = "oak" if "board" in shape else "mild steel"
    text = (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"
        f"parts:\n  part: {{material: {material}, {shape}}}\n"
    )
    design = compile_text(text).design
    assert design is not None
    cut = design.facts.about(CutSize, "part")
    assert cut is not None
    assert cut.section_text == said
