"""DXF read back by a general library: same lengths, same circles, on their layers."""

from __future__ import annotations

import io
import math
from collections import Counter
from collections.abc import Callable
from typing import Any

import dxfgrabber
import pytest

from binder_plugins.templates.dxf import dxf_of
from binder_plugins.templates.files import LAYERS
from binder_plugins.templates.wanted import Template
from binder_solid.lines import length
from tests.plugins.templates.models import BED, BRACKET, COVER, FRAME, LEVER
from tests.solid.needs_kernel import NEEDS_KERNEL

Laid = Callable[[str], list[Template]]
Entity = Any  # of a library without types
Entities = list[Entity]


def read_back(one: Template) -> Entities:
    text = dxf_of(one.edges, LAYERS).decode("ascii").replace("\r\n", "\n")
    drawing = dxfgrabber.read(io.StringIO(text))
    assert drawing.dxfversion == "AC1009"  # release 12
    assert {layer.name for layer in drawing.layers} == {layer.upper() for layer in LAYERS}
    return list(drawing.entities)


def long(one: Entity) -> float:
    """The length of an entity in drawing units."""
    if one.dxftype == "LINE":
        return math.dist(one.start, one.end)
    if one.dxftype == "CIRCLE":
        return 2 * math.pi * float(one.radius)
    if one.dxftype == "ARC":
        return math.radians((one.end_angle - one.start_angle) % 360) * float(one.radius)
    raise AssertionError(one.dxftype)


def on(entities: Entities, layer: str) -> Entities:
    return [one for one in entities if one.layer == layer]


def perimeter(document: Entities) -> float:
    return sum(map(long, on(document, "OUTLINE")))


@pytest.mark.parametrize("parts", [LEVER, FRAME, BRACKET, COVER])
def test_the_outline_is_as_long_as_it_is_written(laid: Laid, parts: str) -> None:
    (one,) = laid(parts)
    assert perimeter(read_back(one)) == pytest.approx(length(one.flat.outline), abs=1e-4)


@NEEDS_KERNEL
@pytest.mark.parametrize("parts", [LEVER, FRAME, BRACKET, COVER])
def test_the_kernel_cuts_the_same_lines(laid: Laid, cut: Laid, parts: str) -> None:
    (plain,), (made,) = laid(parts), cut(parts)
    one, other = read_back(plain), read_back(made)
    assert perimeter(one) == pytest.approx(perimeter(other), abs=1e-4)
    assert circles(one) == circles(other)


def circles(document: Entities) -> Counter[tuple[float, float, float]]:
    """Holes by place and radius."""
    return Counter(
        (round(one.center[0], 3), round(one.center[1], 3), round(one.radius, 3))
        for one in on(document, "HOLE")
    )


def test_a_lever_by_hand(laid: Laid) -> None:
    # Two sides of 50 mm, one of 20 mm, and half a circle of 10 mm: own arithmetic.
    (one,) = laid(LEVER)
    document = read_back(one)
    assert perimeter(document) == pytest.approx(50 + 50 + 20 + math.pi * 10, abs=1e-4)
    assert circles(document) == Counter({(50.0, 10.0, 3.0): 1})


def test_a_pitch_circle_by_hand(laid: Laid) -> None:
    (one,) = laid(FRAME)
    found = circles(read_back(one))
    assert found[(100.0, 120.0, 20.0)] == 1
    for n in range(6):
        turn = math.radians(60 * n)
        x, y = round(100 + 40 * math.cos(turn), 3), round(120 + 40 * math.sin(turn), 3)
        assert found[(x, y, 2.0)] == 1
    for x, y in ((10.0, 10.0), (410.0, 10.0), (10.0, 250.0), (410.0, 250.0)):
        assert found[(x, y, 2.5)] == 1
    assert found.total() == 11


def test_bend_lines_run_across_the_blank(laid: Laid) -> None:
    (one,) = laid(BRACKET)
    lines = on(read_back(one), "BEND")
    assert [long(line) for line in lines] == pytest.approx([30.0, 30.0])
    assert [line.start[0] for line in lines] == pytest.approx(
        [bend.middle for bend in one.flat.bends], abs=1e-6
    )


@NEEDS_KERNEL
def test_what_does_not_go_through_is_marked_and_not_cut(cut: Laid) -> None:
    (one,) = cut(BED)
    document = read_back(one)
    assert perimeter(document) == pytest.approx(2 * (150 + 50), abs=1e-4)
    assert {radius for _, _, radius in circles(document)} == {2.0}
    # The sides of the shallow slot, each as long as the bed.
    sides = [long(line) for line in on(document, "MARK") if line.dxftype == "LINE"]
    assert sides == pytest.approx([150.0, 150.0])


def test_the_same_lines_give_the_same_bytes(laid: Laid) -> None:
    one, two = (dxf_of(laid(LEVER)[0].edges, LAYERS) for _ in range(2))
    assert one == two
    assert one.isascii()
    assert one.endswith(b"  0\r\nEOF\r\n")
