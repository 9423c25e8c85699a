"""Parts as they stand to those that miss what should carry them: a way, a seat, a flat."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Diagnostic,
    End,
    Feature,
    Role,
    exact,
    filed_stretch,
    shown_length,
)
from binder_plugins.arrangement import codes
from binder_plugins.arrangement.copies import Copy
from binder_plugins.arrangement.joined import Stand
from binder_plugins.arrangement.meetings import Meeting
from binder_plugins.arrangement.model import Model
from binder_plugins.arrangement.places import Spot
from binder_plugins.arrangement.rows import Row
from binder_plugins.arrangement.space import carried, scaled
from binder_solid.facts import Located
from binder_solid.forms import Vector
from binder_solid.space import dot, minus, placed, plus

# Common practice, no source: with less than half of it on, a slide tips and a wheel rocks.
_HALF = 0.5
_NEAR = 1e-6
# A part may stand off a filed seat by so much in mm, as a file leaves its end; no source.
_OFF_SEAT = 0.2
Span = tuple[float, float]


def missed(model: Model) -> Iterator[Diagnostic]:
    """Slides beside their way, pieces beside their seat, grub screws beside their flat."""
    told: set[str] = set()
    for one in model.meetings:
        if one.spot.sort == "way" and one.joint.name not in told:
            for finding in _beside_way(one, model):
                told.add(one.joint.name)
                yield finding
        yield from _beside_filed(one, model)
    for row in model.rows:
        yield from _beside_seats(row, model)


def _beside_way(one: Meeting, model: Model) -> Iterator[Diagnostic]:
    names = [copy.name for copy in (one.one, one.other)]
    if not all(name in model.standing for name in names) or one.spot.along is None:
        return
    stands = [model.standing[name] for name in names]
    run = carried(one.spot.along, stands[0].frame)
    spans = [_reach(stand, run) for stand in stands]
    short = min(high - low for low, high in spans)
    if _shared(*spans) < _HALF * short - _NEAR:
        small, large = sorted(stands, key=lambda each: _long(each, run))
        yield codes.SLIDE_OFF_WAY.at(
            one.joint.at,
            f"'{small.copy.name}' stands with {_size(_shared(*spans), model)} of its "
            f"{_size(short, model)} on the way of '{large.copy.name}'",
            help=f"say where it stands: `positions: {small.copy.item}: {{at: ...}}`, or turn "
            "round what moves it",
        )


def _long(stand: Stand, run: Vector) -> float:
    low, high = _reach(stand, run)
    return high - low


def _reach(stand: Stand, run: Vector) -> Span:
    values = [dot(run, placed(point, stand.frame)) for point in stand.copy.eight]
    return min(values), max(values)


def _shared(one: Span, other: Span) -> float:
    return max(0.0, min(one[1], other[1]) - max(one[0], other[0]))


def _size(mm: float, model: Model) -> str:
    return shown_length(exact(round(mm, 2)), model.design.units)


def _beside_filed(one: Meeting, model: Model) -> Iterator[Diagnostic]:
    """What is put on a stretch that was filed for it along a longer part, and stands beside it."""
    for met in (one, one.seen_from(one.other.name)):
        end = next((end for end in met.joint.ends if end.item == met.one.item), None)
        feature = _filed_at(end, model) if end is not None else None
        stretch = filed_stretch(feature) if feature is not None else None
        long, other = (model.standing.get(copy.name) for copy in (met.one, met.other))
        if stretch is None or end is None or long is None or other is None:
            continue
        start, stop, side = float(stretch[0]), float(stretch[1]), stretch[2]
        whole = met.one.fact.size[0]
        seat = (start, stop) if side == "left" else (whole - stop, whole - start)
        bore = _on(long, other, met.other_spot)
        # What stands on an end is stopped by its shoulder.
        if start > 0 and bore[1] - bore[0] - _shared(seat, bore) > _OFF_SEAT:
            yield _off_seat(met, end, seat, bore, model)


def _filed_at(end: End, model: Model) -> Feature | None:
    part = model.design.parts.get(end.item)
    features = part.features if part is not None else ()
    return next((one for one in features if one.name == end.place), None)


def _beside_seats(row: Row, model: Model) -> Iterator[Diagnostic]:
    """What is fixed on a shaft, as its row puts it, against the step that its joint names."""
    shaft = model.standing.get(row.shaft.name)
    if shaft is None:
        return
    fixed = [
        copy
        for copy, piece in zip(row.pieces, row.fact.pieces, strict=True)
        if copy is not None and piece.role is Role.FIXED
    ]
    for one in model.meetings_with(row.shaft):
        stand = model.standing.get(one.other.name)
        if stand is None or one.other not in fixed or one.spot.sort != "plug":
            continue
        seat, bore = _along(one.spot), _on(shaft, stand, one.other_spot)
        least = min(seat[1] - seat[0], bore[1] - bore[0])
        if _shared(seat, bore) < _HALF * least - _NEAR:
            end = next(end for end in one.joint.ends if end.item == one.one.item)
            yield _off_seat(one, end, seat, bore, model)
        else:
            yield from _beside_flat(one, seat, shaft, stand, model)


def _along(spot: Spot) -> Span:
    """A plug along its own shaft."""
    tip = plus(spot.point, scaled(spot.way, spot.long))
    return min(spot.point[0], tip[0]), max(spot.point[0], tip[0])


def _on(shaft: Stand, piece: Stand, bore: Spot) -> Span:
    """Where along a shaft the bore of a piece lies."""
    ends = [bore.point, plus(bore.point, scaled(bore.way, -bore.long))]
    values = [_x(shaft, placed(end, piece.frame)) for end in ends]
    return min(values), max(values)


def _x(shaft: Stand, point: Vector) -> float:
    return dot(minus(point, shaft.frame.origin), shaft.frame.x)


def _off_seat(one: Meeting, end: End, seat: Span, bore: Span, model: Model) -> Diagnostic:
    here, there = (f"{_size(low, model)} to {_size(high, model)}" for low, high in (seat, bore))
    return codes.SEAT_MISSED.at(
        end.at,
        f"'{end}' lies {here} from the left end, and '{one.other.name}' stands at {there}",
        help="make the seat as long as what stands on it, and where it stands",
    )


def _beside_flat(
    one: Meeting, seat: Span, shaft: Stand, piece: Stand, model: Model
) -> Iterator[Diagnostic]:
    """The screw that clamps a hub, against the flats on its seat."""
    flats = [flat for flat in shaft.copy.fact.located if _is_flat_on(flat, seat)]
    for screw in _screws(piece.copy, one.joint.name, model) if flats else ():
        at = _x(shaft, placed(piece.copy.point(screw.spots[0]), piece.frame))
        if any(abs(at - flat.frame.origin[0]) <= _room(flat, screw, one) for flat in flats):
            continue
        flat = flats[0]
        yield codes.FLAT_MISSED.at(
            flat.at,
            f"the flat '{flat.name}' lies about {_size(flat.frame.origin[0], model)} from the "
            f"left end, and the screw of '{piece.copy.name}' comes down at {_size(at, model)}",
            help=f"write `at: {_size(at, model)} from left`",
        )


def _screws(hub: Copy, joint: str, model: Model) -> Iterator[Located]:
    """The tapped holes across a hub that its joint asked for."""
    part = model.design.parts.get(hub.item)
    names = {one.name for one in part.features if one.implied_by == joint} if part else set()
    for one in hub.fact.located:
        if one.name in names and one.is_thread and one.face == "across":
            yield one


def _is_flat_on(one: Located, seat: Span) -> bool:
    return one.kind == "flatted" and seat[0] <= one.frame.origin[0] <= seat[1]


def _room(flat: Located, screw: Located, one: Meeting) -> float:
    """How far from the middle of the flat the screw still stands on it with its whole end."""
    long = flat.length if flat.length is not None else one.spot.long
    return max(0.0, (long - (screw.diameter or 0.0)) / 2) + _NEAR
