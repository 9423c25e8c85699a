"""Bodies measured by the kernel against closed formulas, to 1e-6 of each figure."""

from __future__ import annotations

import math

import pytest

from binder_solid import bodies, outlines
from binder_solid.forms import (
    TURNED,
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
    Mirrored,
    Outline,
    Placed,
    Raised,
    Revolved,
    Ring,
    Shared,
    Straight,
)
from binder_solid.solids import measured
from tests.solid import closed_forms as by
from tests.solid.needs_kernel import NEEDS_KERNEL

pytestmark = NEEDS_KERNEL

HALF_DISC = Outline((5.0, 0.0), (Arc((0.0, 5.0), (-5.0, 0.0)), Straight((5.0, 0.0))))
QUARTER = Outline((0.0, 0.0), (Straight((0.0, 5.0)), Arc((5 * 0.6, 4.0), (5.0, 0.0))))
TRIANGLE = ((0.0, 0.0), (9.0, 0.0), (2.0, 6.0))
ELL = ((0.0, 0.0), (20.0, 0.0), (20.0, 6.0), (5.0, 6.0), (5.0, 14.0), (0.0, 14.0))
HEXAGON = tuple(
    (5 / math.cos(math.pi / 6) * math.cos(a), 5 / math.cos(math.pi / 6) * math.sin(a))
    for a in (math.radians(60 * n - 30) for n in range(6))
)
TEE = outlines.t_slot(6, 5, 12, 4)
TEE_POINTS = ((-3, 0), (-3, -5), (-6, -5), (-6, -9), (6, -9), (6, -5), (3, -5), (3, 0))
TAIL = ((-6.0, 0.0), (6.0, 0.0), (6 + 5 / math.sqrt(3), 5.0), (-6 - 5 / math.sqrt(3), 5.0))


def _at(x: float, y: float, z: float) -> Frame:
    return Frame((x, y, z))


def _slot_body(length: float, width: float, height: float) -> by.Body:
    reach, r = (length - width) / 2, width / 2
    half = by.half_cylinder(r, height)
    _, y, z = half.centre
    right = by.Body(
        half.volume,
        (y + reach, 0.0, z),
        by.diagonal(half.inertia[1][1], half.inertia[0][0], half.inertia[2][2]),
    )
    left = by.Body(half.volume, (-y - reach, 0.0, z), right.inertia)
    middle = by.moved(by.box(2 * reach, width, height), (-reach, -r, 0))
    return by.plus(middle, left, right)


