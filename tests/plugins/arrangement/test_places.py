"""Where parts stand, reckoned by hand beside each case: sums of lengths and centres.

Common practice, no source; the centre distance of the mesh is m (z1 + z2) / 2.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import Design
from binder.compiler import Outcome
from binder_plugins.arrangement.exploding import explode, units_of
from binder_solid.placed import MotionFact, PlacedFact
from binder_solid.space import placed

Compile = Callable[..., Outcome]
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
BASE = "  base: {material: oak, board: {length: 100 mm, width: 60 mm, thickness: 10 mm}}\n"
BLOCK = (
    "  block: {material: brass, block: {length: 20 mm, width: 12 mm, height: 30 mm}, features:"
    " {bore: {reamed: 6 mm, on: front, depth: through, at: 22 mm from underside}}}\n"
)
PEG = (
    "  peg:\n    material: mild steel\n    turned:\n"
    "      - {name: pin, diameter: 4 mm, length: 8 mm}\n"
    "      - {name: head, diameter: 9 mm, length: 5 mm}\n"
)
SOCKET = (
    "  foot: {material: brass, block: {length: 30 mm, width: 30 mm, height: 20 mm}, features:"
    " {hole: {reamed: 4 mm, on: top, depth: 10 mm, at: '10 mm from left, 12 mm from front'}}}\n"
)


def box(design: Design, name: str) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """The least and most corner of a copy in the model."""
    fact = design.facts.about(PlacedFact, name)
    assert fact is not None, [one.subject for one in design.facts.all(PlacedFact)]
    (a, b, c), (d, e, f) = fact.corners
    points = [placed((x, y, z), fact.frame) for x in (a, d) for y in (b, e) for z in (c, f)]
    return (
        tuple(round(min(p[n] for p in points), 6) for n in range(3)),
        tuple(round(max(p[n] for p in points), 6) for n in range(3)),
    )


def stood(compile_text: Compile, text: str) -> Design:
    outcome = compile_text(text)
    assert outcome.design is not None, outcome.findings
    return outcome.design


def codes_of(outcome: Outcome) -> list[str]:
    return [one.code.name for one in outcome.findings]


def test_a_shoulder_stands_on_the_mouth_of_its_hole(compile_text: Compile) -> None:
    text = HEAD + SOCKET + PEG + "joints:\n  peg in foot: {swivels: [foot.hole, peg.pin]}\n"
    design = stood(compile_text, text)
    # The pin goes 8 mm down from the top at 20; the head is 5 mm high and 9 mm across.
    assert box(design, "peg") == ((5.5, 7.5, 12.0), (14.5, 16.5, 25.0))


def test_a_pin_longer_than_its_hole_stands_on_the_bottom(compile_text: Compile) -> None:
    text = HEAD + SOCKET + PEG.replace("length: 8 mm", "length: 14 mm")
    design = stood(compile_text, text + "joints:\n  a: {swivels: [foot.hole, peg.pin]}\n")
    # The bottom of the hole is 10 mm up; pin and head are 19 mm long.
    assert box(design, "peg")[0][2] == 10.0
    assert box(design, "peg")[1][2] == 29.0


def test_a_stack_of_faces_and_said_places(compile_text: Compile) -> None:
    text = (
        f"{HEAD}{BASE}{BLOCK}"
        "joints:\n  block on base: {glued: [block.underside, base.top]}\n"
        "stands: base\npositions:\n  block: {at: '15 mm from base.left, 8 mm from base.front'}\n"
    )
    assert box(stood(compile_text, text), "block") == ((15.0, 8.0, 10.0), (35.0, 20.0, 40.0))


@pytest.mark.parametrize(
    ("words", "axis", "least"),
    [
        ("7 mm above base.top", 2, 17.0),
        ("7 mm below base.underside", 2, -37.0),
        ("7 mm right of base.right", 0, 107.0),
        ("7 mm left of base.left", 0, -27.0),
        ("7 mm in front of base.front", 1, -19.0),
        ("7 mm behind base", 1, 37.0),
        ("middle of base", 0, 40.0),
        ("in the middle of the base", 1, 24.0),
    ],
)
def test_the_words_of_a_place(compile_text: Compile, words: str, axis: int, least: float) -> None:
    text = f"{HEAD}{BASE}{BLOCK}stands: base\npositions:\n  block: {{at: {words}}}\n"
    assert box(stood(compile_text, text), "block")[0][axis] == least


def test_a_place_of_the_part_itself_and_a_turn(compile_text: Compile) -> None:
    text = (
        f"{HEAD}{BASE}{BLOCK}stands: base\npositions:\n"
        "  block: {at: '50 mm above base.top', by: bore, turned: 90 deg}\n"
    )
    low, high = box(stood(compile_text, text), "block")
    # The bore is 22 mm up the block; turned a quarter its 20 mm lie along y.
    assert (low[2], high[2]) == (38.0, 68.0)
    assert (high[0] - low[0], high[1] - low[1]) == (12.0, 20.0)


def test_lying_on_a_face_the_rest_is_the_middle(compile_text: Compile) -> None:
    text = (
        f"{HEAD}{BASE}"
        "  plate: {material: brass, plate: {length: 30 mm, width: 8 mm, thickness: 1 mm}}\n"
        "stands: base\npositions:\n  plate: {on: base.front, at: 5 mm from left}\n"
    )
    assert box(stood(compile_text, text), "plate") == ((5.0, -1.0, 1.0), (35.0, 0.0, 9.0))


SHAFT = f"""\
{HEAD}{BASE}
  post: {{material: brass, quantity: 2, block: {{length: 20 mm, width: 10 mm, height: 30 mm}},
    features: {{bore: {{reamed: 6 mm, on: front, depth: through, at: 22 mm from underside}}}}}}
  axle:
    material: silver steel
    stock: drawn rod
    turned: [{{name: journal, diameter: 6 mm, length: 60 mm}}]
  wheel: {{material: brass, disc: {{diameter: 20 mm, thickness: 8 mm}},
    features: {{bore: {{reamed: 6 mm, depth: through}}}}}}
  collar: {{material: brass, quantity: 2, disc: {{diameter: 12 mm, thickness: 4 mm}},
    features: {{bore: {{reamed: 6 mm, depth: through}}}}}}
