"""Riveted joints: holes through both halves, and the rivet that forms its head."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import made_size
from binder_plugins.fasteners import hole_codes
from binder_plugins.fasteners.about import drills_of
from binder_plugins.fasteners.choosing import (
    chosen,
    lengths_of,
    not_sold,
    unlisted,
    wanted,
    working,
)
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holes import hole_feature, says_many
from binder_plugins.fasteners.passing import half_fact
from binder_plugins.fasteners.room_beside import room_on
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_trade.fastening import Length, NoLength, choose_rivet

_SLACK = 1.05  # the hole over the rivet; common practice, no source
_MOST_OVER_MM = 0.3
_NEAR_MM = 1e-6
_LEAST_TAIL = 0.75  # of what forms a full head: less makes a rim


def is_riveted_over(seen_halves: tuple[Half, ...]) -> bool:
    """A step of one half goes through a hole of the other and is itself riveted over."""
    forms = {half.place.form for half in seen_halves if half.place is not None}
    return "step" in forms and "hole" in forms


def riveted(seen: Seen) -> Iterator[Said]:
    """All that follows from a riveted joint."""
    size = seen.asked.diameter_mm
    if size is None or is_riveted_over(seen.halves):
        yield wanted(seen, seen.asked.name)
        return
    drill, mm = next_drill(seen, size)
    for half in seen.halves:
        others = [str(one.end) for one in seen.halves if one is not half]
        feature = hole_feature(seen, half, "drilled", made_size(mm, seen.joint, drill))
        if feature is not None:
            yield feature
            what = f"drill {drill} through{says_many(seen, half)}"
            yield half_fact(seen, half, what, others[0], "drilled through both together")
        elif half.hole is not None and half.hole.diameter is not None:
            yield from _written(seen, half, float(half.hole.diameter), size)
        yield from room_on(seen, half, None)
    yield from _length(seen, size)


def next_drill(seen: Seen, size: float) -> tuple[str, float]:
    """The next drill over the rivet; its size by rule where none is near."""
    least = size + 0.02
    able = [
        one for one in drills_of(seen.design.workshop) if least <= one[1] <= size + _MOST_OVER_MM
    ]
    wanted_mm = round(_SLACK * size, 2)
    return min(able, key=lambda one: one[1], default=(f"{wanted_mm:g} mm", wanted_mm))


def _written(seen: Seen, half: Half, hole: float, size: float) -> Iterator[Said]:
    if hole < size - _NEAR_MM:
        yield hole_codes.CLEARANCE_TOO_SMALL.at(
            half.end.at,
            f"'{seen.asked.name.says}' does not pass a hole of {hole:g} mm",
            help=f"drill {next_drill(seen, size)[0]}",
        )


def _length(seen: Seen, size: float) -> Iterator[Said]:
    name = seen.asked.name
    thick = [half.thick for half in seen.halves]
    known = [one for one in thick if one is not None]
    grip = seen.entry.grip.mm if seen.entry.grip is not None else sum(known)
    lengths = lengths_of(seen)
    if not isinstance(lengths, dict):
        yield from unlisted(seen, lengths)
        return
    if seen.entry.grip is None and len(known) < len(thick):
        yield wanted(seen, name)
        return
    closed = "countersunk" if seen.entry.head == "countersunk" else "snap"
    best = choose_rivet(lengths, grip, size, closed)
    if name.length_mm is None:
        yield from chosen(seen, best, lengths, grip)
        return
    yield from not_sold(seen, lengths)
    yield from _short(seen, best, grip, size, closed)
    held = Length(name.length_mm, grip, grip - name.length_mm, "as written", best.steps)
    yield wanted(seen, name, held, grip)
    yield working(seen, "length", "length of the rivet", name.length_text, "as written", best.steps)


def _short(
    seen: Seen, best: Length | NoLength, grip: float, size: float, closed: str
) -> Iterator[Said]:
    name = seen.asked.name
    tail = (name.length_mm or 0.0) - grip
    full = (1.5 if closed == "snap" else 1.0) * size
    if tail >= _LEAST_TAIL * full - _NEAR_MM:
        return
    way = (
        f"{best.chosen_mm:g} mm is sold, cut to {best.cut_to_mm or best.chosen_mm:g} mm"
        if isinstance(best, Length)
        else best.ways_out[0]
    )
    yield hole_codes.RIVET_TOO_SHORT.at(
        seen.asked.at,
        f"'{name.says}' leaves {tail:.1f} mm beyond {grip:g} mm of plate; a {closed} head wants "
        f"{full:.1f} mm",
        help=way,
    )
