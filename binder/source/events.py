"""YAML text to the parser's events; the only module that knows the YAML library.

Events alone are used: there is nothing in them that could construct an object or type a
value. libyaml's parser is taken where PyYAML was built with it, else the slow one.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import yaml
from yaml.events import (
    AliasEvent,
    CollectionStartEvent,
    DocumentStartEvent,
    Event,
    MappingEndEvent,
    MappingStartEvent,
    ScalarEvent,
    SequenceEndEvent,
    SequenceStartEvent,
    StreamEndEvent,
)

__all__ = [
    "PARSER_ERRORS",
    "AliasEvent",
    "CollectionStartEvent",
    "DocumentStartEvent",
    "Event",
    "MappingEndEvent",
    "MappingStartEvent",
    "ScalarEvent",
    "SequenceEndEvent",
    "SequenceStartEvent",
    "StreamEndEvent",
    "SyntaxFault",
    "fault_of",
    "open_events",
    "place_of",
    "raw_text",
]

# The parser in Python lets a ValueError out for an escape past Unicode's end.
PARSER_ERRORS = (yaml.YAMLError, ValueError)


@dataclass(frozen=True, slots=True)
class SyntaxFault:
    """What stopped the parser, in its own words; lines and columns count from 0.

    since: where the thing began that it was reading, if it says so.
    """

    problem: str
    context: str
    line: int
    column: int
    since: tuple[int, int] | None


def open_events(text: str) -> Callable[[], Event | None]:
    """A function that gives the next event each time, and raises one of PARSER_ERRORS."""
    has_libyaml = bool(getattr(yaml, "__with_libyaml__", False))
    parser = yaml.CBaseLoader(text) if has_libyaml else yaml.BaseLoader(text)
    return parser.get_event


def place_of(event: Event) -> tuple[int, int, int, int]:
    """Line and column where an event begins and where it ends, counted from 1."""
    start, end = event.start_mark, event.end_mark
    if start is None or end is None:
        raise TypeError("an event of the parser always has its marks")
    return start.line + 1, start.column + 1, end.line + 1, end.column + 1


def raw_text(text: str, event: Event) -> str:
    """What stands in the text between the marks of an event, quotes included."""
    start, end = event.start_mark, event.end_mark
    return text[start.index : end.index] if start and end else ""


def fault_of(error: Exception) -> SyntaxFault:
    """The parser's exception as a value."""
    if not isinstance(error, yaml.MarkedYAMLError) or error.problem_mark is None:
        return SyntaxFault(str(error), "", 0, 0, None)
    since = error.context_mark and (error.context_mark.line, error.context_mark.column)
    mark = error.problem_mark
    return SyntaxFault(
        error.problem or "", error.context or "", mark.line, mark.column, since or None
    )
