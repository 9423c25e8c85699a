"""Long parts with many views: two sheets that can be read for one that cannot."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from binder.compiler import Outcome
from binder_drafting import Note, Request, draft
from binder_plugins.drawings.two_sheets import drafted
from tests.plugins.drawings.test_choices import design_of, request_of

Compile = Callable[..., Outcome]
# Callouts on five faces; the last two have no place beside the others.
WAY = """
  bed:
    material: mild steel
    block: {length: 180 mm, width: 50 mm, height: 6 mm}
    features:
      way: {dovetailed: 16 mm, on: top, depth: 3 mm, inside: true}
      end: {tapped: M3, on: left, depth: 5 mm, off: 2, pattern: 2 off 36 mm apart}
      gib: {tapped: M2, on: back, depth: 5 mm, at: "20 mm from left, middle"}
      a: {drilled: 3.4 mm, on: underside, depth: through, at: "20 mm from left, 6 mm from front"}
      b: {drilled: 4.4 mm, on: underside, depth: through, at: "40 mm from left, 6 mm from front"}
"""


def crowded(request: Request) -> Request:
    """With callouts of five long lines on the views from behind and below, so that one is full."""
    lines = tuple(f"line {n} of a long callout that needs its room" for n in range(5))
    return replace(
        request,
        sizes=tuple(
            replace(one, lines=(*one.lines, *lines))
            if isinstance(one, Note) and one.view in ("back", "underside", "left")
            else one
            for one in request.sizes
        ),
    )


def test_views_that_one_sheet_makes_too_small_go_on_two(compile_text: Compile) -> None:
    """36 mm of paper for a bed of 180 show no hole: 1:5. Two sheets hold it at 1:2 (ISO 5455)."""
    request = crowded(request_of(design_of(compile_text, WAY), "bed"))
    assert draft(request).scale == "1 : 5"
    first, second = drafted(request)
    assert first.scale == second.scale == "1 : 2"
    assert not first.problems + second.problems
    told = [label.id for sheet in (first, second) for label in sheet.placed if label.id]
    assert {one.id for one in request.sizes} <= set(told)
    assert len(told) == len(set(told))
    names = [view.name for sheet in (first, second) for view in sheet.views]
    assert sorted(names) == sorted(view.name for view in request.views)
    assert "front" in {view.name for view in first.views}


def test_what_one_sheet_shows_well_stays_on_it(compile_text: Compile) -> None:
    request = request_of(design_of(compile_text, WAY), "bed")
    (sheet,) = drafted(replace(request, sizes=request.sizes[:3]))
    assert sheet.scale == "1 : 2"


@pytest.mark.parametrize("inside", ["", ", inside: true"])
def test_the_leader_of_a_dovetail_ends_on_a_flank(compile_text: Compile, inside: str) -> None:
    """Its middle is under the holes. Geometry: a slot of 14 has its flanks 7 from its middle.

    A tail 2.8 high, 14 at its root, is 14 + 2 x 2.8 / tan 60 = 17.233 at the face: 8.617.
    """
    parts = f"""
  slide:
    material: brass
    block: {{length: 34 mm, width: 24 mm, height: 8 mm}}
    features:
      tail: {{dovetailed: 14 mm, on: top, depth: 2.8 mm{inside}}}
      hole: {{drilled: 3 mm, on: top, depth: through, at: middle}}
"""
    request = request_of(design_of(compile_text, parts), "slide")
    (note,) = (one for one in request.sizes if isinstance(one, Note) and "dovetail" in one.lines[0])
    half = 7.0 if inside else 7.0 + 2.8 / 3**0.5
    assert sorted(at[1] for at in (note.at, *note.others)) == pytest.approx([12 - half, 12 + half])
