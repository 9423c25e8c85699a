"""The words of a question at the bench, and the refusal of those that cannot be read."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import (
    LENGTH,
    NOWHERE,
    Diagnostic,
    ExpressionFault,
    parse_size,
)
from binder_plugins.fasteners import codes
from binder_trade.explained import NotDefined
from binder_trade.fastening import quoted

_LONGEST = 200


def one_line(words: Sequence[str]) -> str:
    """All words as one line; raises NotDefined for a line of more than 200 characters."""
    line = " ".join(" ".join(words).replace(",", " ").split())
    if len(line) > _LONGEST:
        raise NotDefined(f"{quoted(line)} is longer than {_LONGEST} characters", "ask in fewer")
    return line


def length_mm(text: str) -> float:
    """A length that was typed, in mm; raises NotDefined."""
    try:
        quantity = parse_size(text)
    except ExpressionFault as fault:
        raise NotDefined(fault.message, fault.help or "write it as 12 mm or 1/2 in") from fault
    if quantity.dimension != LENGTH or quantity.amount <= 0:
        raise NotDefined(
            f"{quoted(text)} is no length above nothing", "write it as 12 mm or 1/2 in"
        )
    return float(quantity.amount)


def refused(reason: str, way_out: str) -> Diagnostic:
    """The finding for a question that has no answer."""
    return codes.HARDWARE_WORDS_UNREADABLE.at(NOWHERE, reason, help=way_out)
