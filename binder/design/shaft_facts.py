"""Facts about shafts: the pieces along each, and the play that they leave."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction

from binder.design.facts import Fact
from binder.diagnostics import NOWHERE, Span


class Role(StrEnum):
    """What a piece is to its shaft."""

    BEARING = "carries the shaft"
    FIXED = "fixed on the shaft"
    LOOSE = "loose on the shaft"


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece of the list; `length` along the axis and `across` in mm, where they are known.

    `enters` says from which end it can be put on: left, right, either or neither.
    """

    item: str
    place: str
    title: str
    role: Role
    joint: str
    length: Fraction | None
    across: Fraction | None
    enters: str
    at: Span = NOWHERE


class Located(StrEnum):
    """What stops a shaft along its axis."""

    INSIDE = "between the bearings"
    OUTSIDE = "outside the bearings"
    ONE = "at one bearing"
    TWICE = "at both bearings"
    NOT = "not at all"


@dataclass(frozen=True, slots=True)
class ShaftFact(Fact):
    """A shaft of the model; the subject is its part. Lengths are in mm.

    `play` is the end float that the sizes give, None where they do not tell; `least` and
    `most` are the float that is wanted; `span` what lies between the faces that stop it.
    """

    pieces: tuple[Piece, ...]
    located: Located
    stops: tuple[int, ...]
    apart: Fraction | None
    inside: Fraction | None
    play: Fraction | None
    span: Fraction | None
    least: Fraction
    most: Fraction
    to_suit: int | None
    at: Span = NOWHERE
