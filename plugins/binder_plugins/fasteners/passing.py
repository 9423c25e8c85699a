"""The halves that a screw passes: their clearance holes, and whether these are wide enough."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import HalfFact, lengths_in, made_size
from binder_plugins.fasteners import hole_codes
from binder_plugins.fasteners.clearing import Clear, clear_hole, how_placed
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holes import hole_feature, made_here, many, says_many
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_trade.explained import NotDefined
from binder_trade.fastening import holes_line_up

_TIGHT_MM = 1e-6
_WOOD_MOVES_MM = 2.0  # to either side; common practice, no source


def pass_through(seen: Seen, passed: tuple[Half, ...], mate: str, seat: str = "") -> Iterator[Said]:
    """A clearance hole for each half that has none yet, and what is wrong with written ones.

    `seat` are the words for what is cut under the head, in the first half.
    """
    for number, half in enumerate(passed):
        words = seat if number == 0 else ""
        if half.is_to_make:
            yield from _make(seen, half, mate, words)
        elif half.hole is not None:
            yield from _check(seen, half)
            yield half_fact(seen, half, f"{_written(half)}{words}", mate, seen.joint.made)


def hole_mm(seen: Seen, half: Half) -> float | None:
    """The diameter of the hole of a half, written or chosen, in mm."""
    if half.hole is not None and not half.is_to_make and half.hole.diameter is not None:
        return float(half.hole.diameter)
    clear = clear_hole(seen)
    return clear.mm if clear is not None else None


def half_fact(seen: Seen, half: Half, what: str, mate: str, how: str, place: str = "") -> HalfFact:
    """A half for the leaf of its part; `place` is that of the feature, where no end names it."""
    return HalfFact(
        subject=f"{seen.joint.name}: {half.end.item}.{place}"
        if place
        else f"{seen.joint.name}: {half.end}",
        joint=seen.joint.name,
        item=half.end.item,
        place=place or (half.hole.place if half.hole is not None else half.end.place),
        what=lengths_in(what, seen.design.units),
        mate=mate,
        how=lengths_in(how, seen.design.units),
        is_master=seen.joint.master == half.end,
    )


def through_words(half: Half) -> str:
    """How far a hole goes that leaves nothing undrilled."""
    plates = "both plates" if half.plates == 2 else f"all {half.plates} plates"
    return f"through {plates}" if half.plates > 1 else "through"


def _make(seen: Seen, half: Half, mate: str, seat: str) -> Iterator[Said]:
    clear = clear_hole(seen)
    if clear is None:
        return
    if seen.joint.kind == "buttoned":
        yield from _slot(seen, half, mate, clear)
        return
    feature = hole_feature(seen, half, "drilled", made_size(clear.mm, seen.joint, clear.drill))
    if feature is not None:
        yield feature
        what = f"drill {clear.drill} {through_words(half)}{seat}{says_many(seen, half)}"
        yield half_fact(seen, half, what, mate, clear.why)


def _slot(seen: Seen, half: Half, mate: str, clear: Clear) -> Iterator[Said]:
    """A hole that lets the board move: as wide as the clearance, longer across the grain.

    A board's grain runs along it, and what is buttoned to it is taken to lie the same way.
    """
    long = clear.mm + 2 * _WOOD_MOVES_MM
    if half.hole is None:
        values = {
            "slotted": made_size(clear.mm, seen.joint),
            "on": half.end.place,
            "depth": "through",
            "length": made_size(long, seen.joint),
            "runs": "across",
        }
        yield made_here(seen, half, "slot", "slotted", {**values, **many(seen, half)})
        what = f"slot {clear.mm:g} mm wide, {long:g} mm long across the grain"
        yield half_fact(seen, half, f"{what}{says_many(seen, half)}", mate, clear.why)


def _written(half: Half) -> str:
    if half.hole is None or half.hole.diameter is None:
        return "as written"
    return f"{half.hole.kind} {float(half.hole.diameter):g} mm, {half.hole.count} off"


def _check(seen: Seen, half: Half) -> Iterator[Said]:
    size, hole = seen.asked.diameter_mm, hole_mm(seen, half)
    if size is None or hole is None:
        return
    if hole < size - _TIGHT_MM:
        clear = clear_hole(seen)
        drill = f"drill {clear.drill}, or " if clear is not None else ""
        yield hole_codes.CLEARANCE_TOO_SMALL.at(
            half.end.at,
            f"'{seen.asked.name.says}' does not pass a hole of {hole:g} mm",
            help=f"{drill}write `drilled: to suit`",
        )
        return
    yield from _line_up(seen, half, hole, size)


def _line_up(seen: Seen, half: Half, hole: float, size: float) -> Iterator[Said]:
    try:
        verdict = holes_line_up(seen.each, hole, size, how_placed(seen))
    except NotDefined:
        return
    if not verdict.is_good:
        yield hole_codes.WILL_NOT_LINE_UP.at(
            half.end.at,
            f"{seen.each} holes of {hole:g} mm {how_placed(seen)} leave {verdict.has_mm:.2f} mm; "
            f"{verdict.needs_mm:.2f} mm lets all screws start",
            help=" or ".join(verdict.ways_out[:2]),
        )
