"""Turns a job in millimetres into whole numbers in which a bar is full when a sum says so.

A piece weighs its length plus one kerf. A bar whose last piece may end flush takes one
kerf more than its usable length, because n pieces need n - 1 cuts there:
sum(l) + (n - 1) k <= L is sum(l + k) <= L + k. A held bar takes its usable length.
Source: derived from those two lines; common practice, no printed source.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from itertools import groupby
from math import lcm

from binder_plugins.cutlist.job import Bar, Piece, Sawing, longest_piece


@dataclass(frozen=True, slots=True)
class Kind:
    """Bars that are the same to the saw: what one takes, its length, how many are owned."""

    capacity: int
    length: int
    count: int | None

    @property
    def price(self) -> int:
        """The length that has to be bought for one."""
        return 0 if self.count is not None else self.length


@dataclass(frozen=True)
class Problem:
    """Weights, heaviest first, and kinds, owned before bought and small before large."""

    weights: tuple[int, ...]
    kinds: tuple[Kind, ...]

    @cached_property
    def scarce(self) -> int:
        """How many pieces, the first ones, no bar that can be bought is long enough for."""
        bought = max((kind.capacity for kind in self.kinds if kind.count is None), default=0)
        return sum(weight > bought for weight in self.weights)


@dataclass(frozen=True, slots=True)
class Measured:
    """A problem with the pieces and bars that it stands for.

    `per_mm` is the number of units to a millimetre; `bars` has those of each kind.
    """

    problem: Problem
    sawing: Sawing
    per_mm: int
    pieces: tuple[Piece, ...]
    too_long: tuple[Piece, ...]
    bars: tuple[tuple[Bar, ...], ...]

    def weight(self, piece: Piece) -> int:
        """What one such piece takes off a bar, in units."""
        return _weight(piece, self.sawing, self.per_mm)


def measured(pieces: Iterable[Piece], bars: Iterable[Bar], sawing: Sawing) -> Measured:
    """The job in whole numbers, in an order that does not depend on that of the input."""
    ordered = _merged_pieces(pieces)
    of_use = [bar for bar in _merged_bars(bars) if longest_piece(bar, sawing) > 0]
    longest = max((longest_piece(bar, sawing) for bar in of_use), default=Fraction(0))
    fitting = tuple(piece for piece in ordered if piece.length <= longest)
    too_long = tuple(piece for piece in ordered if piece.length > longest)
    per_mm = _units_per_mm(ordered, of_use, sawing)
    groups = _alike(of_use, sawing)
    kinds = tuple(_kind(group, sawing, per_mm) for group in groups)
    weights = tuple(
        weight for piece in fitting for weight in [_weight(piece, sawing, per_mm)] * piece.count
    )
    return Measured(Problem(weights, kinds), sawing, per_mm, fitting, too_long, groups)


def _merged_pieces(pieces: Iterable[Piece]) -> list[Piece]:
    counts = Counter[tuple[Fraction, str]]()
    for piece in pieces:
        counts[-piece.length, piece.label] += piece.count
    return [Piece(label, -length, counts[length, label]) for length, label in sorted(counts)]


def _merged_bars(bars: Iterable[Bar]) -> list[Bar]:
    counts = Counter[tuple[bool, Fraction, str, Fraction]]()
    for bar in bars:
        counts[not bar.is_owned, bar.length, bar.label, bar.holding] += bar.count or 0
    return [
        Bar(label, length, None if is_bought else count, holding)
        for (is_bought, length, label, holding), count in sorted(counts.items())
        if is_bought or count
    ]


def _units_per_mm(pieces: Iterable[Piece], bars: Iterable[Bar], sawing: Sawing) -> int:
    lengths = [sawing.kerf, sawing.trim, *(piece.length for piece in pieces)]
    lengths += [length for bar in bars for length in (bar.length, bar.holding)]
    return lcm(*(length.denominator for length in lengths))


def _alike(bars: Iterable[Bar], sawing: Sawing) -> tuple[tuple[Bar, ...], ...]:
    def likeness(bar: Bar) -> tuple[bool, Fraction, Fraction]:
        return not bar.is_owned, longest_piece(bar, sawing), bar.length

    return tuple(tuple(group) for _, group in groupby(sorted(bars, key=likeness), key=likeness))


def _kind(group: tuple[Bar, ...], sawing: Sawing, per_mm: int) -> Kind:
    first = group[0]
    count = sum(bar.count or 0 for bar in group) if first.is_owned else None
    capacity = longest_piece(first, sawing) + sawing.kerf
    return Kind(int(capacity * per_mm), int(first.length * per_mm), count)


def _weight(piece: Piece, sawing: Sawing, per_mm: int) -> int:
    return int((piece.length + sawing.kerf) * per_mm)
