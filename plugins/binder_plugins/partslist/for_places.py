"""What something is bought for, to one note: the set-ups of a leaf together, the first few."""

from __future__ import annotations

import re
from collections.abc import Sequence

# More than so many are not read in a cell of a table: common practice, no source.
_MOST = 6
_SET_UP = re.compile(r"(.+), set-up (\d+)")


def for_places(names: Sequence[str]) -> str:
    """`for body, set-ups 2 and 4; saddle on screw`; those past the sixth are counted."""
    setups: dict[str, list[str]] = {}
    for name in names:
        found = _SET_UP.fullmatch(name)
        setups.setdefault(found[1] if found else name, []).extend([found[2]] if found else [])
    told = [_told(name, numbers) for name, numbers in setups.items()]
    more = len(told) - _MOST
    is_cut = more > 1
    named = told[:_MOST] if is_cut else told
    part = "; " if any(setups.values()) else ", "
    return f"for {part.join(named)}{f' and {more} more' if is_cut else ''}"


def _told(name: str, numbers: Sequence[str]) -> str:
    if not numbers:
        return name
    first, last = ", ".join(numbers[:-1]), numbers[-1]
    return f"{name}, set-ups {first} and {last}" if first else f"{name}, set-up {last}"
