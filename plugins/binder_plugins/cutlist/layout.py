"""Turns a packing in whole numbers back into bars with pieces, cuts and remnants in mm."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import replace
from itertools import chain, groupby, repeat

from binder_plugins.cutlist.job import Bar, Piece, end_of_use
from binder_plugins.cutlist.loads import Packing
from binder_plugins.cutlist.plan import CutBar, Kerf, Placed, Unplaced
from binder_plugins.cutlist.problem import Measured


def laid_out(job: Measured, packing: Packing) -> tuple[tuple[CutBar, ...], tuple[Unplaced, ...]]:
    """The bars in the order of the packing, and the pieces without one, longest first."""
    heaps = {weight: _each(alike) for weight, alike in groupby(job.pieces, key=job.weight)}
    stock = [_in_turn(bars) for bars in job.bars]
    cut = tuple(
        _cut_bar(next(stock[load.kind]), [next(heaps[weight]) for weight in load.weights], job)
        for load in packing.loads
    )
    left = Counter(next(heaps[weight]) for weight in packing.unplaced)
    short = [Unplaced(replace(piece, count=left[piece]), is_too_long=False) for piece in left]
    too_long = [Unplaced(piece, is_too_long=True) for piece in job.too_long]
    return cut, (*too_long, *short)


def _each(pieces: Iterable[Piece]) -> Iterator[Piece]:
    return chain.from_iterable(repeat(piece, piece.count) for piece in tuple(pieces))


def _in_turn(bars: Iterable[Bar]) -> Iterator[Bar]:
    """Owned bars one by one; of bars to be bought the first, as often as it is wanted."""
    return chain.from_iterable(
        repeat(bar) if bar.count is None else repeat(bar, bar.count) for bar in bars
    )


def _cut_bar(bar: Bar, pieces: Iterable[Piece], job: Measured) -> CutBar:
    limit, position = end_of_use(bar, job.sawing), job.sawing.trim
    placed, kerfs = list[Placed](), list[Kerf]()
    for piece in pieces:
        placed.append(Placed(piece.label, position, position + piece.length))
        position += piece.length
        # A last piece that ends with a free bar needs no cut; a held one is always cut off.
        if position < limit or bar.holding:
            kerfs.append(Kerf(position, min(position + job.sawing.kerf, limit)))
            position = kerfs[-1].end
    return CutBar(bar, tuple(placed), tuple(kerfs), limit - position)
