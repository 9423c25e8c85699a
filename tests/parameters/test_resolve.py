"""The sizes of a spec: their order, their faults at exact places, and what may override them."""

from __future__ import annotations

from binder.diagnostics import Diagnostic

PICTURE = "picture: {file: quay.png, known: {pixels: 260, is: 5 * bar}}"


def place(finding: Diagnostic) -> tuple[str, int, int, int]:
    span = finding.span
    return finding.code.name, span.line, span.column, span.end_column


def marked(text: str) -> tuple[str, tuple[int, int, int]]:
    """A text without its marks, and the line and columns of what they enclose."""
    lines = text.split("\n")
    at = next(number for number, line in enumerate(lines) if "\u27ea" in line)
    start, end = lines[at].index("\u27ea"), lines[at].index("\u27eb") - 1
    plain = text.replace("\u27ea", "").replace("\u27eb", "")
    return plain, (at + 1, start + 1, end + 1)


"""
"""
