"""Turns the point, thread and drive of a grub screw into its dimensions."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from binder_trade.hardware.listing import (
    MM_PER_INCH,
    Listed,
    NotListed,
    Table,
    listing,
    plain,
    tables,
)
from binder_trade.hardware.steps_sold import steps_within
from binder_trade.hardware.thread_keys import row_key, thread_key

POINTS = ("flat", "cone", "dog", "cup")
GRUB_DRIVES = ("hexagon socket", "slot")
_TOOLS = {"hexagon socket": "hexagon key", "slot": "slot"}
_FINEST = 64
_SAME_MM = 1e-6


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

    Sources: ISO 4026 to 4029 with a hexagon socket; ISO 4766, 7434, 7435 and 7436 slotted; in
    inches ASME B18.3; BA ones are from memory.
    """
    key = thread_key(thread)
    of = _table(f"{drive} {point}", key.series)
    if of is None:
        reason = f"no grub screw with a {drive[:20]} and a {point[:20]} point is listed in {thread}"
        ways = (
            f"listed: M threads with a {listing(POINTS)} point, {' or '.join(GRUB_DRIVES)}; "
            "UNC, UNF and BA ones with a cup point"
        )
        raise NotListed(reason, ways)
    size = row_key(of, key)
    row = of.rows[size]
    return Grub(
        point=point,
        thread=thread,
        drive=drive,
        drive_mm=row["drive"],
        tool=f"{_drive_text(row['drive'], key.series)} {_TOOLS[drive]}",
        point_mm=row["point"],
        dog_mm=row.get("dog", 0.0),
        lengths_mm=steps_within(of.words["list"], row),
        standard=of.standard,
        status=of.status_of(size),
    )


def _table(words: str, series: str) -> Table | None:
    """The table of a drive and point whose threads are of a series."""
    listed = tables("grubs.yaml")
    named = (listed.get(name) for name in (words, f"{words} UN", f"{words} BA"))
    return next((one for one in named if one is not None and series in one.series), None)


def _drive_text(drive_mm: float, series: str) -> str:
    """The size of a key or slot in the unit that it is made to."""
    if series == "M":
        return f"{plain(drive_mm)} mm"
    inches = Fraction(round(drive_mm / MM_PER_INCH * _FINEST), _FINEST)
    is_even = abs(float(inches) * MM_PER_INCH - drive_mm) < _SAME_MM
    return f"{inches} in" if is_even else f"{drive_mm / MM_PER_INCH:.3f} in"
