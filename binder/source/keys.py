"""The name before a colon to a finding, where it is not made of plain words."""

from __future__ import annotations

import re

from binder.diagnostics import Diagnostic, Span
from binder.source.bounds import KEY_CHARACTERS
from binder.source.characters import REPLACEMENT
from binder.source.codes.key_codes import KEY_NOT_PLAIN_WORDS, KEY_TOO_LONG
from binder.source.codes.trap_codes import DASH_WITHOUT_SPACE
from binder.source.findings import Findings
from binder.source.quoting import named, quoted

_WORD = "[A-Za-z][A-Za-z0-9_-]*"
_PLAIN_WORDS = re.compile(f"{_WORD}(?: {_WORD})*")
_DASHED = re.compile(f"-{_WORD}")


def is_plain_words(key: str) -> bool:
    """Whether a name is short ASCII words, each with a letter first, one space between."""
    return len(key) <= KEY_CHARACTERS and _PLAIN_WORDS.fullmatch(key) is not None


def report_key(key: str, span: Span, found: Findings) -> None:
    """Say what is wrong with a name that is not plain words."""
    if REPLACEMENT in key:
        return  # the hidden character was reported already
    if len(key) > KEY_CHARACTERS:
        message = f"a name of {len(key):,} characters stands before this colon"
        help = f"a name has at most {KEY_CHARACTERS} characters; text with a colon needs quotes"
        found.add(KEY_TOO_LONG, span, message, help=help)
    elif _DASHED.fullmatch(key):
        message = f"there is no space after the dash of {quoted(key)}"
        help = f"write `- {key[1:]}:` for an item of a list"
        found.add(DASH_WITHOUT_SPACE, span, message, help=help)
    elif not key:
        found.take(no_name(span.within(0, 1)))
    else:
        help = "use letters a to z, digits, `-` and `_`; each word begins with a letter"
        message = f"{quoted(key)} is not made of plain words"
        found.add(KEY_NOT_PLAIN_WORDS, span, message, label=_why(key), help=help)


def no_name(span: Span) -> Diagnostic:
    """The finding for a colon with nothing before it."""
    message = "there is no name before this colon"
    return KEY_NOT_PLAIN_WORDS.at(span, message, help="write a name before the colon")


def _why(key: str) -> str:
    odd = next(
        (mark for mark in key if not (mark.isascii() and (mark.isalnum() or mark in " -_"))), ""
    )
    if odd and not odd.isascii():
        return f"`{odd}` is {named(odd)}, not a plain letter"
    if odd:
        return f"`{odd}` may not stand in a name"
    if "  " in key or key != key.strip():
        return "one space, and only between words"
    return "a word begins with something other than a letter"
