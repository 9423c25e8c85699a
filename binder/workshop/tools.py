"""Tools as plugins see them: typed, exact, with the place where each was written."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from binder.diagnostics import Span


@dataclass(frozen=True, slots=True)
class Drill:
    """A drill by the name on its shank or box: `3.3 mm`, `no. 34 drill`, `7/64 in`.

    `mm` is its exact diameter in millimetres; `drawer` is the set that it belongs to.
    """

    name: str
    mm: Fraction
    drawer: str
    at: Span


@dataclass(frozen=True, slots=True)
class Reamer:
    """A reamer of an exact nominal diameter in mm; `gives` are its limits, as `H7`, or ''."""

    name: str
    mm: Fraction
    drawer: str
    gives: str
    is_hand: bool
    at: Span


@dataclass(frozen=True, slots=True)
class EndCutter:
    """An end mill or slot drill of an exact diameter in mm; `plunges` is true of a slot drill."""

    name: str
    mm: Fraction
    plunges: bool
    at: Span


@dataclass(frozen=True, slots=True)
class Tap:
    """The taps of one thread; `kinds` are among taper, second and plug."""

    designation: str
    kinds: tuple[str, ...]
    at: Span


@dataclass(frozen=True, slots=True)
class Die:
    """A die, by the designation of its thread."""

    designation: str
    at: Span


@dataclass(frozen=True, slots=True)
class Instrument:
    """A measuring tool: sizes and resolution in mm; `measures` says what it can be put to."""

    name: str
    measures: tuple[str, ...]
    least: Fraction
    most: Fraction
    resolution: Fraction
    at: Span


@dataclass(frozen=True, slots=True)
class Divider:
    """A dividing head or rotary table: turns of its worm for one, its circles, and its dial.

    `direct` are circles of holes on the spindle itself, `mark` a division of the dial in
    degrees, None where it has none.
    """

    name: str
    ratio: int
    plates: Mapping[str, tuple[int, ...]]
    direct: tuple[int, ...] = ()
    mark: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Holder:
    """A chuck or set of collets; `run_out` is the total reading in mm, None where not known."""

    name: str
    kind: str
    run_out: Fraction | None
    at: Span


@dataclass(frozen=True, slots=True)
class StockPiece:
    """Stock of one kind: section, length and width in mm, exact; `price` is of one piece.

    `count` is how many are there, None for what can be bought. `text` is the stock as it was
    written; sheet and plate have a width.
    """

    form: str
    section: tuple[Fraction, ...]
    material: str
    length: Fraction
    width: Fraction | None
    count: int | None
    price: Decimal | None
    text: str
    at: Span


@dataclass(frozen=True, slots=True)
class Owned:
    """All tools and stock; drills, reamers and end cutters by size, the rest as written."""

    drills: tuple[Drill, ...]
    reamers: tuple[Reamer, ...]
    end_cutters: tuple[EndCutter, ...]
    taps: tuple[Tap, ...]
    dies: tuple[Die, ...]
    instruments: tuple[Instrument, ...]
    shelf: tuple[StockPiece, ...]
    sold: tuple[StockPiece, ...]
