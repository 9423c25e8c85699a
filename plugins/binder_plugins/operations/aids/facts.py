"""The tools of a model as facts: each by its name, with whose it is and where it is used."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from binder.api import Fact


class Whose(StrEnum):
    """Where a tool comes from."""

    OWNED = "owned"
    MADE = "made"
    HAD = "to buy or borrow"


# What stands before the name of what is made, in the id of the piece of work that makes it.
PREFIX = "tool "


@dataclass(frozen=True, slots=True)
class Tool:
    """A tool, fixture or gauge: `uses` are ids of the set-ups' pieces, in order, with titles."""

    name: str
    whose: Whose
    uses: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class ToolsFact(Fact):
    """All tools of the work by name; `by_piece` names those of each piece, in order."""

    tools: tuple[Tool, ...]
    by_piece: dict[str, tuple[str, ...]]
