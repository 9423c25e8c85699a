"""The remarks: what the checks had to say."""

from __future__ import annotations

from collections.abc import Iterator

from binder.diagnostics import Diagnostic, Severity
from binder.pages import Notice, NoticeKind, Paragraph, Place, Section

_KIND = {
    Severity.ERROR: NoticeKind.WARNING,
    Severity.WARNING: NoticeKind.WARNING,
    Severity.CAUTION: NoticeKind.CAUTION,
    Severity.ADVICE: NoticeKind.ADVICE,
}


def remarks(findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """A section of remarks, where there are any."""
    if findings:
        yield Section(
            id="remarks",
            title="Remarks",
            place=Place.REMARKS,
            blocks=(
                Paragraph(("What the checks found. Settle each before the part is begun.",)),
                *(_notice(finding) for finding in findings),
            ),
        )


def _notice(finding: Diagnostic) -> Notice:
    words = [finding.message + "."]
    if finding.help:
        words.append(f" {finding.help[0].upper()}{finding.help[1:]}.")
    if finding.accepted:
        words.append(f" Accepted, because: {finding.accepted}.")
    title = "accepted" if finding.accepted else str(finding.severity)
    return Notice(
        _KIND[finding.severity] if not finding.accepted else NoticeKind.NOTE,
        f"{title}: {finding.code.name}",
        ("".join(words),),
        source=str(finding.span),
    )
