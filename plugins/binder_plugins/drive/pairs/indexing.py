"""How so many teeth are divided with what the workshop owns, in words."""

from __future__ import annotations

from binder.api import Workshop
from binder_trade.explained import NotDefined
from binder_trade.gears.dividing.simple import index, nearest


def divided(teeth: int, workshop: Workshop) -> str:
    """`0 turns and 20 holes of 27 on plate 2`, or why it cannot be done; '' without a head."""
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
        part = f" and {move.holes} holes of the {move.circle} circle" if move.holes else ""
        return f"{name}: {move.turns} turns{part}"
    return said


def can_divide(teeth: int, workshop: Workshop) -> bool:
    """Whether a dividing head is owned that indexes so many, or none is owned at all."""
    said = divided(teeth, workshop)
    return not said.endswith("not on its plates") and "nearest" not in said


def _near(name: str, teeth: int, ratio: int, plates: dict[str, tuple[int, ...]]) -> str:
    try:
        found = nearest(teeth, ratio, plates)
    except NotDefined:
        return f"{name}: {teeth} is not on its plates"
    return f"{name}: {teeth} is not on its plates, the nearest is {found.nearest}"


def _ordinal(number: int) -> str:
    return {1: "one", 2: "second", 3: "third"}.get(number, f"{number}th")
