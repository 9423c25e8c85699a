"""How so many teeth are divided with what the workshop owns, in words."""

from __future__ import annotations

from contextlib import suppress
from fractions import Fraction

from binder.api import Workshop
from binder_trade.explained import NotDefined
from binder_trade.gears.dividing.dial import dial
from binder_trade.gears.dividing.simple import Indexing, index, nearest


def divided(teeth: int, workshop: Workshop) -> str:
    """`0 turns and 20 holes of 27 on plate 2`, or why it cannot be done; '' with nothing owned.

    A dividing head is taken first, then a rotary table.
    """
    said = _on_heads(teeth, workshop)
    if said and not _is_refused(said):
        return said
    return _on_tables(teeth, workshop) or said


def _on_heads(teeth: int, workshop: Workshop) -> str:
    heads = workshop.entry.holding.dividing_heads
    said = ""
    for name, head in heads.items():
        if head.direct and any(int(holes) % teeth == 0 for holes in head.direct):
            every = next(int(holes) // teeth for holes in head.direct if int(holes) % teeth == 0)
            return f"{name}: every {_ordinal(every)} of its direct holes"
        plates = {plate: tuple(int(one) for one in row) for plate, row in head.plates.items()}
        ratio = int(head.ratio)
        try:
            move = index(teeth, ratio, plates)
        except NotDefined:
            said = said or _near(name, teeth, ratio, plates)
            continue
        return f"{name}: {_moved(move)}"
    return said


def _on_tables(teeth: int, workshop: Workshop) -> str:
    """By holes or whole turns where they go; else by the dial, each place from the first."""
    for name, table in workshop.entry.holding.rotary_tables.items():
        plates = {plate: tuple(int(one) for one in row) for plate, row in table.plates.items()}
        with suppress(NotDefined):
            return f"{name}: {_moved(index(teeth, int(table.ratio), plates))}"
        if table.division is not None:
            with suppress(NotDefined):
                return f"{name}: {_dialled(teeth, int(table.ratio), table.division.exact)}"
    return ""


def _moved(move: Indexing) -> str:
    part = f" and {move.holes} holes of the {move.circle} circle" if move.holes else ""
    return f"{move.turns} turns{part}"


def _dialled(teeth: int, ratio: int, mark: Fraction) -> str:
    """The first step, and how far the worst place is off: steps that are added would stray."""
    made = dial(teeth, ratio, mark)
    first = made.settings[1 % teeth]
    turn = f"{first.turns} turn{'' if first.turns == 1 else 's'}"
    off = made.worst_deg
    each = f"tooth n at (n − 1) × 360° / {teeth} from the first, to the nearest mark"
    worst = f", off by {off * 60:.2g}′ at the most" if off else ""
    return f"{turn} and {first.marks} marks of {float(mark):g}°; {each}{worst}"


def can_divide(teeth: int, workshop: Workshop) -> bool:
    """Whether what is owned divides into so many, or nothing is owned at all."""
    return not _is_refused(divided(teeth, workshop))


def _is_refused(said: str) -> bool:
    return said.endswith("not on its plates") or "nearest is" in said


def _near(name: str, teeth: int, ratio: int, plates: dict[str, tuple[int, ...]]) -> str:
    try:
        found = nearest(teeth, ratio, plates)
    except NotDefined:
        return f"{name}: {teeth} is not on its plates"
    return f"{name}: {teeth} is not on its plates, the nearest is {found.nearest}"


def _ordinal(number: int) -> str:
    return {1: "one", 2: "second", 3: "third"}.get(number, f"{number}th")
