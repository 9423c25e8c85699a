"""Sections: the cut faces have the area that the cut should have, and lie in the view."""

from __future__ import annotations

import math

import pytest

from binder_solid import bodies
from binder_solid.faults import Unbuildable
from binder_solid.forms import Box, Cut, Cylinder, Frame, Point
from binder_solid.solids import sectioned
from binder_solid.views import Cutting, Projection, RoundLine, StraightLine, View
from tests.solid.needs_kernel import NEEDS_KERNEL
from tests.solid.ten_parts import PARTS

pytestmark = NEEDS_KERNEL
ALL_SIDES: tuple[Projection, ...] = ("front", "back", "left", "right", "top", "underside")


def _area(points: tuple[Point, ...]) -> float:
    pairs = zip(points, (*points[1:], points[0]), strict=True)
    return abs(sum(ax * by - bx * ay for (ax, ay), (bx, by) in pairs)) / 2


def _hatched(view: View) -> float:
    return sum(_area(face.outer) - sum(map(_area, face.holes)) for face in view.faces)


def test_full_section_of_a_tube_hatches_both_walls() -> None:
    view = sectioned(bodies.tube(20, 14, 25), Cutting("A-A", "front", 0.0))
    assert view.name == "A-A"
    assert len(view.faces) == 2
    assert _hatched(view) == pytest.approx(2 * 3 * 25, rel=1e-6)
    assert view.bounds == ((0.0, -10.0), (25.0, 10.0))


def test_half_section_of_a_tube_hatches_the_upper_wall_and_draws_no_line_on_the_axis() -> None:
    view = sectioned(bodies.tube(20, 14, 25), Cutting("half", "front", 0.0, "upper", 0.0))
    assert _hatched(view) == pytest.approx(3 * 25, rel=1e-6)
    shown = [e.line for e in view.edges if e.kind != "hidden" and isinstance(e.line, StraightLine)]
    assert not [line for line in shown if line.start[1] == line.end[1] == 0.0]
    assert StraightLine((0.0, 7.0), (25.0, 7.0)) in shown
    assert StraightLine((0.0, -7.0), (25.0, -7.0)) not in shown


def test_section_of_a_stepped_spindle_along_its_axis() -> None:
    view = sectioned(PARTS["spindle"], Cutting("A-A", "front", 0.0))
    assert _hatched(view) == pytest.approx(10 * 5 + 6 * 20 + 8 * 3, rel=1e-6)


def test_section_across_a_bar_is_its_circle() -> None:
    view = sectioned(PARTS["bar"], Cutting("B-B", "right", 15.0))
    rim = [edge.line for edge in view.edges if edge.kind == "section"]
    assert rim == [RoundLine((0.0, 0.0), 10.0, 0.0, 360.0)]
    assert _hatched(view) == pytest.approx(math.pi * 100, rel=2e-3)  # a polygon of 5° steps


def test_hole_in_a_cut_face_is_not_hatched() -> None:
    plate = Cut(Box(40, 30, 10), (Cylinder(5, 12, Frame((20, 15, -1))),))
    view = sectioned(plate, Cutting("C-C", "top", 4.0))
    assert len(view.faces) == 1
    assert len(view.faces[0].holes) == 1
    assert _hatched(view) == pytest.approx(1200 - math.pi * 25, rel=1e-3)


def test_what_is_nearer_than_the_plane_is_gone() -> None:
    part = Cut(Box(40, 30, 10), (Box(10, 10, 10, Frame((5, 0, 5))),))
    view = sectioned(part, Cutting("D-D", "front", 15.0))
    assert [edge for edge in view.edges if edge.kind == "visible"] == []
    assert _hatched(view) == pytest.approx(400, rel=1e-6)


@pytest.mark.parametrize("side", ALL_SIDES)
def test_each_side_cuts_at_its_own_coordinate(side: Projection) -> None:
    cutting = Cutting("E-E", side, 7.0)
    view = sectioned(Box(20, 20, 20), cutting)
    assert _hatched(view) == pytest.approx(400, rel=1e-6)


def test_a_plane_that_misses_is_refused() -> None:
    with pytest.raises(Unbuildable, match="misses") as caught:
        sectioned(Box(20, 20, 20), Cutting("F-F", "front", 25.0))
    assert caught.value.where == "F-F"
