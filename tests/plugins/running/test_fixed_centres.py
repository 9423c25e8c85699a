"""Gears whose shafts run in one plate: no remedy asks for centres to be shifted.

A bore stays where it is bored: it is bushed off centre, or the part is made new; what is only
slightly tight is stoned or lapped. Common practice, no source.
"""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_plugins.running.tracing import faults, numbered

Compile = Callable[..., Outcome]
SPEC = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  frame:
    material: brass
    plate: {length: 80 mm, width: 30 mm, thickness: 6 mm}
    features:
      one: {reamed: to suit, depth: through, at: "20 mm from left, middle"}
      two: {reamed: to suit, depth: through, at: "50 mm from left, middle"}
      SLOT
  bracket:
    material: brass
    plate: {length: 30 mm, width: 30 mm, thickness: 6 mm}
    features: {own: {reamed: to suit, depth: through, at: middle}}
  axle: {material: silver steel, turned: [{name: journal, diameter: 4 mm, length: 20 mm}]}
  shaft: {material: silver steel, turned: [{name: journal, diameter: 4 mm, length: 20 mm}]}
  pinion:
    material: brass
    gear: {module: 1 mm, teeth: 20, width: 6 mm}
    features: {bore: {reamed: to suit, depth: through}}
  wheel:
    material: brass
    gear: {module: 1 mm, teeth: 40, width: 6 mm}
    features: {bore: {reamed: to suit, depth: through}}
joints:
  axle in frame: {runs_in: [axle.journal, frame.one], duty: slow and oiled}
  shaft in its: {runs_in: [shaft.journal, WALL], duty: slow and oiled}
  pinion on axle: {retained: [pinion.bore, axle.journal]}
  wheel on shaft: {retained: [wheel.bore, shaft.journal]}
drive:
  hand: {turns: [pinion], by: hand, speeds: [40 r/min]}
  mesh: {meshes: [pinion, wheel], teeth: [20, 40], module: 1 mm}
"""
SLOT = "slit: {slotted: 4 mm, length: 12 mm, depth: through, at: middle}"


@pytest.mark.parametrize(
    ("wall", "slot", "is_fixed"),
    [("frame.two", "", True), ("bracket.own", "", False), ("frame.two", SLOT, False)],
)
def test_centres_are_set_where_something_can_be_shifted(
    wall: str, slot: str, compile_text: Compile, *, is_fixed: bool
) -> None:
    design = compile_text(SPEC.replace("WALL", wall).replace("SLOT", slot)).design
    assert design is not None
    joints = numbered(design)
    mesh = next(n for n, one in enumerate(joints, 1) if one.name == "mesh")
    said = [one.cure for each in faults(joints, design) for one in each.causes
            if mesh in one.numbers]  # fmt: skip
    assert any(one.startswith("set the centres nearer") for one in said) != is_fixed
    assert any("set the centres wider until" in one for one in said) != is_fixed
    assert any("bush one shaft's bores anew" in one for one in said) == is_fixed


def test_the_bush_goes_off_centre_by_what_the_play_is_over() -> None:
    """Play of a pair = 2 tan 20° × the widening (ISO 21771): 1.37 mm for a mm, told as 1.4."""
    assert 1 / (2 * math.tan(math.radians(20))) == pytest.approx(1.4, abs=0.05)
