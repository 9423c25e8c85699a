"""The sizes of a tool that is made, out of the words that name it: `lining rod ⌀7 mm × 40 mm`."""

from __future__ import annotations

import re
from dataclasses import dataclass

from binder.api import parse_size

_SIZE = r"\d[\d./]*(?: mm| in)"
_WORDS = re.compile(rf"⌀({_SIZE}) × ({_SIZE})$")


@dataclass(frozen=True, slots=True)
class Worded:
    """A diameter and a length in mm."""

    across: float
    long: float


def worded(words: str) -> Worded | None:
    """Both sizes; None where the words tell none."""
    found = _WORDS.search(words)
    if found is None:
        return None
    across, long = (float(parse_size(one).amount) for one in found.groups())
    return Worded(across, long)
