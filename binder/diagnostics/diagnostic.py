"""One finding, as a value."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from binder.diagnostics.code import Code, Severity
from binder.diagnostics.span import Span


@dataclass(frozen=True, slots=True)
class Labelled:
    """A second place that explains a finding, and what it shows."""

    span: Span
    label: str


@dataclass(frozen=True, slots=True)
class Diagnostic:
    """What was found, where, what belongs to it, and the way out.

    `accepted` holds the maker's reason where he has said `because:`; such a finding is
    printed in the binder and counts no more.
    """

    code: Code
    span: Span
    message: str
    label: str = ""
    related: tuple[Labelled, ...] = ()
    notes: tuple[str, ...] = ()
    help: str = ""
    accepted: str = ""

    @property
    def severity(self) -> Severity:
        """The weight of its code."""
        return self.code.severity

    @property
    def is_error(self) -> bool:
        """Whether no binder can follow from it."""
        return self.code.severity is Severity.ERROR


def sorted_findings(findings: Iterable[Diagnostic]) -> tuple[Diagnostic, ...]:
    """Findings by place, the heavier first at one place, each said once."""
    unique = dict.fromkeys(findings)
    return tuple(sorted(unique, key=_place))


def _place(finding: Diagnostic) -> tuple[str, int, int, int, str, str]:
    span = finding.span
    return (
        span.file,
        span.line,
        span.column,
        finding.severity.rank,
        finding.code.name,
        finding.message,
    )
