"""The trees of a spec and its includes to one tree."""

from __future__ import annotations

from collections.abc import Iterable

from binder.diagnostics import Labelled, Span
from binder.source.codes.include_codes import SECTION_IN_MAIN_ONLY, SECTION_KINDS_DIFFER
from binder.source.findings import Findings
from binder.source.quoting import quoted
from binder.source.refusals import refuse_second
from binder.source.tree import Row, Table

_MAIN_ONLY = frozenset(("format", "model"))


def merged(main: Table, included: Iterable[Table], found: Findings) -> Table:
    """The main tree with the entries of each section of the included ones after its own."""
    root = _copy(main)
    for table in included:
        for section, value in table.items():
            if section in _MAIN_ONLY or not isinstance(value, Table | Row | None):
                _refuse_section(section, table.key_spans[section], found)
            elif value is not None:
                _add_section(root, section, value, table.key_spans[section], found)
    return root


def _add_section(
    root: Table, section: str, value: Table | Row, span: Span, found: Findings
) -> None:
    there = root.get(section)
    if there is None:
        root[section] = value
        root.key_spans[section] = span
    elif isinstance(there, Table) and isinstance(value, Table):
        root[section] = _joined(there, value, found)
    elif isinstance(there, Row) and isinstance(value, Row):
        both = Row(there.span)
        both += [*there, *value]
        root[section] = both
    else:
        _refuse_kind(section, span, root.key_spans[section], found)


def _joined(first: Table, second: Table, found: Findings) -> Table:
    both = _copy(first)
    for key, value in second.items():
        span = second.key_spans[key]
        if key in both:
            refuse_second(key, span, both.key_spans[key], found)
        else:
            both[key] = value
            both.key_spans[key] = span
    return both


def _copy(table: Table) -> Table:
    copy = Table(table.span)
    copy.update(table)
    copy.key_spans.update(table.key_spans)
    return copy


def _refuse_section(section: str, span: Span, found: Findings) -> None:
    message = f"{quoted(section)} can stand in the main spec only"
    help = "move it there; an included file has tables and lists, such as `parts:`"
    found.add(SECTION_IN_MAIN_ONLY, span, message, help=help)


def _refuse_kind(section: str, span: Span, first: Span, found: Findings) -> None:
    found.add(
        SECTION_KINDS_DIFFER,
        span,
        f"{quoted(section)} is a table in one file and something else in another",
        related=[Labelled(first, "the other one")],
        help="write the section the same way in both files",
    )
