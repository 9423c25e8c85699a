"""Findings to lines for a terminal, each with the source line that it is about."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from binder.diagnostics.code import Severity
from binder.diagnostics.diagnostic import Diagnostic
from binder.diagnostics.printable import printable
from binder.diagnostics.span import Span

_COLOUR = {
    Severity.ERROR: "31",
    Severity.WARNING: "33",
    Severity.CAUTION: "35",
    Severity.ADVICE: "36",
}


def as_text(
    findings: Iterable[Diagnostic], texts: Mapping[str, str], *, is_coloured: bool = False
) -> str:
    """All findings, a blank line between them. `texts` are the source files by name."""
    lines = {file: text.splitlines() for file, text in texts.items()}
    return "\n\n".join(
        "\n".join(_one(finding, lines, is_coloured=is_coloured)) for finding in findings
    )


def _one(
    finding: Diagnostic, lines: Mapping[str, list[str]], *, is_coloured: bool
) -> Iterator[str]:
    yield _headline(finding, is_coloured=is_coloured)
    places = [(finding.span, "^", finding.label)]
    places += [(one.span, "-", one.label) for one in finding.related]
    width = max((len(str(span.line)) for span, _, _ in places), default=1)
    yield f"{' ' * width}--> {printable(str(finding.span))}"
    file = finding.span.file
    shown = False
    for span, mark, label in places:
        if span.file != file:
            yield f"{' ' * width}--> {printable(str(span))}"
            file = span.file
        if _has_line(span, lines):
            if not shown:
                yield f"{' ' * width} |"
            shown = True
            yield from _excerpt(span, mark, label, lines[span.file], width)
    yield from (f"note: {printable(note)}" for note in finding.notes)
    if finding.help:
        yield f"help: {printable(finding.help)}"
    if finding.accepted:
        yield f"accepted: {printable(finding.accepted)}"


def _headline(finding: Diagnostic, *, is_coloured: bool) -> str:
    kind = f"{finding.severity}[{finding.code.name}]"
    if is_coloured:
        kind = f"\x1b[1;{_COLOUR[finding.severity]}m{kind}\x1b[0m"
    return f"{kind}: {printable(finding.message)}"


def _has_line(span: Span, lines: Mapping[str, list[str]]) -> bool:
    return 0 < span.line <= len(lines.get(span.file, ()))


def _excerpt(span: Span, mark: str, label: str, lines: list[str], width: int) -> Iterator[str]:
    line = lines[span.line - 1]
    end = span.end_column if span.end_line == span.line else len(line) + 1
    first = max(0, span.column - 60)
    cut = printable(line[first : first + 120].replace("\t", " "))
    before = printable(line[first : span.column - 1].replace("\t", " "))
    length = max(1, min(end - span.column, len(line) - span.column + 1, 80))
    yield f"{span.line:>{width}} | {cut}".rstrip()
    yield f"{' ' * width} | {' ' * len(before)}{mark * length} {printable(label)}".rstrip()
