"""Turns a maker's words that cannot be read into a reason and a way out."""

from __future__ import annotations

from binder_trade.explained import NotDefined

_QUOTED = 40


class Unreadable(NotDefined):
    """A maker's words that are no fastener or no pattern."""


class NotAFastener(Unreadable):
    """Words that name no kind of fastener at all."""


def quoted(text: str) -> str:
    """A stranger's text, safe in a message: printable, and cut at 40 characters."""
    plain = "".join(letter if letter.isprintable() else "?" for letter in text[: _QUOTED + 1])
    return f"'{plain}'" if len(plain) <= _QUOTED else f"'{plain[:_QUOTED]}...'"
