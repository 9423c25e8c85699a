"""Bounds on what one spec may hold."""

from __future__ import annotations

from binder.diagnostics import Code, Severity
from binder.source import bounds

TOO_DEEP = Code(
    "too-deep",
    Severity.ERROR,
    meaning=f"Tables and lists are nested more than {bounds.DEPTH} deep.",
    bench="No description of a part needs this; it is a slip, or meant to hold up the computer.",
    example="a: [[[[[[ ... ]]]]]]",
    remedy="Look for a bracket too many at the place shown.",
)
TOO_MANY_VALUES = Code(
    "too-many-values",
    Severity.ERROR,
    meaning=f"The spec with its includes has more than {bounds.VALUES:,} keys and values.",
    bench="A machine of a thousand parts has a fifth of that; a binder so thick helps nobody.",
    example="parts: {p1: {}, p2: {}, ... }",
    remedy="Make each large assembly a spec of its own.",
)
TEXT_TOO_LONG = Code(
    "text-too-long",
    Severity.ERROR,
    meaning=f"One text has more than {bounds.TEXT_CHARACTERS:,} characters.",
    bench="It would fill pages between the steps; more often a closing quote is missing.",
    example='note: "first the bush ...           # and no second quote for many pages',
    remedy="Check the quotes, or divide the text into several notes.",
)
FINDINGS_LEFT_OUT = Code(
    "findings-left-out",
    Severity.ADVICE,
    meaning=f"Only the first {bounds.FINDINGS} findings are shown.",
    bench="One slip near the top of a spec can cause most of those that follow.",
    example="(a drawing opened as if it were a spec)",
    remedy="Mend the first few and run again.",
)
