"""The bytes of a file to its text."""

from __future__ import annotations

import codecs
import re

from binder.diagnostics import Diagnostic, Span
from binder.source.codes.file_codes import NOT_UTF_8, UTF_16
from binder.source.findings import whole_file

_SAVE_AGAIN = "save the file as UTF-8 (plain, with or without a mark at its start)"
_UTF_16_MARKS = (codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)


def decode(data: bytes, file: str) -> str | Diagnostic:
    """The text, without a byte order mark, or why it cannot be had."""
    if data.startswith(_UTF_16_MARKS) or _has_utf_16_zeros(data):
        message = "the file is written in UTF-16, two bytes to a character"
        return UTF_16.at(whole_file(file), message, help=_SAVE_AGAIN)
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        return _at_first_bad_byte(data.removeprefix(codecs.BOM_UTF8), file, error.reason)


def _has_utf_16_zeros(data: bytes) -> bool:
    """Whether every second byte at the start is zero, as in UTF-16 without its mark."""
    start = data[:8]
    return len(start) >= 4 and (not any(start[1::2]) or not any(start[::2]))


def _at_first_bad_byte(data: bytes, file: str, reason: str) -> Diagnostic:
    good = _good_start(data)
    lines = re.split(r"\r\n|\r|\n", good.decode("utf-8"))
    line, column = len(lines), len(lines[-1]) + 1
    byte = data[len(good) : len(good) + 1]
    likely = byte.decode("cp1252", "replace")
    return NOT_UTF_8.at(
        Span(file, line, column, line, column + 1),
        f"byte {byte.hex().upper()} is no UTF-8",
        label=f"`{likely}` in an older Windows encoding" if likely.isprintable() else reason,
        help=_SAVE_AGAIN,
    )


def _good_start(data: bytes) -> bytes:
    try:
        data.decode("utf-8")
    except UnicodeDecodeError as error:
        return data[: error.start]
    return data
