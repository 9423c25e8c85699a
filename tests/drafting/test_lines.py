"""Lines, hatching, centre lines and threads look as the standards say."""

from __future__ import annotations

from itertools import pairwise
from math import atan2, degrees, hypot, isclose

import pytest

from binder.api import DrawnArc, DrawnDisc, DrawnShape, Line, Polyline, Stroke
from binder_drafting import (
    AxisLine,
    Bow,
    Break,
    CentreMark,
    Chain,
    CuttingLine,
    Outline,
    PitchCircle,
    Request,
    Surface,
    ThreadCircle,
    View,
    draft,
)
from tests.drafting.parts import rectangle
from tests.drafting.proofs import labels_of

SQUARE = rectangle(0, 0, 40, 40)


def shapes_of(view: View) -> tuple[DrawnShape, ...]:
    return draft(Request((view,), scales=(1.0,))).drawing.shapes


def lines_of(view: View, stroke: Stroke) -> list[Line]:
    return [one for one in shapes_of(view) if isinstance(one, Line) and one.stroke is stroke]


# ISO 128-2:2020: visible outlines are continuous wide, hidden ones dashed narrow, smooth
# transitions continuous narrow. From memory of the standard.
@pytest.mark.parametrize(
    ("kind", "stroke"),
    [
        ("visible", Stroke.OUTLINE),
        ("section", Stroke.OUTLINE),
        ("hidden", Stroke.HIDDEN),
        ("smooth", Stroke.THIN),
    ],
)
def test_an_edge_is_drawn_as_its_kind_asks(kind: str, stroke: Stroke) -> None:
    edge = Chain(((0, 0), (10, 0)), kind)
    drawn = [one for one in shapes_of(View("front", (edge,))) if isinstance(one, Line)]
    assert [one.stroke for one in drawn] == [stroke]


def test_a_whole_circle_is_a_disc_and_a_part_of_it_an_arc_the_same_way_round() -> None:
    shapes = shapes_of(View("front", (Bow((0, 0), 5), Bow((20, 0), 5, 0, 90))))
    arc = next(one for one in shapes if isinstance(one, DrawnArc))
    assert (arc.radius, arc.start, arc.end) == (5, 0, 90)
    assert any(isinstance(one, DrawnDisc) for one in shapes)


def hatched(lean: float = 45.0) -> list[Line]:
    hole = ((10.0, 10.0), (30.0, 10.0), (30.0, 30.0), (10.0, 30.0))
    outline = Outline(((0, 0), (40, 0), (40, 40), (0, 40)), (hole,), lean)
    return lines_of(View("front", (SQUARE,), outlines=(outline,)), Stroke.THIN)


# ISO 128-3: hatching at 45° to the outlines, at least 0.7 mm apart. From memory.
@pytest.mark.parametrize("lean", [45.0, 135.0])
def test_hatching_leans_as_asked_and_keeps_its_distance(lean: float) -> None:
    lines = hatched(lean)
    assert all(
        isclose(degrees(atan2(one.y1 - one.y2, one.x2 - one.x1)) % 180, lean, abs_tol=1e-6)
        for one in lines
    )
    sign = 1 if lean == 45.0 else -1
    levels = sorted({round((one.y1 + sign * one.x1) / 2**0.5, 6) for one in lines})
    assert min(b - a for a, b in pairwise(levels)) >= 0.7


def test_hatching_fills_the_material_and_no_hole() -> None:
    lines = hatched()
    spacing = 2.6
    length = sum(hypot(one.x2 - one.x1, one.y2 - one.y1) for one in lines)
    # The area is what each line stands for, times its length: 40² − 20², within one spacing.
    assert length * spacing == pytest.approx(40**2 - 20**2, rel=0.05)
    left = min(min(one.x1, one.x2) for one in lines)
    top = min(min(one.y1, one.y2) for one in lines)
    for one in lines:
        x, y = (one.x1 + one.x2) / 2 - left, (one.y1 + one.y2) / 2 - top
        assert not (11 < x < 29 and 11 < y < 29)


