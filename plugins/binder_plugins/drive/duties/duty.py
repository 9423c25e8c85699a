"""The outcome of one drive as it is printed: figures, how they were reached, remarks."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import Diagnostic, Fact
from binder_trade.explained import Step

Rows = tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class DutyFact(Fact):
    """What a drive does; the subject is its joint. `rows` are names and figures as printed.

    `curves` are lines over one turn: a name, and heights in mm at even steps of the turn.
    """

    title: str
    rows: Rows
    steps: tuple[Step, ...] = ()
    curves: tuple[tuple[str, tuple[float, ...]], ...] = ()


@dataclass(frozen=True, slots=True)
class Told:
    """A duty and what is to be remarked of it; None where too little is told to reckon it."""

    duty: DutyFact | None = None
    findings: tuple[Diagnostic, ...] = ()
