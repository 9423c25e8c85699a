"""Turns a size into the row of the band that holds it: over one size, up to the next included."""

from __future__ import annotations

from binder_trade.hardware.listing import NotListed, Row, Table, plain

_SLACK = 1e-9


def upper_band(of: Table, size_mm: float, what: str) -> Row:
    """The first row whose key, the band's upper end in mm, is not less than the size.

    Raises NotListed.
    """
    ends = sorted(float(key) for key in of.rows)
    if size_mm > 0:
        for end in ends:
            if size_mm <= end + _SLACK:
                return of.rows[plain(end)]
    reason = f"{of.standard} is not listed here for {what} {plain(size_mm)} mm"
    raise NotListed(reason, f"listed up to {plain(ends[-1])} mm")


def key_over_to(of: Table, size_mm: float, what: str, *, to: str = "to") -> str:
    """The key of the row whose columns `over` (not included) and `to` (included) hold the size.

    Raises NotListed.
    """
    for key, row in of.rows.items():
        if row["over"] + _SLACK < size_mm <= row[to] + _SLACK:
            return key
    low = min(row["over"] for row in of.rows.values())
    high = max(row[to] for row in of.rows.values())
    reason = f"{of.standard} does not list {what} {plain(size_mm)} mm"
    raise NotListed(reason, f"listed: over {plain(low)} up to {plain(high)} mm")
