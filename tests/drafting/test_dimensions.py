"""Dimension lines stand as ISO 129-1 asks; its clauses are from memory, not opened today."""

from __future__ import annotations

from itertools import pairwise
from math import hypot

import pytest

from binder.api import DrawnArc, DrawnLabel, Line, Stroke
from binder_drafting import (
    Across,
    Along,
    AngleOf,
    Around,
    Balloon,
    Break,
    Note,
    Radius,
    Request,
    Sheet,
    Size,
    View,
    draft,
)
from tests.drafting.parts import plate, plate_sizes, rectangle, shaft
from tests.drafting.proofs import assert_sound, labels_of

BLOCK = View("front", (rectangle(0, 0, 80, 40),), side="front")


def sheet_of(*sizes: Size, view: View = BLOCK) -> Sheet:
    request = Request((view,), sizes, scales=(1.0,))
    sheet = draft(request)
    assert_sound(request, sheet)
    return sheet


def arrows(sheet: Sheet) -> list[Line]:
    return [
        one for one in sheet.drawing.shapes if isinstance(one, Line) and one.stroke is Stroke.ARROW
    ]


def label(sheet: Sheet, text: str) -> DrawnLabel:
    return next(one for one in labels_of(sheet) if one.text == text)


def lengths(*ends: float) -> tuple[Along, ...]:
    return tuple(
        Along(f"l{end:g}", "front", "u", (0, 0), (end, 0), f"{end:g}", datum="left") for end in ends
    )


# ISO 129-1: figures stand above their dimension line, read from below, 3.5 mm high.
def test_a_figure_stands_above_its_line() -> None:
    sheet = sheet_of(*lengths(60))
    line = arrows(sheet)[0]
    figure = label(sheet, "60")
    assert 0 < line.y1 - figure.y < 2.5
    assert (figure.turn, figure.height) == (0, 3.5)


# ISO 129-1: upright dimension lines have their figure to the left, read from the right.
@pytest.mark.parametrize("side", ["left", "right"])
def test_an_upright_figure_is_read_from_the_right_and_stands_left_of_its_line(side: str) -> None:
    sheet = sheet_of(Along("h", "front", "v", (0, 0), (0, 40), "40", side=side))
    figure = label(sheet, "40")
    assert figure.turn == 90
    assert 0 < arrows(sheet)[0].x1 - figure.x < 2.5


@pytest.mark.parametrize(
    ("side", "direction", "end"),
    [("below", "u", 50), ("above", "u", 50), ("left", "v", 30), ("right", "v", 30)],
)
def test_heads_lie_opposite_the_points_that_they_speak_of(
    side: str, direction: str, end: float
) -> None:
    start, far = ((10, 10), (end, 10)) if direction == "u" else ((10, 10), (10, end))
    sheet = sheet_of(Along("l", "front", direction, start, far, "x", side=side))
    box = sheet.views[0].box
    tips = [one.x2 - box.left if direction == "u" else box.bottom - one.y2 for one in arrows(sheet)]
    assert sorted(tips) == [pytest.approx(10), pytest.approx(end)]
    (figure,) = sheet.placed
    outside = {
        "below": figure.box.top > box.bottom,
        "above": figure.box.bottom < box.top,
        "left": figure.box.right < box.left,
        "right": figure.box.left > box.right,
    }
    assert outside[side]


# ISO 129-1: of sizes from one datum the smaller lies nearer; 10 mm to the first line and 7 to
# 10 mm between lines are common practice.
def test_tiers_go_outwards_with_the_smallest_first() -> None:
    sheet = sheet_of(*lengths(70, 20, 45))
    bottom = sheet.views[0].box.bottom
    depths = [label(sheet, text).y - bottom for text in ("20", "45", "70")]
    rows = sorted({round(one.y1 - bottom, 3) for one in arrows(sheet)})
    assert depths == sorted(depths)
    assert rows[0] == pytest.approx(10)
    assert all(7 <= two - one <= 10 for one, two in pairwise(rows))


