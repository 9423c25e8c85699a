"""Turns what cannot be read, or cannot be worked out, into a reason and a way out."""

from __future__ import annotations

import math

_QUOTED = 40


class FasteningFault(ValueError):
    """What the trade cannot answer: `reason` is one plain sentence, `way_out` what would serve."""

    def __init__(self, reason: str, way_out: str) -> None:
        super().__init__(f"{reason}; {way_out}")
        self.reason = reason
        self.way_out = way_out


class Unreadable(FasteningFault):
    """A maker's words that are no fastener or no pattern."""


class NotAFastener(Unreadable):
    """Words that name no kind of fastener at all."""


class NotDefined(FasteningFault):
    """A sum whose figures make no sense, or that no rule covers."""


def positive(value: float, what: str) -> float:
    """The value, where it is a size above nothing; raises NotDefined."""
    if not math.isfinite(value) or value <= 0:
        raise NotDefined(f"{what} of {value:g} is no size", "give a size above nothing")
    return value


def not_negative(value: float, what: str) -> float:
    """The value, where it is nothing or a size; raises NotDefined."""
    if not math.isfinite(value) or value < 0:
        raise NotDefined(f"{what} of {value:g} is no size", "give nothing or a size above it")
    return value


def quoted(text: str) -> str:
    """A stranger's text, safe in a message: printable, and cut at 40 characters."""
    plain = "".join(letter if letter.isprintable() else "?" for letter in text[: _QUOTED + 1])
    return f"'{plain}'" if len(plain) <= _QUOTED else f"'{plain[:_QUOTED]}...'"
