"""Stretches laid over one another, and lines known for what they are."""

from __future__ import annotations

import math

from binder_solid.fitting import fitted
from binder_solid.spans import joined, overlaid
from binder_solid.tidy import tidied
from binder_solid.views import Edge, FreeLine, RoundLine, StraightLine


def test_the_plainer_kind_lies_over_the_fainter() -> None:
    found = overlaid([("hidden", (0.0, 10.0)), ("visible", (3.0, 5.0))], 1e-3, 0.0)
    assert found == [("visible", (3.0, 5.0)), ("hidden", (0.0, 3.0)), ("hidden", (5.0, 10.0))]


def test_pieces_that_meet_are_one() -> None:
    assert joined([(5.0, 9.0), (0.0, 5.0005), (12.0, 13.0)], 1e-3) == [(0.0, 9.0), (12.0, 13.0)]


def test_a_sliver_that_runs_on_hidden_is_hidden() -> None:
    spans = [("visible", (0.0, 0.02)), ("hidden", (0.02, 8.0))]
    assert overlaid([("visible", spans[0][1]), ("hidden", spans[1][1])], 1e-3, 0.05) == [
        ("hidden", (0.0, 8.0))
    ]
    assert len(overlaid([("visible", (0.0, 1.0)), ("hidden", (1.0, 8.0))], 1e-3, 0.05)) == 2


def test_lines_drawn_in_either_direction_are_one() -> None:
    one = Edge("visible", StraightLine((0.0, 0.0), (10.0, 0.0)))
    back = Edge("hidden", StraightLine((12.0, 0.0), (-1e-9, 1e-9)))
    assert tidied([one, back], 0.0) == (
        Edge("visible", StraightLine((0.0, 0.0), (10.0, 0.0))),
        Edge("hidden", StraightLine((10.0, 0.0), (12.0, 0.0))),
    )


def test_arcs_of_one_circle_make_it_whole() -> None:
    arcs = [
        Edge("visible", RoundLine((1.0, 2.0), 5.0, start, start + 120.0))
        for start in (10, 130, 250)
    ]
    assert tidied(arcs, 0.0) == (Edge("visible", RoundLine((1.0, 2.0), 5.0, 0.0, 360.0)),)


def test_an_arc_through_nought_degrees_stays_one_arc() -> None:
    arc = Edge("visible", RoundLine((0.0, 0.0), 5.0, 300.0, 420.0))
    assert tidied([arc], 0.0) == (arc,)


def test_points_on_a_line_or_circle_are_told_as_such() -> None:
    straight = fitted(tuple((float(n), 2.0 * n) for n in (3, 0, 5, 1)))
    assert isinstance(straight, StraightLine)
    assert {straight.start, straight.end} == {(0.0, 0.0), (5.0, 10.0)}
    angles = [math.radians(20 + 10 * n) for n in range(12)]
    round_line = fitted(tuple((7 * math.cos(a), 7 * math.sin(a)) for a in angles))
    assert round_line == RoundLine((0.0, 0.0), 7.0, 20.0, 130.0) or (
        isinstance(round_line, RoundLine) and abs(round_line.end - 130) < 1e-9
    )
    wave = fitted(tuple((n / 5, math.sin(n / 5)) for n in range(30)))
    assert isinstance(wave, FreeLine)
    assert fitted(((1.0, 1.0), (1.0, 1.0))) is None


def test_a_free_line_drawn_twice_is_drawn_once() -> None:
    wave = tuple((n / 5, math.sin(n / 5)) for n in range(30))
    edges = [Edge("visible", FreeLine(wave)), Edge("hidden", FreeLine(wave[::-1]))]
    assert [edge.kind for edge in tidied(edges, 0.0)] == ["visible"]