# ISO 129-1: extension lines pass the dimension line by about 8 line widths, 2 mm.
def test_extension_lines_begin_clear_of_the_part_and_pass_the_line() -> None:
    sheet = sheet_of(*lengths(60))
    box = sheet.views[0].box
    row = arrows(sheet)[0].y1
    posts = [
        one
        for one in sheet.drawing.shapes
        if isinstance(one, Line) and one.stroke is Stroke.THIN and one.x1 == one.x2
    ]
    assert sorted(one.x1 - box.left for one in posts) == [pytest.approx(0), pytest.approx(60)]
    for one in posts:
        assert one.y1 - box.bottom == pytest.approx(1)
        assert one.y2 - row == pytest.approx(2)


def test_heads_go_outside_where_there_is_no_room() -> None:
    near, far = sheet_of(*lengths(3)), sheet_of(*lengths(60))
    assert {hypot(one.x2 - one.x1, one.y2 - one.y1) < 29 for one in arrows(far)} == {False}
    box = near.views[0].box
    tails = sorted(one.x1 - box.left for one in arrows(near))
    tips = sorted(one.x2 - box.left for one in arrows(near))
    assert tips == [pytest.approx(0), pytest.approx(3)]
    assert tails[0] < 0
    assert tails[1] > 3


# ISO 129-1: deviations in smaller letters, the lower one on the base line of the figure.
def test_limits_are_stacked_behind_the_figure() -> None:
    size = Along("l", "front", "u", (0, 0), (60, 0), "60", ("+0.02", "−0.01"), "fit")
    sheet = sheet_of(size)
    figure, upper, lower = (label(sheet, text) for text in ("◆ 60", "+0.02", "−0.01"))
    assert lower.y == figure.y
    assert upper.y < lower.y - 2.5
    assert upper.x == lower.x > figure.x
    assert upper.height == lower.height == 2.5


def test_what_fits_here_is_marked_and_all_else_is_plain() -> None:
    sizes = [
        Along(tier, "front", "u", (0, 0), (end, 0), f"{end}", tier=tier)
        for tier, end in (("fit", 50), ("tool", 60), ("free", 70))
    ]
    assert {one.text for one in labels_of(sheet_of(*sizes))} == {"◆ 50", "60", "70"}


def test_a_diameter_between_larger_steps_is_drawn_across_its_own_step() -> None:
    steps = [(20.0, 20.0), (10.0, 20.0), (20.0, 20.0)]
    size = Across("d", "front", (30, 5), (30, -5), "⌀10")
    sheet = sheet_of(size, view=shaft(steps))
    box = sheet.views[0].box
    assert {round(one.x2 - box.left, 6) for one in arrows(sheet)} == {30}
    assert {round(abs(one.y2 - box.middle[1]), 6) for one in arrows(sheet)} == {5}


@pytest.mark.parametrize(("into", "off"), [(20.0, 2.5), (-20.0, -2.5), (4.0, 2.0)])
def test_a_dimension_line_does_not_lie_on_an_edge(into: float, off: float) -> None:
    """It stands beside the edge, on extension lines that begin at its ends (ISO 129-1)."""
    steps = [(20.0, 20.0), (10.0, 20.0), (20.0, 20.0)]
    size = Across("d", "front", (20, 5), (20, -5), "⌀10", into=(into, 0.0))
    sheet = sheet_of(size, view=shaft(steps))
    box = sheet.views[0].box
    assert {round(one.x2 - box.left, 6) for one in arrows(sheet)} == {20 + off}
    assert {round(abs(one.y2 - box.middle[1]), 6) for one in arrows(sheet)} == {5}
    level = [
        one
        for one in sheet.drawing.shapes
        if isinstance(one, Line) and one.y1 == one.y2 and round(one.x1 - box.left, 6) == 20
    ]
    past = [one for one in level if abs(one.x2 - box.left - 20) > abs(off)]
    assert {round(abs(one.y1 - box.middle[1]), 6) for one in past} == {5}


def test_a_diameter_at_an_end_stands_beside_it() -> None:
    size = Across("d", "front", (50, 5), (50, -5), "⌀10")
    sheet = sheet_of(size, view=shaft([(20, 40), (10, 20)]))
    assert all(one.x2 > sheet.views[0].box.right for one in arrows(sheet))


