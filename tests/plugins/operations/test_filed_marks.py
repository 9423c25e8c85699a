"""What is filed round to a slot: its radius drawn on the end, its lines, its gauge, its callout.

Geometry: a slot that a cutter leaves ends in half circles of half its width, whose centres lie
its length less its width apart. How it is marked and tried: common practice, no source.
"""

from __future__ import annotations

import pytest

from binder.api import Design, DrawnArc, Line, Stroke
from binder_plugins.drawings.filed import filed_notes
from binder_plugins.drawings.filed_sections import filed_sections
from binder_plugins.operations.facts import Route
from binder_solid.facts import FormFact
from binder_solid.rounded import RoundedFact
from tests.plugins.operations.conftest import HEAD, Plan

SEAT = "round on both edges, to fill the eye of the collar; alike from the tail end up to it"


def helve(plan: Plan, said: str, place: str, eye: str = "") -> Design:
    text = (
        f"{HEAD}  helve: {{material: beech,"
        f" board: {{length: 120 mm, width: 12 mm, thickness: 9 mm}},"
        f' features: {{seat: {{filed: "{said}", {place}}}}}}}\n'
        "  collar: {material: mild steel, block: {length: 20 mm, width: 20 mm, height: 15 mm},"
        " features: {eye: {slotted: 9 mm, on: front, length: 12 mm, depth: through"
        f"{eye}}}}}}}\n"
    )
    design = plan(text).design
    assert design is not None
    return design


def route(design: Design) -> Route:
    found = design.facts.about(Route, "helve")
    assert found is not None
    return found


def test_its_section_is_that_of_the_slot(plan: Plan) -> None:
    fact = helve(plan, SEAT, "length: 20 mm, at: 45 mm from left").facts.about(
        RoundedFact, "helve.seat"
    )
    assert fact is not None
    assert (fact.radius, fact.apart, fact.across) == (4.5, 3, 12)


def test_it_is_marked_before_it_is_filed_and_tried_with_a_gauge(plan: Plan) -> None:
    design = helve(plan, SEAT, "length: 20 mm, at: 45 mm from left")
    marks, file = [act for act in route(design).acts if "seat" in act.feature]
    assert marks.act == "mark-out"
    assert "lines all round, 35 mm and 55 mm from the left end" in marks.what
    assert "two centres, 1.5 mm to either side of the middle: strike R4.5 mm" in marks.what
    assert "across the left end" in marks.what
    assert "a line 4.5 mm in from either edge" in marks.what
    assert file.tool == "files, half-round gauge ⌀9 mm"
    assert file.measure == "half-round gauge ⌀9 mm, then its own mate"


def test_no_arc_is_drawn_on_an_end_that_is_not_filed(plan: Plan) -> None:
    design = helve(plan, SEAT.partition(";")[0], "length: 20 mm, at: 45 mm from left")
    marks = next(act for act in route(design).acts if act.feature == "marks seat")
    assert "strike" not in marks.what


def test_an_eye_that_is_filed_itself_gives_no_radius(plan: Plan) -> None:
    design = helve(plan, SEAT, "on: left, length: 20 mm", ", note: filed square")
    assert design.facts.about(RoundedFact, "helve.seat") is None
    assert next(act for act in route(design).acts if act.feature == "seat").tool == "files"


def test_the_drawing_tells_the_radius(plan: Plan) -> None:
    design = helve(plan, SEAT, "length: 20 mm, at: 45 mm from left")
    form = design.facts.about(FormFact, "helve")
    assert form is not None
    (note,) = filed_notes(form, ("front",), design)
    assert note.lines[-2:] == ("R4.5 on both edges", "their centres 3 apart")


def test_the_section_is_drawn_with_its_centres(plan: Plan) -> None:
    # 12 mm five times enlarged are 60 mm and too wide, twice 24: R9, the centres 6 apart.
    design = helve(plan, SEAT, "length: 20 mm, at: 45 mm from left")
    form = design.facts.about(FormFact, "helve")
    assert form is not None
    (picture,) = filed_sections(form, design)
    arcs = [one for one in picture.drawing.shapes if isinstance(one, DrawnArc)]
    assert [one.radius for one in arcs] == [9, 9]
    assert abs(arcs[1].x - arcs[0].x) == pytest.approx(6)
    lines = [one for one in picture.drawing.shapes if isinstance(one, Line)]
    assert sum(one.stroke is Stroke.CENTRE for one in lines) == 3
    assert "2 : 1" in picture.caption
