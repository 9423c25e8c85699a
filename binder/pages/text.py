"""Runs of text inside a paragraph or a cell."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Strong:
    """Words that must be seen first."""

    text: str


@dataclass(frozen=True, slots=True)
class Code:
    """Words of the spec or of a command, as they are typed."""

    text: str


@dataclass(frozen=True, slots=True)
class Link:
    """A reference to a section of the same binder by its `id`."""

    text: str
    target: str


@dataclass(frozen=True, slots=True)
class Reckoned:
    """A figure that explains itself.

    `why` is at most ten words and is printed beside the figure; `steps` is the whole
    chain from the spec's lines to the number, folded out where the medium can fold.
    """

    text: str
    why: str = ""
    steps: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Blank:
    """A place to write a measured figure by hand; `key` names it for the tablet."""

    key: str
    unit: str = "mm"


@dataclass(frozen=True, slots=True)
class Follows:
    """A figure that follows from a measured one: the blank `key` and `add`, in one unit.

    The tablet works it out as the size is written; on paper it is a box for the sum.
    """

    key: str
    add: float
    unit: str = "mm"


@dataclass(frozen=True, slots=True)
class TickBox:
    """A box to be ticked in a row of a table; `key` keeps the tick between visits on a tablet."""

    key: str


Run = str | Strong | Code | Link | Reckoned | Blank | Follows | TickBox
Text = tuple[Run, ...]


def text_of(runs: Text | str) -> str:
    """The bare words of a run of text, as a search or a test would see them."""
    if isinstance(runs, str):
        return runs
    return "".join(_words(run) for run in runs)


def _words(run: Run) -> str:
    if isinstance(run, str):
        return run
    if isinstance(run, (Blank, Follows)):
        return f"____ {run.unit}"
    if isinstance(run, TickBox):
        return "☐"
    return run.text
