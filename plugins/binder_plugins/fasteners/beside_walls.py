"""Steps that stand beside the heads of a flange, to the room for head, spanner, key and screw."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import dropwhile, takewhile

from binder_plugins.fasteners import hole_codes
from binder_plugins.fasteners.beside_axis import face_of_holes, radius_of
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.said import Said, Wanted
from binder_plugins.fasteners.seating import Seat
from binder_plugins.fasteners.seen import Seen
from binder_trade.explained import NotDefined
from binder_trade.fastening import head_at_edge, key_room, spanner_room, straight_way_in
from binder_trade.hardware import NotListed, hexagon_key, spanner


@dataclass(frozen=True, slots=True)
class Beyond:
    """What stands behind the flange at a hole; in mm.

    `wall` is how near the next step's side is to the hole's axis, `free` how far the way is open
    till a wider step closes it; None where nothing does.
    """

    wall: float
    free: float | None


def check_walls(seen: Seen, half: Half, seat: Seat, said: list[Said]) -> Iterator[Said]:
    """Whether heads, spanner, key and the screws themselves find room on the far side."""
    beyond = _beyond(seen, half, seat)
    if beyond is None:
        return
    length = next((one.length_mm for one in said if isinstance(one, Wanted)), None)
    try:
        yield from _head(half, seat, beyond)
        yield from _way(seen, half, seat, beyond, length)
    except (NotDefined, NotListed):
        return


def _beyond(seen: Seen, half: Half, seat: Seat) -> Beyond | None:
    radius, face = radius_of(seen), face_of_holes(half, seen)
    if radius is None or face is None or seat.wide_mm is None or face.form != "face":
        return None  # A step may be screwed down by its shoulder: its heads are on the free side.
    wide = [(float(across) / 2, float(long)) for across, long in face.stack]
    within = dropwhile(lambda one: one[0] <= radius, wide)
    behind = list(dropwhile(lambda one: one[0] > radius, within))
    if not behind:
        return None
    reach = float(radius) - seat.wide_mm / 2
    open_ones = list(takewhile(lambda one: one[0] <= reach, behind))
    is_closed = len(open_ones) < len(behind)
    free = sum(long for _, long in open_ones) if is_closed else None
    return Beyond(float(radius) - behind[0][0], free)


def _head(half: Half, seat: Seat, beyond: Beyond) -> Iterator[Said]:
    """The head, then the spanner, beside the side of the next step."""
    room = head_at_edge(beyond.wall, seat.wide_mm or 0.0)
    if not room.is_good:
        yield hole_codes.HEADS_OVERLAP.at(
            half.end.at,
            f"heads of {seat.wide_mm:.1f} mm on '{half.end}' meet the step behind it, "
            f"{beyond.wall:.1f} mm from their middle",
            help=f"put them on a circle {2 * (room.needs_mm - beyond.wall):.1f} mm larger, or use "
            "a smaller head",
        )
        return
    head = seat.head
    if head is None or head.drive != "hexagon" or head.drive_mm is None:
        return
    swing = spanner_room(beyond.wall, spanner(head.drive_mm).head_width_mm)
    if not swing.is_good:
        yield hole_codes.SPANNER_CANNOT_SWING.at(
            half.end.at,
            f"{swing.has_mm:.1f} mm from a hexagon to the step behind '{half.end}'; "
            f"a {head.tool} wants {swing.needs_mm:.1f} mm",
            help=" or ".join(swing.ways_out),
        )


def _way(
    seen: Seen, half: Half, seat: Seat, beyond: Beyond, length_mm: float | None
) -> Iterator[Said]:
    """The screw's own way in, then that of its key."""
    head = seat.head
    if head is None or beyond.free is None or beyond.free <= 0 or length_mm is None:
        return
    path = straight_way_in(beyond.free, length_mm, head.k_mm)
    if not path.is_good:
        yield hole_codes.SCREW_CANNOT_ENTER.at(
            half.end.at,
            f"{path.has_mm:g} mm are free behind '{half.end}'; a screw of {length_mm:g} mm and "
            f"its head want {path.needs_mm:g} mm",
            help=f"use {' or '.join(path.ways_out[:2])}",
        )
        return
    if head.drive != "hexagon socket" or head.drive_mm is None:
        return
    above = beyond.free - head.k_mm + seat.sunk_mm
    key = key_room(above, hexagon_key(head.drive_mm).short_mm)
    if not key.is_good:
        yield hole_codes.KEY_CANNOT_REACH.at(
            half.end.at,
            f"{key.has_mm:g} mm are free over the heads on '{half.end}'; the short arm of a "
            f"{head.tool} is {key.needs_mm:g} mm",
            help="use a hexagon head and a spanner from the side, or screw it from the other side",
        )
