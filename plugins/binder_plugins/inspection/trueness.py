"""What must be true to what: the row of the sheet, and the clearance that it is told by."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import (
    Design,
    FitFact,
    Span,
)

# A test bar stands out so far, mm; the longer it is, the more a tilt shows.
BAR_MM = 100.0


@dataclass(frozen=True, slots=True)
class Alignment:
    """What must be true to what: `allowed` mm of the reading, over `over` mm, and how to try it.

    `measures` is the way of an instrument (`run-out`), '' where a straight edge tells it; `by_feel`
    says how the joint itself tells it, '' where it does not.
    """

    key: str
    what: str
    allowed: float
    over: float
    how: str
    measures: str
    by_feel: str
    if_out: str
    at: Span


def spare_mm(fit: FitFact) -> float:
    """The least clearance that a fit will have, in mm; nothing for one that nips."""
    least = fit.wanted_um if fit.suit else fit.clearance_min_um
    return max(least, 0.0) / 1000


def title_of(name: str, design: Design) -> str:
    """The title of an item; its name where nothing has that name."""
    item = design.item(name)
    return item.title if item is not None else name
