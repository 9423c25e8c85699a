"""What stopped the YAML parser to one finding in the words of the trade, at its true place."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace

from binder.diagnostics import Diagnostic, Span
from binder.source import block_faults, flow_faults
from binder.source.codes.refused_codes import ANCHOR_OR_ALIAS, TAG_REFUSED, YAML_DIRECTIVE
from binder.source.codes.syntax_codes import (
    BLOCK_TEXT_MARK,
    CHARACTER_STARTS_NOTHING,
    DASH_AFTER_KEY,
    ESCAPE_UNKNOWN,
    NOT_YAML,
    QUOTE_NOT_CLOSED,
    TAB_IN_INDENT,
)
from binder.source.events import SyntaxFault
from binder.source.quoting import quoted as shown
from binder.source.refusals import nested_too_deep
from binder.source.spacing import no_space_after_colon
from binder.source.text import SourceText

_ESCAPE = re.compile(r"\\(?:[xuU][0-9A-Fa-f]*|.?)")
_PAST_UNICODE = re.compile(r"\\U(?!000|0010)[0-9A-Fa-f]{8}")

_Explain = Callable[[SourceText, SyntaxFault, Span | None], Diagnostic]


def explain(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    """The finding for a fault; `quoted` is the place of the last quoted text before it."""
    said = f"{fault.context}: {fault.problem}"
    for fragments, rule in _RULES:
        if any(fragment in said for fragment in fragments):
            return rule(source, fault, quoted)
    return _unknown(source, fault, quoted)


def _unknown(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    return NOT_YAML.at(
        source.rest(fault.line, fault.column),
        "the spec cannot be read from here on",
        notes=[f"the YAML parser says: {shown(fault.problem)}"],
        help="compare with the lines around it; quotes round a value help most often",
    )


def _start(source: SourceText, fault: SyntaxFault) -> Span:
    line, column = fault.since or (fault.line, fault.column)
    return source.span(line, column)


def _no_token(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    text = source.line(fault.line)
    indent = text[: len(text) - len(text.lstrip())]
    if "\t" in indent or text[fault.column : fault.column + 1] == "\t":
        column = indent.find("\t") if "\t" in indent else fault.column
        message = "a tab stands where only spaces may"
        span = source.span(fault.line, column)
        return TAB_IN_INDENT.at(span, message, help="use spaces, two for each step")
    return _cannot_begin(source, fault, quoted)


def _cannot_begin(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    character = source.line(fault.line)[fault.column : fault.column + 1]
    return CHARACTER_STARTS_NOTHING.at(
        source.span(fault.line, fault.column),
        f"no value can begin with {shown(character)}",
        help="put quotes round the whole value, or leave the character out",
    )


def _open_quote(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    message = "the quote that opens here is never closed"
    help = "close it at the end of the value; inches need no quotes: `1/4 in`"
    return QUOTE_NOT_CLOSED.at(_start(source, fault), message, help=help)


def _escape(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    text = source.line(fault.line)
    column = max(0, text.rfind("\\", 0, fault.column + 1))
    match = _ESCAPE.match(text, column)
    return _unknown_escape(source.span(fault.line, column, len(match[0]) if match else 1))


def _escape_past_unicode(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    for number, text in enumerate(source.lines):
        match = _PAST_UNICODE.search(text)
        if match:
            return _unknown_escape(source.span(number, match.start(), len(match[0])))
    return _unknown(source, fault, quoted)


def _unknown_escape(span: Span) -> Diagnostic:
    return ESCAPE_UNKNOWN.at(
        span,
        "after this backslash there is no code for a character",
        help="use single quotes, in which a backslash is only itself",
    )


def _dash(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    message = "a list cannot begin on the line of its key"
    help = "begin it on the next line, or write it in square brackets"
    return DASH_AFTER_KEY.at(source.span(fault.line, fault.column), message, help=help)


def _block_text(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    start = _start(source, fault)
    mark = source.line(start.line - 1)[start.column - 1 :][:1]
    message = f"after {shown(mark)} the text must begin on the next line"
    help = "put quotes round a value that begins with `|` or `>`"
    return BLOCK_TEXT_MARK.at(start, message, help=help)


def _anchor(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    message = "a value cannot begin with `&` or `*`"
    help = "put quotes round the value; shared sizes have names under `sizes:`"
    return ANCHOR_OR_ALIAS.at(_start(source, fault), message, help=help)


def _tag(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    message = "a value cannot begin with `!`"
    return TAG_REFUSED.at(_start(source, fault), message, help="put quotes round the value")


def _directive(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    line = fault.since[0] if fault.since else fault.line
    message = "a line cannot begin with `%`"
    return YAML_DIRECTIVE.at(source.rest(line), message, help="delete the line")


def _colon(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    return block_faults.unexpected_colon(source, fault)


def _no_colon(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    line, column = fault.since or (fault.line, fault.column)
    return block_faults.missing_colon(source, line, column)


def _after_the_end(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    for number, text in enumerate(source.lines[: fault.line + 1]):
        if text.startswith("%"):
            return _directive(source, replace(fault, since=(number, 0)), quoted)
    return block_faults.after_the_end(source, fault, quoted)


def _too_deep(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    return nested_too_deep(source.span(fault.line, fault.column))


def _colon_at_bracket(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    """`{length:[1 mm]}` or `{length:}`."""
    return no_space_after_colon(source.span(fault.line, fault.column))


def _nothing(source: SourceText, fault: SyntaxFault, quoted: Span | None) -> Diagnostic:
    return flow_faults.nothing_there(source, fault)


# Fragments of the wording of libyaml and of PyYAML's own parser; the first that fits rules.
_RULES: tuple[tuple[tuple[str, ...], _Explain], ...] = (
    (("a directive", "YAML document", "%YAML directive", "%TAG directive"), _directive),
    (("an anchor", "an alias"), _anchor),
    (("a tag:", "tag handle", "tag suffix", "a tag "), _tag),
    (("tab character", "cannot start any token"), _no_token),
    (("escape", "hexdecimal number"), _escape),
    (("chr() arg",), _escape_past_unicode),
    (("a block scalar",), _block_text),
    (("unexpected end of stream", "unexpected document"), _open_quote),
    (("maximum nesting depth",), _too_deep),
    (("found unexpected ':'",), _colon_at_bracket),
    (("mapping values are not allowed",), _colon),
    (("could not find expected ':'",), _no_colon),
    (("sequence entries are not allowed",), _dash),
    (("mapping keys are not allowed",), _cannot_begin),
    (("expected ',' or",), flow_faults.missing_comma),
    (("node content",), _nothing),
    (("document start",), _after_the_end),
    (("expected key", "'-' indicator", "<block end>"), block_faults.unexpected_text),
)
