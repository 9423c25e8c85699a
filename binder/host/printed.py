"""What plugins found, whose sums are in mm, in the units of the model."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from binder.api.lengths import lengths_in
from binder.diagnostics import Diagnostic


def printed(findings: Iterable[Diagnostic], units: str) -> tuple[Diagnostic, ...]:
    """The findings with their lengths in these units; names of tools stay."""
    if units == "mm":
        return tuple(findings)
    return tuple(
        replace(
            one,
            message=lengths_in(one.message, units),
            label=lengths_in(one.label, units),
            notes=tuple(lengths_in(note, units) for note in one.notes),
            help=lengths_in(one.help, units),
        )
        for one in findings
    )
