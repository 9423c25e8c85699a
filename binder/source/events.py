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


def fault_of(error: Exception) -> SyntaxFault:
    """The parser's exception as a value."""
    if not isinstance(error, yaml.MarkedYAMLError) or error.problem_mark is None:
        return SyntaxFault(str(error), "", 0, 0, None)
    since = error.context_mark and (error.context_mark.line, error.context_mark.column)
    mark = error.problem_mark
    return SyntaxFault(
        error.problem or "", error.context or "", mark.line, mark.column, since or None
    )
