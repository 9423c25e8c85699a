"""Output on any terminal: signs that its encoding lacks are written in plain letters."""

from __future__ import annotations

import codecs
import io
import os
import sys

_PLAIN = {
    "→": "->",
    "←": "<-",
    "…": "...",
    "⌀": "dia. ",
    "×": "x",
    "÷": "/",
    "−": "-",
    "≤": "<=",
    "≥": ">=",
    "½": "1/2",
    "¼": "1/4",
    "¾": "3/4",
    "³": "3",
    "²": "2",
    "°": " deg",
    "µ": "u",
    "±": "+-",
    "≈": "about ",
    "√": "root of ",
}


def prepare_streams() -> None:
    """Makes stdout and stderr print every text, if need be in plainer signs."""
    codecs.register_error("plainer", _plainer)
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="plainer")


def _plainer(error: UnicodeError) -> tuple[str, int]:
    if not isinstance(error, UnicodeEncodeError):
        raise error
    wrong = error.object[error.start : error.end]
    return "".join(_PLAIN.get(sign, "?") for sign in wrong), error.end


def is_coloured() -> bool:
    """Whether findings may be coloured: a terminal, and NO_COLOR not set."""
    return not os.environ.get("NO_COLOR") and sys.stderr.isatty()
