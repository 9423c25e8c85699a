"""Places for the rings of item numbers: rows and columns round a drawing, all lengths in mm.

A leader crosses no other leader (ISO 6433, from memory), and runs through no other ring.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations
from math import dist

from binder_drafting.plane import Point, Rectangle, cross
from binder_drafting.sides import ABOVE, BELOW, LEFT, RIGHT, Side
from binder_drafting.spread import spread

# ISO 6433: circles all of one width, in rows and columns. From memory; 10 mm is common practice.
RADIUS = 5.0
_AWAY = 9.0
_APART = 12.5
_STEP = 4.0
# What a leader leaves of white beside a ring that is not its own.
_WHITE = 0.6
# How far a row may be slid along its side, and moved out, to free a ring of a leader.
_SLIDES = tuple(way * n * _APART / 2 for n in range(9) for way in ((1, -1) if n else (1,)))
_OUTS = (0.0, _APART / 2, _APART)


@dataclass(frozen=True, slots=True)
class Pointing:
    """An item number and the point of the paper that it speaks of."""

    id: str
    number: str
    at: Point
    target: str = ""


Moves = Mapping[str, tuple[float, float]]


def ring_places(items: Sequence[Pointing], extent: Rectangle) -> list[Point]:
    """The middle of each ring, outside of all that is drawn.

    A row is slid or moved out, one after the other, as long as that frees a ring of a leader.
    """
    moves: dict[str, tuple[float, float]] = {}
    best = _places(items, extent, moves)
    struck = _struck(items, best)
    for side in (ABOVE, RIGHT, BELOW, LEFT):
        for move in _moves():
            if not struck:
                return best
            places = _places(items, extent, {**moves, side: move})
            now = _struck(items, places)
            if now < struck:
                best, struck, moves[side] = places, now, move
    return best


def _moves() -> Iterator[tuple[float, float]]:
    """The least first."""
    every = [(slide, out) for slide in _SLIDES for out in _OUTS]
    return iter(sorted(every, key=lambda one: abs(one[0]) + one[1]))


def _places(items: Sequence[Pointing], extent: Rectangle, moves: Moves) -> list[Point]:
    return _uncrossed(items, _slots(items, extent, moves))


def _struck(items: Sequence[Pointing], places: Sequence[Point]) -> int:
    """How many leaders run through the ring of another item."""
    return sum(
        passes(items[one].at, places[one], places[two])
        for one in range(len(items))
        for two in range(len(items))
        if one != two
    )


def passes(start: Point, end: Point, ring: Point) -> bool:
    """Whether a line runs through a ring, or leaves no white beside it."""
    run = dist(start, end) ** 2 or 1.0
    across, down = end[0] - start[0], end[1] - start[1]
    share = ((ring[0] - start[0]) * across + (ring[1] - start[1]) * down) / run
    share = min(max(share, 0.0), 1.0)
    return dist(ring, (start[0] + share * across, start[1] + share * down)) < RADIUS + _WHITE


def _slots(items: Sequence[Pointing], extent: Rectangle, moves: Moves) -> list[Point]:
    """A place for each item on the side to which it lies nearest, none nearer than a circle."""
    sides: defaultdict[str, list[int]] = defaultdict(list)
    for n, item in enumerate(items):
        sides[_side(item.at, extent)].append(n)
    found: dict[int, Point] = {}
    for name, members in sides.items():
        side = Side(name, extent)
        slide, out = moves.get(name, (0.0, 0.0))
        members.sort(key=lambda n: (side.local(items[n].at)[0], n))
        alongs = [
            along + slide for along in spread([side.local(items[n].at)[0] for n in members], _APART)
        ]
        away = _AWAY + RADIUS + out
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
