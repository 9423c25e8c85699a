"""Findings that the maker has answered with `because:` to findings that are accepted."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from binder.design import Departure
from binder.diagnostics import Diagnostic, Severity

_STANDS = (Severity.ERROR, Severity.CAUTION)


def accepted(
    findings: Iterable[Diagnostic], departures: tuple[Departure, ...]
) -> tuple[Diagnostic, ...]:
    """The findings, those inside a departure with its reason; errors and cautions stand."""
    return tuple(_answered(finding, departures) for finding in findings)


def _answered(finding: Diagnostic, departures: tuple[Departure, ...]) -> Diagnostic:
    if finding.severity in _STANDS:
        return finding
    for departure in departures:
        if departure.at.covers(finding.span):
            return replace(finding, accepted=departure.because)
    return finding
