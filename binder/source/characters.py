"""Text to the same text with every hidden character found and made visible."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator

from binder.diagnostics import Span
from binder.source.codes.file_codes import HIDDEN_CHARACTER
from binder.source.findings import Findings
from binder.source.quoting import named

REPLACEMENT = "\ufffd"
_ZERO_WIDTH_JOINER = "\u200d"  # joins signs that are seen
_ALLOWED = frozenset("\t\n\r" + _ZERO_WIDTH_JOINER)
_HIDDEN_KINDS = frozenset(("Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"))
_ESCAPE = r"\\(?:x[0-9A-Fa-f]{2}|u[0-9A-Fa-f]{4}|U[0-9A-Fa-f]{8}|[^xuU\r\n])"
_LAST_CHARACTER = 0x10FFFF
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
    pattern = "[" + "".join(map(re.escape, hidden)) + "]"
    for match, line, column in _matches(pattern, text, 1, 1):
        _report(match[0], Span(file, line, column, line, column + 1), found)
    return re.sub(pattern, REPLACEMENT, text)


def cleaned_value(value: str, raw: str, span: Span, found: Findings) -> str:
    """A double-quoted text after its escapes were read, with the same rule as for the file.

    raw: what stands between the marks of `span`, quotes included.
    """
    hidden = hidden_in(value)
    if not hidden:
        return value
    for match, line, column in _matches(_ESCAPE, raw, span.line, span.column):
        character = _meant(match[0])
        if character in hidden:
            place = Span(span.file, line, column, line, column + len(match[0]))
            _report(character, place, found)
    return "".join(REPLACEMENT if mark in hidden else mark for mark in value)


def _matches(
    pattern: str, text: str, line: int, column: int
) -> Iterator[tuple[re.Match[str], int, int]]:
    """Each match with its line and column, for a text that begins at a line and column."""
    line_start = 1 - column
    for match in re.finditer(rf"(\r\n|\r|\n)|{pattern}", text):
        if match[1] is None:
            yield match, line, match.start() - line_start + 1
        else:
            line, line_start = line + 1, match.end()


def _meant(escape: str) -> str:
    if escape[1] in "xuU":
        number = int(f"0x{escape[2:]}", base=0)
        return chr(number) if number <= _LAST_CHARACTER else ""
    short = _SHORT_ESCAPES.get(escape[1])
    return "" if short is None else chr(short)


def _report(character: str, span: Span, found: Findings) -> None:
    if found.is_full:
        found.count_one()
        return
    name = unicodedata.name(character, "a control or unassigned character").lower()
    found.add(
        HIDDEN_CHARACTER,
        span,
        f"a character that cannot be seen stands here: {named(character)}",
        label=name,
        help="delete it and type the text afresh; copying from a web page often brings these in",
    )
