"""Screws of two joints in one piece: where they run, how near they come, and what tells it."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import Design
from binder.compiler import Outcome
from binder_plugins.fasteners.screw_bodies import Body, bodies
from binder_plugins.fasteners.screws_meeting import between

Compile = Callable[..., Outcome]
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
PLATE = """material: brass, block: {length: 30 mm, width: 30 mm, height: 6 mm},
    features: {h: {drilled: to suit, on: top, depth: through}}"""
OAK = "material: oak, board: {length: 200 mm, width: 60 mm, thickness: 32 mm}"
STEEL = "material: mild steel, block: {length: 200 mm, width: 60 mm, height: 32 mm}"
WOOD = '"no. 6 x 1 in brass wood screw, round head"'


def two(base: str, first: str, second: str, at: int = 185) -> str:
    """A foot on top of a base and a clip on its right end, over one another."""
    return f"""{HEAD}  base: {{{base}}}
  foot: {{{PLATE}}}
  clip: {{{PLATE}}}
joints:
  foot on base: {{{first}, places: ["{at} mm from left, 30 mm from front"]}}
  clip on base: {{{second}, places: ["30 mm from front, 16 mm from underside"]}}
"""


def found(compile_text: Compile, text: str) -> set[str]:
    return {one.code.name for one in compile_text(text).findings}


def screwed_twice(compile_text: Compile) -> Design:
    first, second = "screwed: [foot.h, base.top]", "screwed: [clip.h, base.right]"
    told = f"fastener: {WOOD}"
    design = compile_text(two(OAK, f"{first}, {told}", f"{second}, {told}")).design
    assert design is not None
    return design


def test_a_wood_screw_runs_as_deep_as_it_holds(compile_text: Compile) -> None:
    # 1 in = 25.4 through a plate of 6: 19.4 in the oak, down from its top at 32, in from its end.
    design = screwed_twice(compile_text)
    spans = [
        (one.joint.name, one.start, one.end) for one in bodies(design) if one.copy.item == "base"
    ]
    (_, top, tip), (_, mouth, end) = spans
    assert [top[2], tip[2], mouth[0], end[0]] == pytest.approx([32, 12.6, 200, 180.6])


@pytest.mark.parametrize(("at", "meets"), [(185, True), (170, False)])
def test_a_bolt_through_the_wood_counts(compile_text: Compile, at: int, *, meets: bool) -> None:
    # The screw ends at 180.6: the bolt at 185 crosses it, at 170 it is 10.6 clear of 2 × 4.
    first = "bolted: [foot.h, base.top], fastener: M4 hexagon bolt"
    second = f"screwed: [clip.h, base.right], fastener: {WOOD}"
    codes = found(compile_text, two(OAK, first, second, at))
    assert ("screws-meet" in codes) == meets


def test_in_metal_the_holes_are_judged_as_features(compile_text: Compile) -> None:
    first = "bolted: [foot.h, base.top], fastener: M4 hexagon bolt"
    second = "screwed: [clip.h, base.right], fastener: M3 x 25 cap screw"
    codes = found(compile_text, two(STEEL, first, second))
    assert "cross-hole-meets-thread" in codes
    assert "screws-meet" not in codes


@pytest.mark.parametrize(
    ("start", "end", "apart"),
    [
        # Geometry: crossing 3 over the middle; past the end, by a 3-4-5 triangle; side by side.
        ((5.0, -5.0, 3.0), (5.0, 5.0, 3.0), 3.0),
        ((13.0, 4.0, 0.0), (13.0, 9.0, 0.0), 5.0),
        ((0.0, 7.0, 0.0), (10.0, 7.0, 0.0), 7.0),
    ],
)
def test_the_nearest_places_of_two(
    compile_text: Compile,
    start: tuple[float, float, float],
    end: tuple[float, float, float],
    apart: float,
) -> None:
    joint = f"fastener: {WOOD}"
    text = two(
        OAK, f"screwed: [foot.h, base.top], {joint}", f"screwed: [clip.h, base.right], {joint}"
    )
    design = compile_text(text).design
    assert design is not None
    any_one = next(bodies(design))
    one = Body(any_one.joint, any_one.copy, (0.0, 0.0, 0.0), (10.0, 0.0, 0.0), 3.0)
    other = Body(any_one.joint, any_one.copy, start, end, 3.0)
    assert between(one, other) == pytest.approx(apart)
    assert between(other, one) == pytest.approx(apart)
