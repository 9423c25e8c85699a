"""Features of turned work against volumes by elementary geometry."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from binder_solid.facts import FormFact
from binder_solid.solid import Solid

SolidOf = Callable[..., Solid]
FormOf = Callable[..., FormFact]
BAR = "turned: [{name: rod, diameter: 20 mm, length: 30 mm}]"
WHOLE = math.pi * 100 * 30


def segment(radius: float, height: float) -> float:
    """The area of a circle above a chord, so far from the middle."""
    return radius**2 * math.acos(height / radius) - height * math.sqrt(radius**2 - height**2)


def pappus(area: float, radius: float) -> float:
    """The volume of a section turned once about the axis, by Pappus's rule."""
    return 2 * math.pi * radius * area


_ROUND = 1 - math.pi / 4
# How far the middle of a corner outside a quarter round lies from both of its sides, in radii.
_MIDDLE = (1 / 2 - (1 - 4 / (3 * math.pi)) * math.pi / 4) / _ROUND

CASES = {
    "one flat": ("flat: {flatted: 18 mm, on: rod}", 30 * segment(10, 8)),
    "two flats": ("flats: {flatted: 16 mm, on: rod, off: 2}", 60 * segment(10, 8)),
    "square": ("square: {flatted: 16 mm, on: rod, off: 4}", 120 * segment(10, 8)),
    "hexagon at the end": (
        "nut: {flatted: 18 mm, on: rod, off: 6, length: 8 mm, at: end}",
        8 * 6 * segment(10, 9),
    ),
    "taper bore": (
        "bore: {bored: 12 mm, narrows_to: 9 mm, on: right, depth: through}",
        math.pi * 30 / 3 * (36 + 6 * 4.5 + 20.25),
    ),
    "groove": ("ring: {grooved: 3 mm, on: rod, depth: 2 mm}", math.pi * (100 - 64) * 3),
    "grooves at each end": (
        "clips: {grooved: 2 mm, on: rod, depth: 1 mm, each_end: true}",
        2 * math.pi * (100 - 81) * 2,
    ),
    "chamfered end": (
        "edge: {chamfered: 2 mm, on: right}",
        pappus(2 * 2 / 2, 10 - 2 / 3),
    ),
    "both ends chamfered": ("edge: {chamfered: 2 mm, on: ends}", 2 * pappus(2, 10 - 2 / 3)),
    "rounded end": ("edge: {rounded: 3 mm, on: top}", pappus(9 * _ROUND, 10 - 3 * _MIDDLE)),
    "dome": ("dome: {rounded: 10 mm, on: top}", math.pi * 1000 - 2 / 3 * math.pi * 1000),
    "screwdriver slot": (
        "slot: {slotted: 2 mm, on: right, depth: 3 mm}",
        3 * 2 * (math.sqrt(99) + 100 * math.asin(0.1)),
    ),
    "cross hole": (
        # The metal of a cylinder that a much thinner hole takes, by series in r/R to 1e-7.
        "hole: {drilled: 2 mm, across: rod, depth: through, clock: 30 deg}",
        math.pi * 2 * 10 * (1 - 1 / 800 - 3 / (64 * 3 * 10**4)),
    ),
    "centre hole": (
        "centre: {centred: 2 mm, on: right}",
        # ISO 6411 form A as in holes.py, from memory: cone, pilot of 1.25 d, drilled point.
        math.pi / 3 * ((2.12**3 - 1) / math.tan(math.radians(30)))
        + math.pi * 2.5
        + math.pi / 3 / math.tan(math.radians(59)),
    ),
    "hole off the axis": (
        "pin: {reamed: 4 mm, on: right, depth: 5 mm, at: 6 mm from axis}",
        math.pi * 4 * 5,
    ),
}


@pytest.mark.parametrize("name", sorted(CASES))
def test_what_is_cut_away(name: str, solid_of: SolidOf) -> None:
    feature, taken = CASES[name]
    assert solid_of(BAR, feature).volume_mm3 == pytest.approx(WHOLE - taken, rel=1e-7)


BORE = "bore: {bored: 8 mm, on: rod, depth: through}"
INSIDE = {
    "groove in the bore": (
        "ring: {grooved: 2 mm, on: bore, depth: 1 mm, at: 6 mm from right}",
        math.pi * (25 - 16) * 2,
    ),
    "recess in the bore": (
        "relief: {recessed: 12 mm, on: bore, length: 10 mm}",
        math.pi * (36 - 16) * 10,
    ),
    "mouth chamfered": ("mouth: {chamfered: 1 mm, on: bore}", pappus(0.5, 4 + 1 / 3)),
    "mouth rounded": ("mouth: {rounded: 1 mm, on: bore}", pappus(_ROUND, 4 + _MIDDLE)),
    "counterbored": (
        "head: {counterbored: 12 mm, on: bore, depth: 4 mm}",
        math.pi * (36 - 16) * 4,
    ),
    "keyway in the bore": (
        "key: {keywayed: 3 mm, on: bore, depth: 1.5 mm}",
        30 * (3 * 5.5 - (1.5 * math.sqrt(16 - 2.25) + 16 * math.asin(1.5 / 4))),
    ),
}


@pytest.mark.parametrize("name", sorted(INSIDE))
def test_what_is_cut_inside(name: str, solid_of: SolidOf) -> None:
    feature, taken = INSIDE[name]
    solid = solid_of(BAR, BORE, feature)
    assert solid.volume_mm3 == pytest.approx(WHOLE - math.pi * 16 * 30 - taken, rel=1e-7)


def test_a_knurl_is_told_and_left_smooth(form_of: FormOf) -> None:
    form = form_of(BAR, "grip: {knurled: 1 mm, on: rod, style: straight}")
    (grip,) = form.located
    assert not grip.tools
    assert grip.note == "knurl, pitch 1 mm, straight"


def test_a_keyway_ends_round(solid_of: SolidOf) -> None:
    solid = solid_of(BAR, "key: {keywayed: 6 mm, on: rod, depth: 3 mm, length: 16 mm}")
    # The floor lies 7 above the axis: a rectangle of 10 and two half discs, under the round top.
    flat = 10 * (2 * _half_chord_area(3) - 7 * 6)
    # The kernel's own sums over faces that end in such a curve are good to 1.3e-6 here.
    assert solid.volume_mm3 == pytest.approx(WHOLE - flat - _under_the_top(3), rel=2e-6)


def _half_chord_area(y: float) -> float:
    """The integral of sqrt(100 - y^2) from 0 to y."""
    return (y * math.sqrt(100 - y * y) + 100 * math.asin(y / 10)) / 2


def _under_the_top(r: float) -> float:
    """Over a whole disc of a radius, what lies between the floor at 7 and the round top."""
    steps = 200_000
    width = 2 * r / steps
    ys = (-r + (n + 0.5) * width for n in range(steps))
    return sum(2 * math.sqrt(r * r - y * y) * (math.sqrt(100 - y * y) - 7) * width for y in ys)
