"""Which owned end mill or slot drill cuts a width."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import exact

if TYPE_CHECKING:
    from binder.api import Workshop

# Flats and contours want no wider cutter on a small mill; common practice, no source.
STOUT_MM = 10.0
NO_END_MILL = "end mill, not owned"


def end_cutter(
    workshop: Workshop, width: float = STOUT_MM, *, plunging: bool = False
) -> tuple[str, float]:
    """The widest owned one up to a width in mm: its name and diameter; 0 where none is owned."""
    found = workshop.widest_end_cutter(exact(round(width, 4)), plunging=plunging)
    if found is None:
        return NO_END_MILL, 0.0
    return f"{found.name} {'slot drill' if found.plunges else 'end mill'}", float(found.mm)
