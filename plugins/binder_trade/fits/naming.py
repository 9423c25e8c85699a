"""A name as a maker writes it to a row of a table, or to what he may have meant."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from difflib import get_close_matches
from typing import Any

_LONGEST = 60


def plain(text: str) -> str:
    """A name in lower case with single blanks, cut where it runs on."""
    return " ".join(text[: 4 * _LONGEST].lower().replace("_", " ").split())[:_LONGEST]


def way_out(asked: str, words: Iterable[str], listed: Iterable[str]) -> str:
    """What would serve instead of a name that is not known: near words, then the list."""
    near = get_close_matches(plain(asked), list(words), n=2)
    meant = f"did you mean {' or '.join(near)}? " if near else ""
    return f"{meant}known are {', '.join(listed)}"


def cited(row: Mapping[str, Any]) -> str:
    """The source of a row, with the words that a figure nobody looked up must carry."""
    source = str(row["source"])
    return source if row["status"] == "verified" else f"{source} (from memory)"
