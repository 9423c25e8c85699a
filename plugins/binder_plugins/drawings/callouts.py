"""Features of a form to their callouts: a hole and the seat in its mouth are said in one."""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace

from binder.api import HalfFact
from binder_drafting import Note
from binder_plugins.drawings.pointing import Pointing, pointed_at
from binder_solid.facts import FormFact, Located
from binder_solid.space import dot

_SEATS = ("counterbored", "countersunk", "spotfaced")
_HOLES = ("drilled", "reamed", "bored", "tapped", "slotted")
_SAME = 1e-3
_INCH = 25.4
# The unit of the whole drawing is in its title block (ISO 129-1). `6 in` for `6 mm in` would be
# another size, and what is in brackets is in the other system.
_UNIT = re.compile(r"(?<=[0-9]) mm\b(?! in\b)(?![^(]*\))")
_COUNT = re.compile(r"\d+ × ")
_TO_SUIT = re.compile(r".* (to (?:suit )?the measured .*)")


@dataclass(frozen=True, slots=True)
class Seated:
    """A feature, and the seats in its mouths."""

    hole: Located
    seats: tuple[Located, ...] = ()


def bare(text: str) -> str:
    """Words without the unit of the whole drawing."""
    return _UNIT.sub("", text)


def fine(mm: float, units: str, sign: str = "") -> str:
    """To a thousandth of a millimetre, or to a tenth of a thou."""
    return f"{mm / _INCH:{sign}.4f}" if units == "inch" else f"{mm:{sign}.3f}"


def notes_of(
    fact: FormFact,
    views: tuple[str, ...],
    halves: Mapping[str, HalfFact],
    units: str,
    more: Mapping[str, str],
    drilled: Mapping[str, str],
) -> Iterator[Note]:
    """A callout for each feature that has words, where its shape is best seen.

    By the name of the feature `more` is a line to add, `drilled` its size with its drill.
    """
    notes: dict[tuple[str, tuple[str, ...]], list[Note]] = {}
    for one in seated(fact.located):
        if one.hole.note:
            lines = [*_lines(one, drilled.get(one.hole.name, ""))]
            lines += _limits(halves.get(one.hole.name), units)
            lines += [more[one.hole.name]] if one.hole.name in more else []
            at = pointed_at(one.seats[0] if one.seats else one.hole, fact, views)
            note = _note(one, lines, at, is_fit=_is_fit(halves.get(one.hole.name)))
            notes.setdefault((note.view, note.lines), []).append(note)
    for alike in notes.values():
        yield _together(alike)


def _together(alike: list[Note]) -> Note:
    """One callout for all that say the same on one view."""
    first, *others = alike
    if not others:
        return first
    keys = tuple(key for one in others for key in (one.id, *one.also))
    is_counted = _COUNT.match(first.lines[0]) is not None
    count = f"{len(alike)} sets of" if is_counted else f"{len(alike)} ×"
    lines = (f"{count} {first.lines[0]}", *first.lines[1:])
    elsewhere = tuple(one.at for one in others)
    return replace(
        first, lines=lines, also=(*first.also, *keys), others=(*first.others, *elsewhere)
    )


def _note(one: Seated, lines: list[str], at: Pointing, *, is_fit: bool) -> Note:
    keys = [*one.hole.ids, *(key for seat in one.seats for key in seat.ids)]
    return Note(
        keys[0],
        at.view,
        at.place,
        tuple(lines),
        at.radius,
        "fit" if is_fit else "tool",
        also=tuple(keys[1:]),
        others=at.others,
    )


def _lines(one: Seated, drilled: str) -> Iterator[str]:
    """The hole first and how all are laid out, then its seats; it is drilled where it is cut."""
    core = one.hole.core
    if not one.seats and not (drilled and core):
        yield bare(one.hole.note)
        return
    before, _, after = one.hole.note.partition(core)
    core = drilled or core
    if not one.seats:
        yield bare(before + core + after)
        return
    yield bare(before + core)
    for seat in one.seats[:-1]:
        yield bare(seat.core)
    yield bare(one.seats[-1].core + after)


def _is_fit(half: HalfFact | None) -> bool:
    return half is not None and (half.lower is not None or _TO_SUIT.match(half.what) is not None)


def _limits(half: HalfFact | None, units: str) -> Iterator[str]:
    if half is None:
        return
    if half.lower is not None and half.upper is not None and half.suits is None:
        yield f"{fine(half.lower, units)} – {fine(half.upper, units)}"
    elif (found := _TO_SUIT.match(half.what)) is not None:
        yield bare(found[1])


def seated(located: Iterable[Located]) -> tuple[Seated, ...]:
    """Each feature once, a seat with the hole whose mouth it is."""
    every = tuple(located)
    homes = {id(seat): _home(seat, every) for seat in every if seat.kind in _SEATS and seat.note}
    return tuple(
        Seated(one, tuple(seat for seat in every if homes.get(id(seat)) is one))
        for one in every
        if homes.get(id(one)) is None
    )


def _home(seat: Located, every: tuple[Located, ...]) -> Located | None:
    """The hole on the same axes as a seat: its namesake, else the narrowest."""
    fits = [
        one
        for one in every
        if one.kind in _HOLES
        and one.core
        and one.core in one.note
        and len(one.spots) == len(seat.spots)
        and _on_one_axis(one, seat)
    ]
    return min(
        fits,
        key=lambda one: (not seat.name.startswith(one.name), one.diameter or 0.0),
        default=None,
    )


def _on_one_axis(one: Located, other: Located) -> bool:
    """Whether all spots of one lie behind those of the other, in whatever order."""
    way = one.frame.z
    if abs(abs(dot(way, other.frame.z)) - 1.0) > _SAME:
        return False
    return all(any(_beside(spot, mate, way) < _SAME for mate in other.spots) for spot in one.spots)


def _beside(
    one: tuple[float, float, float],
    other: tuple[float, float, float],
    way: tuple[float, float, float],
) -> float:
    """How far two points are apart, seen along a way."""
    a, b, c = (x - y for x, y in zip(one, other, strict=True))
    along = dot((a, b, c), way)
    return math.sqrt(max(0.0, a * a + b * b + c * c - along * along))
