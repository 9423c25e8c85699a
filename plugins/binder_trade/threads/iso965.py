"""Looks up the tolerances of metric threads in the tables of ISO 965-1."""

from __future__ import annotations

from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import NotDefined
from binder_trade.threads.inches import is_close
from binder_trade.threads.thread import Thread

SOURCE: Final = "ISO 965-1"
_THINNEST_MM: Final = 0.99


def deviation_um(pitch_mm: float, position: str) -> int:
    """The fundamental deviation of a position e, f, g, h, G or H in micrometres (table 1).

    Below nought for screws, above it for nuts. Raises NotDefined where the table has none.
    """
    if position in {"h", "H"}:
        return 0
    if position == "G":
        return -deviation_um(pitch_mm, "g")
    found = _cell(_table("deviation"), "deviation", pitch_mm, position)
    if found is None:
        raise NotDefined(
            f"position {position[:3]} is not defined for a pitch of {pitch_mm:.4g} mm",
            "use g or h",
        )
    return -int(found)


def crest_tolerance_um(pitch_mm: float, grade: int, *, is_internal: bool) -> int:
    """T_D1 of a nut or T_d of a screw in micrometres. Raises NotDefined outside the table."""
    name = "minor_internal" if is_internal else "major_external"
    found = _cell(_table(name), name, pitch_mm, grade)
    if found is None:
        raise _no_grade(grade, pitch_mm)
    return int(found)


def effective_tolerance_um(thread: Thread, grade: int, *, is_internal: bool) -> int:
    """T_D2 of a nut or T_d2 of a screw in micrometres. Raises NotDefined outside the table."""
    name = "effective_internal" if is_internal else "effective_external"
    found = _cell(_band(name, thread.major_mm), name, thread.pitch_mm, grade)
    if found is None:
        raise _no_grade(grade, thread.pitch_mm)
    return int(found)


def engagement_normal(thread: Thread) -> tuple[float, float]:
    """Over which and up to which length in mm an engagement is normal (group N).

    Raises NotDefined for threads that are not metric or outside the table.
    """
    if thread.family != "metric":
        raise NotDefined("normal engagement is defined for metric threads", "take one diameter")
    band = _band("engagement", thread.major_mm)
    return (
        float(_cell(band, "engagement", thread.pitch_mm, "over")),
        float(_cell(band, "engagement", thread.pitch_mm, "up to")),
    )


def _table(name: str) -> Any:  # noqa: ANN401 - the shape is the table's own
    return load_data("binder_trade.threads", "iso965.yaml")[name]["rows"]


def _band(name: str, major_mm: float) -> Any:  # noqa: ANN401 - as _table
    """The rows of the band of diameters, over one key and up to and including the next."""
    for up_to, rows in _table(name).items():
        if _THINNEST_MM < major_mm <= up_to:
            return rows
    raise NotDefined(f"no tolerance is tabled for {major_mm:.4g} mm", "use M1 to M68")


def _cell(rows: Any, name: str, pitch_mm: float, column: str | int) -> Any:  # noqa: ANN401 - as _table
    """A figure of the row of a pitch; None past the end of the row or in a column left out."""
    columns = load_data("binder_trade.threads", "iso965.yaml")[name]["columns"]
    for pitch, figures in rows.items():
        if is_close(pitch, pitch_mm):
            named = dict(zip(columns, figures, strict=False))
            return named.get(column)
    raise NotDefined(
        f"no tolerance is tabled for a pitch of {pitch_mm:.4g} mm at this diameter",
        "use a pitch of ISO 261",
    )


def _no_grade(grade: int, pitch_mm: float) -> NotDefined:
    return NotDefined(
        f"grade {grade} is not defined for a pitch of {pitch_mm:.4g} mm",
        "use a finer grade, 4 or 5 for the finest pitches",
    )
