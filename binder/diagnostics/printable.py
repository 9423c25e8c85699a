"""Text of a stranger to text that a terminal may show."""

from __future__ import annotations

import unicodedata

_HIDDEN = frozenset(("Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"))
MOST_LETTERS = 400


def printable(text: str, most: int = MOST_LETTERS) -> str:
    """The text with control, bidirectional and invisible characters escaped, cut at `most`."""
    shown = "".join(_shown(letter) for letter in text[: most + 1])
    return shown if len(text) <= most else shown[:most] + "..."


def _shown(letter: str) -> str:
    if unicodedata.category(letter) in _HIDDEN:
        return f"\\u{ord(letter):04x}"
    return letter
