"""Whether a number of divisions can be had on the dividing devices of a workshop."""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder.api import Workshop

_FULL = 360


def divides(workshop: Workshop, count: int) -> str:
    """How so many divisions are had, as `2 turns and 8 of 12 holes`; nothing where they are not.

    Turns of the crank are the ratio over the count, on an owned circle of holes; or direct
    positions; or whole divisions of a dial in degrees.
    """
    for head in workshop.entry.holding.dividing_heads.values():
        direct = [int(holes) for holes in head.direct or ()]
        if any(holes % count == 0 for holes in direct):
            return "direct"
        found = _on_plates(Fraction(int(head.ratio), count), head.plates)
        if found:
            return found
    for table in workshop.entry.holding.rotary_tables.values():
        found = _on_plates(Fraction(int(table.ratio), count), table.plates)
        if found:
            return found
        if table.division is not None:
            return f"{_FULL / count:.3f}° each, counted from the first"
    return ""


def _on_plates(turns: Fraction, plates: object) -> str:
    whole, part = divmod(turns, 1)
    if not part:
        return f"{whole} turns"
    circles = [int(holes) for found in getattr(plates, "values", list)() for holes in found]
    able = [holes for holes in circles if holes % part.denominator == 0]
    if not able:
        return ""
    holes = min(able)
    steps = f"{part * holes} of {holes} holes"
    return f"{whole} turns and {steps}" if whole else steps
