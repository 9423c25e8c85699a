"""A mistyped name to the known one that it most looks like."""

from __future__ import annotations

from collections.abc import Iterable
from difflib import get_close_matches

_MOST_CANDIDATES = 400
_MOST_LETTERS = 40
_LIKENESS = 0.6


def did_you_mean(name: str, known: Iterable[str]) -> str:
    """`did you mean 'x'?`, or '' where nothing is near; bounded work however many are known."""
    typed = name[:_MOST_LETTERS]
    near = {one.casefold(): one for one in _of_like_length(typed, known)}
    found = get_close_matches(typed.casefold(), list(near), n=1, cutoff=_LIKENESS)
    return f"did you mean '{near[found[0]]}'?" if found else ""


def _of_like_length(name: str, known: Iterable[str]) -> list[str]:
    letters = len(name)
    alike = [one for one in known if abs(len(one) - letters) <= max(2, letters // 2)]
    if len(alike) > _MOST_CANDIDATES:
        alike = [one for one in alike if one[:1].casefold() == name[:1].casefold()]
    return sorted(alike)[:_MOST_CANDIDATES]
