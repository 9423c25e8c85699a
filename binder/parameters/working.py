"""A computation that explains itself."""

from __future__ import annotations

from dataclasses import dataclass

from binder.diagnostics import NOWHERE, Span


@dataclass(frozen=True, slots=True)
class Given:
    """One thing that a working starts from: its name, its value as printed, and its place.

    `working` is the id of the working that it came from, '' where it was simply written.
    """

    name: str
    value: str
    span: Span = NOWHERE
    working: str = ""


@dataclass(frozen=True, slots=True)
class Working:
    """From what was given, by a formula, to a result, with the rule behind it.

    `id` is what `binder why SPEC NAME` takes; `because` is at most ten words for the
    page; `source` is the standard or handbook, or `common practice, no source`.
    """

    id: str
    title: str
    given: tuple[Given, ...]
    formula: str
    result: str
    because: str = ""
    source: str = ""
    span: Span = NOWHERE
