"""What YAML swallows without a word to findings."""

from __future__ import annotations

import re
from itertools import pairwise

from binder.diagnostics import Span
from binder.source.codes.syntax_codes import COLON_MISSING, TAB_IN_INDENT
from binder.source.codes.trap_codes import (
    COMMA_IN_NUMBER,
    LINES_RUN_TOGETHER,
    VALUE_READ_AS_COMMENT,
)
from binder.source.findings import Findings
from binder.source.quoting import quoted
from binder.source.spacing import glued_colon, glued_dash
from binder.source.text import SourceText
from binder.source.tree import Row, Written

_NUMBERED_COMMENT = re.compile(r"\s#\s?[0-9]")
_CUT_OFF = re.compile(r"[ \t]+(#[0-9][^\s]*)")
_INSTEAD_OF_VALUE = re.compile(r"[ \t]*(#(?:[^\s#]|[ \t]?[0-9]).*)")
_TAB_FIRST = re.compile(r" *\t[ \t]*(?=[^\s#])")
_ENTRY_IN_QUOTES = re.compile(r"[A-Za-z][A-Za-z0-9_-]*(?: [A-Za-z][A-Za-z0-9_-]*){0,2}:(?:\s|$)")
_NAME_AND_SIZE = re.compile(r"[A-Za-z][A-Za-z_-]* +[0-9]")
_VALUE_BY_ITSELF = re.compile(r"[0-9]|[A-Za-z-]+$")
_WHOLE_NUMBER = re.compile(r"[0-9]+")
_NUMBER_WITH_UNIT = re.compile(r"[0-9]+ *[A-Za-z\"]")
_BLANKS = re.compile(r"[ \t]*")
_LONGEST_NUMBER = 40
_DIGITS_AND_COMMA = re.compile(r"[0-9]+,$")


def lines_with_numbered_comments(source: SourceText) -> frozenset[int]:
    """The lines, from 0, on which a `#` with a number might have been meant as a value."""
    if not _NUMBERED_COMMENT.search(source.text):
        return frozenset()
    return frozenset(n for n, line in enumerate(source.lines) if _NUMBERED_COMMENT.search(line))


def lines_with_tabs_first(source: SourceText) -> frozenset[int]:
    """The lines, from 0, that are indented with a tab and hold something."""
    if "\t" not in source.text:
        return frozenset()
    return frozenset(n for n, line in enumerate(source.lines) if _TAB_FIRST.match(line))


def check_nothing_written(source: SourceText, line: int, column: int, found: Findings) -> None:
    """`thread: #4-40`: the value is empty, and what was meant is a comment."""
    match = _INSTEAD_OF_VALUE.match(source.line(line), column)
    if match:
        lost = match[1].rstrip()
        message = f"{quoted(lost)} is read as a comment, so that there is no value"
        help = "put quotes round the value; a comment has a space after the `#`"
        span = source.span(line, match.start(1), len(lost))
        found.add(VALUE_READ_AS_COMMENT, span, message, help=help)


def check_tail(source: SourceText, written: Written, found: Findings) -> None:
    """`drill: no. #30`: the end of the value is a comment."""
    line, column = written.span.end_line - 1, written.span.end_column - 1
    match = _CUT_OFF.match(source.line(line), column)
    if match:
        message = (
            f"{quoted(match[1])} is read as a comment, and the value is only {quoted(written)}"
        )
        help = "put quotes round all of the value; a comment has a space after the `#`"
        span = source.span(line, match.start(1), len(match[1]))
        found.add(VALUE_READ_AS_COMMENT, span, message, help=help)


def check_tab_first(source: SourceText, span: Span, found: Findings) -> None:
    """A line between brackets that is indented with a tab, which only some readers let pass."""
    text = source.line(span.line - 1)
    match = _TAB_FIRST.match(text)
    if match and match.end() == span.column - 1:
        found.add(
            TAB_IN_INDENT,
            source.span(span.line - 1, text.index("\t")),
            "a tab stands at the start of this line",
            help="use spaces, two for each step",
        )


