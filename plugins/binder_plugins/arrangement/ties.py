"""Ties: what joints, rows and the maker's words ask of the place of a part.

A tie lays directions of the part along directions of the model, and holds points of it on
planes. The smaller `rank` goes first; ties of RANK_ROW and less must agree.
"""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import Span
from binder_solid.forms import Vector

RANK_SAID = 0
RANK_JOINT = 1
RANK_ROW = 2
RANK_SAID_MIDDLE = 3
RANK_SEAT = 4
RANK_MIDDLE = 5
RANK_GUESS = 6


@dataclass(frozen=True, slots=True)
class Lay:
    """A direction of the part along one of the model.

    `sense`: 2 where it is sure, 1 where it is likely, 0 where either will do.
    """

    own: Vector
    there: Vector
    sense: int
    source: str
    at: Span
    is_axis: bool = True


@dataclass(frozen=True, slots=True)
class Hold:
    """A point of the part on a plane: its way along `normal` is `value` mm in the model.

    With `side` the point is the corner that lies farthest that way (1) or the other (-1) of
    the part's box, or of its step `by`.
    """

    normal: Vector
    own: Vector | None
    value: float
    rank: int
    source: str
    at: Span
    side: int = 0
    box: tuple[Vector, ...] = ()
