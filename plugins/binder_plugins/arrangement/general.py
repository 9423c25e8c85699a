"""The general arrangement: two views and a picture, item balloons, the sizes that prove it."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, ItemNumber, ShaftFact, exact, shown_length
from binder_drafting import Along, Balloon, Fields, Request, Sheet, Size, draft
from binder_plugins.arrangement.gathering import PictureFact
from binder_plugins.arrangement.sheets import PICTURE_SCALES, balloons_of, view_of
from binder_plugins.arrangement.space import carried
from binder_plugins.arrangement.wound import wound
from binder_solid.forms import Point, Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import placed
from binder_solid.views import Projection
from binder_solid.views import View as SolidView

SIDES: tuple[Projection, ...] = ("isometric", "front", "top")
_PICTURE_ROOMS = ((178.0, 215.0),)
_VIEW_ROOMS = ((178.0, 110.0), (178.0, 232.0))
_ROUND = 1e-6
# What a size over all changes by before it is told, in mm.
_SEEN = 0.05


def picture_sheet(fact: PictureFact, design: Design) -> Sheet:
    """Draws the model as it looks, with the item numbers of all that is seen there."""
    balloons = [one for one in _balloons(fact, design) if one.view == "isometric"]
    return draft(
        Request(
            (view_of(fact, 0),),
            balloons=tuple(balloons),
            rooms=_PICTURE_ROOMS,
            scales=PICTURE_SCALES,
        )
    )


def views_sheet(fact: PictureFact, design: Design) -> Sheet:
    """Draws two views with the sizes, and the numbers of what the picture hides."""
    balloons = [one for one in _balloons(fact, design) if one.view != "isometric"]
    head = design.spec.written.model
    fields = Fields(
        title=str(head.title),
        issue=str(head.issue),
        units=design.units,
        date=str(head.date or ""),
    )
    return draft(
        Request(
            (view_of(fact, 1), view_of(fact, 2)),
            tuple(sizes_of(fact, design)),
            balloons=tuple(balloons),
            rooms=_VIEW_ROOMS,
            fields=fields,
        )
    )


def unseen(fact: PictureFact, design: Design) -> tuple[int, ...]:
    """The numbers of the items that stand inside others and are seen from no side drawn."""
    seen = {int(one.number) for one in _balloons(fact, design)}
    known = (design.facts.about(ItemNumber, one.copy.item) for one in fact.shown)
    return tuple(sorted({one.number for one in known if one is not None} - seen))


def undrawn(design: Design, items: set[str]) -> tuple[tuple[int, str], ...]:
    """The numbers and titles of what lay in the scrap box, of which no size is known yet."""
    found = [
        (number.number, one.title)
        for one in design.bought.values()
        if one.is_salvaged
        and one.name in items
        and design.facts.about(PlacedFact, one.name) is None
        and (number := design.facts.about(ItemNumber, one.name)) is not None
    ]
    return tuple(sorted(found))


def _balloons(fact: PictureFact, design: Design) -> tuple[Balloon, ...]:
    return balloons_of(fact, design, (0, 1, 2))


def sizes_of(fact: PictureFact, design: Design) -> Iterator[Size]:
    """Length, width and height over all, and how high each level shaft stands.

    Where a screw carries part of it, what they come to at the end at which it is not drawn.
    """
    front, top = (_bounds(fact, n) for n in (1, 2))
    (left, low), (right, high) = front
    (_, near), (_, far) = top
    units = design.units
    long, tall, wide = (_elsewhere(fact, design, n, axis) for n, axis in ((1, 0), (1, 1), (2, 1)))
    yield _along("over all long", "front", (left, low), (right, low), units, long)
    yield _along("over all high", "front", (left, low), (left, high), units, tall)
    yield _along("over all wide", "top", (left, near), (left, far), units, wide)
    for name, height, x in _shafts(design, low):
        yield _along(f"height of {name}", "front", (left, low), (x, height), units)


def _elsewhere(fact: PictureFact, design: Design, number: int, axis: int) -> str:
    """` up, 69 down` behind a size over all along u or v of a view; '' where it stays as it is."""
    screws = wound(design)
    if len(screws) != 1:
        return ""
    told = ""
    for words, moved in screws[0].ends():
        was, then = (
            most[axis] - least[axis]
            for least, most in (
                _bounds(fact, number),
                _bounds(fact, number, screws[0].items, moved),
            )
        )
        if abs(then - was) > _SEEN:
            told += f", {shown_length(exact(round(then, 1)), design.units)} {words}"
    return f" {screws[0].here}{told.replace(' mm ', ' ')}" if told else ""


def _shafts(design: Design, low: float) -> Iterator[tuple[str, float, float]]:
    """Level shafts, each height once."""
    told: set[float] = set()
    for shaft in design.facts.all(ShaftFact):
        stand = design.facts.about(PlacedFact, shaft.subject)
        if stand is None or abs(carried((1.0, 0.0, 0.0), stand.frame)[2]) > _ROUND:
            continue
        middle = placed((0.0, 0.0, 0.0), stand.frame)
        height = round(middle[2], 6)
        if height not in told and height > low:
            told.add(height)
            yield shaft.subject, middle[2], middle[0]


def _along(
    name: str, view: str, start: Point, end: Point, units: str, elsewhere: str = ""
) -> Along:
    """A length below the view where both ends lie on one level, else a height beside it."""
    is_level = start[1] == end[1]
    far = abs(end[0] - start[0]) if is_level else abs(end[1] - start[1])
    return Along(
        f"arrangement.{name}",
        view,
        "u" if is_level else "v",
        start,
        end,
        shown_length(exact(round(far, 1)), units).removesuffix(" mm") + elsewhere,
        datum=f"from {view}",
        side="below" if is_level else "left",
        rank=9 if name.startswith("over") else 0,
    )


def _bounds(
    fact: PictureFact,
    number: int,
    items: frozenset[str] = frozenset(),
    moved: Vector = (0.0, 0.0, 0.0),
) -> tuple[Point, Point]:
    """What is seen of all parts that are drawn in a view, some `items` moved so far."""
    corners = []
    for one in fact.shown:
        view: SolidView = one.views[number]
        if view.edges:
            u, v = view.flat(moved) if one.copy.item in items else (0.0, 0.0)
            corners += [(x + u, y + v) for x, y in view.bounds]
    us, vs = zip(*corners, strict=True)
    return (min(us), min(vs)), (max(us), max(vs))
