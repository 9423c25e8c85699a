"""A tapped hole as it is drawn: the drill to its own depth, the thread to its own.

Source: ISO 6410-1: the major diameter of an inside thread is a thin line, and ends where the thread
is full. The share of the drill across the crests is the standard's own near-enough.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_drafting import ThreadLine
from binder_plugins.drawings.tapped import ROOT, drilled_to, inside_thread
from binder_solid.facts import FormFact
from binder_solid.forms import Cylinder
from binder_solid.views import Edge, StraightLine, View

SPEC = """format: 1
model: {title: Block, issue: A, units: mm}
parts:
  block:
    material: mild steel
    block: {length: 30 mm, width: 30 mm, height: 30 mm}
    features:
      hole: {tapped: M4, on: top, depth: DEPTH, at: middle}
"""


def form_of(compile_text: Callable[..., Outcome], depth: str) -> tuple[FormFact, dict[str, str]]:
    design = compile_text(SPEC.replace("DEPTH", depth)).design
    assert design is not None
    fact = design.facts.about(FormFact, "block")
    assert fact is not None
    return fact, drilled_to(fact, design)


def test_a_blind_hole_is_cut_to_the_drill_and_threaded_to_its_depth(
    compile_text: Callable[..., Outcome],
) -> None:
    fact, told = form_of(compile_text, "8 mm")
    (hole,) = fact.located
    drill = next(tool for tool in hole.tools if isinstance(tool, Cylinder))
    assert hole.depth == 8.0
    # Four threads of the tap's lead at least lie under the full ones; common practice, no source.
    assert drill.height >= 8.0 + 4 * 0.7 - 1e-6
    assert told["hole"] == f"tap M4 × 8 mm, drill ⌀3.3 mm × {drill.height:g} mm"


def test_a_hole_right_through_has_no_second_depth(compile_text: Callable[..., Outcome]) -> None:
    _, told = form_of(compile_text, "through")
    assert told == {}


@pytest.mark.parametrize("kind", ["visible", "hidden"])
def test_the_thin_line_stands_outside_the_wall_and_ends_with_the_thread(
    compile_text: Callable[..., Outcome], kind: str
) -> None:
    fact, _ = form_of(compile_text, "8 mm")
    (hole,) = fact.located
    x, _, top = hole.spots[0]
    radius = (hole.diameter or 0.0) / 2
    wall = Edge(kind, StraightLine((x + radius, top), (x + radius, top - 10.8)))  # type: ignore[arg-type]
    other = Edge("visible", StraightLine((x + 9, top), (x + 9, top - 10.8)))
    view = View("front", (1.0, 0.0, 0.0), (0.0, 0.0, 1.0), (wall, other), ((0, 0), (30, 30)))
    (line,) = inside_thread(view, hole)
    assert isinstance(line, ThreadLine)
    assert line.is_hidden == (kind == "hidden")
    assert line.start == pytest.approx((x + radius / ROOT, top))
    assert line.end == pytest.approx((x + radius / ROOT, top - 8.0))
