"""A lever hung on two points: its remedies are those of points, not of a pin in a bore.

A point in a cone has no bore to bush and no shoulder to ease: shake and stiffness are both set by
the screw, which its nut then locks. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import Design
from binder.compiler import Outcome
from binder_plugins.running.tracing import faults, numbered

Compile = Callable[..., Outcome]
SPEC = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  post:
    material: mild steel
    block: {length: 16 mm, width: 12 mm, height: 30 mm}
    features:
      seat: {tapped: M4, on: left, depth: through, at: middle}
      hole: {reamed: to suit, on: front, depth: through, at: "8 mm from left, 6 mm from top"}
  lever:
    material: mild steel
    block: {length: 20 mm, width: 12 mm, height: 12 mm}
    features:
      pivot: {centred: 1 mm, on: left, each_end: true}
      hole: {reamed: to suit, on: front, depth: through, at: middle}
  screw:
    material: silver steel
    quantity: 2
    turned:
      - {name: point, taper: 1 mm to 4 mm, length: 2.6 mm}
      - {name: shank, diameter: 4 mm, length: 20 mm}
    features: {thread: {screwed: M4, on: shank, length: 15 mm}}
  pin: {material: silver steel, turned: [{name: journal, diameter: 4 mm, length: 40 mm}]}
bought:
  nut: {what: M4 nut, quantity: 2}
joints:
  screw in post: {threaded: [screw.thread, post.seat]NUT}
  swings: {hinged: ENDS}
"""
ON_POINTS, ON_A_PIN = "[screw.point, lever.pivot]", "[pin.journal, lever.hole]"


def designed(compile_text: Compile, ends: str, nut: str) -> Design:
    outcome = compile_text(SPEC.replace("ENDS", ends).replace("NUT", nut))
    assert outcome.design is not None, [one.message for one in outcome.findings]
    return outcome.design


def cures(design: Design) -> str:
    joints = numbered(design)
    own = {n for n, joint in enumerate(joints, 1) if joint.name == "swings"}
    found = [
        one.cure for each in faults(joints, design) for one in each.causes if own & {*one.numbers}
    ]
    assert found
    return "; ".join(found)


@pytest.mark.parametrize("is_turned", [False, True])
def test_a_hinge_on_points_is_set_by_its_screw(compile_text: Compile, *, is_turned: bool) -> None:
    ends = "[lever.pivot, screw.point]" if is_turned else ON_POINTS
    said = cures(designed(compile_text, ends, ", held_by: nut"))
    assert "slack the lock nut, turn the point in till the shake is gone" in said
    assert not any(word in said for word in ("bush", "shoulder", "polish", "the pin"))


def test_where_no_nut_locks_the_point_none_is_slacked(compile_text: Compile) -> None:
    said = cures(designed(compile_text, ON_POINTS, ""))
    assert "set one point in till the shake is gone" in said
    assert "nut" not in said


def test_a_pin_keeps_the_remedies_of_a_pin(compile_text: Compile) -> None:
    said = cures(designed(compile_text, ON_A_PIN, ", held_by: nut"))
    assert "ease the shoulder" in said
    assert "bush the bore" in said
    assert "point" not in said
