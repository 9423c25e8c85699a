"""Text to the same text with every hidden character found and made visible."""

from __future__ import annotations

import re
import unicodedata

from binder.diagnostics import Span
from binder.source.codes.file_codes import HIDDEN_CHARACTER
from binder.source.findings import Findings
from binder.source.quoting import named

REPLACEMENT = "\ufffd"
_ZERO_WIDTH_JOINER = "\u200d"  # joins signs that are seen
_ALLOWED = frozenset("\t\n\r" + _ZERO_WIDTH_JOINER)
_HIDDEN_KINDS = frozenset(("Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"))
_WRITTEN_ESCAPE = re.compile(
    r"\\(?:x[0-9A-Fa-f]{2}|u[0-9A-Fa-f]{4}|U[0-9A-Fa-f]{8}|[^xuU])", re.DOTALL
)
_SHORT_ESCAPES = {"0": 0x00, "a": 0x07, "b": 0x08, "v": 0x0B, "f": 0x0C, "e": 0x1B} | {
    "N": 0x85,
    "L": 0x2028,
    "P": 0x2029,
}


def is_hidden(character: str) -> bool:
    """Whether a character steers, hides or means nothing (Unicode's Cc, Cf, Cs, Co, Cn, Zl, Zp).

    Tab, line ends and the zero-width joiner are let through. Source: Unicode Standard,
    table of general category values.
    """
    return character not in _ALLOWED and unicodedata.category(character) in _HIDDEN_KINDS


def hidden_in(text: str) -> frozenset[str]:
    """The hidden characters of a text, each once."""
    if text.isprintable():
        return frozenset()
    return frozenset(mark for mark in set(text) if is_hidden(mark))


def cleaned(text: str, file: str, found: Findings) -> str:
    """The text with each hidden character reported, and replaced so that columns stay."""
    hidden = hidden_in(text)
    if not hidden:
        return text
    pattern = re.compile("[" + "".join(map(re.escape, hidden)) + "]")
    line_start, line = 0, 1
    for match in re.finditer(r"\r\n|\r|\n|" + pattern.pattern, text):
        if match[0] in ("\r\n", "\r", "\n"):
            line_start, line = match.end(), line + 1
        else:
            column = match.start() - line_start + 1
            _report(match[0], Span(file, line, column, line, column + 1), found)
    return pattern.sub(REPLACEMENT, text)


def cleaned_value(value: str, raw: str, span: Span, found: Findings) -> str:
    """A double-quoted text after its escapes were read, with the same rule as for the file.

    raw: what stands between the marks of `span`, quotes included.
    """
    hidden = hidden_in(value)
    if not hidden:
        return value
    for match in _WRITTEN_ESCAPE.finditer(raw):
        character = _meant(match[0])
        if character in hidden:
            _report(character, _place(raw, match, span), found)
    return "".join(REPLACEMENT if mark in hidden else mark for mark in value)


def _meant(escape: str) -> str:
    if escape[1] in "xuU":
        number = int(escape[2:], 16)
        return chr(number) if number <= 0x10FFFF else ""
    short = _SHORT_ESCAPES.get(escape[1])
    return "" if short is None else chr(short)


def _place(raw: str, match: re.Match[str], span: Span) -> Span:
    before = re.split(r"\r\n|\r|\n", raw[: match.start()])
    line = span.line + len(before) - 1
    column = len(before[-1]) + (span.column if len(before) == 1 else 1)
    return Span(span.file, line, column, line, column + len(match[0]))


def _report(character: str, span: Span, found: Findings) -> None:
    name = unicodedata.name(character, "a control or unassigned character").lower()
    found.add(
        HIDDEN_CHARACTER,
        span,
        f"a character that cannot be seen stands here: {named(character)}",
        label=name,
        help="delete it and type the text afresh; copying from a web page often brings these in",
    )
