"""Every size stands on the sheet once, clear of all others, whatever the part."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from itertools import combinations

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from binder.api import Line, Stroke
from binder_drafting import (
    Along,
    Balloon,
    Bow,
    Detail,
    Fields,
    Note,
    Radius,
    Request,
    View,
    draft,
)
from binder_drafting.plane import cross
from tests.drafting.parts import cover, plate, plate_sizes, rectangle, shaft, shaft_sizes
from tests.drafting.proofs import assert_sound, labels_of, words_of

_SLOW = settings(
    max_examples=30, deadline=None, suppress_health_check=[HealthCheck.too_slow], derandomize=True
)
_LENGTHS = st.integers(3, 900).map(lambda n: n / 10)
_NAMES = st.text("ABCDEFGhijklm ØΩ⌀×−0123456789", min_size=1, max_size=70)


@_SLOW
@given(
    st.lists(st.tuples(_LENGTHS, _LENGTHS), min_size=1, max_size=14),
    st.sampled_from(["", " h7", " TO SUIT BUSH ITEM 12"]),
)
def test_any_shaft(steps: list[tuple[float, float]], suffix: str) -> None:
    request = Request((shaft(steps),), shaft_sizes(steps, suffix), fields=Fields("Axle"))
    assert_sound(request, draft(request))


@_SLOW
@given(
    st.lists(st.tuples(_LENGTHS, _LENGTHS, st.integers(2, 80).map(lambda n: n / 10)), max_size=14),
    _NAMES,
)
def test_any_plate(holes: list[tuple[float, float, float]], words: str) -> None:
    request = Request((plate(95, 92, holes),), plate_sizes(95, 92, holes, words))
    assert_sound(request, draft(request))


@_SLOW
@given(_NAMES, _NAMES, _NAMES, _NAMES)
def test_any_title_block(title: str, material: str, stock: str, item: str) -> None:
    view, sizes = cover()
    fields = Fields(title, item, material, stock, "12 off, 6 handed", "1.2 kg", title, stock)
    request = Request((view,), sizes, fields=fields)
    assert_sound(request, draft(request))


# ISO 6433, from memory: leaders of item numbers do not cross one another.
@_SLOW
@given(st.lists(st.tuples(_LENGTHS, _LENGTHS), max_size=24))
def test_any_balloons(points: list[tuple[float, float]]) -> None:
    balloons = tuple(Balloon(f"i{n}", "front", str(n + 1), at) for n, at in enumerate(points))
    request = Request((View("front", (rectangle(0, 0, 90, 90),)),), balloons=balloons)
    sheet = draft(request)
    assert_sound(request, sheet)
    leaders = [
        ((one.x1, one.y1), (one.x2, one.y2))
        for one in sheet.drawing.shapes
        if isinstance(one, Line) and one.stroke is Stroke.THIN
    ]
    assert len(leaders) == len(balloons)
    assert not [True for one, two in combinations(leaders, 2) if cross(*one, *two)]


def test_many_close_steps_are_all_there() -> None:
    steps = [(6 + n % 3, 0.4 + 0.1 * n) for n in range(24)]
    request = Request((shaft(steps),), shaft_sizes(steps))
    sheet = draft(request)
    assert_sound(request, sheet)
    drawn = "".join(label.text for label in labels_of(sheet)).replace(" ", "")
    assert not words_of(request) - Counter(drawn)


def test_more_than_a_leaf_holds_makes_the_leaf_larger_and_says_so() -> None:
    holes = [(3.0 * n, 90 - 3.0 * n, 1.0) for n in range(1, 29)]
    request = Request((plate(95, 92, holes),), plate_sizes(95, 92, holes, "REAM " * 9))
    sheet = draft(request)
    assert_sound(request, sheet)
    assert sheet.problems == ("the sheet is larger than its room",)


def test_a_size_of_a_view_that_is_not_there_is_kept_in_the_table() -> None:
    view, sizes = cover()
    lost = Along("lost", "left", "u", (0, 0), (5, 0), "5")
    request = Request((view,), (*sizes, lost))
    sheet = draft(request)
    assert_sound(request, sheet)
    assert "lost" in sheet.problems[0]


def test_one_id_twice_is_refused() -> None:
    view, sizes = cover()
    with pytest.raises(ValueError, match="outside"):
        draft(Request((view,), (*sizes, sizes[0])))


def test_a_detail_of_no_view_is_refused() -> None:
    view, sizes = cover()
    with pytest.raises(ValueError, match="detail X"):
        draft(Request((view,), sizes, details=(Detail("X", "side", (0, 0), 1),)))


def test_the_same_request_gives_the_same_sheet() -> None:
    steps = [(8, 14), (12, 20), (18, 5), (12, 26)]
    request = Request((shaft(steps),), shaft_sizes(steps), fields=Fields("Axle"))
    assert draft(request) == draft(replace(request))


def test_nothing_to_show_is_an_empty_sheet() -> None:
    sheet = draft(Request((View("front", ()),), rooms=((100, 80),)))
    assert not sheet.placed


def test_a_detail_that_was_asked_for_takes_its_sizes() -> None:
    steps = [(8.0, 30.0), (7.0, 1.0), (8.0, 40.0)]
    narrow = Along("groove", "X", "u", (30, 3.5), (31, 3.5), "1")
    corner = Radius("corner", "X", (30.4, 3.9), 0.4, "R0.4", 180, 270)
    request = Request(
        (shaft(steps),),
        (*shaft_sizes(steps), narrow, corner),
        details=(Detail("X", "front", (30.5, 3.7), 2.0),),
    )
    sheet = draft(request)
    assert_sound(request, sheet)
    detail = next(view for view in sheet.views if view.name == "X")
    front = next(view for view in sheet.views if view.name == "front")
    assert detail.scale > front.scale
    groove = next(one.box for one in sheet.placed if one.id == "groove")
    # The size stands by the detail, not by the front view.
    assert abs(groove.middle[0] - detail.box.middle[0]) < detail.box.width


def test_a_feature_too_small_to_see_gets_a_detail_by_itself() -> None:
    view = View("front", (rectangle(0, 0, 150, 40), Bow((75, 20), 5)), side="front")
    small = Along("small", "front", "u", (60, 40), (60.5, 40), "0.5")
    request = Request((view,), (small, Note("hole", "front", (75, 20), ("⌀10",), radius=5)))
    sheet = draft(request)
    assert_sound(request, sheet)
    assert [one.name for one in sheet.views] == ["front", "Z"]
    assert any(label.text.startswith("Z (") for label in labels_of(sheet))
