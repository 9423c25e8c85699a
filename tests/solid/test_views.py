"""Views with hidden lines, against rays through the solid, its skin in triangles, and sums."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest

from binder_solid.forms import Frame, Point
from binder_solid.solids import views
from binder_solid.views import (
    Edge,
    Line,
    Projection,
    RoundLine,
    StraightLine,
    View,
    axes_of,
    points_of,
)
from tests.solid.needs_kernel import NEEDS_KERNEL
from tests.solid.ten_parts import PARTS

pytestmark = NEEDS_KERNEL
SIDES: tuple[Projection, ...] = ("front", "top", "right", "isometric")
NEAR = 0.03


def _length(edges: list[Edge]) -> float:
    total = 0.0
    for edge in edges:
        points = edge.points(1.0)
        total += sum(math.dist(a, b) for a, b in pairwise(points))
    return total


def _kind(view: View, kind: str) -> list[Edge]:
    return [edge for edge in view.edges if edge.kind == kind]


def _beside(at: Point, line: Line) -> float:
    points = points_of(line, 1.0)
    return min(_from(at, a, b) for a, b in pairwise(points))


def _from(at: Point, start: Point, end: Point) -> float:
    dx, dy = end[0] - start[0], end[1] - start[1]
    share = ((at[0] - start[0]) * dx + (at[1] - start[1]) * dy) / (dx * dx + dy * dy)
    share = max(0.0, min(1.0, share))
    return math.hypot(at[0] - start[0] - share * dx, at[1] - start[1] - share * dy)


@pytest.mark.parametrize("side", SIDES)
@pytest.mark.parametrize("name", PARTS)
def test_edges_are_hidden_where_a_ray_to_the_eye_is_not_free(name: str, side: Projection) -> None:
    from tests.solid.second_route import seen_points

    view = views(PARTS[name], (side,))[0]
    drawn = [edge for edge in view.edges if edge.kind in ("visible", "hidden")]
    seen = _kind(view, "visible")
    told = 0
    for at, is_free in seen_points(PARTS[name], side):
        assert min(_beside(at, edge.line) for edge in drawn) < NEAR, at
        if is_free is not None:
            told += 1
            is_drawn_seen = min(_beside(at, edge.line) for edge in seen) < NEAR
            assert is_drawn_seen or not is_free, at
        if is_free is False and side == "isometric":  # other sides lay edges over one another
            hidden = _kind(view, "hidden")
            assert min(_beside(at, edge.line) for edge in hidden) < NEAR, at
    assert told or name == "ring"


@pytest.mark.parametrize("side", SIDES)
@pytest.mark.parametrize("name", PARTS)
def test_silhouette_area_agrees_with_the_skin_in_triangles(name: str, side: Projection) -> None:
    from tests.solid.second_route import covered, triangles

    view = views(PARTS[name], (side,))[0]
    (_, low), (_, high) = view.bounds
    heights = [low + (high - low) * (n + 0.431) / 61 for n in range(61)]
    drawn_area = 0.0
    for height in heights:
        ends = [u for edge in _kind(view, "visible") for u in _level(edge, height)]
        drawn_area += max(ends) - min(ends)
    skin = covered(triangles(PARTS[name], side, 0.02), heights)
    skin_area = sum(right - left for left, right in skin)
    assert drawn_area == pytest.approx(skin_area, rel=3e-3)


def _level(edge: Edge, height: float) -> list[float]:
    points = edge.points(1.0)
    return [
        ax + (bx - ax) * (height - ay) / (by - ay)
        for (ax, ay), (bx, by) in pairwise(points)
        if (ay > height) != (by > height)
    ]


def test_a_bar_from_the_front_is_four_lines_and_from_its_end_a_circle() -> None:
    front, right = views(PARTS["bar"], ("front", "right"))
    assert {edge.kind for edge in (*front.edges, *right.edges)} == {"visible"}
    assert [edge.line for edge in right.edges] == [RoundLine((0.0, 0.0), 10.0, 0.0, 360.0)]
    assert len(front.edges) == 4
    assert _length(list(front.edges)) == pytest.approx(120, abs=1e-4)
    assert front.bounds == ((0.0, -10.0), (40.0, 10.0))


def test_a_cross_hole_is_a_circle_from_above_and_dashed_from_the_end() -> None:
    top, right = views(PARTS["cross-drilled tube"], ("top", "right"))
    circles = [edge.line for edge in top.edges if isinstance(edge.line, RoundLine)]
    assert circles == [RoundLine((20.0, 0.0), 3.0, 0.0, 360.0)]
    dashed = _kind(right, "hidden")
    assert len(dashed) == 4
    wall = math.sqrt(100 - 9) - math.sqrt(25 - 9)
    assert _length(dashed) == pytest.approx(4 * wall, abs=0.01)
    rings = sorted(e.line.radius for e in right.edges if isinstance(e.line, RoundLine))
    assert rings == [5.0, 10.0]


def test_lines_of_a_block_add_up() -> None:
    """60 × 30 × 20 with a step 10 × 10, a through hole and a blind one: reckoned by hand."""
    front, top, right = views(PARTS["stepped block"], ("front", "top", "right"))
    assert _length(_kind(front, "visible")) == pytest.approx(160, abs=1e-3)
    assert _length(_kind(front, "hidden")) == pytest.approx(60 + 40 + 22 + 4, abs=1e-3)
    rims = 2 * math.pi * (3 + 2)
    assert _length(_kind(top, "visible")) == pytest.approx(180 + 60 + rims, abs=0.01)
    assert _kind(top, "hidden") == []
    assert _length(_kind(right, "visible")) == pytest.approx(100, abs=1e-3)
    # the small hole's sides lie at the same height before the step as the large one's: not over
    assert _length(_kind(right, "hidden")) == pytest.approx(2 * 20 + 2 * 11 + 4, abs=1e-3)


def test_views_turn_the_part_as_their_names_say() -> None:
    corner = (1.0, 2.0, 3.0)
    view = views(PARTS["bracket"], ("front", "back", "left", "right", "top", "underside"))
    told = {one.name: one.flat(corner) for one in view}
    assert told == {
        "front": (1, 3),
        "back": (-1, 3),
        "left": (-2, 3),
        "right": (2, 3),
        "top": (1, 2),
        "underside": (1, -2),
    }
    assert all(one.bounds[0] <= one.flat((0, 0, 0)) <= one.bounds[1] for one in view)


def test_the_isometric_view_shows_each_axis_equally_short() -> None:
    right, up = axes_of("isometric")
    lengths = [math.hypot(right[n], up[n]) for n in range(3)]
    assert lengths == pytest.approx([math.sqrt(2 / 3)] * 3)  # ISO 5456-3


def test_tangent_faces_leave_a_smooth_line_and_no_sharp_one() -> None:
    from binder_solid.forms import Raised
    from binder_solid.outlines import rounded_rectangle

    front = views(Raised(rounded_rectangle(30, 20, 5), 8), ("front",))[0]
    assert {edge.kind for edge in front.edges} == {"visible", "smooth"}
    assert len(_kind(front, "visible")) == 4
    assert sorted(
        {
            round(e.line.start[0], 3)
            for e in _kind(front, "smooth")
            if isinstance(e.line, StraightLine)
        }
    ) == [-10.0, 10.0]


def test_faces_tangent_after_joining_leave_no_sharp_line() -> None:
    from binder_solid.forms import Box, Cylinder, Joined

    lug = Joined((Box(20, 10, 5, Frame((0, -5, 0))), Cylinder(5, 5, Frame((20, 0, 0)))))
    front = views(lug, ("front",))[0]
    assert _length(_kind(front, "visible")) == pytest.approx(60, abs=1e-3)
    assert [e.line for e in _kind(front, "smooth")] == [StraightLine((20.0, 0.0), (20.0, 5.0))]


def test_several_forms_hide_one_another() -> None:
    from binder_solid.forms import Box

    near, far = Box(10, 2, 10), Box(4, 2, 4, Frame((3, 20, 3)))
    view = views((near, far), ("front",))[0]
    assert _length(_kind(view, "visible")) == pytest.approx(40, abs=1e-3)
    assert _length(_kind(view, "hidden")) == pytest.approx(16, abs=1e-3)


def test_nothing_is_drawn_twice() -> None:
    for name, part in PARTS.items():
        for view in views(part, SIDES):
            straight = [e.line for e in view.edges if isinstance(e.line, StraightLine)]
            for n, one in enumerate(straight):
                middle = ((one.start[0] + one.end[0]) / 2, (one.start[1] + one.end[1]) / 2)
                others = [other for k, other in enumerate(straight) if k != n]
                assert all(
                    _beside(middle, other) > 1e-3 or not _is_along(one, other) for other in others
                ), (name, view.name, one)


def _is_along(one: StraightLine, other: StraightLine) -> bool:
    ax, ay = one.end[0] - one.start[0], one.end[1] - one.start[1]
    bx, by = other.end[0] - other.start[0], other.end[1] - other.start[1]
    return abs(ax * by - ay * bx) < 1e-4 * math.hypot(ax, ay) * math.hypot(bx, by)
