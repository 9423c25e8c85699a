"""One turn of the drive to what was looked at."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Block, Design, Paragraph, Subheading, TurningFact
from binder_plugins.drive.motion.told import TurnFact

_MOST_NAMED = 6


def turn_blocks(design: Design) -> Iterator[Block]:
    """What could reach one another in one turn, and in how many positions that was looked at."""
    fact = design.facts.about(TurnFact, "")
    if fact is None:
        return
    yield Subheading("Through one turn")
    title = _title(fact.driver, design)
    if not fact.pairs:
        moves = ", ".join(_title(name, design) for name in fact.bodies)
        free = f"Nothing that moves ({moves}) can reach what it is not joined to"
        yield Paragraph((f"{free}: one turn of the {title} is free.",))
        return
    named = "; ".join(f"{one} and {other}" for one, other in fact.pairs[:_MOST_NAMED])
    more = len(fact.pairs) - _MOST_NAMED
    rest = f"; and {more} more pairs" if more > 0 else ""
    words = (
        f"The {title} was turned once, in steps of {360 / fact.steps:g}°, as the parts are drawn. "
        f"What could reach one another was looked at: {named}{rest}. "
        "Knocks stand among the remarks."
    )
    yield Paragraph((words,))


def _title(name: str, design: Design) -> str:
    body, item = design.facts.about(TurningFact, name), design.item(name)
    return body.title if body is not None else item.title if item is not None else name
