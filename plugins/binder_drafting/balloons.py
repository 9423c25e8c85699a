"""Item numbers in circles around a view, on leaders that do not cross (ISO 6433)."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations
from math import dist, hypot

from binder.api import Anchor, DrawnDisc, DrawnLabel, Line, Stroke, text_width
from binder_drafting.paper import Paper
from binder_drafting.plane import Point, Rectangle, cross
from binder_drafting.sheet import PlacedLabel
from binder_drafting.sides import ABOVE, BELOW, LEFT, RIGHT, Side
from binder_drafting.spread import spread

# ISO 6433: numbers larger than the figures of sizes, circles all of one width, in rows and
# columns; leaders end in a dot on the part. From memory; 10 mm is common practice.
_RADIUS = 5.0
_NUMBER = 5.0
_SMALL_NUMBER = 3.5
_AWAY = 9.0
_APART = 12.5
_DOT = 0.6
_STEP = 4.0


@dataclass(frozen=True, slots=True)
class Pointing:
    """An item number and the point of the paper that it speaks of."""

    id: str
    number: str
    at: Point
    target: str = ""


def draw_balloons(items: Sequence[Pointing], paper: Paper) -> None:
    """Draws a circle for each item in a row or column outside all that is on the paper."""
    if not items or paper.extent is None:
        return
    places = _uncrossed(items, _slots(items, paper.extent))
    for item, place in zip(items, places, strict=True):
        _draw(item, place, paper)


def _slots(items: Sequence[Pointing], extent: Rectangle) -> list[Point]:
    """A place for each item on the side to which it lies nearest, none nearer than a circle."""
    sides: defaultdict[str, list[int]] = defaultdict(list)
    for n, item in enumerate(items):
        sides[_side(item.at, extent)].append(n)
    found: dict[int, Point] = {}
    for name, members in sides.items():
        side = Side(name, extent)
        members.sort(key=lambda n: (side.local(items[n].at)[0], n))
        alongs = spread([side.local(items[n].at)[0] for n in members], _APART)
        away = _AWAY + _RADIUS
        places = [side.paper(along, away) for along in alongs]
        # A long column reaches past the corner: the next row then stands farther out.
        while any(dist(one, two) < _APART for one in places for two in found.values()):
            away += _STEP
            places = [side.paper(along, away) for along in alongs]
        found.update(zip(members, places, strict=True))
    return [found[n] for n in range(len(items))]


def _side(at: Point, extent: Rectangle) -> str:
    x, y = extent.middle
    across = (at[0] - x) / max(extent.width, 1.0)
    down = (at[1] - y) / max(extent.height, 1.0)
    if abs(across) >= abs(down):
        return RIGHT if across >= 0 else LEFT
    return BELOW if down >= 0 else ABOVE


def _uncrossed(items: Sequence[Pointing], places: list[Point]) -> list[Point]:
    """Changes places of crossing leaders: each change shortens them, so that it comes to an end."""
    places = list(places)
    is_changed = True
    while is_changed:
        is_changed = False
        for one, two in combinations(range(len(items)), 2):
            if cross(items[one].at, places[one], items[two].at, places[two]):
                places[one], places[two] = places[two], places[one]
                is_changed = True
    return places


def _draw(item: Pointing, place: Point, paper: Paper) -> None:
    run = hypot(place[0] - item.at[0], place[1] - item.at[1]) or 1.0
    back = _RADIUS / run
    edge = (
        place[0] + (item.at[0] - place[0]) * back,
        place[1] + (item.at[1] - place[1]) * back,
    )
    paper.draw(Line(*edge, *item.at, Stroke.THIN), DrawnDisc(*item.at, _DOT, 1.0, Stroke.THIN))
    paper.draw(DrawnDisc(*place, _RADIUS, stroke=Stroke.THIN))
    fits = text_width(item.number, _NUMBER) < 1.7 * _RADIUS
    tall = _NUMBER if fits else _SMALL_NUMBER
    base = place[1] + tall / 2
    paper.draw(DrawnLabel(place[0], base, item.number, tall, Anchor.MIDDLE, item.target))
    box = Rectangle(*place, *place).grown(_RADIUS)
    paper.words.append(PlacedLabel(item.id, box))
    paper.reach(box)
