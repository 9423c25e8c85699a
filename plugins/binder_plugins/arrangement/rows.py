"""Shafts to places along their axis: bearings stand, the pieces lie between and beside them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from binder.api import Design, Located, Piece, Role, ShaftFact, Span
from binder_plugins.arrangement.copies import Copy
from binder_plugins.arrangement.joined import Stand
from binder_plugins.arrangement.meetings import Meeting
from binder_plugins.arrangement.places import spots_of
from binder_plugins.arrangement.space import carried, scaled, square_to
from binder_plugins.arrangement.ties import RANK_MIDDLE, RANK_ROW, RANK_SEAT, Hold
from binder_solid.forms import Frame, Vector
from binder_solid.space import cross, dot, minus, placed

ALONG: Vector = (1.0, 0.0, 0.0)


@dataclass(frozen=True, slots=True)
class Row:
    """A shaft, the copies of its pieces in their order (None where one has no form)."""

    fact: ShaftFact
    shaft: Copy
    pieces: tuple[Copy | None, ...]

    @property
    def at(self) -> Span:
        """Where the row is written."""
        return self.fact.at

    @property
    def bearings(self) -> tuple[int, ...]:
        """The places of the pieces that carry the shaft."""
        roles = enumerate(self.fact.pieces)
        return tuple(n for n, one in roles if one.role is Role.BEARING)

    @property
    def carriers(self) -> tuple[str, ...]:
        """The names of the copies that carry the shaft."""
        pieces = (self.pieces[n] for n in self.bearings)
        return tuple(one.name for one in pieces if one is not None)

    @property
    def carried(self) -> tuple[str, ...]:
        """The shaft and the copies that stand on it."""
        held = self.bearings
        others = (one for n, one in enumerate(self.pieces) if n not in held)
        return (self.shaft.name, *(one.name for one in others if one is not None))

    def is_carried(self, standing: Mapping[str, Stand]) -> bool:
        """Whether every bearing of the row stands."""
        pieces = [self.pieces[n] for n in self.bearings]
        return bool(pieces) and all(one is not None and one.name in standing for one in pieces)


def rows_of(design: Design, copies: Mapping[str, tuple[Copy, ...]]) -> tuple[Row, ...]:
    """The rows of all shafts; the second time that an item is named is its second copy."""
    count: dict[str, int] = {}
    rows: list[Row] = []
    for fact in design.facts.all(ShaftFact):
        found = copies.get(fact.subject)
        if not found:
            continue
        row = [_next(piece, copies, count, design) for piece in fact.pieces]
        rows.append(Row(fact, found[0], tuple(row)))
    return tuple(rows)


def _next(
    piece: Piece, copies: Mapping[str, tuple[Copy, ...]], count: dict[str, int], design: Design
) -> Copy | None:
    found = copies.get(piece.item) or _plates(piece, copies, design)
    if not found:
        return None
    key = f"{piece.item}.{piece.place}"
    number = count.get(key, 0)
    count[key] = number + 1
    return found[number % len(found)]


def _plates(
    piece: Piece, copies: Mapping[str, tuple[Copy, ...]], design: Design
) -> tuple[Copy, ...]:
    """The copies of a fabrication's pieces that have the hole which is named."""
    whole = design.fabrications.get(piece.item)
    names = [one.item for one in whole.pieces] if whole is not None and piece.place else []
    return tuple(
        copy
        for name in names
        for copy in copies.get(name, ())
        if any(one.name == piece.place for one in copy.fact.located)
    )


@dataclass(frozen=True, slots=True)
class Line:
    """The direction of a row from left to right, and where each bearing begins and ends."""

    way: Vector
    through: Vector
    spans: Mapping[int, tuple[float, float]]


def line_of(row: Row, standing: Mapping[str, Stand], design: Design) -> Line | None:
    """The line of a row whose bearings stand."""
    if not row.is_carried(standing):
        return None
    first, last = row.bearings[0], row.bearings[-1]
    ways = [_bore(row, n, standing, design) for n in (first, last)]
    way = ways[0][1]
    if first != last and dot(minus(ways[1][0], ways[0][0]), way) < 0:
        way = scaled(way, -1.0)
    spans = {n: _span(row, n, way, standing, design) for n in row.bearings}
    return Line(way, ways[0][0], spans)


def _bore(
    row: Row, number: int, standing: Mapping[str, Stand], design: Design
) -> tuple[Vector, Vector]:
    """The middle of a bearing's bore and its direction in the model."""
    copy, place = row.pieces[number], _bored_at(row, number, design)
    if copy is None:
        return (0.0, 0.0, 0.0), ALONG
    frame = standing[copy.name].frame
    spots = spots_of(copy, place, design)
    if not spots:
        return placed(copy.middle, frame), carried(ALONG, frame)
    return placed(spots[0].middle, frame), carried(spots[0].way, frame)


def _bored_at(row: Row, number: int, design: Design) -> str:
    """The place of a bearing that the shaft runs in: the one named, or that of their joint."""
    piece = row.fact.pieces[number]
    if piece.place:
        return piece.place
    joint = design.joints.get(piece.joint)
    ends = [end for end in joint.ends if end.item == piece.item] if joint is not None else []
    return ends[0].place if ends else ""


