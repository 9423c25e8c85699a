"""Item numbers in circles around a view, on leaders that do not cross (ISO 6433)."""

from __future__ import annotations

from collections.abc import Sequence
from math import hypot

from binder.api import Anchor, DrawnDisc, DrawnLabel, Line, Stroke, text_width
from binder_drafting.paper import Paper
from binder_drafting.plane import Point, Rectangle
from binder_drafting.rings import RADIUS, Pointing, ring_places
from binder_drafting.sheet import PlacedLabel

# ISO 6433: numbers larger than the figures of sizes, circles all of one width, in rows and
# columns; leaders end in a dot on the part. From memory; 10 mm is common practice.
_NUMBER = 5.0
_SMALL_NUMBER = 3.5
_DOT = 0.6


def draw_balloons(items: Sequence[Pointing], paper: Paper) -> None:
    """Draws a circle for each item in a row or column outside all that is on the paper."""
    if not items or paper.extent is None:
        return
    for item, place in zip(items, ring_places(items, paper.extent), strict=True):
        _draw(item, place, paper)


def _draw(item: Pointing, place: Point, paper: Paper) -> None:
    run = hypot(place[0] - item.at[0], place[1] - item.at[1]) or 1.0
    back = RADIUS / run
    edge = (
        place[0] + (item.at[0] - place[0]) * back,
        place[1] + (item.at[1] - place[1]) * back,
    )
    paper.draw(Line(*edge, *item.at, Stroke.THIN), DrawnDisc(*item.at, _DOT, 1.0, Stroke.THIN))
    paper.draw(DrawnDisc(*place, RADIUS, stroke=Stroke.THIN))
    fits = text_width(item.number, _NUMBER) < 1.7 * RADIUS
    tall = _NUMBER if fits else _SMALL_NUMBER
    base = place[1] + tall / 2
    paper.draw(DrawnLabel(place[0], base, item.number, tall, Anchor.MIDDLE, item.target))
    box = Rectangle(*place, *place).grown(RADIUS)
    paper.words.append(PlacedLabel(item.id, box))
    paper.reach(box)