SHAPES: dict[str, tuple[Form, by.Body]] = {
    "cube": (Box(7, 7, 7), by.box(7, 7, 7)),
    "board": (Box(120, 30, 4), by.box(120, 30, 4)),
    "rod": (Cylinder(3, 50), by.cylinder(3, 50)),
    "disc": (Cylinder(40, 2), by.cylinder(40, 2)),
    "turned bar": (bodies.round_bar(12, 30), by.along_x(by.cylinder(6, 30))),
    "cone": (Cone(6, 0, 15), by.cone(6, 15)),
    "frustum": (Cone(6, 2, 15), by.frustum(6, 2, 15)),
    "ball": (Ball(8), by.ball(8)),
    "turned hemisphere": (Revolved(QUARTER), by.hemisphere(5)),
    "ring": (Ring(20, 6), by.torus(20, 3)),
    "tube": (
        bodies.tube(20, 14, 25),
        by.along_x(by.less(by.cylinder(10, 25), by.cylinder(7, 25))),
    ),
    "half round": (Raised(HALF_DISC, 12), by.half_cylinder(5, 12)),
    "triangular prism": (
        Raised(outlines.polygon(TRIANGLE), 11),
        by.prism(TRIANGLE, 11),
    ),
    "angle section": (Raised(outlines.polygon(ELL), 40), by.prism(ELL, 40)),
    "hexagon bar": (Raised(outlines.hexagon(10), 18), by.prism(HEXAGON, 18)),
    "square bar": (
        bodies.square_bar(8, 20),
        by.along_x(by.moved(by.box(8, 8, 20), (-4, -4, 0))),
    ),
    "T section": (Raised(TEE, 30), by.prism(TEE_POINTS, 30)),
    "dovetail": (Raised(outlines.dovetail(12, 5), 30), by.prism(TAIL, 30)),
    "vee block piece": (
        Raised(outlines.vee(10, 90), 8),
        by.prism(((-5.0, 0.0), (0.0, -5.0), (5.0, 0.0)), 8),
    ),
    "slotted link": (Raised(outlines.slot(30, 8), 5), _slot_body(30, 8, 5)),
    "washer": (
        Raised(outlines.annulus(9, 4), 2),
        by.less(by.cylinder(9, 2), by.cylinder(4, 2)),
    ),
    "stepped spindle": (
        bodies.turned_steps([(10, 5), (6, 20), (8, 3)]),
        by.along_x(
            by.plus(
                by.cylinder(5, 5),
                by.moved(by.cylinder(3, 20), (0, 0, 5)),
                by.moved(by.cylinder(4, 3), (0, 0, 25)),
            )
        ),
    ),
    "plate with four holes": (
        Cut(
            Box(60, 40, 6),
            tuple(Cylinder(3, 8, _at(x, y, -1)) for x in (10, 50) for y in (10, 30)),
        ),
        by.less(
            by.box(60, 40, 6),
            *(by.moved(by.cylinder(3, 6), (x, y, 0)) for x in (10, 50) for y in (10, 30)),
        ),
    ),
    "block with a blind hole": (
        Cut(Box(30, 20, 15), (Cylinder(4, 10, _at(12, 8, 6)),)),
        by.less(by.box(30, 20, 15), by.moved(by.cylinder(4, 9), (12, 8, 6))),
    ),
    "drilled end": (
        Cut(bodies.round_bar(12, 30), (bodies.drilled(5, 18, point_angle=90),)),
        by.along_x(
            by.less(
                by.cylinder(6, 30),
                by.cylinder(2.5, 18),
                by.moved(by.cone(2.5, 2.5), (0, 0, 18)),
            )
        ),
    ),
    "counterbored block": (
        Cut(Box(20, 20, 12), (Cylinder(2, 14, _at(9, 11, -1)), Cylinder(4, 5, _at(9, 11, 8)))),
        by.less(
            by.box(20, 20, 12),
            by.moved(by.cylinder(2, 8), (9, 11, 0)),
            by.moved(by.cylinder(4, 4), (9, 11, 8)),
        ),
    ),
    "boss on a plate": (
        Joined((Box(40, 40, 5), Cylinder(8, 15, _at(20, 25, 0)))),
        by.plus(by.box(40, 40, 5), by.moved(by.cylinder(8, 10), (20, 25, 5))),
    ),
    "crank web with its pin": (
        Joined((Box(30, 10, 4), Cylinder(3, 12, _at(25, 5, 4)))),
        by.plus(by.box(30, 10, 4), by.moved(by.cylinder(3, 12), (25, 5, 4))),
    ),
    "placed block": (
        Placed(Box(4, 5, 6), Frame((10, 20, 30), TURNED.z, TURNED.x)),
        by.moved(by.along_x(by.box(4, 5, 6)), (10, 20, 30)),
    ),
    "mirrored angle": (
        Mirrored(Raised(outlines.polygon(ELL), 40)),
        by.moved(by.prism(ELL, 40), (0, 0, -40)),
    ),
    "common block": (
        Shared(Box(10, 10, 10), Box(10, 10, 10, _at(4, 3, 2))),
        by.moved(by.box(6, 7, 8), (4, 3, 2)),
    ),
    "eccentric": (
        bodies.eccentric(bodies.round_bar(20, 6), 2.5),
        by.moved(by.along_x(by.cylinder(10, 6)), (0, 0, 2.5)),
    ),
    "two pieces": (
        Cut(Box(30, 10, 10), (Box(4, 12, 12, _at(13, -1, -1)),)),
        by.plus(by.box(13, 10, 10), by.moved(by.box(13, 10, 10), (17, 0, 0))),
    ),
}


@pytest.mark.parametrize("name", SHAPES)
def test_volume_centre_and_inertia_agree_with_the_formula(name: str) -> None:
    form, known = SHAPES[name]
    solid = measured(form)
    size = max(abs(entry) for row in known.inertia for entry in row)
    assert solid.volume_mm3 == pytest.approx(known.volume, rel=1e-6)
    assert solid.centre == pytest.approx(known.centre, rel=1e-6, abs=1e-9)
    for row, expected in zip(solid.inertia, known.inertia, strict=True):
        assert row == pytest.approx(expected, rel=1e-6, abs=1e-9 * size)


