"""Views, scales and the title block are where the standards put them."""

from __future__ import annotations

from dataclasses import replace

import pytest

from binder.api import DrawnDisc, Polyline, Stroke
from binder_drafting import Along, Bow, Fields, Request, Sheet, View, draft
from binder_drafting.plane import Rectangle
from tests.drafting.parts import cover, rectangle
from tests.drafting.proofs import assert_sound, labels_of

FRONT = View("front", (rectangle(0, 0, 60, 20),), side="front")
TOP = View("top", (rectangle(0, 0, 60, 40),), side="top")
LEFT = View("left", (rectangle(-40, 0, 0, 20),), side="left")
PICTURE = View("isometric", (rectangle(0, 0, 50, 40),), is_picture=True)


def boxes(sheet: Sheet) -> dict[str, Rectangle]:
    return {view.name: view.box for view in sheet.views}


# ISO 5456-2: first angle has the view from above below the front view and that from the left to
# its right; third angle the other way round; both in line with the front view.
@pytest.mark.parametrize(("first_angle", "sign"), [(True, 1), (False, -1)])
def test_views_lie_where_the_method_puts_them(first_angle: bool, sign: int) -> None:
    sheet = draft(Request((FRONT, TOP, LEFT), first_angle=first_angle))
    front, top, left = (boxes(sheet)[name] for name in ("front", "top", "left"))
    assert (top.middle[1] - front.middle[1]) * sign > 0
    assert (left.middle[0] - front.middle[0]) * sign > 0
    assert top.left == pytest.approx(front.left)
    assert left.top == pytest.approx(front.top)


# ISO 5456-2: the symbol of first angle has the cone to the left of the circles.
@pytest.mark.parametrize("first_angle", [True, False])
def test_the_symbol_tells_the_method(first_angle: bool) -> None:
    view, sizes = cover()
    request = Request((view,), sizes, fields=Fields("Cover"), first_angle=first_angle)
    shapes = draft(request).drawing.shapes
    symbol = Stroke.SYMBOL
    cone = next(one for one in shapes if isinstance(one, Polyline) and one.stroke is symbol)
    rings = [one for one in shapes if isinstance(one, DrawnDisc) and one.stroke is symbol]
    assert len(rings) == 2
    assert (max(x for x, _ in cone.points) < rings[0].x) is first_angle


# ISO 5455: 1 : 1, enlarging 2, 5, 10 ..., reducing 1 : 2, 1 : 5, 1 : 10 ...
@pytest.mark.parametrize(
    ("width", "scale"),
    [(4, "20 : 1"), (15, "5 : 1"), (80, "1 : 1"), (300, "1 : 2"), (700, "1 : 5"), (1500, "1 : 10")],
)
def test_the_scale_is_the_largest_preferred_one_that_fits(width: float, scale: str) -> None:
    size = Along("l", "front", "u", (0, 0), (width, 0), f"{width:g}")
    view = View("front", (rectangle(0, 0, width, width / 4),), side="front")
    request = Request((view,), (size,))
    sheet = draft(request)
    assert_sound(request, sheet)
    assert sheet.scale == scale


def test_a_scale_asked_for_is_kept() -> None:
    assert draft(Request((FRONT,), scales=(0.5,))).scale == "1 : 2"


def test_a_picture_keeps_clear_of_the_views_and_says_its_own_scale() -> None:
    sheet = draft(Request((FRONT, TOP, PICTURE), scales=(2.0,)))
    shown = boxes(sheet)
    assert not any(shown["isometric"].meets(shown[name]) for name in ("front", "top"))
    scale = next(view.scale for view in sheet.views if view.name == "isometric")
    assert scale in {0.5, 1.0}
    assert [one.text for one in labels_of(sheet)] == [
        f"({scale:g} : 1)" if scale >= 1 else "(1 : 2)"
    ]


def test_a_picture_alone_is_drawn_like_a_view() -> None:
    assert draft(Request((PICTURE,))).scale == "2 : 1"


def test_a_section_has_its_title_above_it() -> None:
    section = replace(LEFT, name="section A-A", title="A-A")
    sheet = draft(Request((FRONT, section)))
    (title,) = labels_of(sheet)
    box = boxes(sheet)["section A-A"]
    assert title.y < box.top
    assert box.left < title.x < box.right


# ISO 7200: title, number, and what identifies the part; its block is at most 180 mm wide.
def test_the_title_block_says_what_it_was_told_under_its_captions() -> None:
    view, sizes = cover()
    fields = Fields(
        "End cover", "12", "Cast iron", "50 × 8", "2", "110 g", "Bare", "ISO 2768-m", "B"
    )
    request = Request((view,), sizes, fields=fields)
    sheet = draft(request)
    assert_sound(request, sheet)
    words = {one.text: one for one in labels_of(sheet)}
    for caption, value in (
        ("Title", "End cover"),
        ("Item", "12"),
        ("Issue", "B"),
        ("Mass", "110 g"),
    ):
        assert words[caption].x == words[value].x
        assert 0 < words[value].y - words[caption].y < 10
    assert words[sheet.scale].y > boxes(sheet)["front"].bottom
    assert sheet.drawing.width <= 180


def test_what_the_title_block_was_not_told_is_left_out() -> None:
    view, sizes = cover()
    sheet = draft(Request((view,), sizes, fields=Fields("End cover")))
    assert not {"Mass", "Stock", "Finish"} & {one.text for one in labels_of(sheet)}


def test_two_views_of_one_side_do_not_lie_on_each_other() -> None:
    other = View("front at rest", (Bow((0, 0), 10),), side="front")
    shown = boxes(draft(Request((FRONT, other))))
    assert not shown["front"].meets(shown["front at rest"])
