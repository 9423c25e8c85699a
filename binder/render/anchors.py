"""The ids of a binder to names that are safe in HTML, each given out once."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field, fields, is_dataclass
from hashlib import sha256

from binder.pages import Binder, Label, Link, Section, Subheading, Table

_PLAIN = re.compile(r"[A-Za-z][A-Za-z0-9_.-]*")
_KEY = re.compile(r"[A-Za-z0-9][A-Za-z0-9_.:/ -]*")
_FOREIGN = re.compile(r"[^A-Za-z0-9_]+")


def slugify(raw: str) -> str:
    """A name of ASCII letters, figures, `-`, `_` and `.`; two different ids never share one.

    The document's own ids have a colon in them, so none of these can be taken for one.
    """
    return raw if _PLAIN.fullmatch(raw) else _marked(raw)


def safe_key(raw: str) -> str:
    """A tick's or blank's key as it may stand in an attribute: itself where it is plain."""
    return raw if _KEY.fullmatch(raw) else _marked(raw)


def _marked(raw: str) -> str:
    words = _FOREIGN.sub("-", raw).strip("-")[:40]
    return f"{words or 'x'}-{sha256(raw.encode('utf-8', 'surrogatepass')).hexdigest()[:10]}"


@dataclass(slots=True)
class Anchors:
    """Which ids a binder has, and which of them already stand in the document."""

    known: frozenset[str]
    _given: set[str] = field(default_factory=set)

    def claim(self, raw: str) -> str:
        """The name for the first bearer of an id; '' for any later one and for no id."""
        if not raw or raw in self._given:
            return ""
        self._given.add(raw)
        return slugify(raw)

    def href(self, raw: str) -> str:
        """`#name` of an id that the binder has, else ''."""
        return f"#{slugify(raw)}" if raw in self.known else ""


def anchors_of(binder: Binder) -> Anchors:
    """The ids of all sections, subheadings and table rows."""
    return Anchors(frozenset(_ids(binder)) - {""})


def dangling_links(binder: Binder) -> tuple[str, ...]:
    """Targets that links and labels name and the binder does not have: a page maker's bug."""
    targets = {noun.target for noun in nouns(binder) if isinstance(noun, Link | Label)}
    return tuple(sorted(targets - anchors_of(binder).known - {""}))


def nouns(value: object) -> Iterator[object]:
    """Every page noun in a value, itself first, in reading order."""
    waiting = [value]
    while waiting:
        found = waiting.pop()
        if isinstance(found, tuple):
            waiting.extend(reversed(found))
        elif is_dataclass(found):
            yield found
            waiting.extend(getattr(found, part.name) for part in reversed(fields(found)))


def _ids(binder: Binder) -> Iterator[str]:
    for noun in nouns(binder.sections):
        if isinstance(noun, Section | Subheading):
            yield noun.id
        elif isinstance(noun, Table):
            yield from noun.ids
