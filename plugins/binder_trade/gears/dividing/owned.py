"""How so many parts are divided with what is owned: by holes, by plates, by a dial."""

from __future__ import annotations

from contextlib import suppress
from typing import TYPE_CHECKING, Protocol

from binder_trade.explained import NotDefined
from binder_trade.gears.dividing.dial import Dial, Setting, dial
from binder_trade.gears.dividing.simple import Indexing, index, nearest

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from fractions import Fraction

_MINUTES = 60


class Divider(Protocol):
    """A dividing head or rotary table: turns of its worm for one, its circles, and its dial.

    `direct` are circles of holes on the spindle itself, `mark` a division of the dial in
    degrees, None where it has none.
    """

    @property
    def name(self) -> str:
        """What the shop calls it."""

    @property
    def ratio(self) -> int:
        """Turns of the crank for one of the work."""

    @property
    def plates(self) -> Mapping[str, tuple[int, ...]]:
        """The circles of each plate."""

    @property
    def direct(self) -> tuple[int, ...]:
        """Circles of holes on the spindle."""

    @property
    def mark(self) -> Fraction | None:
        """A division of the dial in degrees."""


def divided(teeth: int, owned: Sequence[Divider]) -> str:
    """`0 turns and 20 holes of 27 on plate 2`, or why it cannot be done; '' with nothing owned."""
    for one in owned:
        said = _exactly(teeth, one)
        if said:
            return f"{one.name}: {said}"
    found = dial_for(teeth, owned)
    if found is not None:
        return f"{found[0].name}: {_dialled(found[1])}"
    heads = [one for one in owned if one.plates or one.direct]
    return _near(teeth, heads[0]) if heads else ""


def dial_for(teeth: int, owned: Sequence[Divider]) -> tuple[Divider, Dial] | None:
    """The dial by which so many are divided, where nothing that is owned has them exactly."""
    if any(_exactly(teeth, one) for one in owned):
        return None
    for one in owned:
        if one.mark is not None:
            with suppress(NotDefined):
                return one, dial(teeth, one.ratio, one.mark)
    return None


def _exactly(teeth: int, one: Divider) -> str:
    every = next((holes // teeth for holes in one.direct if holes % teeth == 0), 0)
    if every:
        return f"every {_ordinal(every)} of its direct holes"
    try:
        return _moved(index(teeth, one.ratio, one.plates))
    except NotDefined:
        return ""


def _moved(move: Indexing) -> str:
    part = f" and {move.holes} holes of the {move.circle} circle" if move.holes else ""
    return f"{move.turns} turns{part}"


def _dialled(made: Dial) -> str:
    """The first step, and how far the worst place is off: steps that are added would stray."""
    teeth, first = made.divisions, made.settings[1 % made.divisions]
    turn = f"{first.turns} turn{'' if first.turns == 1 else 's'}"
    each = f"tooth n at (n − 1) × 360° / {teeth} from the first, to the nearest mark"
    off = made.worst_deg * _MINUTES
    worst = f", off by {off:.2g}′ at the most" if off else ""
    return f"{turn} and {first.marks} marks of {made.mark_deg:g}°; {each}{worst}"


def place_words(one: Setting) -> str:
    """`6°40′, 1 turn and 17 marks, 2′ too far`: one place of a dial."""
    turns = f"{one.turns} turn{'' if one.turns == 1 else 's'}"
    return f"{minutes_text(one.angle_deg)}, {turns} and {one.marks} marks{off_words(one)}"


def off_words(one: Setting) -> str:
    """How far a place is from where it should be, '' where it is there."""
    off = one.off_deg * _MINUTES
    if abs(off) < 1e-9:
        return ""
    return f", {abs(off):.2g}′ too {'far' if off > 0 else 'near'}"


def minutes_text(degrees: float) -> str:
    """`6°40′`; tenths of a minute where there are any."""
    minutes = round(degrees * _MINUTES, 1)
    whole, rest = divmod(minutes, _MINUTES)
    return f"{whole:.0f}°{rest:04.1f}′".replace(".0′", "′") if rest else f"{whole:.0f}°"


def can_divide(teeth: int, owned: Sequence[Divider]) -> bool:
    """Whether what is owned divides into so many, or nothing is owned at all."""
    return (
        not any(one.plates or one.direct for one in owned)
        or dial_for(teeth, owned) is not None
        or any(_exactly(teeth, one) for one in owned)
    )


def _near(teeth: int, one: Divider) -> str:
    try:
        found = nearest(teeth, one.ratio, one.plates)
    except NotDefined:
        return f"{one.name}: {teeth} is not on its plates"
    return f"{one.name}: {teeth} is not on its plates, the nearest is {found.nearest}"


def _ordinal(number: int) -> str:
    return {1: "one", 2: "second", 3: "third"}.get(number, f"{number}th")
