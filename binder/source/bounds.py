"""How much a spec may hold: it is a stranger's file, so every size has an end."""

from __future__ import annotations

FILE_BYTES = 1_000_000
INCLUDES = 20
ALL_BYTES = 4_000_000
DEPTH = 40
VALUES = 200_000  # a spec of 1,600 parts has about 60,000
TEXT_CHARACTERS = 8_000
KEY_CHARACTERS = 60
FINDINGS = 100
SHOWN_CHARACTERS = 60


def megabytes(size: int) -> str:
    """A number of bytes as a reader says it: `1 MB`."""
    return f"{size / 1_000_000:.3g} MB"
