"""What is wrong with an expression, as an exception on its way to become a finding."""

from __future__ import annotations

from binder.diagnostics import Code

MOST_QUOTED = 40


class ExpressionFault(Exception):
    """A code, its headline and help, and which characters of the text are meant.

    Raised inside this package and by `parse` and `evaluate`; whoever knows the place of
    the text makes the finding.
    """

    def __init__(self, code: Code, message: str, start: int, length: int, help: str = "") -> None:
        super().__init__(message)
        self.code = code
        self.message = message
        self.start = start
        self.length = length
        self.help = help


def quoted(text: str) -> str:
    """A stranger's text for a message: cut short, invisible characters spelt out."""
    cut = text if len(text) <= MOST_QUOTED else f"{text[: MOST_QUOTED - 1]}\u2026"
    return "".join(char if char.isprintable() else f"\\u{ord(char):04x}" for char in cut)
