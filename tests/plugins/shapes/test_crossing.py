"""Cuts from several faces of a part: what metal they leave between them, or that they meet.

Places are plane geometry, worked here; how much metal must stay is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from tests.plugins.shapes.test_findings import BLOCK, part

Compile = Callable[..., Outcome]
NAMES = ("wall-too-thin", "features-overlap")
END = "end: {drilled: 4 mm, on: left, depth: 10 mm, at: middle}"
TAPPED = "end: {tapped: M4, on: left, depth: 10 mm, at: middle}"


def drilled(place: str) -> str:
    """A hole of 3 down through the block."""
    return f'side: {{drilled: 3 mm, on: top, depth: through, at: "{place}"}}'


def slot(place: str, depth: str = "through", name: str = "slot", runs: str = "") -> str:
    """A slot of 4 by 10 in the top."""
    words = f"slotted: 4 mm, on: top, length: 10 mm, depth: {depth}{runs}"
    return f'{name}: {{{words}, at: "{place}"}}'


def found(outcome: Outcome) -> list[str]:
    """The codes of what is found of metal between cuts; each tells a way out."""
    near = [one for one in outcome.findings if one.code.name in NAMES]
    assert all(one.help for one in near)
    return [one.code.name for one in near]


THIN, INTO = NAMES
X = "6 mm from left"


@pytest.mark.parametrize(
    ("one", "other", "code"),
    [
        # The hole ends 10 deep; 4 from middle to middle leaves 0.5 beside two of 4 and 3.
        (END, drilled(f"{X}, 19 mm from front"), THIN),
        (END, drilled(f"{X}, 20 mm from front"), ""),
        (END, drilled(f"{X}, 18 mm from front"), INTO),
        # Drilled into the other: an oil way.
        (END, drilled(f"{X}, 15.5 mm from front"), ""),
        # The floor is 10 in, the point 1.2 farther: 11.2 and half a millimetre is 11.7.
        (END, drilled("13.1 mm from left"), THIN),
        (END, drilled("13.3 mm from left"), ""),
        # A slot of 4 along the block, and the side of the hole 17 from the front.
        (END, slot(f"{X}, 20.5 mm from front"), THIN),
        (END, slot(f"{X}, 21.1 mm from front"), ""),
        (END, slot(f"{X}, 18.5 mm from front"), INTO),
        (END, slot(f"{X}, 15 mm from front"), ""),
        # Over the hole, whose top is 12 up: the floor of the slot 13.5 up, or 14.1.
        (END, slot("8 mm from left, 15 mm from front", "6.5 mm"), THIN),
        (END, slot("8 mm from left, 15 mm from front", "5.9 mm"), ""),
        # Past its end: slot from 12, point to 11.2; a slot from 11 is too near it.
        (END, slot("17 mm from left, 15 mm from front"), ""),
        (END, slot("16 mm from left, 15 mm from front"), THIN),
        (TAPPED, slot("15.5 mm from left, 15 mm from front"), THIN),
        # The drill of a blind M4 goes on four turns of 0.7, to 12.8, and its point to 13.8.
        (TAPPED, slot("19 mm from left, 15 mm from front"), THIN),
        (TAPPED, slot("19.4 mm from left, 15 mm from front"), ""),
        # Two slots with a web of 1 between them, of 2, and one that runs into the other.
        (slot("middle"), slot("20 mm from left, 20 mm from front", name="next"), THIN),
        (slot("middle"), slot("20 mm from left, 21 mm from front", name="next"), ""),
        (slot("middle"), slot("middle", name="next", runs=", runs: across"), ""),
    ],
)
def test_metal_is_left_between_cuts_of_two_faces(
    compile_text: Compile, one: str, other: str, code: str
) -> None:
    """A block of 40 × 30 × 20; half a hole of 4 is 2, of 3 it is 1.5, and 2 beside a slot of 4."""
    assert found(compile_text(part(BLOCK, one, other))) == [code][: bool(code)]


def test_it_is_told_how_much_is_left_and_how_far_to_move(compile_text: Compile) -> None:
    """The side of the slot is 18.5 from the front, that of the hole 17: 1.5 is left, 2 wanted."""
    (one,) = compile_text(part(BLOCK, END, slot(f"{X}, 20.5 mm from front"))).findings
    assert "1.50 mm of metal is left between 'end' and 'slot' on 'part'" in one.message
    assert "0.50 mm away" in (one.help or "")


JOINTS = (
    "  lid: {{material: brass, stock: 4 mm sheet, plate: {{length: 20 mm, width: 20 mm, thickness:"
    " 4 mm}}}}\n"
    "  end: {{material: brass, stock: 4 mm sheet, plate: {{length: 20 mm, width: 12 mm, thickness:"
    " 4 mm}}}}\n"
    "joints:\n"
    "  lid on part: {{screwed: [lid.underside, part.top], fastener: M4 × 10 socket cap screw,"
    ' places: ["{x} mm from left, 15 mm from front"]}}\n'
    "  end on part: {{screwed: [end.underside, part.left], fastener: M4 × 12 socket cap screw,"
    ' places: ["15 mm from front, 14 mm from underside"]}}\n'
)


@pytest.mark.parametrize(("x", "is_found"), [(5, True), (20, False)])
def test_screws_of_two_joints_do_not_meet_in_one_part(
    compile_text: Compile, x: int, is_found: bool
) -> None:
    """One comes down 5 from the end, the other in from it, 6 under the top: middle in middle."""
    text = part(BLOCK).rstrip("\n") + "\n" + JOINTS.format(x=x)
    outcome = compile_text(text)
    names = {*NAMES, "cross-hole-meets-thread"}
    near = [one for one in outcome.findings if one.code.name in names]
    assert [bool(near), all("'part'" in one.message for one in near)] == [is_found, True], [
        one.message for one in outcome.findings
    ]


def test_the_keeper_of_a_bore_goes_through_its_side(compile_text: Compile) -> None:
    """A pin of 2 half in the groove of a tip of 6: its hole cuts the side of the bore by half."""
    bore = "socket: {reamed: 6 mm, on: left, depth: 10 mm, at: middle}"
    pin = (
        'keeper: {drilled: 2 mm, on: top, depth: through, at: "5 mm from left, 18.2 mm from front"}'
    )
    text = part(BLOCK, bore, pin)
    assert found(compile_text(text)) == ["features-overlap"]
    joined = text.rstrip("\n") + (
        "\n  tip: {material: silver steel, turned: [{name: end, diameter: 6 mm, length: 20 mm}]}\n"
        "bought:\n  pin: {what: keeper of 2 mm wire}\n"
        "joints:\n  tip in part: {swivels: [part.socket, tip.end], duty: turns by hand,"
        " held_by: pin}\n"
    )
    assert found(compile_text(joined)) == []


@pytest.mark.parametrize(("place", "is_thin"), [("7 mm", True), ("10 mm", False)])
def test_a_screw_hole_of_a_part_made_twice_keeps_its_metal_to_the_end(
    compile_text: Compile, place: str, *, is_thin: bool
) -> None:
    """Two holes 10 mm apart about 7 mm from the end: 2 - 3.4 / 2 = 0.3 mm of metal is left."""
    text = (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
        "  block: {material: aluminium, block: {length: 20 mm, width: 16 mm, height: 20 mm}}\n"
        "  side: {material: mild steel, stock: 20 mm x 3 mm flat bar, quantity: 2, cut: 64 mm}\n"
        "joints:\n  sides: {screwed: [side.top, block.ends], fastener: M3 cheese head screw,"
        f' pattern: "2 off, 10 mm apart", places: [{place} from left]}}\n'
    )
    found = [one for one in compile_text(text).findings if one.code.name == "wall-too-thin"]
    assert bool(found) == is_thin
    assert all("0.30 mm of metal" in one.message for one in found)
