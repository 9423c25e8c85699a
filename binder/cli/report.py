"""Findings to stderr in the asked-for format, and the exit code that follows from them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping

import click

from binder import __version__
from binder.cli.streams import is_coloured
from binder.diagnostics import Diagnostic, Severity
from binder.diagnostics.records import as_annotations, as_json, as_sarif
from binder.diagnostics.text import as_text

MOST_SHOWN = 50


def report(findings: tuple[Diagnostic, ...], texts: Mapping[str, str], style: str) -> None:
    """Prints the findings."""
    if style == "json":
        click.echo(as_json(findings), err=True)
    elif style == "sarif":
        click.echo(as_sarif(findings, __version__), err=True)
    elif style == "github":
        if findings:
            click.echo(as_annotations(findings), err=True)
    elif findings:
        _as_text(findings, texts)


def _as_text(findings: tuple[Diagnostic, ...], texts: Mapping[str, str]) -> None:
    click.echo(as_text(findings[:MOST_SHOWN], texts, is_coloured=is_coloured()), err=True)
    if len(findings) > MOST_SHOWN:
        click.echo(f"\n... and {len(findings) - MOST_SHOWN} more", err=True)
    click.echo(f"\n{tally(findings)}", err=True)


def tally(findings: tuple[Diagnostic, ...]) -> str:
    """`2 errors, 1 warning`, or `no findings`."""
    counts = Counter(finding.severity for finding in findings if not finding.accepted)
    words = [_counted(counts[severity], severity) for severity in Severity if counts[severity]]
    accepted = sum(1 for finding in findings if finding.accepted)
    if accepted:
        words.append(f"{accepted} accepted")
    return ", ".join(words) or "no findings"


def _counted(number: int, severity: Severity) -> str:
    plural = number != 1 and severity is not Severity.ADVICE
    return f"{number} {severity}{'s' if plural else ''}"
