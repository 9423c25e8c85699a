"""The outcome of one drive as it is printed: figures, how they were reached, remarks."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import Diagnostic, Fact
from binder_trade.explained import Step

Rows = tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class Curve:
    """A line over one turn of the driving shaft: heights at even steps of it, in `unit`.

    `says` is what is drawn, in words; without them, how far what has the name has moved.
    """

    name: str
    heights: tuple[float, ...]
    unit: str = "mm"
    says: str = ""

    @property
    def words(self) -> str:
        """What the curve shows."""
        return self.says or f"how far the {self.name} has moved"


@dataclass(frozen=True, slots=True)
class DutyFact(Fact):
    """What a drive does; the subject is its joint. `rows` are names and figures as printed."""

    title: str
    rows: Rows
    steps: tuple[Step, ...] = ()
    curves: tuple[Curve, ...] = ()


@dataclass(frozen=True, slots=True)
class Told:
    """A duty and what is to be remarked of it; None where too little is told to reckon it.

    `more` are facts of the drive that other plugins tell.
    """

    duty: DutyFact | None = None
    findings: tuple[Diagnostic, ...] = ()
    more: tuple[Fact, ...] = ()
