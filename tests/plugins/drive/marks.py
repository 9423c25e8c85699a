"""A spec with ⟪ ⟫ round what a finding must point at, to the spec and its place."""

from __future__ import annotations


def marked(text: str) -> tuple[str, tuple[int, int, int]]:
    """The spec without its marks, and line, column and end column between them."""
    start = text.index("⟪")
    plain = text.replace("⟪", "")
    end = plain.index("⟫")
    line, column = _place(plain, start)
    return plain.replace("⟫", ""), (line, column, _place(plain, end)[1])


def _place(text: str, offset: int) -> tuple[int, int]:
    before = text[:offset]
    return before.count("\n") + 1, offset - before.rfind("\n")
