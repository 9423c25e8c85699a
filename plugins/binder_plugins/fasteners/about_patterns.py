"""The words of a pattern turned into the place of every hole."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from binder.api import Answer, Diagnostic, Result, Workshop, reasons
from binder_plugins.fasteners.words_asked import length_mm, one_line, refused
from binder_trade.explained import NotDefined
from binder_trade.fastening import Face, Pattern, lay_out, read_pattern

_FACE: Final = re.compile(r"(.+) face ([0-9./ ]{1,12}(?:mm|in)) (?:x|by) ([0-9./ ]{1,12}(?:mm|in))")
_WIDE_MM: Final = 10_000.0


def about_pattern(words: Sequence[str], _workshop: Workshop) -> Answer | Diagnostic:
    """Each hole from the middle of its face, and what dividers are set to."""
    try:
        line = one_line(words)
        found = _FACE.fullmatch(line)
        face = Face(_WIDE_MM, _WIDE_MM)
        if found is not None:
            line, face = found[1], Face(length_mm(found[2]), length_mm(found[3]))
        pattern = read_pattern(line)
        if found is None:
            _refuse_without_face(pattern, line)
        laid = lay_out(pattern, face)
    except NotDefined as fault:
        return refused(fault.reason, fault.way_out)
    results = [
        result
        for number, (x, y) in enumerate(laid.places, 1)
        for result in (
            Result(f"x{number}", _plain(x), "mm", f"hole {number}, along"),
            Result(f"y{number}", _plain(y), "mm", f"hole {number}, across"),
        )
    ]
    if laid.chord_mm is not None:
        results.append(Result("chord", laid.chord_mm, "mm", "chord for the dividers"))
    if laid.least_pitch_mm is not None:
        results.append(Result("least_pitch", laid.least_pitch_mm, "mm", "least from hole to hole"))
    if found is not None:
        results.append(Result("least_edge", laid.least_edge_mm, "mm", "least to the edge"))
    notes = ("from the middle of the face; the first hole of a circle is on its length",)
    return Answer(line, tuple(results), reasons(laid.steps), notes)


def _refuse_without_face(pattern: Pattern, line: str) -> None:
    """Holes in from the edges, or spread over a face, have no place without it."""
    is_spread = pattern.kind in ("row", "rows") and None in (
        pattern.pitch_mm,
        pattern.row_gap_mm if pattern.rows > 1 else 0.0,
    )
    if pattern.edge_mm is not None or is_spread:
        raise NotDefined(
            f"'{line}' hangs on the size of its face", f"write: {line} face 60 mm x 40 mm"
        )


def _plain(mm: float) -> float:
    """A place without the noise of sines: nought on the axis."""
    return round(mm, 6) + 0.0
