"""Features of blocks and plates against volumes by elementary geometry."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from binder_solid.facts import FormFact
from binder_solid.solid import Solid

SolidOf = Callable[..., Solid]
FormOf = Callable[..., FormFact]
BLOCK = "block: {length: 40 mm, width: 30 mm, height: 20 mm}"
PLATE = "plate: {length: 40 mm, width: 30 mm, thickness: 3 mm}"
WHOLE = 40 * 30 * 20
_CORNER = 1 - math.pi / 4
# Where two quarter rounds of one radius meet in a corner: 5/3 - pi/2 of its cube.
_MEET = 5 / 3 - math.pi / 2


def _tee(length: float) -> float:
    return length * (6 * 8 + 10 * 4)


def _dovetail(narrow: float, depth: float) -> float:
    return depth * (narrow + depth / math.tan(math.radians(60)))


CASES = {
    # A segment of the cutter's disc, 3.8 deep of 13: 3 wide. Plane geometry.
    "seat of a Woodruff key": (
        "key: {keywayed: 3 mm, on: top, depth: 3.8 mm, cutter: 13 mm}",
        3 * (6.5**2 * math.acos(2.7 / 6.5) - 2.7 * math.sqrt(6.5**2 - 2.7**2)),
    ),
    "slot across": ("slot: {slotted: 6 mm, on: top, depth: 4 mm, runs: across}", 6 * 4 * 30),
    "closed slot": (
        "slot: {slotted: 6 mm, on: top, depth: 4 mm, length: 20 mm}",
        4 * (14 * 6 + math.pi * 9),
    ),
    "slot open at the left": (
        "slot: {slotted: 6 mm, on: top, depth: 4 mm, length: 20 mm, at: 10 mm from left}",
        4 * (17 * 6 + math.pi * 9 / 2),
    ),
    "obround hole": (
        "slot: {slotted: 6 mm, on: top, depth: through, length: 20 mm}",
        20 * (14 * 6 + math.pi * 9),
    ),
    "T-slot": (
        "slot: {t_slotted: 6 mm, on: top, depth: 12 mm, head: 10 mm, head_depth: 4 mm}",
        _tee(40),
    ),
    "dovetailed slot": (
        "slot: {dovetailed: 12 mm, on: top, depth: 5 mm, inside: true}",
        40 * _dovetail(12, 5),
    ),
    "dovetailed tail": (
        "tail: {dovetailed: 12 mm, on: top, depth: 5 mm}",
        40 * (5 * 30 - _dovetail(12, 5)),
    ),
    "pocket": (
        "pocket: {pocketed: 20 mm, width: 12 mm, depth: 5 mm, corner: 3 mm, on: top}",
        5 * (20 * 12 - 4 * _CORNER * 9),
    ),
    "pocket with round ends": (
        "pocket: {pocketed: 12 mm, width: 20 mm, depth: 5 mm, corner: 6 mm, on: top}",
        5 * (8 * 12 + math.pi * 36),
    ),
    "step": ("step: {stepped: 10 mm, on: top, side: right, depth: 4 mm}", 10 * 4 * 30),
    "bevel": (
        "bevel: {bevelled: 6 mm, on: top, side: front, angle: 30 deg}",
        6 * 6 * math.tan(math.radians(30)) / 2 * 40,
    ),
    "round corners": ("corners: {rounded: 5 mm, on: corners}", 4 * _CORNER * 25 * 20),
    "top edges chamfered": (
        "edges: {chamfered: 2 mm, on: edges}",
        # Prisms along four edges; two meet in each corner in a pyramid of a third of its cube.
        (2 * (40 + 30) * 2 * 2 / 2) - 4 * 2**3 / 3,
    ),
    "top edges rounded": (
        "edges: {rounded: 2 mm, on: top}",
        _CORNER * 4 * 2 * (40 + 30) - 4 * _MEET * 8,
    ),
    "countersink of 82 degrees": (
        "sink: {countersunk: 8 mm, on: top, angle: 82 deg}",
        math.pi * 16 * 4 / math.tan(math.radians(41)) / 3,
    ),
    "leaning hole": (
        # Between two parallel faces it is as long as the slope: area times height over cos.
        "oil: {drilled: 3 mm, on: top, depth: through, lean: 20 deg}",
        math.pi * 2.25 * 20 / math.cos(math.radians(20)),
    ),
}


@pytest.mark.parametrize("name", sorted(CASES))
def test_what_is_cut_away(name: str, solid_of: SolidOf) -> None:
    feature, taken = CASES[name]
    solid = solid_of(BLOCK, feature, allowed=("cutter-cannot-reach",))
    assert solid.volume_mm3 == pytest.approx(WHOLE - taken, rel=1e-9)


def test_all_twelve_edges(solid_of: SolidOf) -> None:
    """A rounded box by Steiner's formula: the inner box, its faces, edges and corners."""
    a, b, c, r = 36, 26, 16, 2
    faces, edges = 2 * (a * b + b * c + a * c) * r, math.pi * r * r * (a + b + c)
    solid = solid_of(BLOCK, "edges: {rounded: 2 mm, on: all}")
    # Three quarter cylinders meet in a Steinmetz corner, a little larger than a ball's eighth:
    # (8 * (2 - sqrt 2) r^3 in all against 4/3 pi r^3).
    corners = 8 * (2 - math.sqrt(2)) * r**3
    assert solid.volume_mm3 == pytest.approx(a * b * c + faces + edges + corners, rel=1e-9)


def test_a_boss_is_added_and_bored(solid_of: SolidOf) -> None:
    solid = solid_of(
        BLOCK,
        "boss: {bossed: 12 mm, height: 5 mm, on: top}",
        "bore: {reamed: 6 mm, on: boss, depth: through}",
    )
    added = math.pi * 36 * 5 - math.pi * 9 * 25
    assert solid.volume_mm3 == pytest.approx(WHOLE + added, rel=1e-9)


def test_the_edges_of_a_plate_are_its_outline(solid_of: SolidOf) -> None:
    solid = solid_of(PLATE, "edges: {rounded: 5 mm, on: edges}")
    assert solid.volume_mm3 == pytest.approx(3 * (40 * 30 - 4 * _CORNER * 25), rel=1e-9)


def test_a_rounded_end_of_a_plate(solid_of: SolidOf) -> None:
    solid = solid_of(PLATE, "end: {rounded: 15 mm, on: right}")
    assert solid.volume_mm3 == pytest.approx(3 * (25 * 30 + math.pi * 225 / 2), rel=1e-9)


def test_holes_in_both_ends(solid_of: SolidOf) -> None:
    solid = solid_of(BLOCK, "holes: {bored: 6 mm, on: ends, depth: 5 mm}")
    assert solid.volume_mm3 == pytest.approx(WHOLE - 2 * math.pi * 9 * 5, rel=1e-9)


def test_the_note_tells_all_sizes(form_of: FormOf) -> None:
    form = form_of(
        BLOCK, "pocket: {pocketed: 20 mm, width: 12 mm, depth: 5 mm, corner: 3 mm, on: top}"
    )
    (one,) = form.located
    assert one.note == "pocket 20 mm × 12 mm, 5 mm deep, corners R3 mm"
    assert one.ids == ("part.pocket.pocketed",)
    assert set(one.also) == {"part.pocket.width", "part.pocket.depth", "part.pocket.corner"}
