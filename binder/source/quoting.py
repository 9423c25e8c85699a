"""A stranger's text to what may stand inside a message: short, and with nothing hidden."""

from __future__ import annotations

from binder.source.bounds import SHOWN_CHARACTERS


def quoted(text: str) -> str:
    """The text between backticks, or quotes if it holds one, cut at 60 characters.

    What cannot be printed is shown by its number.
    """
    cut = text[:SHOWN_CHARACTERS]
    shown = "".join(mark if mark.isprintable() else named(mark) for mark in cut)
    mark = '"' if "`" in shown else "`"
    return f"{mark}{shown}{'…' if len(text) > len(cut) else ''}{mark}"


def named(character: str) -> str:
    """A character by its number: `<U+202E>`."""
    return f"<U+{ord(character):04X}>"
