"""The codes of findings, each explained where it is declared."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder.diagnostics.diagnostic import Diagnostic, Labelled
    from binder.diagnostics.span import Span


class Severity(StrEnum):
    """How much a finding weighs: an error stops the binder, the rest are printed in it."""

    ERROR = "error"
    WARNING = "warning"
    CAUTION = "caution"
    ADVICE = "advice"

    @property
    def rank(self) -> int:
        """0 for the heaviest."""
        return list(Severity).index(self)


@dataclass(frozen=True, slots=True)
class Code:
    """A fault by name, with the four headings that `binder explain` prints.

    meaning: what was found; bench: why it matters there; example: lines that cause it;
    remedy: the way out.
    """

    name: str
    severity: Severity
    meaning: str
    bench: str
    example: str
    remedy: str

    def at(
        self,
        span: Span,
        message: str,
        *,
        label: str = "",
        related: Iterable[Labelled] = (),
        notes: Iterable[str] = (),
        help: str = "",
    ) -> Diagnostic:
        """A finding of this code at a place; `message` is the headline."""
        from binder.diagnostics.diagnostic import Diagnostic

        return Diagnostic(self, span, message, label, tuple(related), tuple(notes), help)
