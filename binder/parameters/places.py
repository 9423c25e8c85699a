"""Characters of a written text to their place in its file."""

from __future__ import annotations

from binder.diagnostics import Diagnostic, Span
from binder.parameters.faults import ExpressionFault
from binder.source.tree import Written


def place_of(text: Written, start: int, length: int) -> Span:
    """Where some characters stand; the whole value for none, or where it is folded or escaped."""
    span = text.span
    quotes = 1 if text.is_quoted else 0
    is_plain = span.end_column - span.column == len(text) + 2 * quotes
    if span.line != span.end_line or not is_plain or not length:
        return span
    return span.within(start + quotes, length)


def finding_of(fault: ExpressionFault, text: Written) -> Diagnostic:
    """The finding that a fault of a written text stands for."""
    span = place_of(text, fault.start, fault.length)
    return fault.code.at(span, fault.message, help=fault.help)
