"""A syntax fault among the lines of a table or a list to its finding."""

from __future__ import annotations

import re

from binder.diagnostics import Diagnostic, Labelled, Span
from binder.source.codes.key_codes import KEY_TOO_LONG
from binder.source.codes.refused_codes import MORE_THAN_ONE_DOCUMENT
from binder.source.codes.syntax_codes import (
    BAD_INDENT,
    COLON_IN_TEXT,
    COLON_MISSING,
    LIST_AMONG_KEYS,
    NOT_YAML,
    QUOTE_NOT_CLOSED,
    TEXT_AFTER_CLOSE,
)
from binder.source.events import SyntaxFault
from binder.source.keys import no_name
from binder.source.spacing import glued_colon, glued_dash
from binder.source.text import SourceText, indent_of

_KEY = re.compile(r":(?:\s|$)")
_KEY_AND_VALUE = re.compile(r":\s+[^\s#]")
_DASHES = re.compile(r"\s*(?:- +)*")
_LONGEST_KEY_OF_YAML = 1000
_CLOSING = ('"', "'", "]", "}")


def unexpected_colon(source: SourceText, fault: SyntaxFault) -> Diagnostic:
    """A colon where no key can stand: within a value, or below a line that has lost its own."""
    before = source.line(fault.line)[: fault.column]
    if _KEY.search(before):
        return _colon_in_text(source, fault)
    if len(before) > _LONGEST_KEY_OF_YAML:
        message = f"a name of {len(before.strip()):,} characters stands before this colon"
        return KEY_TOO_LONG.at(source.rest(fault.line), message, help="put quotes round the text")
    above = source.line_before(fault.line)
    if above < 0:
        return _colon_in_text(source, fault)
    if _KEY.search(source.line(above)):
        return _further_in(source, fault, above)
    return _line_without_colon(source, fault, above)


def _colon_in_text(source: SourceText, fault: SyntaxFault) -> Diagnostic:
    message = "a value holds a colon, which reads as one more key"
    help = 'put quotes round the whole value, such as "Crane: the big one"'
    return COLON_IN_TEXT.at(source.span(fault.line, fault.column), message, help=help)


def _further_in(source: SourceText, fault: SyntaxFault, above: int) -> Diagnostic:
    if indent_of(source.line(fault.line)) <= indent_of(source.line(above)):
        return _colon_in_text(source, fault)
    return BAD_INDENT.at(
        source.rest(fault.line),
        "this line stands further in than the line above, which has its value already",
        related=[Labelled(source.rest(above), "the line above")],
        help="begin both lines in the same column, or leave the line above without a value",
    )


def _line_without_colon(source: SourceText, fault: SyntaxFault, above: int) -> Diagnostic:
    top, parent = above, source.line_before(above)
    while parent >= 0 and not _KEY.search(source.line(parent)):
        top, parent = parent, source.line_before(parent)
    is_running_text = (
        parent >= 0
        and _KEY_AND_VALUE.search(source.line(parent)) is not None
        and indent_of(source.line(top)) > indent_of(source.line(parent))
    )
    if is_running_text:
        return _colon_in_text(source, fault)
    return missing_colon(source, top, 0)


def missing_colon(source: SourceText, line: int, column: int) -> Diagnostic:
    """A line that should be `name: value`, and what it lacks."""
    whole = source.line(line)
    dashes = _DASHES.match(whole, column)
    start = dashes.end() if dashes else column
    text = whole[start:]
    glued = glued_colon(source, text, line, start) or glued_dash(source, text, line, start)
    if glued:
        return glued
    message = "this line has no colon"
    return COLON_MISSING.at(source.rest(line, start), message, help="write `name: value`")


def unexpected_text(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    """Something where the next entry should begin."""
    text = source.line(fault.line)
    before = text[: fault.column].rstrip()
    if before.endswith(_CLOSING):
        return after_close(source, fault, quoted)
    if before.strip():
        return NOT_YAML.at(
            source.rest(fault.line, fault.column),
            "this does not belong to the value before it",
            help="put quotes round the whole value",
        )
    if text.startswith(":", fault.column):
        return no_name(source.span(fault.line, fault.column))
    same_column = fault.since is not None and fault.since[1] == fault.column
    is_item = text[fault.column :].startswith("-")
    if same_column and is_item != fault.context.endswith("block collection"):
        return _list_among_keys(source, fault)
    return _bad_indent(source, fault)


def after_close(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    """Text after a closing quote or bracket; `quoted` is the last quoted text that was read."""
    if quoted and quoted.line < quoted.end_line == fault.line + 1:
        return QUOTE_NOT_CLOSED.at(
            source.span(quoted.line - 1, quoted.column - 1),
            f"the quote that opens here closes only on line {quoted.end_line}",
            help="close it on its own line; inches need no quotes: `1/4 in`",
        )
    before = source.line(fault.line)[: fault.column].rstrip()
    is_quote = before.endswith(('"', "'"))
    return TEXT_AFTER_CLOSE.at(
        source.rest(fault.line, fault.column),
        f"the value was closed by `{before[-1]}`, and here it goes on",
        help="leave the quotes out (`1/4 in`), or put them round all of it"
        if is_quote
        else "put quotes round all of it, or a comma between two items",
    )


def _list_among_keys(source: SourceText, fault: SyntaxFault) -> Diagnostic:
    is_item = source.line(fault.line)[fault.column :].startswith("-")
    message = "a list item stands among the keys of a table"
    if not is_item:
        message = "a line without a dash stands among the items of a list"
    help = "move it in or out by two spaces, to where it belongs"
    return LIST_AMONG_KEYS.at(source.rest(fault.line), message, help=help)


def _bad_indent(source: SourceText, fault: SyntaxFault) -> Diagnostic:
    above = source.line_before(fault.line)
    if above >= 0 and _lacks_colon(source.line(above), fault.column):
        return missing_colon(source, above, 0)
    related = [Labelled(source.rest(above), "the line above")] if above >= 0 else []
    return BAD_INDENT.at(
        source.rest(fault.line),
        f"this line begins in column {fault.column + 1}, where no table or list was begun",
        related=related,
        help="begin all lines of one table in the same column",
    )


def _lacks_colon(line: str, column: int) -> bool:
    """Whether a line at that column, less its comment, is neither an entry nor an item."""
    text = line.partition(" #")[0]
    is_item = text.lstrip().startswith("- ")
    return indent_of(text) == column and not is_item and not _KEY.search(text)


def after_the_end(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    """Text after the end of the whole spec."""
    if any(line.startswith("...") for line in source.lines[: fault.line]):
        help = "delete the line `...`, or this and what follows"
        message = "the spec was ended by a line `...`, and here it goes on"
        return MORE_THAN_ONE_DOCUMENT.at(source.rest(fault.line), message, help=help)
    return unexpected_text(source, fault, quoted)
