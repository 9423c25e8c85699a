"""A syntax fault between brackets to its finding."""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import islice

from binder.diagnostics import Diagnostic, Labelled, Span
from binder.source.block_faults import after_close
from binder.source.codes.syntax_codes import (
    BRACKET_NOT_CLOSED,
    BRACKET_NOT_OPENED,
    CHARACTER_STARTS_NOTHING,
    COMMA_MISSING,
    COMMA_WITH_NOTHING,
)
from binder.source.codes.trap_codes import VALUE_READ_AS_COMMENT
from binder.source.events import SyntaxFault
from binder.source.keys import no_name
from binder.source.quoting import quoted as shown
from binder.source.text import SourceText, indent_of

_COMMENT = re.compile(r"(?<![^\s,\[{])#(?=\S)")
_CANDIDATES = 20  # a line may be a megabyte of `#`
_TOP_KEY = re.compile(r"[^\s#\]}]")
_TOKEN = re.compile(
    r"""(?<![^\s\[{,:])"(?:\\.|[^"\\])*"|(?<![^\s\[{,:])'(?:''|[^'])*'|(?<!\S)\#.*|[\[{\]}]"""
)


def missing_comma(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    """Something where a comma or the closing bracket should be."""
    comment = _swallowed(source, fault)
    if comment:
        return comment
    text = source.line(fault.line)
    here = text[fault.column : fault.column + 1]
    if here in ("]", "}"):
        return _other_kind(source, fault)
    if text[: fault.column].rstrip().endswith(('"', "'")) and here not in tuple("\"'[{"):
        return after_close(source, fault, quoted)
    if not _still_inside(source, fault):
        return _not_closed(source, fault)
    message = "a comma is missing before this, or a value holds a colon"
    help = "put a comma between two entries; put quotes round a value that holds a colon"
    return COMMA_MISSING.at(source.span(fault.line, fault.column), message, help=help)


def nothing_there(source: SourceText, fault: SyntaxFault) -> Diagnostic:
    """A bracket, a comma or the end where a value should be."""
    here = source.line(fault.line)[fault.column : fault.column + 1]
    span = source.span(fault.line, fault.column)
    if here == ":":
        return no_name(span)
    opened = _innermost_open(source, fault)
    if opened is None and here in ("]", "}"):
        message = f"`{here}` closes nothing"
        return BRACKET_NOT_OPENED.at(span, message, help="delete it, or write the opening bracket")
    if opened is None:
        message = f"no value can begin with {shown(here)}"
        return CHARACTER_STARTS_NOTHING.at(span, message, help="put quotes round the whole value")
    if here == ",":
        help = "delete the comma, or write what is missing"
        return COMMA_WITH_NOTHING.at(span, "there is nothing before this comma", help=help)
    since = replace(fault, since=opened)
    return _swallowed(source, since) or _not_closed(source, since)


def _still_inside(source: SourceText, fault: SyntaxFault) -> bool:
    """Whether the fault lies on the opening line, or on one that stands further in."""
    if fault.since is None or not source.line(fault.line)[fault.column :].strip():
        return False
    opening = fault.since[0]
    further_in = indent_of(source.line(fault.line)) > indent_of(source.line(opening))
    return fault.line == opening or further_in


def _swallowed(source: SourceText, fault: SyntaxFault) -> Diagnostic | None:
    """A comment within the brackets that holds the closing one: `[#4-40, M3]`."""
    first, column = fault.since or (fault.line, 0)
    for number in range(first, min(fault.line, len(source.lines) - 1) + 1):
        text = source.lines[number].rstrip()
        start = _comment_start(text, column if number == first else 0)
        if start is not None and any(mark in text[start:] for mark in "]}"):
            comment = text[start:]
            message = f"from `#` on this is read as a comment: {shown(comment)}"
            help = 'put quotes round a value that begins with `#`, such as "#4-40"'
            span = source.span(number, start, len(comment))
            return VALUE_READ_AS_COMMENT.at(span, message, help=help)
    return None


def _comment_start(text: str, column: int) -> int | None:
    """Where a comment without a space after its `#` begins, outside double quotes."""
    for match in islice(_COMMENT.finditer(text, column), _CANDIDATES):
        if text.count('"', 0, match.start()) % 2 == 0:
            return match.start()
    return None


def _other_kind(source: SourceText, fault: SyntaxFault) -> Diagnostic:
    line, column = fault.since or (fault.line, fault.column)
    closing = source.line(fault.line)[fault.column]
    opening = source.line(line)[column : column + 1]
    return BRACKET_NOT_CLOSED.at(
        source.span(fault.line, fault.column),
        f"`{closing}` cannot close `{opening}`",
        related=[Labelled(source.span(line, column), "opened here")],
        help="close `[` with `]` and `{` with `}`",
    )


def _not_closed(source: SourceText, fault: SyntaxFault) -> Diagnostic:
    line, column = fault.since or (fault.line, fault.column)
    opening = source.line(line)[column : column + 1]
    closing = "]" if opening == "[" else "}"
    message = f"`{opening}` is not closed"
    return BRACKET_NOT_CLOSED.at(source.span(line, column), message, help=f"write `{closing}`")


def _innermost_open(source: SourceText, fault: SyntaxFault) -> tuple[int, int] | None:
    """The last bracket before the fault that is still open, from the section's key on."""
    first = min(fault.line, len(source.lines) - 1)
    while first > 0 and not _TOP_KEY.match(source.lines[first]):
        first -= 1
    lines = [*source.lines[first : fault.line], source.line(fault.line)[: fault.column]]
    open_brackets: list[int] = []
    text = "\n".join(lines)
    for token in _TOKEN.finditer(text):
        if token[0] in ("[", "{"):
            open_brackets.append(token.start())
        elif token[0] in ("]", "}") and open_brackets:
            open_brackets.pop()
    if not open_brackets:
        return None
    before = text[: open_brackets[-1]]
    return first + before.count("\n"), len(before) - (before.rfind("\n") + 1)
