"""The answer to a one-off question: results with their units, and how they were reached."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Protocol

from binder.diagnostics import Diagnostic


@dataclass(frozen=True, slots=True)
class Result:
    """One figure: `value` is a number in `unit` ('' for a plain number).

    `designation` stands beside it where the figure has a name of its own, as a drill has;
    `title` is how the bench calls it.
    """

    name: str
    value: float
    unit: str
    title: str = ""
    designation: str = ""


@dataclass(frozen=True, slots=True)
class Reason:
    """One line of the working: what was reckoned, by which rule, to what, and the source."""

    name: str
    formula: str
    value: str
    source: str = ""


class Explained(Protocol):
    """A step of a sum, as the trade's tables and sums tell it."""

    @property
    def name(self) -> str:
        """What was reckoned."""

    @property
    def formula(self) -> str:
        """By which rule."""

    @property
    def value(self) -> str:
        """To what."""

    @property
    def source(self) -> str:
        """Where the rule stands."""


def reasons(steps: Iterable[Explained]) -> tuple[Reason, ...]:
    """The steps of a sum as the lines of an answer."""
    return tuple(Reason(one.name, one.formula, one.value, one.source) for one in steps)


@dataclass(frozen=True, slots=True)
class Answer:
    """Results, their working, notes in plain words, and what is to be remarked."""

    title: str
    results: tuple[Result, ...]
    working: tuple[Reason, ...]
    notes: tuple[str, ...] = ()
    findings: tuple[Diagnostic, ...] = ()
