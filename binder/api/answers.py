"""The answer to a one-off question: results with their units, and how they were reached."""

from __future__ import annotations

from dataclasses import dataclass

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


@dataclass(frozen=True, slots=True)
class Answer:
    """Results, their working, notes in plain words, and what is to be remarked."""

    title: str
    results: tuple[Result, ...]
    working: tuple[Reason, ...]
    notes: tuple[str, ...] = ()
    findings: tuple[Diagnostic, ...] = ()
