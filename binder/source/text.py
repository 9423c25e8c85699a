"""One file's text with its lines, and the spans within it."""

from __future__ import annotations

from dataclasses import dataclass, field

from binder.diagnostics import Span


@dataclass(frozen=True, slots=True)
class SourceText:
    """A file's text, free of hidden characters.

    Lines and columns are counted from 0, as in YAML's marks; in spans from 1.
    """

    file: str
    text: str
    lines: tuple[str, ...] = field(init=False, repr=False)

    def __post_init__(self) -> None:
        unix = self.text.replace("\r\n", "\n").replace("\r", "\n")
        object.__setattr__(self, "lines", tuple(unix.split("\n")))

    def line(self, number: int) -> str:
        """The line, or nothing past the end."""
        return self.lines[number] if 0 <= number < len(self.lines) else ""

    def span(self, line: int, column: int, length: int = 1) -> Span:
        """A place within one line, at least one character wide."""
        end = column + max(1, length)
        return Span(self.file, line + 1, column + 1, line + 1, end + 1)

    def rest(self, line: int, column: int = 0) -> Span:
        """From a column, or the first character after it, to the end of what is written there."""
        text = self.line(line)
        start = column + len(text[column:]) - len(text[column:].lstrip())
        return self.span(line, min(start, len(text)), len(text.rstrip()) - start)

    def line_before(self, line: int) -> int:
        """The nearest line above that holds more than a comment, or -1."""
        line -= 1
        while line >= 0 and self.line(line).lstrip()[:1] in ("", "#"):
            line -= 1
        return line


def indent_of(line: str) -> int:
    """How many spaces a line begins with."""
    return len(line) - len(line.lstrip(" "))
