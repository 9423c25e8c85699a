"""A text of several pieces to each of them, with faults placed inside the whole text."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from typing import NamedTuple, TypeVar

from pydantic_core import PydanticCustomError

from binder.source import Written
from binder.spec.refusal import Refusal, refusal_error

T = TypeVar("T")


class Piece(NamedTuple):
    """A piece of a text, and how many characters stand before it."""

    start: int
    text: str


def split_at(text: str, separator: str) -> list[Piece]:
    """The pieces between a separator, a regular expression, without the blanks around them."""
    ends = [*(found.span() for found in re.finditer(separator, text)), (len(text), len(text))]
    pieces: list[Piece] = []
    start = 0
    for before, after in ends:
        raw = text[start:before]
        pieces.append(Piece(start + len(raw) - len(raw.lstrip()), raw.strip()))
        start = after
    return pieces


def read_piece(text: Written, piece: Piece, read: Callable[[Written], T]) -> T:
    """Reads one piece as a text of its own; a refusal is moved to its place in the whole."""
    try:
        return read(_placed(text, piece))
    except PydanticCustomError as error:
        refusal: Refusal = (error.context or {})["refusal"]
        length = refusal.length or len(piece.text)
        moved = replace(refusal, start=refusal.start + piece.start, length=length)
        raise refusal_error(moved) from None


def _placed(text: Written, piece: Piece) -> Written:
    if text.span.line != text.span.end_line:
        return Written(piece.text, text.span)
    span = text.span.within(piece.start + text.is_quoted, len(piece.text))
    return Written(piece.text, span)
