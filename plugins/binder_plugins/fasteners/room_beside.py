"""A pattern on a face to the room that its holes and heads have there."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import PlaceFact
from binder_plugins.fasteners import codes, hole_codes
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seating import Seat
from binder_plugins.fasteners.seen import Seen
from binder_trade.explained import NotDefined
from binder_trade.fastening import (
    Face,
    Layout,
    edge_distance,
    head_at_edge,
    heads_side_by_side,
    hole_pitch,
    lay_out,
    round_face,
    spanner_room,
)
from binder_trade.hardware import NotListed, spanner

_ON_AIR_MM = 1e-6


def room_on(seen: Seen, half: Half, seat: Seat | None) -> Iterator[Said]:
    """What is too close on one half; `seat` is that of the heads, where they sit here.

    The edge is looked at where the pattern stands in the middle of the face: on the half that
    it was said of, and on a round face that meets a round one.
    """
    size, layout = seen.asked.diameter_mm, laid(seen)
    if size is None or layout is None or half.is_radial:
        return
    if isinstance(layout, str):
        if half is seen.owner:
            yield codes.PATTERN_OFF_FACE.at(seen.pattern_at, layout, help="bring the holes in")
        return
    edge = _edge(seen, half, layout)
    try:
        yield from _holes(half, layout, size, edge)
        if seat is not None:
            yield from _heads(half, layout, seat, edge)
    except NotDefined:
        return


def laid(seen: Seen) -> Layout | str | None:
    """The pattern on its own face: None where not all is known, or why the face is too small."""
    face = face_of(seen, seen.owner)
    is_repeated = seen.off_on(seen.owner) != seen.each  # nobody said where it stands twice
    if seen.pattern is None or face is None or seen.owner.is_radial or is_repeated:
        return None
    try:
        layout = lay_out(seen.pattern, face)
    except NotDefined as fault:
        return fault.reason
    if layout.least_edge_mm < -_ON_AIR_MM:
        size = f"{face.length_mm:g}" if face.is_round else f"{face.length_mm:g} × {face.width_mm:g}"
        return f"the pattern of '{seen.joint.name}' reaches past '{seen.owner.end}' of {size} mm"
    return layout


def _edge(seen: Seen, half: Half, layout: Layout) -> float | None:
    """The least distance to the edge of a half, where it is known and not said of the owner."""
    if half is seen.owner:
        return layout.least_edge_mm
    faces = (face_of(seen, half), face_of(seen, seen.owner))
    if seen.pattern is None or faces[0] is None or not all(one and one.is_round for one in faces):
        return None
    try:
        edge = lay_out(seen.pattern, faces[0]).least_edge_mm
    except NotDefined:
        return None
    return edge if edge < layout.least_edge_mm else None


def face_of(seen: Seen, half: Half) -> Face | None:
    """The face that a half meets the other with; None where its size or its place is open."""
    place = half.place
    if place is None or place.form != "face":
        place = seen.design.facts.about(PlaceFact, f"{half.end.item}.{half.face or 'top'}")
    if place is None or place.form not in ("face", "step") or half.hole_is_moved:
        return None
    if place.is_round and place.diameter is not None:
        return round_face(float(place.diameter))
    if place.length is None or place.width is None:
        return None
    return Face(float(place.length), float(place.width))


def _holes(half: Half, layout: Layout, size: float, edge_mm: float | None) -> Iterator[Said]:
    if edge_mm is not None:
        edge = edge_distance(edge_mm, size, half.group)
        if not edge.is_good:
            yield hole_codes.HOLE_NEAR_EDGE.at(
                half.end.at,
                f"{edge.has_mm:.1f} mm from hole to edge on '{half.end}'; "
                f"{edge.needs_mm:.1f} mm is the least",
                help=" or ".join(edge.ways_out),
            )
    if layout.least_pitch_mm is None:
        return
    pitch = hole_pitch(layout.least_pitch_mm, size)
    if not pitch.is_good:
        yield hole_codes.HOLES_TOO_CLOSE.at(
            half.end.at,
            f"{pitch.has_mm:.1f} mm from hole to hole on '{half.end}'; "
            f"{pitch.needs_mm:.1f} mm is the least",
            help=" or ".join(pitch.ways_out),
        )


def _heads(half: Half, layout: Layout, seat: Seat, edge_mm: float | None) -> Iterator[Said]:
    if seat.wide_mm is None:
        return
    verdicts = [head_at_edge(edge_mm, seat.wide_mm)] if edge_mm is not None else []
    if layout.least_pitch_mm is not None:
        verdicts.append(heads_side_by_side(layout.least_pitch_mm, seat.wide_mm))
    bad = next((one for one in verdicts if not one.is_good), None)
    if bad is not None:
        yield hole_codes.HEADS_OVERLAP.at(
            half.end.at,
            f"heads of {seat.wide_mm:.1f} mm on '{half.end}': {bad.says}",
            help=" or ".join(bad.ways_out),
        )
    elif layout.least_pitch_mm is not None:
        yield from _spanner(half, layout.least_pitch_mm, seat)


def _spanner(half: Half, pitch_mm: float, seat: Seat) -> Iterator[Said]:
    if seat.head is None or seat.head.drive != "hexagon" or seat.head.drive_mm is None:
        return
    try:
        tool = spanner(seat.head.drive_mm)
    except NotListed:
        return
    room = spanner_room(pitch_mm - seat.head.envelope_mm / 2, tool.head_width_mm)
    if not room.is_good:
        yield hole_codes.SPANNER_CANNOT_SWING.at(
            half.end.at,
            f"{room.has_mm:.1f} mm from a hexagon to the next on '{half.end}'; "
            f"a {seat.head.tool} wants {room.needs_mm:.1f} mm",
            help=" or ".join(room.ways_out[:2]),
        )
