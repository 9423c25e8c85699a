"""Which sizes place a feature on a drawing; common practice, no source.

Nothing begins along a slot from end to end; a hole in an upright face is scribed at its height;
holes for gib screws stand about the middle of their slot.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_solid.facts import FormFact, Located

Compile = Callable[..., Outcome]
FormOf = Callable[..., FormFact]
BLOCK = "block: {length: 60 mm, width: 30 mm, height: 20 mm}"


def told(form: FormFact) -> list[tuple[str, float, float]]:
    (one,) = form.located
    return [(told.along, told.start, told.end) for told in one.told]


@pytest.mark.parametrize(
    ("feature", "places"),
    [
        ("way: {slotted: 6 mm, on: top, depth: 3 mm, at: 20 mm from left}", []),
        ("way: {slotted: 6 mm, on: top, depth: 3 mm, at: 9 mm from front}", [("y", 0, 9)]),
        (
            "way: {slotted: 6 mm, on: top, depth: 3 mm, length: 20 mm, at: 20 mm from left}",
            [("x", 0, 20)],
        ),
        (
            "way: {slotted: 6 mm, on: top, runs: across, depth: 3 mm, at: 20 mm from left}",
            [("x", 0, 20)],
        ),
    ],
)
def test_a_slot_from_end_to_end_has_no_place_along_itself(
    form_of: FormOf, feature: str, places: list[tuple[str, float, float]]
) -> None:
    assert told(form_of(BLOCK, feature, allowed=("place-not-read",))) == places


@pytest.mark.parametrize(
    ("feature", "says"),
    [
        ("hole: {drilled: 3 mm, on: front, depth: 8 mm}", "10 mm from underside"),
        (
            "hole: {drilled: 3 mm, on: front, depth: 8 mm, at: 6 mm from left}",
            "10 mm from underside",
        ),
        (
            "hole: {tapped: M3, on: left, depth: 6 mm, off: 2, pattern: 12 mm apart}",
            "12 mm apart, 10 mm from underside",
        ),
        ("hole: {drilled: 3 mm, on: front, depth: 8 mm, at: 6 mm from top}", ""),
        ("hole: {drilled: 3 mm, on: top, depth: 8 mm}", ""),
    ],
)
def test_a_hole_in_an_upright_face_has_its_height(form_of: FormOf, feature: str, says: str) -> None:
    (one,) = form_of(BLOCK, feature).located
    assert one.note.endswith(says)
    assert ("underside" in one.note) is bool(says)


SLIDE = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  bed:
    material: mild steel
    block: {length: 180 mm, width: 50 mm, height: 6 mm}
    features: {way: {dovetailed: to suit, on: top, inside: true%s}}
  slide:
    material: brass
    block: {length: 34 mm, width: 24 mm, height: 8 mm}
    features: {tail: {dovetailed: to suit, on: underside}}
joints:
  slide on bed: {dovetailed: [slide.tail, bed.way], width: 14 mm, depth: 3 mm, gib: 1.5 mm}
"""


def gib_holes(compile_text: Compile, at: str) -> list[Located]:
    design = compile_text(SLIDE % at).design
    assert design is not None
    form = design.facts.about(FormFact, "bed")
    assert form is not None
    return [one for one in form.located if one.name == "gib_screws"]


def test_the_holes_of_gib_screws_are_drawn_where_they_stand(compile_text: Compile) -> None:
    """Three in a strip of 34 about 35: a sixth, the half and five sixths of it; half way down."""
    (holes,) = gib_holes(compile_text, ", at: 35 mm from left")
    assert [spot[0] for spot in holes.spots] == pytest.approx([35 - 34 / 3, 35, 35 + 34 / 3])
    assert {spot[1:] for spot in holes.spots} == {(50.0, 4.5)}
    told = "at 23.7 mm, 35 mm, 46.3 mm from left (on the right from behind), 1.5 mm from top"
    assert told in holes.note
    assert holes.note.startswith("3 × tap M2")
    assert len(holes.tools) == 3


def test_where_nothing_tells_the_middle_of_the_slide_none_are_drawn(compile_text: Compile) -> None:
    assert not gib_holes(compile_text, "")
