"""The row of a shaft to places along it, each piece against the one before."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from binder.api import Design, Piece, Role, ShaftFact

Reach = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Row:
    """A row laid out in mm from its left end: bearings and what is fixed on the shaft."""

    bearings: tuple[tuple[Piece, Reach], ...]
    stands: Mapping[str, Reach]
    long: float
    play: float | None


def row_of(shaft: str, design: Design) -> Row | None:
    """The row of a shaft; None where there is none, or a length in it is not told.

    What lies between the outer bearings lies against the left one, so that a place is right to
    the end float.
    """
    fact = design.facts.about(ShaftFact, shaft)
    if fact is None:
        return None
    places = [n for n, one in enumerate(fact.pieces) if one.role is Role.BEARING]
    if not places:
        return None
    first, last = places[0], places[-1]
    known = [float(one.length) if one.length is not None else None for one in fact.pieces]
    between = known[first + 1 : last]
    lengths = [one if one is not None else 0.0 for one in known]
    if fact.apart is None and None in between:
        return None
    gap = float(fact.apart) if fact.apart is not None else sum(lengths[first + 1 : last])
    reaches = _laid(lengths, first, last, gap)
    pieces = list(zip(fact.pieces, known, reaches, strict=True))
    return Row(
        tuple((piece, reach) for piece, _, reach in pieces if piece.role is Role.BEARING),
        {
            piece.item: reach
            for piece, length, reach in pieces
            if piece.role is not Role.BEARING and length is not None and piece.item != shaft
        },
        max(high for _, high in reaches),
        float(fact.most) if fact.play is None else float(fact.play),
    )


def _laid(lengths: Sequence[float], first: int, last: int, gap: float) -> list[Reach]:
    """Each piece after the one before; the last bearing stands at its gap."""
    found: list[Reach] = []
    at = 0.0
    for number, length in enumerate(lengths):
        if number == last and last != first:
            at = found[first][1] + gap
        found.append((at, at + length))
        at += length
    return found
