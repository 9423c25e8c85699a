"""Turns the point, thread and drive of a grub screw into its dimensions."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.hardware.listing import Listed, NotListed, listing, plain, tables
from binder_trade.hardware.steps_sold import steps_within
from binder_trade.hardware.thread_keys import row_key, thread_key

POINTS = ("flat", "cone", "dog", "cup")
GRUB_DRIVES = ("hexagon socket", "slot")


@dataclass(frozen=True, slots=True, kw_only=True)
class Grub(Listed):
    """A grub screw, mm; `point_mm` is the greatest diameter of its point.

    `dog_mm` is how far a dog point stands out, else nothing; lengths are over all.
    """

    point: str
    thread: str
    drive: str
    drive_mm: float
    tool: str
    point_mm: float
    dog_mm: float
    lengths_mm: tuple[float, ...]


def grub(point: str, thread: str, drive: str = "hexagon socket") -> Grub:
    """A grub screw by its point (POINTS), thread and drive (GRUB_DRIVES), mm; raises NotListed.

    Sources: ISO 4026 to 4029 with a hexagon socket; ISO 4766, 7434, 7435 and 7436 slotted.
    """
    of = tables("grubs.yaml").get(f"{drive} {point}")
    key = thread_key(thread)
    if of is None or key.series != "M":
        reason = f"no grub screw with a {drive[:20]} and a {point[:20]} point is listed in {thread}"
        ways = f"listed: M threads with a {listing(POINTS)} point, {' or '.join(GRUB_DRIVES)}"
        raise NotListed(reason, ways)
    size = row_key(of, key)
    row = of.rows[size]
    return Grub(
        point=point,
        thread=thread,
        drive=drive,
        drive_mm=row["drive"],
        tool=f"{plain(row['drive'])} mm {'slot' if drive == 'slot' else 'hexagon key'}",
        point_mm=row["point"],
        dog_mm=row.get("dog", 0.0),
        lengths_mm=steps_within(of.words["list"], row),
        standard=of.standard,
        status=of.status_of(size),
    )
