"""A text to the phrases in it, so that words match whole and in any case."""

from __future__ import annotations

import re

LONGEST_PHRASE = 3
_WORD = re.compile(r"[a-z0-9]+")


def phrases(text: str) -> frozenset[str]:
    """Every run of one to three words, and the text as a whole behind a `=`.

    Anything but letters and figures parts words, so `gas_tank` reads as `gas tank`.
    """
    words = _WORD.findall(text.casefold())
    runs = {
        " ".join(words[start : start + length])
        for start in range(len(words))
        for length in range(1, LONGEST_PHRASE + 1)
    }
    return frozenset(runs | {"=" + " ".join(words)})
