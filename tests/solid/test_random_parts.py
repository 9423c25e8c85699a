"""Chance parts: what is made is valid, one piece, and weighs what its features add up to."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from binder_solid import bodies
from binder_solid.faults import Unbuildable
from binder_solid.forms import Box, Cut, Cylinder, Form, Frame, Outline, Raised, Straight
from binder_solid.lines import signed_area
from binder_solid.sane import check
from binder_solid.solids import measured, views
from tests.solid.needs_kernel import NEEDS_KERNEL

# Sizes are written in decimals: two that differ by less than the kernel tells apart are one.
SIZES = st.floats(0.5, 60, allow_nan=False).map(lambda size: round(size, 5))
FEW = settings(max_examples=40, deadline=None)


@NEEDS_KERNEL
@FEW
@given(st.lists(st.tuples(SIZES, SIZES), min_size=1, max_size=6))
def test_turned_steps_add_up(steps: list[tuple[float, float]]) -> None:
    solid = measured(bodies.turned_steps(steps))
    known = sum(math.pi * d * d / 4 * length for d, length in steps)
    assert solid.volume_mm3 == pytest.approx(known, rel=1e-6)
    assert solid.pieces == 1
    assert solid.envelope[1][0] == pytest.approx(sum(length for _, length in steps), rel=1e-6)


@st.composite
def drilled_plates(draw: st.DrawFn) -> tuple[Form, float]:
    """A plate with holes on a grid, each smaller than its square, through or blind."""
    columns, rows = draw(st.integers(1, 4)), draw(st.integers(1, 3))
    thickness = draw(st.floats(2, 20))
    tools: list[Form] = []
    taken = 0.0
    for n in range(columns * rows):
        radius = draw(st.floats(0.2, 4.5))
        depth = draw(
            st.one_of(st.just(thickness), st.floats(0.1, 0.9).map(lambda s: s * thickness))
        )
        place = (10 * (n % columns) + 5.0, 10 * (n // columns) + 5.0, thickness - depth)
        over = -1.0 if depth == thickness else 0.0
        start = (place[0], place[1], place[2] + over)
        tools.append(Cylinder(radius, depth - over + 1.0, Frame(start)))
        taken += math.pi * radius**2 * depth
    plate = Box(10 * columns, 10 * rows, thickness)
    return Cut(plate, tuple(tools)), 100 * columns * rows * thickness - taken


@NEEDS_KERNEL
@FEW
@given(drilled_plates())
def test_holes_take_away_what_they_should(case: tuple[Form, float]) -> None:
    form, known = case
    solid = measured(form)
    assert solid.volume_mm3 == pytest.approx(known, rel=1e-6)
    assert solid.pieces == 1


@NEEDS_KERNEL
@settings(max_examples=10, deadline=None)
@given(drilled_plates())
def test_a_view_never_leaves_the_part(case: tuple[Form, float]) -> None:
    form, _ = case
    least, most = measured(form).envelope
    for view in views(form, ("front", "top")):
        low, high = view.flat(least), view.flat(most)
        assert view.bounds[0] == pytest.approx(low, abs=1e-4)
        assert view.bounds[1] == pytest.approx(high, abs=1e-4)


ANYTHING = st.floats(allow_nan=True, allow_infinity=True)
POINTS = st.tuples(ANYTHING, ANYTHING) | st.tuples(st.integers(-9, 9), st.integers(-9, 9))


@settings(max_examples=200, deadline=None)
@given(st.lists(POINTS, max_size=7), ANYTHING)
def test_the_check_lets_through_nothing_but_bodies(
    points: list[tuple[float, float]], height: float
) -> None:
    outline = Outline(points[0] if points else (0.0, 0.0), tuple(Straight(at) for at in points[1:]))
    try:
        check(Raised(outline, height))
    except Unbuildable:
        return
    assert 0 < height <= 10_000
    assert abs(signed_area(outline)) > 0


@NEEDS_KERNEL
@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(st.integers(-9, 9), st.integers(-9, 9)), min_size=3, max_size=7))
def test_outlines_that_pass_the_check_make_their_volume(points: list[tuple[int, int]]) -> None:
    outline = Outline(points[0], tuple(Straight(at) for at in points[1:]))
    try:
        check(Raised(outline, 3))
    except Unbuildable:
        return
    assert measured(Raised(outline, 3)).volume_mm3 == pytest.approx(
        3 * abs(signed_area(outline)), rel=1e-9
    )