def _span(
    row: Row, number: int, way: Vector, standing: Mapping[str, Stand], design: Design
) -> tuple[float, float]:
    copy = row.pieces[number]
    if copy is None:
        return (0.0, 0.0)
    frame, named = standing[copy.name].frame, row.fact.pieces[number].place
    spots = spots_of(copy, named, design) if named else ()
    points = list(copy.eight)
    if spots:
        mouth, out = spots[0].point, spots[0].way
        points = [mouth, minus(mouth, scaled(out, spots[0].long))]
    values = [dot(way, placed(point, frame)) for point in points]
    return min(values), max(values)


def starts_of(row: Row, line: Line) -> dict[int, float]:
    """Where each piece of a row that is no bearing begins along its line."""
    lengths = [_length(row, n) for n in range(len(row.pieces))]
    starts: dict[int, float] = {}
    first, last = row.bearings[0], row.bearings[-1]
    share = _float_outside(row) / 2
    here = line.spans[last][1] + share
    for n in range(last + 1, len(row.pieces)):
        starts[n] = here
        here += lengths[n]
    here = line.spans[first][0] - share
    for n in range(first - 1, -1, -1):
        here -= lengths[n]
        starts[n] = here
    for one, two in zip(row.bearings, row.bearings[1:], strict=False):
        starts |= dict(_between(row, line, one, two, lengths))
    return starts


def _float_outside(row: Row) -> float:
    """The float that two stops outside the bearings share; set apart by it they let it turn."""
    low, high = row.bearings[0], row.bearings[-1]
    outside = [n for n in row.fact.stops if not low <= n <= high]
    holds = row.fact.located in (Located.ONE, Located.OUTSIDE) and len(outside) > 1
    return _float(row) if holds else 0.0


def _float(row: Row) -> float:
    """The middle of the float that is wanted, in mm."""
    return float(row.fact.least + row.fact.most) / 2


def _between(
    row: Row, line: Line, one: int, two: int, lengths: list[float]
) -> Iterator[tuple[int, float]]:
    """In the middle of the gap; what stops the shaft at one bearing stands off it by the float."""
    low, high = line.spans[one][1], line.spans[two][0]
    inner = range(one + 1, two)
    total = sum(lengths[n] for n in inner)
    here = low + (high - low - total) / 2
    stops = row.fact.stops
    if row.fact.located is Located.ONE and any(n in inner for n in stops):
        if any(n > two for n in stops):
            here = high - total - _float(row)
        elif any(n < one for n in stops):
            here = low + _float(row)
    for n in inner:
        yield n, here
        here += lengths[n]


def _length(row: Row, number: int) -> float:
    known = row.fact.pieces[number].length
    copy = row.pieces[number]
    if known is not None:
        return float(known)
    return copy.fact.size[0] if copy is not None and copy.fact.stretches else 0.0


def holds_on_axis(copy: Copy, row: Row, line: Line) -> Iterator[Hold]:
    """A piece that no joint holds is threaded on the shaft."""
    one = square_to(line.way)
    for across in (one, cross(line.way, one)):
        value = dot(across, line.through)
        yield Hold(across, copy.middle, value, RANK_ROW, f"shafts: {row.fact.subject}", row.at)


def holds_in_row(copy: Copy, row: Row, line: Line) -> Iterator[Hold]:
    """A piece begins where the row says."""
    starts = starts_of(row, line)
    for n, piece in enumerate(row.pieces):
        if piece is not None and piece.name == copy.name and n in starts:
            yield Hold(
                line.way,
                None,
                starts[n],
                RANK_ROW if row.fact.pieces[n].role is Role.FIXED else RANK_MIDDLE,
                f"shafts: {row.fact.subject}",
                row.at,
                side=-1,
                box=copy.eight,
            )


def holds_of_shaft(
    row: Row, line: Line, turned: Frame, meetings: tuple[Meeting, ...], design: Design
) -> Iterator[Hold]:
    """A shoulder of the shaft stands against its piece; else its journal lies evenly."""
    starts = starts_of(row, line)
    source, at = f"shafts: {row.fact.subject}", row.at
    for n, start in starts.items():
        seat = _seat(row, n, meetings)
        if seat is not None:
            is_rightward = dot(carried(seat.spot.way, turned), line.way) > 0
            value = start if is_rightward else start + _length(row, n)
            yield Hold(line.way, seat.spot.point, value, RANK_SEAT, source, at)
            return
    ends = [edge for span in line.spans.values() for edge in span]
    middle = (min(ends) + max(ends)) / 2
    named = [one for one in meetings if one.other.item in {p.item for p in row.fact.pieces}]
    carrying = [one for one in named if one.joint.kind in ("runs_in", "slides", "swivels")]
    own = carrying[0].spot.middle if carrying else row.shaft.middle
    yield Hold(line.way, own, middle, RANK_SEAT, source, at)


def _seat(row: Row, number: int, meetings: tuple[Meeting, ...]) -> Meeting | None:
    copy = row.pieces[number]
    if copy is None:
        return None
    for one in meetings:
        if one.other.name == copy.name and one.spot.sort == "plug" and one.spot.is_seated:
            return one
    return None
