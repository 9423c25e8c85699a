"""Names that look like a mistyped one."""

from __future__ import annotations

from collections.abc import Iterable
from difflib import get_close_matches


def nearest_name(name: str, known: Iterable[str]) -> str:
    """The known name most like the given one, or ''."""
    found = get_close_matches(name[:60], sorted(known), n=1, cutoff=0.6)
    return found[0] if found else ""


def did_you_mean(name: str, known: Iterable[str]) -> str:
    """`did you mean 'x'?`, or '' where nothing is near."""
    near = nearest_name(name, known)
    return f"did you mean '{near}'?" if near else ""
