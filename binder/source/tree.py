"""The tree that is read from a spec: raw text, with the place of every key and value."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Self

from binder.diagnostics import Span


class Written(str):
    """A scalar as it was written, never typed by YAML; `span` is where it stands."""

    __slots__ = ("is_quoted", "span")

    span: Span
    is_quoted: bool

    def __new__(cls, text: str, span: Span, *, is_quoted: bool = False) -> Self:
        """A text at its place."""
        made = super().__new__(cls, text)
        made.span = span
        made.is_quoted = is_quoted
        return made


class Table(dict[str, "Node"]):
    """A mapping; `span` is all of it, `key_spans` has each key's place. Never changed once read."""

    __slots__ = ("key_spans", "span")

    span: Span
    key_spans: dict[str, Span]

    def __init__(self, span: Span) -> None:
        super().__init__()
        self.span = span
        self.key_spans = {}


class Row(list["Node"]):
    """A sequence; `span` is all of it. Never changed once read."""

    __slots__ = ("span",)

    span: Span

    def __init__(self, span: Span) -> None:
        super().__init__()
        self.span = span


Node = Written | Table | Row | None
Path = tuple[str | int, ...]


@dataclass(frozen=True, slots=True)
class Document:
    """A spec with its includes: the merged tree, the text of each file, and their hash.

    `texts` maps a file, named as in spans, to its text; `digest` is the SHA-256 over
    names and contents in the order of reading.
    """

    file: str
    root: Table
    texts: dict[str, str] = field(repr=False)
    digest: str

    def node(self, path: Path) -> Node:
        """The node at a path, or the deepest one that there is on the way."""
        found: Node = self.root
        for step in path:
            below = _step_down(found, step)
            if below is None:
                break
            found = below[0]
        return found

    def span(self, path: Path, *, of_key: bool = False) -> Span:
        """Where the value at a path stands, or its key; what is missing has its parent's key."""
        here: Node = self.root
        key = value = Span(self.file, 1, 1, 1, 2)
        for step in path:
            below = _step_down(here, step)
            if below is None:
                return key
            here = below[0]
            key = below[1] or (key if here is None else here.span)
            value = key if here is None else here.span
        return key if of_key else value


def _step_down(node: Node, step: str | int) -> tuple[Node, Span | None] | None:
    """The child at one step with the place of its key (an item of a row has none)."""
    if isinstance(node, Table) and isinstance(step, str) and step in node:
        return node[step], node.key_spans[step]
    if isinstance(node, Row) and isinstance(step, int) and 0 <= step < len(node):
        return node[step], None
    return None
