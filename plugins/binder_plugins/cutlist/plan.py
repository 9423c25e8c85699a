"""How the bars are to be cut: every piece with its place, and what is known about the least.

Positions and lengths are exact fractions of a millimetre, from the free end of the bar.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from binder_plugins.cutlist.job import Bar, Piece


@dataclass(frozen=True, slots=True)
class Placed:
    """One piece on a bar, from `start` to `end`."""

    label: str
    start: Fraction
    end: Fraction


@dataclass(frozen=True, slots=True)
class Kerf:
    """What one cut turns to dust, from `start` to `end`; less than the blade where it runs out."""

    start: Fraction
    end: Fraction


@dataclass(frozen=True, slots=True)
class CutBar:
    """One bar with its pieces in order of cutting and the cuts between and after them.

    `remnant` can still be cut from: holding and trim are already taken off.
    """

    bar: Bar
    pieces: tuple[Placed, ...]
    kerfs: tuple[Kerf, ...]
    remnant: Fraction

    @property
    def left_in_hand(self) -> Fraction:
        """The length of metal behind the last cut, what was held included: for the shelf list."""
        last_kerf = self.kerfs[-1].end if self.kerfs else Fraction(0)
        return self.bar.length - max(last_kerf, self.pieces[-1].end)


@dataclass(frozen=True, slots=True)
class Unplaced:
    """Pieces that found no bar; `is_too_long` where even a whole bar would not give one."""

    piece: Piece
    is_too_long: bool


@dataclass(frozen=True, slots=True)
class Plan:
    """The bars to cut and how good that is.

    Better is, in this order: fewer pieces unplaced, less length unplaced, less length
    bought, fewer bars. `is_proven` says that no plan is better. The bounds hold for every plan
    that leaves as many pieces unplaced: it buys at least `bought_bound` mm, and one that
    buys no more than this plan uses at least `lower_bound` bars.
    """

    bars: tuple[CutBar, ...]
    unplaced: tuple[Unplaced, ...]
    lower_bound: int
    bought_bound: Fraction
    is_proven: bool

    @property
    def bought(self) -> Fraction:
        """The length of all bars to be bought, in mm."""
        return sum((cut.bar.length for cut in self.bars if not cut.bar.is_owned), Fraction(0))
