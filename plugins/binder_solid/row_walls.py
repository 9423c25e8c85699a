"""Rows on a pin between two walls of one piece: what is made to the gap once the walls stand.

A gap that is joined, or cut, strays as its own lengths do; what fills it and what grips over it
are made to it as measured. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import Located, Role

if TYPE_CHECKING:
    from binder.api import Design, Piece, ShaftFact


@dataclass(frozen=True, slots=True)
class Walls:
    """The piece that carries a shaft in two walls, and the place of their bores.

    `gap` is between them and `over` across both, in mm.
    """

    item: str
    place: str
    gap: float
    over: float


@dataclass(frozen=True, slots=True)
class Spacers:
    """Loose pieces, all alike, that share what a gap leaves: `count` of them, each `long` mm.

    `others` stand in the gap as well; `drawn` is what each comes to in mm if all else is as drawn.
    """

    item: str
    title: str
    count: int
    long: float
    drawn: float
    walls: Walls
    others: tuple[Piece, ...]


def walls_of(shaft: ShaftFact) -> Walls | None:
    """The two walls of one piece that a shaft goes through; None where two pieces carry it."""
    bearings = [one for one in shaft.pieces if one.role is Role.BEARING]
    lengths = [float(one.length) for one in bearings if one.length is not None]
    if len(bearings) != len(lengths) or len(bearings) != 2 or shaft.apart is None:
        return None
    first, last = bearings
    if first.item != last.item or first.item == shaft.subject or not first.place:
        return None
    gap = float(shaft.apart)
    return Walls(first.item, first.place, gap, gap + sum(lengths))


def spacers_of(shaft: ShaftFact, design: Design) -> Spacers | None:
    """What is faced so that the row goes in between the walls; None where the row needs none.

    The row on a pin that is held outside the walls has a float of its own: the named piece closes
    it, else the thinnest loose one that no joint holds, with all that are alike.
    """
    walls = walls_of(shaft)
    inside = row_between(shaft)
    if walls is None or shaft.located is not Located.OUTSIDE or not inside:
        return None
    if any(one.length is None for one in inside):
        return None
    if shaft.to_suit is not None:
        named = shaft.pieces[shaft.to_suit].item
        loose = [one for one in inside if one.item == named]
    else:
        loose = [one for one in inside if one.role is Role.LOOSE and not one.joint]
    loose = [one for one in loose if one.item in design.parts]
    if not loose:
        return None
    thinnest = min(loose, key=lambda one: one.length or 0)
    others = tuple(one for one in inside if one.item != thinnest.item)
    count = len(inside) - len(others)
    taken = sum(float(one.length or 0) for one in others)
    left = walls.gap - taken - float(shaft.least + shaft.most) / 2
    long = float(thinnest.length or 0)
    return Spacers(thinnest.item, thinnest.title, count, long, left / count, walls, others)


def row_between(shaft: ShaftFact) -> tuple[Piece, ...]:
    """What stands between the outer bearings of a shaft."""
    places = [n for n, one in enumerate(shaft.pieces) if one.role is Role.BEARING]
    return shaft.pieces[places[0] + 1 : places[-1]] if len(places) > 1 else ()
