"""Answers as text that can be kept, and back again; nothing but answers can be read."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import fields, is_dataclass
from typing import TypeAlias

from .jobs import Answer, Crowded, Drawn, Pictured, Refused
from .solid import Clash, Solid
from .views import CutFace, Edge, FreeLine, RoundLine, StraightLine, View

_KINDS: dict[str, Callable[..., object]] = {
    f"!{kind.__name__}": kind
    for kind in (
        Drawn,
        Refused,
        Solid,
        View,
        Edge,
        StraightLine,
        RoundLine,
        FreeLine,
        CutFace,
        Pictured,
        Crowded,
        Clash,
    )
}
Plain: TypeAlias = "str | int | float | list[Plain] | None"


def packed(outcome: Answer) -> str:
    """Writes an answer as text."""
    return json.dumps(_plain(outcome), separators=(",", ":"), allow_nan=False)


def unpacked(text: str) -> Answer:
    """Reads an answer; raises ValueError for what is none."""
    try:
        outcome = _rich(json.loads(text))
    except (TypeError, KeyError, RecursionError) as fault:
        raise ValueError("no kept answer") from fault
    if isinstance(outcome, (Drawn, Refused, Pictured, Crowded)):
        return outcome
    raise ValueError("no kept answer")


def _plain(value: object) -> Plain:
    if isinstance(value, (str, int, float)) or value is None:
        return value
    if isinstance(value, tuple):
        return [_plain(item) for item in value]
    if is_dataclass(value):
        own = [_plain(getattr(value, field.name)) for field in fields(value)]
        return [f"!{type(value).__name__}", *own]
    raise TypeError(f"an answer holds no {type(value).__name__}")


def _rich(value: Plain) -> object:
    if not isinstance(value, list):
        return value
    if value and isinstance(value[0], str):
        return _KINDS[value[0]](*(_rich(item) for item in value[1:]))
    return tuple(_rich(item) for item in value)
