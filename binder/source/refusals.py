"""What YAML can do and a spec does without, to findings."""

from __future__ import annotations

from binder.diagnostics import Diagnostic, Labelled, Span
from binder.source.bounds import DEPTH, TEXT_CHARACTERS, VALUES
from binder.source.codes.bound_codes import TEXT_TOO_LONG, TOO_DEEP, TOO_MANY_VALUES
from binder.source.codes.file_codes import EMPTY_FILE
from binder.source.codes.key_codes import KEY_NOT_TEXT, KEY_WRITTEN_TWICE
from binder.source.codes.refused_codes import (
    ANCHOR_OR_ALIAS,
    MERGE_KEY,
    MORE_THAN_ONE_DOCUMENT,
    ROOT_NOT_TABLE,
    TAG_REFUSED,
    YAML_DIRECTIVE,
)
from binder.source.events import AliasEvent, CollectionStartEvent, ScalarEvent, place_of
from binder.source.findings import Findings, whole_file
from binder.source.quoting import quoted
from binder.source.text import SourceText


def refuse_marks(
    source: SourceText, event: ScalarEvent | CollectionStartEvent, found: Findings
) -> None:
    """An anchor or a tag before a value; the value itself is read all the same."""
    line, column, *_ = place_of(event)
    if event.anchor is not None:
        message = f"{quoted('&' + event.anchor)} marks a value to be repeated"
        span = source.span(line - 1, column - 1, len(event.anchor) + 1)
        help = "give a shared size a name under `sizes:` and use the name"
        found.add(ANCHOR_OR_ALIAS, span, message, help=help)
    if event.tag is not None:
        message = "`!` before a value asks for a type of its own"
        found.add(TAG_REFUSED, source.span(line - 1, column - 1), message, help="leave it out")


def refuse_alias(source: SourceText, event: AliasEvent, found: Findings) -> None:
    """A repeat of a marked value."""
    name = f"*{event.anchor}"
    line, column, *_ = place_of(event)
    span = source.span(line - 1, column - 1, len(name))
    help = "give a shared size a name under `sizes:`; put quotes round a text with `*` first"
    found.add(ANCHOR_OR_ALIAS, span, f"{quoted(name)} repeats a value", help=help)


def refuse_key_kind(span: Span, found: Findings) -> None:
    """A list, a table or a repeat before a colon."""
    message = "a name should stand before this colon"
    found.add(KEY_NOT_TEXT, span, message, help="write one entry for each name")


def refuse_merge(span: Span, found: Findings) -> None:
    """`<<`, which copies a table."""
    message = "`<<` copies a table, and a spec does not have it"
    found.add(MERGE_KEY, span, message, help="write the entries out")


def refuse_second(key: str, span: Span, first: Span, found: Findings) -> None:
    """A key that its table has already."""
    found.add(
        KEY_WRITTEN_TWICE,
        span,
        f"{quoted(key)} is written twice in one table",
        related=[Labelled(first, "first written here")],
        help="delete one, or give it another name",
    )


def refuse_directive(source: SourceText, found: Findings) -> None:
    """A line `%YAML` or `%TAG` before the spec."""
    number = next((n for n, line in enumerate(source.lines) if line.startswith("%")), 0)
    message = "a line cannot begin with `%`"
    found.add(YAML_DIRECTIVE, source.rest(number), message, help="delete the line")


def refuse_second_document(source: SourceText, line: int, found: Findings) -> None:
    """What follows a line `---`."""
    message = "a second document begins here, and would not be read"
    help = "delete the line `---`"
    found.add(MORE_THAN_ONE_DOCUMENT, source.rest(line), message, help=help)


def refuse_long_text(length: int, span: Span, found: Findings) -> None:
    """A text past the bound; it is cut there."""
    message = f"this text has {length:,} characters, more than {TEXT_CHARACTERS:,}"
    help = "look for a missing quote, or divide the text"
    found.add(TEXT_TOO_LONG, span, message, help=help)


def nothing_in_file(file: str) -> Diagnostic:
    """A file without content."""
    help = "begin with `format: 1`"
    return EMPTY_FILE.at(whole_file(file), "there is nothing in this file", help=help)


def root_of_other_kind(source: SourceText, line: int) -> Diagnostic:
    """A list or a text where the table of sections should be."""
    message = "a spec is a table of sections, and this is not"
    return ROOT_NOT_TABLE.at(source.rest(line), message, help="begin with `format: 1`")


def nested_too_deep(span: Span) -> Diagnostic:
    """A table or list past the bound of depth."""
    message = f"tables and lists are nested more than {DEPTH} deep here"
    return TOO_DEEP.at(span, message, help="look for a bracket too many")


def too_many_values(span: Span) -> Diagnostic:
    """The first key or value past the bound of their number."""
    message = f"the spec has more than {VALUES:,} keys and values"
    return TOO_MANY_VALUES.at(span, message, help="make each large assembly a spec of its own")
