"""Parts that are told by their likeness to another, written out: a tree to a tree.

A part with `like:` has all of the other but its own keys: a table adds to or changes the other's
table key by key, a table in place of a list changes the entries of those names, `left out` drops
one. `mirrored: true` makes left of right in what it takes over.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from difflib import get_close_matches

from binder.diagnostics import Diagnostic, Span
from binder.source.codes import like_codes
from binder.source.tree import Node, Row, Table, Written

LIKE, MIRRORED, LEFT_OUT = "like", "mirrored", "left out"
# What belongs to one part alone, and is not taken over by another.
_OWN = ("title", "quantity", "handed", "note", "because", LIKE, MIRRORED)
_WORDS = ("note", "because")
_HANDS = re.compile(r"\b(left|right)\b(?! out\b)")
_LONGEST_CHAIN = 20
_OTHER = {"left": "right", "right": "left"}


def likened(root: Table) -> tuple[Table, tuple[Diagnostic, ...]]:
    """The tree with each part written out, and what could not be."""
    parts = root.get("parts")
    if not isinstance(parts, Table) or not any(_is_told_by_another(one) for one in parts.values()):
        return root, ()
    work = _Likening(parts)
    found = _copy(root)
    found["parts"] = work.all_written_out()
    return found, tuple(work.findings)


class _Likening:
    """One run over the parts: what is written out so far, and what was found."""

    def __init__(self, parts: Table) -> None:
        self._parts = parts
        self._done: dict[str, Table] = {}
        self.findings: list[Diagnostic] = []

    def all_written_out(self) -> Table:
        """All parts in their order."""
        found = _copy(self._parts)
        for name, part in self._parts.items():
            if isinstance(part, Table):
                found[name] = self._written_out(name, ())
        return found

    def _written_out(self, name: str, way: tuple[str, ...]) -> Table:
        if name in self._done:
            return self._done[name]
        part = self._parts[name]
        if not isinstance(part, Table):
            return Table(self._parts.key_spans[name])
        other = _like_of(part)
        if other is None and _is_mirrored(part):
            message = f"'{name}' is mirrored, and is not like any other part"
            span = part.key_spans[MIRRORED]
            self.findings.append(like_codes.MIRRORED_ALONE.at(span, message))
        found = part if other is None else self._like(name, part, other, (*way, name))
        self._done[name] = found
        return found

    def _like(self, name: str, part: Table, other: Written, way: tuple[str, ...]) -> Table:
        if str(other) in way or len(way) > _LONGEST_CHAIN:
            first = way.index(str(other)) if str(other) in way else 0
            ring = " → ".join((*way[first:][-_LONGEST_CHAIN:], str(other)))
            message = f"these parts are told by one another and none by itself: {ring}"
            self.findings.append(like_codes.LIKE_RING.at(other.span, message))
            return part
        if str(other) not in self._parts:
            near = get_close_matches(str(other), self._parts, 1)
            self.findings.append(
                like_codes.LIKE_UNKNOWN.at(
                    other.span,
                    f"there is no part '{other}' that '{name}' could be like",
                    help=f"did you mean '{near[0]}'?" if near else "",
                )
            )
            return part
        model = _taken_over(self._written_out(str(other), way), is_mirrored=_is_mirrored(part))
        return self._changed(model, part, f"'{other}'")

    def _changed(self, model: Table, part: Table, whose: str) -> Table:
        """A table with the keys of another in the place of its own."""
        found = _copy(model)
        found.span = part.span
        for key, value in part.items():
            span = part.key_spans[key]
            there = model.get(key)
            if value == LEFT_OUT:
                self._leave_out(found, key, span, whose)
                continue
            found[key] = self._replaced(there, value, f"{whose}, {key}")
            found.key_spans[key] = span
        return found

    def _leave_out(self, found: Table, key: str, span: Span, whose: str) -> None:
        if key in found:
            del found[key]
            del found.key_spans[key]
            return
        message = f"{whose} has no '{key}' that could be left out"
        self.findings.append(
            like_codes.LIKE_NOTHING_THERE.at(span, message, help=_near(key, found))
        )

    def _replaced(self, there: Node, value: Node, whose: str) -> Node:
        if isinstance(there, Table) and isinstance(value, Table):
            return self._changed(there, value, whose)
        if isinstance(there, Row) and isinstance(value, Table):
            return self._changed_row(there, value, whose)
        return value

    def _changed_row(self, there: Row, changes: Table, whose: str) -> Row:
        """Entries of a list that have names, changed by them."""
        found = Row(changes.span)
        for entry in there:
            change = changes.get(_name_of(entry))
            if change == LEFT_OUT:
                continue
            if isinstance(entry, Table) and isinstance(change, Table):
                found.append(self._changed(entry, change, whose))
            else:
                found.append(entry)
        names = {_name_of(entry): None for entry in there}
        for name in changes:
            if name not in names:
                message = f"{whose} has no '{name}' that could be changed"
                span = changes.key_spans[name]
                self.findings.append(
                    like_codes.LIKE_NOTHING_THERE.at(span, message, help=_near(name, names))
                )
        return found


def _near(name: str, names: dict[str, None] | Table) -> str:
    near = get_close_matches(name, [one for one in names if one], 1)
    return f"did you mean '{near[0]}'?" if near else ""


def _is_told_by_another(part: Node) -> bool:
    return isinstance(part, Table) and (LIKE in part or MIRRORED in part)


def _like_of(part: Node) -> Written | None:
    other = part.get(LIKE) if isinstance(part, Table) else None
    return other if isinstance(other, Written) else None


def _is_mirrored(part: Table) -> bool:
    return part.get(MIRRORED) == "true"


def _name_of(entry: Node) -> str:
    name = entry.get("name") if isinstance(entry, Table) else None
    return str(name) if isinstance(name, Written) else ""


def _taken_over(model: Table, *, is_mirrored: bool) -> Table:
    found = Table(model.span)
    for key, value in model.items():
        if key not in _OWN:
            found[key] = _mirrored(value) if is_mirrored and key == "features" else value
            found.key_spans[key] = model.key_spans[key]
    return found


def _mirrored(node: Node) -> Node:
    """The same with left and right exchanged in all that places a feature."""
    if isinstance(node, Written):
        text = _HANDS.sub(lambda found: _OTHER[found[1]], str(node))
        return Written(text, node.span, is_quoted=node.is_quoted)
    if isinstance(node, Table):
        table = _copy(node)
        table.update(_each_mirrored(node))
        return table
    if isinstance(node, Row):
        row = Row(node.span)
        row += [_mirrored(entry) for entry in node]
        return row
    return node


def _each_mirrored(table: Table) -> Iterator[tuple[str, Node]]:
    for key, value in table.items():
        yield key, value if key in _WORDS else _mirrored(value)


def _copy(table: Table) -> Table:
    copy = Table(table.span)
    copy.update(table)
    copy.key_spans.update(table.key_spans)
    return copy