joints:
  posts on base: {{glued: [post.underside, base.top]}}
  axle in posts: {{runs_in: [axle.journal, post.bore]}}
  wheel on axle: {{retained: [wheel.bore, axle.journal]}}
  collars on axle: {{retained: [collar.bore, axle.journal]}}
shafts:
  axle: {{along: [collar, post.bore, wheel, post.bore, collar], apart: 30 mm}}
stands: base
positions:
  post:
    copies:
      - {{at: "40 mm from base.left, 5 mm from base.front"}}
      - {{at: "40 mm from base.left, 45 mm from base.front"}}
"""


def test_the_row_of_a_shaft(compile_text: Compile) -> None:
    design = stood(compile_text, SHAFT)
    # Posts from y 5 to 15 and 45 to 55; the axle's middle at 30; wheel between; collars outside,
    # the middle of the float of 0.1 to 0.2 mm (common practice, no source) shared by both.
    assert box(design, "axle")[0] == (47.0, 0.0, 29.0)
    assert box(design, "axle")[1] == (53.0, 60.0, 35.0)
    assert (box(design, "collar 1")[0][1], box(design, "collar 1")[1][1]) == pytest.approx(
        (0.925, 4.925)
    )
    assert (box(design, "collar 2")[0][1], box(design, "collar 2")[1][1]) == pytest.approx(
        (55.075, 59.075)
    )
    assert (box(design, "wheel")[0][1], box(design, "wheel")[1][1]) == (26.0, 34.0)


def test_what_stops_a_shaft_at_one_bearing_leaves_the_float(compile_text: Compile) -> None:
    """The stops stand as far apart as the sheet of the shaft says: 10 mm of post and 0.15."""
    text = SHAFT.replace("along: [collar, post.bore, wheel,", "along: [post.bore, wheel,")
    design = stood(compile_text, text)
    wheel, collar = box(design, "wheel"), box(design, "collar 1")
    # The row runs from the front to the back: the collar behind the post that ends at 55.
    assert abs(collar[0][1] - wheel[1][1]) == pytest.approx(10.15)


def test_what_turns_has_its_axis(compile_text: Compile) -> None:
    design = stood(compile_text, SHAFT)
    (one, _) = (m for m in design.facts.all(MotionFact) if m.joint == "axle in posts")
    assert one.motion == "turn"
    assert one.way == (0.0, -1.0, 0.0)
    assert (one.origin[0], one.origin[2]) == (50.0, 32.0)


def test_a_pattern_lines_up(compile_text: Compile) -> None:
    text = (
        f"{HEAD}"
        "  plate: {material: brass, plate: {length: 60 mm, width: 40 mm, thickness: 4 mm}}\n"
        "  lug: {material: brass, block: {length: 24 mm, width: 10 mm, height: 12 mm}}\n"
        "joints:\n  lug on plate: {screwed: [plate.top, lug.underside], fastener: M3 cap screw,"
        " pattern: '2 off, 14 mm apart', places: ['20 mm from left, 9 mm from front'],"
        " head: counterbored}\nstands: plate\n"
    )
    # Both patterns have their middle at 20, 9; the lug is 24 by 10.
    assert box(stood(compile_text, text), "lug") == ((8.0, 4.0, 4.0), (32.0, 14.0, 16.0))


def test_each_of_several_pegs_has_a_hole_of_its_own(compile_text: Compile) -> None:
    text = (
        f"{HEAD}"
        "  foot: {material: brass, block: {length: 60 mm, width: 30 mm, height: 20 mm}, features:"
        " {holes: {reamed: 4 mm, on: top, depth: 10 mm, off: 2,"
        " pattern: 'in a row, 40 mm apart'}}}\n"
        + PEG.replace("    turned:", "    quantity: 2\n    turned:")
        + "joints:\n  pegs in foot: {pressed: [peg.pin, foot.holes]}\nstands: foot\n"
    )
    design = stood(compile_text, text)
    # The row has its middle on that of the block, at 30 mm: holes at 10 and 50, heads 9 across.
    assert box(design, "peg 1")[0] == (5.5, 10.5, 12.0)
    assert box(design, "peg 2")[0] == (45.5, 10.5, 12.0)


def test_every_second_handed_copy_is_the_opposite_hand(compile_text: Compile) -> None:
    text = (
        f"{HEAD}"
        "  block: {material: brass, block: {length: 20 mm, width: 30 mm, height: 20 mm}}\n"
        "  cheek: {material: brass, quantity: 2, handed: true,"
        " plate: {length: 40 mm, width: 20 mm, thickness: 3 mm},"
        " features: {pin: {drilled: 3 mm, depth: through,"
        " at: '30 mm from left, 4 mm from back'}}}\n"
        "joints:\n  cheeks on block: {screwed: [cheek.top, block.ends], fastener: M3 cap screw,"
        " pattern: '2 off, 10 mm apart', places: [10 mm from left]}\nstands: block\n"
    )
    design = stood(compile_text, text)
    left, right = (design.facts.about(PlacedFact, f"cheek {n}") for n in (1, 2))
    assert left is not None
    assert right is not None
    assert (left.is_opposite, right.is_opposite) == (False, True)
    assert (box(design, "cheek 1")[0][0], box(design, "cheek 1")[1][0]) == (-3.0, 0.0)
    assert (box(design, "cheek 2")[0][0], box(design, "cheek 2")[1][0]) == (20.0, 23.0)
    # The pin holes, 4 mm from the back of the one and of the other hand, face one another.
    one = placed((30.0, 16.0, 3.0), left.frame)
    other = placed((30.0, 4.0, 3.0), right.frame)
    assert one[1:] == pytest.approx(other[1:])


def test_the_same_spec_gives_the_same_places(compile_text: Compile) -> None:
    first, again = (stood(compile_text, SHAFT).facts.all(PlacedFact) for _ in range(2))
    assert first == again


CUP = (
    "  screw: {material: mild steel, stock: 10 mm round bar, turned: [{name: pin, diameter: 6 mm,"
    " length: 6.1 mm}, {name: shank, diameter: 10 mm, length: 30 mm}]}\n"
    "  saddle: {material: brass, stock: 20 mm round bar, turned: [{name: rim, diameter: 20 mm,"
    " length: 11 mm}], features: {socket: {reamed: 6 mm, on: left, depth: through}, cup: {recessed:"
    " 11 mm, on: right, depth: 5 mm}}}\n"
    "  keeper: {material: brass, stock: 10 mm round bar, turned: [{name: plate, diameter: 9 mm,"
    " length: 1.5 mm}]}\n"
    "joints:\n"
    "  saddle on screw: {swivels: [saddle.socket, screw.pin]}\n"
    "  keeper on pin: {screwed: [keeper.underside, screw.pin], fastener: M3 socket cap screw}\n"
    "assemblies: {head: {of: [screw, saddle, keeper]}}\n"
)


def test_what_is_screwed_to_a_pin_lies_on_its_end_and_comes_off_there(
    compile_text: Compile,
) -> None:
    """By hand, along the axis: the pin is 6.1 mm long from the saddle's underside, and the keeper
    lies on its end, 0.1 mm over the floor of the cup."""
    design = stood(compile_text, HEAD + CUP)
    keeper, top = box(design, "keeper")
    axis = next(n for n in range(3) if abs(top[n] - keeper[n] - 1.5) < 1e-6)
    facts = {one.subject: one for one in design.facts.all(PlacedFact)}
    out = facts["keeper"].way[axis]
    low, high = box(design, "saddle")
    underside = low[axis] if out > 0 else high[axis]
    near = keeper[axis] if out > 0 else top[axis]
    assert (near - underside) * out == pytest.approx(6.1)
    units = units_of(design.assemblies["head"], design, list(facts.values()))
    explode(units, design)
    moved = {one.name: one.moved[axis] * out for one in units}
    assert moved["keeper"] > moved["saddle"] > moved["screw"]