def check_entry_without_colon(source: SourceText, key: str, span: Span, found: Findings) -> bool:
    """An entry between braces that has no colon: `{b: 1,5 mm}`, `{b:1}`, `{b 1}`."""
    if _is_followed_by_colon(source, span):
        return False
    column = span.column - 1
    window = max(0, column - _LONGEST_NUMBER)  # the line may be a megabyte long
    digits = _DIGITS_AND_COMMA.search(source.line(span.line - 1)[window:column])
    glued = glued_colon(source, key, span.line - 1, column)
    if digits and key[:1].isdecimal():
        _report_comma(source, span, window + digits.start(), found)
    elif glued:
        found.take(glued)
    else:
        message = f"{quoted(key)} has no colon"
        help = "between braces each entry is `name: value`; a list has square brackets"
        found.add(COLON_MISSING, span, message, help=help)
    return True


def check_own_line(source: SourceText, written: Written, key: Span, found: Findings) -> None:
    """A value that begins below its key, and looks like an entry or an item there."""
    colon = source.line(key.end_line - 1).find(":", key.end_column - 1)
    check_nothing_written(source, key.end_line - 1, colon + 1, found)
    _check_start(source, written, written.span.line - 1, written.span.column - 1, found)


def check_item(source: SourceText, written: Written, found: Findings) -> None:
    """`- length:19 mm`: one text where an entry was meant."""
    glued = glued_colon(source, written, written.span.line - 1, written.span.column - 1)
    if glued:
        found.take(glued)


def check_commas(source: SourceText, row: Row, found: Findings) -> None:
    """`[1,5 mm]`: two items where one size was meant."""
    plain = (item for item in row if isinstance(item, Written) and not item.is_quoted)
    for first, second in pairwise(plain):
        if _is_divided_number(first, second):
            _report_comma(source, second.span, first.span.column - 1, found)


def check_lines(source: SourceText, written: Written, found: Findings) -> None:
    """A text over several lines, one of which was meant as an entry or an item of its own."""
    span = written.span
    first = source.line(span.line - 1)[span.column - 1 :].strip()
    for number in range(span.line, span.end_line):
        text = source.line(number)
        column = len(text) - len(text.lstrip())
        if written.is_quoted:
            is_entry = _ENTRY_IN_QUOTES.match(text, column) is not None
        elif _check_start(source, text[column:], number, column, found):
            continue
        else:
            is_entry = _is_entry(first, text[column:])
        if is_entry:
            _report_joined(source, span, number, found)


def _is_entry(first: str, text: str) -> bool:
    if text.startswith("- "):
        return True
    is_value = _VALUE_BY_ITSELF.match(first) or _NAME_AND_SIZE.match(first)
    return is_value is not None and _NAME_AND_SIZE.match(text) is not None


def _check_start(source: SourceText, text: str, line: int, column: int, found: Findings) -> bool:
    glued = glued_colon(source, text, line, column) or glued_dash(source, text, line, column)
    if glued:
        found.take(glued)
    return glued is not None


def _is_divided_number(first: Written, second: Written) -> bool:
    is_close = second.span[1:3] == (first.span.end_line, first.span.end_column + 1)
    is_number = _WHOLE_NUMBER.fullmatch(first) and _NUMBER_WITH_UNIT.match(second)
    return is_close and is_number is not None


def _is_followed_by_colon(source: SourceText, span: Span) -> bool:
    line, column = span.end_line - 1, span.end_column - 1
    while line < len(source.lines):
        text = source.lines[line]
        after = _BLANKS.match(text, column)
        column = after.end() if after else column
        if column < len(text) and text[column] != "#":
            return text[column] == ":"
        line, column = line + 1, 0
    return False


def _report_comma(source: SourceText, span: Span, start: int, found: Findings) -> None:
    place = source.span(span.line - 1, start, span.end_column - 1 - start)
    text = source.line(span.line - 1)[start : span.end_column - 1]
    message = f"between brackets the comma cuts {quoted(text)} in two"
    help = f"write {quoted(text.replace(',', '.', 1))}; for two items put a space after the comma"
    found.add(COMMA_IN_NUMBER, place, message, help=help)


def _report_joined(source: SourceText, span: Span, line: int, found: Findings) -> None:
    start = source.span(span.line - 1, span.column - 1)
    found.add(
        LINES_RUN_TOGETHER,
        source.rest(line),
        f"this line is read as the end of the value that begins on line {start.line}",
        help="write the missing colon, dash or quote, or begin long text with `|`",
    )
