"""How several holes stand to each other, read off a maker's words."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Final

from binder_trade.fastening.cursor import Cursor
from binder_trade.fastening.faults import Unreadable, quoted
from binder_trade.fastening.sizes import Size

MOST_HOLES: Final = 400
FORMS: Final = (
    "4 off on 16 mm PCD",
    "2 off, 14 mm apart",
    "6 off in a row at 8 mm",
    "in two rows, 5 mm from the edges",
    "in two rows, 10 mm apart",
    "3 by 2 grid at 10 mm x 12 mm",
    "at the corners, 6 mm in",
    "single",
)
_WAY_OUT: Final = f"write it like one of: {'; '.join(FORMS)}"
_HALF_TURN: Final = 360


@dataclass(frozen=True, slots=True)
class Pattern:
    """The place of holes on a face, in mm and degrees; None where the words do not say.

    `kind` is circle, row, rows, grid, corners or single. `pitch_mm` is the step along the
    face's length, `row_gap_mm` the one across it, `edge_mm` the distance of the outer holes
    from the edges. The first hole of a circle stands at `first_deg`, counted anticlockwise
    from the face's length through its centre.
    """

    kind: str
    count: int | None
    text: str
    pitch_mm: float | None = None
    circle_mm: float | None = None
    rows: int = 1
    columns: int | None = None
    row_gap_mm: float | None = None
    edge_mm: float | None = None
    first_deg: float = 0.0


@lru_cache(maxsize=512)
def read_pattern(text: str, count: int | None = None) -> Pattern:
    """A pattern in a maker's words; raises Unreadable with the forms that can be read.

    `count` is the number off that was said elsewhere; it must not disagree.
    """
    cursor = Cursor(text)
    off = _off(cursor)
    found = (
        _single(cursor)
        or _circle(cursor)
        or _corners(cursor)
        or _grid(cursor)
        or _rows(cursor)
        or _row(cursor)
    )
    if found is None or not cursor.is_done:
        raise Unreadable(f"{quoted(text)} is no pattern that can be read", _WAY_OUT)
    written = replace(found, text=text)
    for said in (off, count):
        written = written if said is None else with_count(written, said)
    return written


def with_count(pattern: Pattern, count: int) -> Pattern:
    """The pattern with its number off; raises Unreadable where it cannot have that many."""
    if pattern.count is not None and pattern.count != count:
        raise Unreadable(
            f"{quoted(pattern.text)} has {pattern.count} holes, not {count}",
            f"say {pattern.count} off, or another pattern",
        )
    if not 1 <= count <= MOST_HOLES:
        raise Unreadable(f"{count} holes are no pattern", f"say 1 to {MOST_HOLES} off")
    if count % pattern.rows:
        raise Unreadable(
            f"{count} holes do not share out into {pattern.rows} rows",
            f"say {count + pattern.rows - count % pattern.rows} off, or place each hole by itself",
        )
    return replace(pattern, count=count)


def _off(cursor: Cursor) -> int | None:
    """`4 off`, `4 holes`, and the comma after it."""
    start = cursor.place
    count = cursor.count()
    if count is None or not cursor.take_any("off", "holes"):
        cursor.place = start
        return None
    cursor.take_any("holes")
    cursor.take_any(",")
    return count


def _length(cursor: Cursor) -> float | None:
    """A size with its unit, in mm."""
    start = cursor.place
    size = cursor.size()
    if size is None:
        return None
    return _checked(size, cursor, start)


def _checked(size: Size, cursor: Cursor, start: int) -> float | None:
    if not size.unit:
        cursor.place = start
        return None
    if size.value <= 0:
        raise Unreadable(f"{quoted(cursor.text)} has a size of nothing", _WAY_OUT)
    return size.mm


def _single(cursor: Cursor) -> Pattern | None:
    if cursor.take("single") or cursor.take("one", "hole") or cursor.take("in", "the", "middle"):
        cursor.take("hole")
        return Pattern("single", 1, "")
    return None


def _circle(cursor: Cursor) -> Pattern | None:
    start = cursor.place
    cursor.take("on")
    cursor.take_any("a", "an")
    is_named_first = cursor.take("pcd")
    size = _length(cursor)
    if size is None or not (is_named_first or _circle_word(cursor)):
        cursor.place = start
        return None
    cursor.take_any(",")
    if cursor.take("equally", "spaced") or cursor.take("eq", "sp"):
        cursor.take_any(",")
    return Pattern("circle", None, "", circle_mm=size, first_deg=_first(cursor))


def _circle_word(cursor: Cursor) -> bool:
    cursor.take_any("diameter", "dia", "pitch")
    return cursor.take_any("pcd", "circle")


def _first(cursor: Cursor) -> float:
    """`first at 45 deg`; 0 where it is not said."""
    if not cursor.take("first", "at"):
        return 0.0
    size = cursor.size()
    if size is None or size.unit or not cursor.take_any("deg", "degrees"):
        raise Unreadable(f"{quoted(cursor.text)} has no angle", "write: first at 45 deg")
    return float(size.value) % _HALF_TURN


def _corners(cursor: Cursor) -> Pattern | None:
    start = cursor.place
    cursor.take_any("one")
    if not (cursor.take_any("at", "in") and cursor.take("the", "corners")):
        cursor.place = start
        return None
    cursor.take_any(",")
    inset = _length(cursor)
    if inset is None:
        raise Unreadable(
            f"{quoted(cursor.text)} does not say how far in", "write: at the corners, 6 mm in"
        )
    if not cursor.take("in"):
        _from_the_edges(cursor)
    return Pattern("corners", 4, "", edge_mm=inset)


def _from_the_edges(cursor: Cursor) -> bool:
    start = cursor.place
    if cursor.take("from"):
        cursor.take("the")
        if cursor.take_any("edges", "edge"):
            return True
    cursor.place = start
    return False


def _grid(cursor: Cursor) -> Pattern | None:
    start = cursor.place
    columns = cursor.count()
    is_by = columns is not None and cursor.take_any("by", "x")
    rows = cursor.count() if is_by else None
    if columns is None or rows is None or not cursor.take("grid"):
        cursor.place = start
        return None
    if not (cursor.take_any("at", "on") and columns >= 1 and rows >= 1):
        raise Unreadable(f"{quoted(cursor.text)} does not say how far apart", f"write: {FORMS[5]}")
    along = _length(cursor)
    across = _length(cursor) if along is not None and cursor.take_any("x", "by") else along
    if along is None or across is None:
        raise Unreadable(f"{quoted(cursor.text)} has no pitch", f"write: {FORMS[5]}")
    if not 1 <= columns * rows <= MOST_HOLES:
        raise Unreadable(
            f"{columns * rows} holes are no pattern", f"up to {MOST_HOLES} can be read"
        )
    return Pattern("grid", columns * rows, "", along, rows=rows, columns=columns, row_gap_mm=across)


def _rows(cursor: Cursor) -> Pattern | None:
    start = cursor.place
    cursor.take("in")
    rows = cursor.count()
    if rows is None or not cursor.take_any("rows", "row") or not 1 <= rows <= MOST_HOLES:
        cursor.place = start
        return None
    found = Pattern("rows", None, "", rows=rows)
    while not cursor.is_done:
        cursor.take_any(",")
        found = _row_clause(cursor, found)
    return found


def _row_clause(cursor: Cursor, found: Pattern) -> Pattern:
    """How far apart the rows are, how far in, or at what pitch the holes of a row stand."""
    is_pitch = cursor.take_any("at")
    size = _length(cursor)
    if size is not None and (is_pitch or cursor.take("pitch")):
        cursor.take("pitch")
        return replace(found, pitch_mm=size)
    if size is not None and cursor.take("apart"):
        return replace(found, row_gap_mm=size)
    if size is not None and _from_the_edges(cursor):
        return replace(found, edge_mm=size)
    raise Unreadable(f"{quoted(cursor.text)} is no pattern that can be read", _WAY_OUT)


def _row(cursor: Cursor) -> Pattern | None:
    start = cursor.place
    in_row = cursor.take("in", "a", "row") or cursor.take("in", "line")
    cursor.take_any(",")
    at = cursor.take("at")
    size = _length(cursor)
    is_said = size is not None and (at or cursor.take_any("apart", "pitch"))
    if not (in_row and size is None and not at) and not is_said:
        cursor.place = start
        return None
    cursor.take_any("pitch", "apart", "centres")
    return Pattern("row", None, "", pitch_mm=size)