# ISO 129-1: the leader of a circle points at its centre and its head meets the line.
@pytest.mark.parametrize(
    ("size", "radius"),
    [
        (Around("d", "front", (40, 20), 10, "⌀10"), 5),
        (Radius("r", "front", (40, 20), 6, "R6"), 6),
        (Note("n", "front", (40, 20), ("⌀8 THRO’",), radius=4), 4),
    ],
)
def test_a_leader_points_at_the_centre_and_ends_on_the_circle(size: Size, radius: float) -> None:
    sheet = sheet_of(size)
    (arrow,) = arrows(sheet)
    box = sheet.views[0].box
    centre = (box.left + 40, box.bottom - 20)
    tip = (arrow.x2 - centre[0], arrow.y2 - centre[1])
    tail = (arrow.x1 - centre[0], arrow.y1 - centre[1])
    assert hypot(*tip) == pytest.approx(radius)
    assert tip[0] * tail[1] - tip[1] * tail[0] == pytest.approx(0, abs=1e-6)
    assert hypot(*tail) > radius


def test_a_leader_to_an_arc_ends_where_the_arc_is() -> None:
    sheet = sheet_of(Radius("r", "front", (74, 34), 6, "R6", 0, 90))
    (arrow,) = arrows(sheet)
    box = sheet.views[0].box
    assert arrow.x2 >= box.left + 74
    assert arrow.y2 <= box.bottom - 34


def test_an_angle_has_its_arc_about_the_apex_and_its_figure_level() -> None:
    sheet = sheet_of(AngleOf("a", "front", (0, 0), 0, 30, "30°", 40))
    arc = next(one for one in sheet.drawing.shapes if isinstance(one, DrawnArc))
    box = sheet.views[0].box
    assert arc.x == pytest.approx(box.left)
    assert arc.y == pytest.approx(box.bottom)
    assert arc.radius > 40
    assert label(sheet, "30°").turn == 0


def test_angles_at_one_apex_keep_clear_of_one_another() -> None:
    sheet = sheet_of(
        *(
            AngleOf(f"a{n}", "front", (0, 0), 0, 20 + n, f"{20 + n}° BOTH SIDES", 40)
            for n in range(6)
        )
    )
    assert len(sheet.placed) == 6


def test_a_size_over_a_break_keeps_its_points() -> None:
    view = View("front", (rectangle(0, 0, 400, 20),), breaks=(Break("u", 50, 350),))
    sheet = sheet_of(Along("l", "front", "u", (0, 0), (400, 0), "400"), view=view)
    box = sheet.views[0].box
    tips = sorted(one.x2 for one in arrows(sheet))
    assert tips == [pytest.approx(box.left), pytest.approx(box.right)]


# ISO 129-1, superimposed running dimensioning: one line from an origin; figures at its posts.
def test_many_sizes_from_one_datum_stand_on_one_line_where_paper_is_short() -> None:
    holes = [(8.0 * n, 8.0 * n, 3.0) for n in range(1, 11)]
    request = Request((plate(130, 95, holes),), plate_sizes(130, 95, holes), rooms=((178, 150),))
    sheet = draft(request)
    assert_sound(request, sheet)
    assert sheet.scale == "1 : 1"
    assert not sheet.problems
    assert [one.text for one in labels_of(sheet)].count("0") == 2


def test_a_full_leaf_moves_sizes_to_a_table_with_letters_on_the_view() -> None:
    holes = [(8.0 * n, 6 + 11.0 * (n % 3), 3.0) for n in range(1, 10)]
    sizes = plate_sizes(80, 40, holes, "REAM AFTER FITTING THE KEEP AND PEGS")
    request = Request((plate(80, 40, holes),), sizes, rooms=((178, 150),), scales=(1.0,))
    sheet = draft(request)
    assert_sound(request, sheet)
    assert not sheet.problems
    assert [one.text for one in labels_of(sheet)].count("A") == 2


def test_a_balloon_links_to_its_item() -> None:
    request = Request((BLOCK,), balloons=(Balloon("i", "front", "7", (10, 10), "part-drum"),))
    assert [one.target for one in labels_of(draft(request))] == ["part-drum"]
