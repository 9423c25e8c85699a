"""Wire: an eye is flattened before it is drilled, wide enough for its hole."""

from __future__ import annotations

import math
import re

import pytest

from binder_solid.facts import FormFact
from binder_solid.solids import measured
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf
from tests.solid.needs_kernel import NEEDS_KERNEL

EYE = (
    "{material: mild steel, stock: 3 mm wire, cut: 40 mm, features: {eye: {drilled: %g mm,"
    " across: outside, at: 3 mm from right, depth: through}}}"
)


def test_an_eye_is_flattened_before_it_is_drilled(route_of: RouteOf) -> None:
    """⌀1.6 in wire of 3 mm leaves 0.7 mm beside it; flat it is twice as wide as its hole. What
    is hammered keeps its section (no metal is lost): 7.07 mm². Common practice, no source."""
    acts = route_of(EYE % 1.6).acts
    told = [act.act for act in acts if act.feature == "eye"]
    assert told.index("flatten") < told.index("spot") < told.index("drill")
    flat = next(act.what for act in acts if act.act == "flatten")
    found = re.search(r"to ([\d.]+) mm thick, ([\d.]+) mm wide", flat)
    assert found is not None
    thick, wide = map(float, found.groups())
    assert math.isclose(wide, 2 * 1.6)
    assert math.isclose(thick * wide, math.pi / 4 * 9, rel_tol=0.02)


HOOK = (
    "{material: mild steel, stock: 3 mm wire, wire: {diameter: 3 mm, bend: 2.5 mm, points: [{x: 0"
    " mm, y: 0 mm}, {x: 28 mm, y: 0 mm}, {x: 28 mm, y: 8 mm}, {x: 20 mm, y: 8 mm}]}, features:"
    " {eye: {drilled: 1.6 mm, on: top, at: '3 mm from left, 1.5 mm from front', depth: through},"
    " tip: {filed: rounded}}}"
)


def test_bends_are_told_along_the_wire(route_of: RouteOf) -> None:
    """Two right angles at a mean radius of 4 mm: the first begins 28 − 4 mm from the end, the
    second a quarter of a circle later, 24 + 2π (geometry). The eye is bored square to the bends'
    plane; what is filed is filed before."""
    acts = route_of(HOOK).acts
    told = [act.what for act in acts if act.act == "bend"]
    starts = [float(re.findall(r"beginning ([\d.]+) mm", what)[0]) for what in told]
    assert len(starts) == 2
    assert math.isclose(starts[0], 24.0)
    assert math.isclose(starts[1], 24 + 2 * math.pi, abs_tol=0.06)
    assert "the eye lies flat in the plane of the bends" in told[0]
    order = [act.act for act in acts]
    tip = next(n for n, act in enumerate(acts) if act.feature == "tip")
    assert order.index("flatten") < order.index("drill") < tip < order.index("bend")


@NEEDS_KERNEL
def test_the_flat_end_of_an_eye_is_drawn(plan: Plan) -> None:
    """3 mm from the end and the eye's 3.2 mm: 6.2 mm. Hammered metal is not lost: the straight
    wire has 40.566 mm × π/4 × 9, less the hole 1.6 mm wide through 2.2 mm (geometry)."""
    design = plan(f"{HEAD}  part: {HOOK}\n").design
    assert design is not None
    fact = design.facts.about(FormFact, "part")
    assert fact is not None
    notes = [one.note for one in fact.located if one.name.startswith("flat")]
    assert all(one.ids for one in fact.located)  # by which the drawing places them
    assert notes == ["flat 6.2 mm long, 2.2 mm thick, 3.2 mm wide"]
    wanted = 40.566 * math.pi / 4 * 9 - math.pi / 4 * 1.6**2 * 2.2
    assert measured(fact.form).volume_mm3 == pytest.approx(wanted, rel=0.002)


def test_a_small_hole_needs_no_flat(route_of: RouteOf) -> None:
    """⌀1 in wire of 3 mm has its own diameter beside it on either side."""
    acts = route_of(EYE % 1.0).acts
    assert not any(act.act == "flatten" for act in acts)


def test_its_place_along_is_told(route_of: RouteOf) -> None:
    spot = next(act for act in route_of(EYE % 1.0).acts if act.act == "spot")
    assert "3 mm from the right-hand end" in spot.what


@pytest.mark.parametrize(
    ("part", "long"),
    # 28 + 8 + 8 less two corners of 4 mm mean radius, 2 × (8 - 2π) = 40.566; the straight one 40.
    [(HOOK, "40.6 mm"), (EYE % 1.0, "40 mm")],
)
def test_what_is_cut_over_comes_off_before_anything_is_measured(
    part: str, long: str, route_of: RouteOf
) -> None:
    """Bends and eyes are measured from an end. Common practice, no source."""
    acts = route_of(part).acts
    assert acts[1].what == f"file one end square, then the other to {long} over all"
    assert acts[0].act == "saw"
