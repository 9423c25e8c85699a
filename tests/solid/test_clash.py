"""Parts in one another's way, by how much, and that touching is none."""

from __future__ import annotations

import math

import pytest

from binder_solid.forms import Box, Cylinder, Frame, Raised
from binder_solid.outlines import annulus
from binder_solid.solid import NamedForm
from binder_solid.solids import clashes
from tests.solid.needs_kernel import NEEDS_KERNEL

pytestmark = NEEDS_KERNEL
PLATE = NamedForm("plate", Box(10, 10, 2))


def test_a_pin_sunk_into_a_plate_clashes_by_its_volume() -> None:
    found = clashes([PLATE, NamedForm("pin", Cylinder(1, 8), Frame((5, 5, 1)))])
    assert [(clash.first, clash.second) for clash in found] == [("plate", "pin")]
    assert found[0].volume_mm3 == pytest.approx(math.pi, rel=1e-6)
    assert found[0].least == pytest.approx((4, 4, 1), abs=1e-6)
    assert found[0].most == pytest.approx((6, 6, 2), abs=1e-6)


def test_touching_faces_are_no_clash() -> None:
    on_top = NamedForm("block", Box(5, 5, 5), Frame((0, 0, 2)))
    beside = NamedForm("other", Box(5, 5, 5), Frame((10, 0, 0)))
    assert clashes([PLATE, on_top, beside]) == ()


def test_a_shaft_that_fills_its_bush_is_no_clash() -> None:
    bush = NamedForm("bush", Raised(annulus(6, 4), 10))
    assert clashes([bush, NamedForm("shaft", Cylinder(4, 30), Frame((0, 0, -10)))]) == ()
    assert len(clashes([bush, NamedForm("shaft", Cylinder(4.05, 30), Frame((0, 0, -10)))])) == 1


def test_boxes_that_cross_where_the_parts_do_not_are_no_clash() -> None:
    ring = NamedForm("ring", Raised(annulus(20, 18), 5))
    assert clashes([ring, NamedForm("hub", Cylinder(5, 5))]) == ()


def test_pairs_that_are_allowed_are_passed_over() -> None:
    parts = [PLATE, NamedForm("pin", Cylinder(1, 8), Frame((5, 5, 1)))]
    assert clashes(parts, {("pin", "plate")}) == ()