# ISO 6410-1: the root of a thread seen along its axis is about three quarters of a narrow circle.
def test_a_thread_seen_along_its_axis_is_three_quarters_of_a_thin_circle() -> None:
    view = View("front", (Bow((0, 0), 5),), marks=(ThreadCircle((0, 0), 4),))
    arc = next(one for one in shapes_of(view) if isinstance(one, DrawnArc))
    assert arc.end - arc.start == pytest.approx(270)
    assert arc.stroke is Stroke.THIN


# ISO 128-2: centre lines run a little past what they belong to.
def test_centre_lines_run_past_their_part() -> None:
    axis = lines_of(View("front", (SQUARE,), marks=(AxisLine((0, 20), (40, 20)),)), Stroke.CENTRE)
    assert [one.x2 - one.x1 for one in axis] == [pytest.approx(46)]
    arms = lines_of(View("front", (SQUARE,), marks=(CentreMark((20, 20), 3),)), Stroke.THIN)
    assert len(arms) == 4
    assert all(hypot(one.x2 - one.x1, one.y2 - one.y1) > 3 for one in arms)


def test_a_pitch_circle_is_a_centre_line_with_a_mark_at_each_hole() -> None:
    shapes = shapes_of(View("front", (SQUARE,), marks=(PitchCircle((20, 20), 15, (0, 120), 2),)))
    circle = next(one for one in shapes if isinstance(one, DrawnDisc))
    assert (circle.radius, circle.stroke) == (15, Stroke.CENTRE)
    assert sum(isinstance(one, Line) for one in shapes) == 2


# ISO 128-3: the ends of a cutting line are wide, the arrows point the way in which one looks.
def test_a_cutting_line_has_its_letter_twice_and_arrows_that_look_one_way() -> None:
    mark = CuttingLine((20, 0), (20, 40), "A", (1, 0))
    sheet = draft(Request((View("front", (SQUARE,), marks=(mark,)),), scales=(1.0,)))
    assert [one.text for one in labels_of(sheet)] == ["A", "A"]
    arrows = [one for one in sheet.drawing.shapes if getattr(one, "stroke", "") == Stroke.ARROW]
    assert all(isinstance(one, Line) and one.x2 > one.x1 and one.y1 == one.y2 for one in arrows)
    assert len(arrows) == 2


def test_a_surface_sign_stands_with_its_tip_on_the_surface() -> None:
    sheet = draft(
        Request((View("front", (SQUARE,), marks=(Surface((20, 40), "Ra 1.6"),)),), scales=(1.0,))
    )
    sign = next(
        one for one in sheet.drawing.shapes if isinstance(one, Polyline) and len(one.points) == 3
    )
    assert sign.points[1][1] == pytest.approx(sheet.views[0].box.top)
    assert [one.text for one in labels_of(sheet)] == ["Ra 1.6"]


def test_a_break_shortens_a_view_and_leaves_two_zigzags() -> None:
    long = View("front", (rectangle(0, 0, 400, 20),), breaks=(Break("u", 50, 350),))
    sheet = draft(Request((long,), scales=(1.0,)))
    # 300 mm are left out, 3 mm of paper stand for them, and the zigzags keep within.
    assert sheet.views[0].box.width == pytest.approx(400 - 300 + 3)
    zigzags = [
        one
        for one in sheet.drawing.shapes
        if isinstance(one, Polyline) and one.stroke is Stroke.THIN
    ]
    assert len(zigzags) == 2


def test_a_break_across_a_circle_leaves_two_arcs() -> None:
    wheel = View("front", (Bow((0, 0), 50),), breaks=(Break("v", -30, 30),))
    shapes = draft(Request((wheel,), scales=(1.0,))).drawing.shapes
    halves = [one for one in shapes if isinstance(one, Polyline) and one.stroke is Stroke.OUTLINE]
    tall = [max(y for _, y in one.points) - min(y for _, y in one.points) for one in halves]
    assert sum(tall) == pytest.approx(40, abs=0.1)
