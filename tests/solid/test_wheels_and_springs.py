"""Sprockets, ratchets, dovetails and springs against published values; each names its source."""

from __future__ import annotations

import math

import pytest

from binder_solid.faults import Unbuildable
from binder_solid.forms import Coil, Cut, Raised
from binder_solid.lines import area, corners, least_and_most
from binder_solid.outlines import dovetail
from binder_solid.solids import measured
from binder_solid.springs import (
    compression_spring,
    extension_spring,
    rate,
    solid_length,
    torsion_spring,
    wire_length,
    working_coils,
)
from binder_solid.wheels import ratchet_outline, sprocket_outline, sprocket_pitch_diameter
from tests.solid.needs_kernel import NEEDS_KERNEL


@pytest.mark.parametrize(
    ("teeth", "diameter"),
    [(9, 2.9238), (13, 4.1786), (17, 5.4422), (19, 6.0755), (25, 7.9787), (38, 12.1096)],
)
def test_sprocket_pitch_circle(teeth: int, diameter: float) -> None:
    """ISO 606 annex, table for a pitch of 1 (from memory, recomputed)."""
    assert sprocket_pitch_diameter(1, teeth) == pytest.approx(diameter, abs=1e-4)


@pytest.mark.parametrize(("pitch", "roller", "teeth"), [(8, 5, 17), (6, 4, 9), (12.7, 8.51, 38)])
def test_sprocket_outline(pitch: float, roller: float, teeth: int) -> None:
    """ISO 606: seats 1.01 rollers wide on the pitch circle, tips within its limits."""
    outline = sprocket_outline(pitch, roller, teeth)
    circle = sprocket_pitch_diameter(pitch, teeth)
    radii = [math.hypot(*point) for point in corners(outline, 1.0)]
    assert min(radii) == pytest.approx(circle / 2 - 0.505 * roller, rel=1e-4)
    least, most = circle + pitch * (1 - 1.6 / teeth) - roller, circle + 1.25 * pitch - roller
    assert 2 * max(radii) <= most
    assert 2 * max(radii) == pytest.approx(least, rel=1e-6)
    seat = min(math.dist((circle / 2, 0), point) for point in corners(outline, 1.0))
    assert seat == pytest.approx(0.505 * roller, rel=1e-9)


def test_rollers_lie_a_pitch_apart() -> None:
    radius = sprocket_pitch_diameter(8, 17) / 2
    other = (radius * math.cos(math.tau / 17), radius * math.sin(math.tau / 17))
    assert math.dist((radius, 0), other) == pytest.approx(8, rel=1e-12)


def test_no_sprocket() -> None:
    for bad in ((8, 9, 17), (8, 5, 3), (8, math.nan, 17)):
        with pytest.raises(Unbuildable):
            sprocket_outline(*bad)


def test_ratchet() -> None:
    """The area is that of triangles from the middle to each edge: half r R sin of the angle."""
    outline = ratchet_outline(12, 30, 3)
    step = math.tau / 12
    assert area(outline) == pytest.approx(12 * 15 * 12 * math.sin(step) / 2, rel=1e-9)
    assert least_and_most(outline)[1][0] == pytest.approx(15)
    undercut = ratchet_outline(12, 30, 3, 10)
    assert area(undercut) < area(outline)


def test_ratchet_that_cannot_be() -> None:
    with pytest.raises(Unbuildable):
        ratchet_outline(12, 30, 15)


def test_dovetail_width() -> None:
    """Formulas of Machinery's Handbook, Dovetail Slides: narrow 30, deep 10, 60°."""
    least, most = least_and_most(dovetail(30, 10, 60))
    assert most[0] - least[0] == pytest.approx(41.547, abs=2e-4)


def test_working_coils_of_a_spring() -> None:
    """Sadhu Singh, Machine Design-I, Ex 8.1: index 8, wire 4.25 mm, 6.25 N/mm."""
    assert working_coils(4.25, 8 * 4.25, 6.25, 84_000) == pytest.approx(14, abs=0.1)


def test_spring_coils_and_pitch_in_inches() -> None:
    """T.H. Wentzell, Machine Design, Ex 8.2: wire 0.105, mean 0.62, 35 lb at 0.5 in."""
    coils = working_coils(0.105, 0.62, 70, 11.85e6)
    assert coils + 2 == pytest.approx(12.79, abs=0.005)
    assert rate(0.105, 0.62, coils, 11.85e6) == pytest.approx(70, rel=1e-12)


def test_solid_length() -> None:
    """(n + 2) d with ground ends (EN 13906-1, from memory)."""
    assert solid_length(2, 6) == 16


@NEEDS_KERNEL
def test_a_ground_spring_fills_its_free_length() -> None:
    solid = measured(compression_spring(1, 10, 6, 25))
    assert solid.pieces == 1
    assert (solid.envelope[0][0], solid.envelope[1][0]) == pytest.approx((0, 25), abs=1e-3)
    assert solid.envelope[1][1] == pytest.approx(5.5, abs=0.02)


@NEEDS_KERNEL
def test_volume_of_a_spring_is_its_wire() -> None:
    """Pappus-Guldin; to 1e-3 for the pitch that grows in the end coils, 1e-4 for an open coil."""
    spring = compression_spring(1, 10, 6, 25, is_ground=False)
    assert isinstance(spring, Coil)
    wire = wire_length(10, spring.pitch, 6) + wire_length(10, 1.02, 2)
    assert measured(spring).volume_mm3 == pytest.approx(math.pi / 4 * wire, rel=1e-3)
    ground = compression_spring(1, 10, 6, 25)
    assert isinstance(ground, Cut)
    assert measured(ground).volume_mm3 < measured(ground.form).volume_mm3


@NEEDS_KERNEL
@pytest.mark.parametrize("spring", [extension_spring(0.8, 6, 8), torsion_spring(1, 8, 4, 15)])
def test_springs_with_ends_are_one_piece(spring: object) -> None:
    from binder_solid.forms import Wire

    assert isinstance(spring, Wire)
    solid = measured(spring)
    length = sum(math.dist(a, b) for a, b in zip(spring.points, spring.points[1:], strict=False))
    assert solid.pieces == 1
    # chords are shorter than the line through their ends by some thousandths
    assert solid.volume_mm3 == pytest.approx(math.pi / 4 * spring.wire**2 * length, rel=5e-3)


def test_a_spring_with_no_room_is_refused() -> None:
    with pytest.raises(Unbuildable, match="shorter"):
        compression_spring(1, 10, 6, 7)


@NEEDS_KERNEL
def test_a_sprocket_is_a_body() -> None:
    solid = measured(Raised(sprocket_outline(8, 5, 17), 2.8))
    assert solid.pieces == 1
    assert solid.volume_mm3 == pytest.approx(2.8 * area(sprocket_outline(8, 5, 17)), rel=1e-9)