def test_the_table_of_shapes_is_long_enough() -> None:
    assert len(SHAPES) >= 30


# Volumes alone: Pappus-Guldin for what is turned or swept, prismoids, and known intersections
# (Machinery's Handbook, Mensuration). The last column is how exact it is to be: a spline goes
# through points of a curve, and where round faces cross the kernel goes by points too.
VOLUMES: dict[str, tuple[Form, float, float]] = {
    "spherical cap": (
        Cut(Ball(10), (Box(20, 20, 20, _at(-10, -10, -14)),)),
        math.pi * 4**2 * (3 * 10 - 4) / 3,
        1e-6,
    ),
    "bent rod": (
        Bent(((0, 0, 0), (30, 0, 0), (30, 20, 0), (30, 20, 40)), 5, 3),
        math.pi * 1.5**2 * (90 - 4 * 5 + 5 * math.pi),
        1e-6,
    ),
    "round groove": (
        bodies.round_pulley(30, 8, 3, 5),
        math.pi * (15**2 - 2.5**2) * 8
        - 2
        * math.pi
        * (14.25 * 1.5 * 3 + (math.pi * 1.5**2 / 2) * (13.5 - 4 * 1.5 / (3 * math.pi))),
        1e-6,
    ),
    "vee groove": (
        bodies.vee_pulley(40, 12, 5, 90, 0, 6),
        math.pi * (20**2 - 3**2) * 12 - 2 * math.pi * 25 * (20 - 5 / 3),
        1e-6,
    ),
    "quarter of a ring": (
        Revolved(outlines.circle(2, (0.0, 10.0)), turn=90.0),
        math.pi * 2**2 * 10 * math.pi / 2,
        1e-6,
    ),
    "tapered sides": (
        Raised(outlines.rectangle(20, 12), 6, draft=math.degrees(math.atan(0.25))),
        6 / 6 * (20 * 12 + 4 * 18.5 * 10.5 + 17 * 9),
        1e-6,
    ),
    "two equal cylinders crossed": (
        Shared(
            Cylinder(5, 20, _at(0, 0, -10)),
            Cylinder(5, 20, Frame((-10, 0, 0), (1, 0, 0), (0, 1, 0))),
        ),
        16 * 5**3 / 3,
        1e-6,
    ),
    "ball with a hole": (  # napkin ring: what is left hangs on its height alone
        Cut(Ball(10), (Cylinder(6, 30, _at(0, 0, -15)),)),
        math.pi * 16**3 / 6,
        1e-6,
    ),
    "coil": (
        Coil(10, 5, 6, 2),
        math.pi * 6 * math.hypot(2 * math.pi * 10, 5),
        1e-4,
    ),
    "paraboloid": (  # half the cylinder round it
        Revolved(
            Outline(
                (0.0, 0.0),
                (
                    Curve(tuple((9 * (n / 24) ** 2, 6 * n / 24) for n in range(1, 25))),
                    Straight((9.0, 0.0)),
                ),
            )
        ),
        math.pi * 6**2 * 9 / 2,
        1e-4,
    ),
}


@pytest.mark.parametrize("name", VOLUMES)
def test_volume_agrees_with_the_formula(name: str) -> None:
    form, volume, exactness = VOLUMES[name]
    assert measured(form).volume_mm3 == pytest.approx(volume, rel=exactness)


def test_area_and_envelope() -> None:
    solid = measured(bodies.round_bar(12, 30))
    assert solid.area_mm2 == pytest.approx(math.pi * 12 * 30 + 2 * math.pi * 36, rel=1e-9)
    assert solid.envelope[0] == pytest.approx((0, -6, -6), abs=1e-6)
    assert solid.envelope[1] == pytest.approx((30, 6, 6), abs=1e-6)


def test_pieces_are_counted() -> None:
    assert measured(SHAPES["two pieces"][0]).pieces == 2
    assert measured(SHAPES["cube"][0]).pieces == 1


def test_envelope_of_a_coil() -> None:
    least, most = measured(Coil(10, 5, 6, 2)).envelope
    assert most[0] == pytest.approx(11, abs=0.02)
    assert (least[1], most[1]) == pytest.approx((-11, 11), abs=0.02)
