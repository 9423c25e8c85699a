"""Nonsense is refused before the kernel sees it, with its place in the form."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from binder_solid import outlines
from binder_solid.faults import Unbuildable
from binder_solid.forms import (
    Arc,
    Ball,
    Bent,
    Box,
    Coil,
    Cone,
    Curve,
    Cut,
    Cylinder,
    Form,
    Frame,
    Joined,
    Outline,
    Placed,
    Raised,
    Revolved,
    Ring,
    Straight,
    Wire,
)
from binder_solid.gears import Gear
from binder_solid.sane import check
from binder_solid.solids import measured
from binder_solid.teeth import spur_outline
from tests.solid.needs_kernel import NEEDS_KERNEL

SQUARE = outlines.rectangle(10, 10)
BOW = outlines.polygon([(0, 0), (10, 10), (10, 0), (0, 10)])
SPUR = outlines.polygon([(0, 0), (10, 0), (10, 10), (5, 10), (5, 0), (0, 5)])
NOOSE = Outline(
    (0.0, 0.0), (Straight((10.0, 0.0)), Straight((10.0, 5.0)), Arc((5.0, -2.0), (0.0, 5.0)))
)
WAVE = Outline(
    (0.0, 0.0),
    (
        Curve(((5.0, 2.0), (10.0, 0.0))),
        Curve(((5.0, 6.0), (5.0, -1.0))),
    ),
)
DEEP: Form = Box(1, 1, 1)
for _ in range(60):
    DEEP = Placed(DEEP, Frame())

NONSENSE: dict[str, tuple[Form, str, str]] = {
    "not a number": (Box(math.nan, 1, 1), "no number", "form.length"),
    "endless": (Cylinder(1, math.inf), "no number", "form.height"),
    "negative": (Cylinder(-3, 5), "not more than nothing", "form.radius"),
    "nought": (Ball(0), "not more than nothing", "form.radius"),
    "larger than any shop": (Box(1, 20_000, 1), "more than 10000", "form.width"),
    "far away": (Ball(1, Frame((0, 1e9, 0))), "more than 10000", "form.frame.origin"),
    "direction of no length": (Ball(1, Frame(z=(0, 0, 0))), "length is not 1", "form.frame.z"),
    "skew frame": (Ball(1, Frame(x=(0.6, 0, 0.8))), "right angles", "form.frame"),
    "negative draft": (Raised(SQUARE, 5, draft=-2), "less than nothing", "form.draft"),
    "flat draft": (Raised(SQUARE, 5, draft=85), "lean", "form.draft"),
    "no cone": (Cone(3, 3, 5), "cylinder", "form"),
    "spindle ring": (Ring(2, 5), "thicker", "form"),
    "crossing lines": (Raised(BOW, 5), "crosses itself at 5.000, 5.000", "form.outline"),
    "touching lines": (Raised(SPUR, 5), "crosses itself at 5.000, 0.000", "form.outline"),
    "arc through a line": (Raised(NOOSE, 5), "crosses itself", "form.outline"),
    "curve through a curve": (Raised(WAVE, 5), "crosses itself", "form.outline"),
    "line of no length": (
        Raised(outlines.polygon([(0, 0), (5, 0), (5, 0), (0, 5)]), 5),
        "no length",
        "form.outline.segments[1]",
    ),
    "folded back": (
        Raised(outlines.polygon([(0, 0), (10, 0), (4, 0), (4, 5)]), 5),
        "crosses itself",
        "form.outline",
    ),
    "touching itself at a corner": (
        Raised(outlines.polygon([(0, 0), (4, 0), (2, 2), (4, 4), (0, 4), (2, 2)]), 5),
        "crosses itself at 2.000, 2.000",
        "form.outline",
    ),
    "there and back": (
        Raised(outlines.polygon([(0, 0), (0, 1), (0, 0), (0, 1), (1, 0)]), 5),
        "crosses itself",
        "form.outline",
    ),
    "arc that is straight": (
        Raised(Outline((0, 0), (Arc((5, 0), (10, 0)), Straight((5, 5)))), 5),
        "lie in a line",
        "form.outline.segments[0]",
    ),
    "outline round nothing": (Raised(Outline((0, 0), ()), 5), "nothing", "form.outline"),
    "number in an outline": (
        Raised(outlines.polygon([(0, 0), (math.nan, 0), (0, 5)]), 5),
        "no number",
        "form.outline.segments[0]",
    ),
    "hole over the edge": (
        Raised(outlines.pierced(SQUARE, outlines.circle(2, (5.0, 0.0))), 5),
        "crosses itself",
        "form.outline",
    ),
    "hole outside": (
        Raised(outlines.pierced(SQUARE, outlines.circle(2, (9.0, 0.0))), 5),
        "outside",
        "form.outline.holes[0]",
    ),
    "hole in a hole": (
        Raised(outlines.pierced(SQUARE, outlines.circle(3), outlines.circle(1)), 5),
        "within a hole",
        "form.outline.holes[1]",
    ),
    "turned through its axis": (
        Revolved(outlines.rectangle(10, 4)),
        "crosses the axis",
        "form.outline",
    ),
    "bowed through its axis": (
        Revolved(Outline((0, 1), (Arc((5, -0.5), (10, 1)), Straight((5, 5)), Straight((0, 1))))),
        "crosses the axis",
        "form.outline",
    ),
    "turned twice": (Revolved(outlines.rectangle(3, 3, (0, 1)), turn=720), "360", "form.turn"),
    "wire thicker than its coil": (Coil(1, 5, 3, 2.5), "thicker", "form.wire"),
    "turns through one another": (Coil(10, 1, 3, 2), "nearer", "form.pitch"),
    "too many turns": (Coil(10, 3, 1e4, 2), "turns", "form.turns"),
    "path of one point": (Wire(((0, 0, 0),), 1), "fewer than 2", "form"),
    "bend tighter than the rod": (
        Bent(((0, 0, 0), (9, 0, 0), (9, 9, 0)), 1, 3),
        "tighter",
        "form.bend",
    ),
    "legs too short": (
        Bent(((0, 0, 0), (9, 0, 0), (9, 9, 0)), 10, 3),
        "too short",
        "form.points[1]",
    ),
    "path that turns back": (
        Bent(((0, 0, 0), (9, 0, 0), (2, 0, 0)), 2, 1),
        "too short",
        "form.points[1]",
    ),
    "nothing joined": (Joined(()), "nothing to join", "form"),
    "fault in a tool": (
        Cut(Box(9, 9, 9), (Ball(1), Cylinder(1, -1))),
        "not more than nothing",
        "form.tools[1].height",
    ),
    "too deep": (DEEP, "deep", "form" + ".form" * 41),
    "too many": (Joined(tuple(Ball(1) for _ in range(6000))), "forms", "form.forms[4999]"),
}


@pytest.mark.parametrize("name", NONSENSE)
def test_nonsense_is_refused_by_name_and_place(name: str) -> None:
    form, reason, where = NONSENSE[name]
    with pytest.raises(Unbuildable, match=reason) as caught:
        check(form)
    assert caught.value.where == where


@NEEDS_KERNEL
def test_the_kernel_never_sees_it(monkeypatch: pytest.MonkeyPatch) -> None:
    from binder_solid.kernel import shapes

    seen: list[Form] = []
    monkeypatch.setattr(shapes, "_shape", seen.append)
    for form, _, _ in NONSENSE.values():
        with pytest.raises(Unbuildable):
            measured(form)
    assert seen == []


@NEEDS_KERNEL
@pytest.mark.parametrize(
    ("form", "reason"),
    [
        (Cut(Box(1, 1, 1), (Box(3, 3, 3, Frame((-1, -1, -1))),)), "nothing is left"),
        (Raised(SQUARE, 50, draft=20), "side|valid|make"),
    ],
)
def test_what_the_kernel_makes_no_solid_of_is_refused_too(form: Form, reason: str) -> None:
    with pytest.raises(Unbuildable, match=reason):
        measured(form)


def test_neighbours_that_run_on_smoothly_are_no_crossing() -> None:
    for outline in (
        outlines.slot(30, 8),
        outlines.rounded_rectangle(30, 20, 9.9),
        outlines.annulus(9, 8.999),
        spur_outline(Gear(0.3, 10, shift=0.4)),
        spur_outline(Gear(1, 120)),
    ):
        check(Raised(outline, 5))


def test_an_open_outline_is_closed_by_a_straight_line() -> None:
    open_ended = replace(SQUARE, segments=SQUARE.segments[:-1])
    check(Raised(open_ended, 5))


@pytest.mark.parametrize(
    "gear",
    [
        Gear(1, 3),
        Gear(1, 6, shift=-2),
        Gear(1, 10, shift=1.5),
        Gear(1, 500),
        Gear(1, 12, addendum=3),
    ],
)
def test_teeth_that_cannot_be_are_refused(gear: Gear) -> None:
    with pytest.raises(Unbuildable):
        spur_outline(gear)
