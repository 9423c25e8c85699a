"""A colon or a dash that lacks the space after it, to its finding."""

from __future__ import annotations

import re

from binder.diagnostics import Diagnostic, Span
from binder.source.codes.trap_codes import COLON_WITHOUT_SPACE, DASH_WITHOUT_SPACE
from binder.source.text import SourceText

_GLUED = re.compile(r"([A-Za-z][A-Za-z0-9_-]*):(?=[^\s/:])")
_DASHED = re.compile(r"""-[A-Za-z"'\[{]""")


def glued_colon(source: SourceText, text: str, line: int, column: int) -> Diagnostic | None:
    """`length:19 mm` at the start of a text that stands at `line`, `column` (from 0)."""
    match = _GLUED.match(text)
    if match is None:
        return None
    return no_space_after_colon(source.span(line, column + match.end() - 1))


def no_space_after_colon(span: Span) -> Diagnostic:
    """The finding for a colon that stands at `span`."""
    return COLON_WITHOUT_SPACE.at(
        span,
        "there is no space after this colon",
        help="write `name: value`; put quotes round a text that holds a colon",
    )


def glued_dash(source: SourceText, text: str, line: int, column: int) -> Diagnostic | None:
    """`-slot` at the start of a text that stands at `line`, `column` (from 0)."""
    if not _DASHED.match(text):
        return None
    return DASH_WITHOUT_SPACE.at(
        source.span(line, column),
        "there is no space after this dash",
        help="write `- ` to begin an item of a list; put quotes round a text with a dash first",
    )
