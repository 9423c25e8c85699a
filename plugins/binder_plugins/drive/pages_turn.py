"""One turn of the drive to what was looked at."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Block, Design, Paragraph, Subheading
from binder_plugins.drive.facts import TurningFact
from binder_plugins.drive.motion.told import TurnFact

_MOST_NAMED = 6


def turn_blocks(design: Design) -> Iterator[Block]:
    """What could reach one another in one turn, and in how many positions that was looked at."""
    fact = design.facts.about(TurnFact, "")
    if fact is None:
        return
    yield Subheading("Through one turn")
    body = design.facts.about(TurningFact, fact.driver)
    title = body.title if body is not None else fact.driver
    if not fact.pairs:
        free = "All that turns is round, or reaches nothing else"
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
