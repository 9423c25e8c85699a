"""What has to hold for every sheet, reckoned from its shapes, not from the engine's boxes."""

from __future__ import annotations

from collections import Counter
from itertools import combinations

from binder.api import Anchor, DrawnLabel, Line, text_width
from binder_drafting import Rectangle, Request, Sheet
from binder_drafting.plane import enters


def letters_of(label: DrawnLabel) -> Rectangle:
    """The rectangle of a label's capitals; hanging letters and accents are not in it."""
    width = text_width(label.text, label.height)
    before = {Anchor.START: 0.0, Anchor.MIDDLE: width / 2, Anchor.END: width}[label.anchor]
    if label.turn:
        assert label.turn == 90
        bottom = label.y + before
        return Rectangle(label.x - label.height, bottom - width, label.x, bottom)
    left = label.x - before
    return Rectangle(left, label.y - label.height, left + width, label.y)


def labels_of(sheet: Sheet) -> list[DrawnLabel]:
    return [shape for shape in sheet.drawing.shapes if isinstance(shape, DrawnLabel)]


def assert_sound(request: Request, sheet: Sheet) -> None:
    """Each size once, no words on words, none beyond the edge, all large enough to read."""
    wanted = [size.id for size in (*request.sizes, *request.balloons)]
    assert Counter(one.id for one in sheet.placed if one.id) == Counter(wanted)
    paper = Rectangle(0.0, 0.0, sheet.drawing.width, sheet.drawing.height)
    boxes = [letters_of(label) for label in labels_of(sheet)]
    for box in (*boxes, *(one.box for one in sheet.placed)):
        assert paper.holds(box), box
    assert_apart(boxes)
    assert_apart([one.box for one in sheet.placed])
    # ISO 3098-1: 2.5 mm is the smallest height that the issue allows, 3.5 mm that of figures.
    assert all(label.height >= 2.5 for label in labels_of(sheet))


def assert_apart(boxes: list[Rectangle]) -> None:
    ordered = sorted(boxes)
    for one, two in combinations(ordered, 2):
        if two.left >= one.right:
            continue
        assert not one.grown(-1e-6).meets(two), (one, two)


def words_of(request: Request) -> Counter[str]:
    """All that the sizes say, letter by letter: what is drawn has to hold it."""
    found: Counter[str] = Counter()
    for size in request.sizes:
        texts = size.lines if hasattr(size, "lines") else (size.text,)
        found.update("".join(texts).replace(" ", ""))
        found.update("".join(getattr(size, "limits", ())).replace(" ", ""))
    return found


def struck(sheet: Sheet) -> list[tuple[str, str]]:
    """Labels through which a line, an arc's chord or a hatching line of the sheet runs."""
    lines = [one for one in sheet.drawing.shapes if isinstance(one, Line)]
    boxes = [(label.text, letters_of(label).grown(-0.4)) for label in labels_of(sheet)]
    return [
        (text, one.stroke.value)
        for text, box in boxes
        for one in lines
        if enters((one.x1, one.y1), (one.x2, one.y2), box)
    ]
