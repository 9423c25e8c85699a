"""Small jobs against every way there is to cut them, with a count of their own."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from hashlib import sha256
from itertools import chain, count, islice

import pytest

from binder_plugins.cutlist.job import Bar, Piece, Sawing
from binder_plugins.cutlist.packing import pack
from binder_plugins.cutlist.plan import Plan

Group = tuple[Bar, tuple[Fraction, ...]]
Merit = tuple[int, Fraction, Fraction, int]


def fits(group: Group, sawing: Sawing) -> bool:
    """sum(l) + cuts * k within the bar, said anew: held bars are cut once for each piece."""
    bar, lengths = group
    cuts = len(lengths) if bar.holding else len(lengths) - 1
    far_end = max(bar.holding, sawing.trim)
    return sum(lengths) + cuts * sawing.kerf + sawing.trim + far_end <= bar.length


def every_way(
    lengths: tuple[Fraction, ...], bars: list[Bar], sawing: Sawing, groups: tuple[Group, ...] = ()
) -> Iterator[Merit]:
    """The merit of each way to share the lengths out; the rest of the bars stay whole."""
    if not lengths:
        bought = sum((bar.length for bar, _ in groups if bar.count is None), Fraction(0))
        yield 0, Fraction(0), bought, len(groups)
        return
    first, rest = lengths[0], lengths[1:]
    for place, (bar, held) in enumerate(groups):
        if fits((bar, (*held, first)), sawing):
            joined = (*groups[:place], (bar, (*held, first)), *groups[place + 1 :])
            yield from every_way(rest, bars, sawing, joined)
    for bar in bars:
        used = sum(other is bar for other, _ in groups)
        if (bar.count is None or used < bar.count) and fits((bar, (first,)), sawing):
            yield from every_way(rest, bars, sawing, (*groups, (bar, (first,))))
    for left, length, bought, number in every_way(rest, bars, sawing, groups):
        yield left + 1, length + first, bought, number


def merit(plan: Plan) -> Merit:
    left = [unplaced.piece for unplaced in plan.unplaced]
    length = sum((piece.length * piece.count for piece in left), Fraction(0))
    return sum(piece.count for piece in left), length, plan.bought, len(plan.bars)


class Draw:
    """Numbers by chance, the same for a seed on every machine and version."""

    def __init__(self, seed: int) -> None:
        self._bytes = chain.from_iterable(
            sha256(f"{seed}/{block}".encode()).digest() for block in count()
        )

    def between(self, low: int, high: int) -> int:
        """Any of both and what lies between."""
        return low + int.from_bytes(islice(self._bytes, 4)) % (high - low + 1)

    def one_of(self, *values: int) -> Fraction:
        return Fraction(values[self.between(0, len(values) - 1)])


def random_job(seed: int) -> tuple[list[Piece], list[Bar], Sawing]:
    """Up to seven pieces, half millimetres, with fewer kinds of bar where there are many."""
    draw = Draw(seed)
    number = draw.between(1, 7)
    pieces = [Piece(f"p{n}", Fraction(draw.between(10, 90), 2)) for n in range(number)]
    holding = draw.one_of(0, 0, 4)
    bought = {draw.one_of(40, 50, 60, 75) for _ in range(draw.between(0, 2 if number < 6 else 1))}
    bars = [Bar(f"new {length}", length, None, holding) for length in sorted(bought)]
    for n in range(draw.between(0, 3 if number < 6 else 2)):
        length = Fraction(draw.between(20, 120), 2)
        bars.append(Bar(f"shelf {n}", length, draw.between(0, 2), holding))
    return pieces, bars, Sawing(draw.one_of(0, 1, 3) / 2, draw.one_of(0, 0, 1))


@pytest.mark.parametrize("seed", range(120))
def test_no_way_is_better_than_a_proven_plan(seed: int) -> None:
    pieces, bars, sawing = random_job(seed)
    plan = pack(pieces, bars, sawing)
    best = min(every_way(tuple(piece.length for piece in pieces), bars, sawing))
    assert plan.is_proven
    assert merit(plan) == best
    assert plan.lower_bound == best[3]
    assert plan.bought_bound == best[2]


@pytest.mark.parametrize("seed", range(120))
def test_a_plan_without_search_bounds_the_best_from_both_sides(seed: int) -> None:
    pieces, bars, sawing = random_job(seed)
    plan = pack(pieces, bars, sawing, nodes=0)
    best = min(every_way(tuple(piece.length for piece in pieces), bars, sawing))
    assert merit(plan) >= best
    assert not plan.is_proven or merit(plan) == best
    if merit(plan)[:2] == best[:2]:
        assert plan.bought_bound <= best[2]
        assert plan.bought != best[2] or plan.lower_bound <= best[3]
