"""A place in a source file."""

from __future__ import annotations

from typing import NamedTuple


class Span(NamedTuple):
    """From (line, column) up to but without (end_line, end_column), counted from 1.

    `file` is the path as the user gave it, or a name in angle brackets for what is no
    file, such as `<command line>`; line 0 means the file as a whole.
    """

    file: str
    line: int
    column: int
    end_line: int
    end_column: int

    def within(self, start: int, length: int) -> Span:
        """The part of a one-line span that begins `start` characters in."""
        column = self.column + start
        return Span(self.file, self.line, column, self.line, column + max(1, length))

    def covers(self, other: Span) -> bool:
        """Whether the other span begins inside this one."""
        start = (self.line, self.column)
        end = (self.end_line, self.end_column)
        return self.file == other.file and start <= (other.line, other.column) < end

    def __str__(self) -> str:
        return f"{self.file}:{self.line}:{self.column}" if self.line else self.file


NOWHERE = Span("<model>", 0, 0, 0, 0)
