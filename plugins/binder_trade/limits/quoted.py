"""What somebody wrote to the words by which a refusal names it."""

from __future__ import annotations

_SHOWN = 24


def shown(text: str) -> str:
    """What was written, in quotes and cut short where it runs on."""
    return f"'{text}'" if len(text) <= _SHOWN else f"'{text[:_SHOWN]}…'"
