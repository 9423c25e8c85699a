"""What is asked of the saw: pieces, the bars to cut them from, and what each cut loses.

Lengths are exact fractions of a millimetre throughout.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

NOTHING = Fraction(0)


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece to be cut, `length` mm as it leaves the saw, `count` of them.

    The allowance for facing its ends is part of the length. Raises ValueError where the
    length is not positive or the count is below one.
    """

    label: str
    length: Fraction
    count: int = 1

    def __post_init__(self) -> None:
        if self.length <= 0 or self.count < 1:
            raise ValueError(f"a piece needs a length and a count: {self}")


@dataclass(frozen=True, slots=True)
class Bar:
    """A bar `length` mm long: `count` of them on the shelf, or None where it can be bought.

    `holding` mm at its far end stay in chuck or vice and are lost, once for each bar.
    Raises ValueError where the length is not positive, or a count or holding negative.
    """

    label: str
    length: Fraction
    count: int | None = None
    holding: Fraction = NOTHING

    def __post_init__(self) -> None:
        if self.length <= 0 or self.holding < 0 or (self.count or 0) < 0:
            raise ValueError(f"a bar needs a length, and nothing of it can be negative: {self}")

    @property
    def is_owned(self) -> bool:
        """It lies on the shelf; it need not be bought."""
        return self.count is not None


@dataclass(frozen=True, slots=True)
class Sawing:
    """What cutting loses, in mm: `kerf` for each cut, `trim` at each end of every bar.

    The trim takes its own cut with it. Raises ValueError where one is negative.
    """

    kerf: Fraction = NOTHING
    trim: Fraction = NOTHING

    def __post_init__(self) -> None:
        if self.kerf < 0 or self.trim < 0:
            raise ValueError(f"a cut cannot give metal back: {self}")


def end_of_use(bar: Bar, sawing: Sawing) -> Fraction:
    """How far along the bar the last cut may reach, in mm from the free end.

    A bar that is held by its ragged end loses the longer of holding and trim there.
    """
    return bar.length - max(bar.holding, sawing.trim)


def longest_piece(bar: Bar, sawing: Sawing) -> Fraction:
    """The longest single piece the bar gives, in mm; zero or less where it gives none.

    With nothing held the last piece may end flush with the bar, so n pieces take n - 1
    kerfs; a held piece must be cut off, so each takes its own.
    """
    own_cut = sawing.kerf if bar.holding else NOTHING
    return end_of_use(bar, sawing) - sawing.trim - own_cut
