"""Gathers the findings of one reading: the first hundred, and a count of the rest."""

from __future__ import annotations

from collections.abc import Iterable

from binder.diagnostics import Code, Diagnostic, Labelled, Severity, Span, sorted_findings
from binder.source.bounds import FINDINGS
from binder.source.codes.bound_codes import FINDINGS_LEFT_OUT


class Findings:
    """What has been found so far; errors are kept before warnings, each in order of finding."""

    def __init__(self, file: str) -> None:
        self._whole_file = whole_file(file)
        self._errors: list[Diagnostic] = []
        self._others: list[Diagnostic] = []
        self._count = 0

    def add(
        self,
        code: Code,
        span: Span,
        message: str,
        *,
        label: str = "",
        related: Iterable[Labelled] = (),
        notes: Iterable[str] = (),
        help: str = "",
    ) -> None:
        """Take one finding, or only count it where there are enough."""
        self._count += 1
        pile = self._errors if code.severity is Severity.ERROR else self._others
        if len(pile) < FINDINGS:
            pile.append(
                code.at(span, message, label=label, related=related, notes=notes, help=help)
            )

    def take(self, finding: Diagnostic) -> None:
        """Take a finding that is already made."""
        self._count += 1
        pile = self._errors if finding.is_error else self._others
        if len(pile) < FINDINGS:
            pile.append(finding)

    @property
    def is_full(self) -> bool:
        """Whether one more error would only be counted."""
        return len(self._errors) >= FINDINGS

    def count_one(self) -> None:
        """Count an error that is not worth wording any more."""
        self._count += 1

    def all(self) -> tuple[Diagnostic, ...]:
        """The findings by place; what was left out is counted in one more."""
        kept = [*self._errors, *self._others][:FINDINGS]
        left_out = self._count - len(kept)
        return sorted_findings([*kept, *self._left_out(left_out)])

    def _left_out(self, count: int) -> Iterable[Diagnostic]:
        if count:
            message = f"{count} more findings are not shown"
            help = "mend those that are shown and run again"
            yield FINDINGS_LEFT_OUT.at(self._whole_file, message, help=help)


def whole_file(file: str) -> Span:
    """The place of what concerns a file as a whole."""
    return Span(file, 0, 0, 0, 0)
