"""One file's text to its tree, every key and value with its place.

Going on is right where nothing has to be guessed: after a key that is refused, or written
twice. A fault of syntax or a bound that is met ends the reading of the file.
"""

from __future__ import annotations

from dataclasses import dataclass

from binder.diagnostics import NOWHERE, Diagnostic, Span
from binder.source import bounds, refusals, traps
from binder.source.bounds import TEXT_CHARACTERS
from binder.source.characters import cleaned_value
from binder.source.events import (
    PARSER_ERRORS,
    AliasEvent,
    CollectionStartEvent,
    DocumentStartEvent,
    Event,
    MappingEndEvent,
    MappingStartEvent,
    ScalarEvent,
    SequenceEndEvent,
    SequenceStartEvent,
    fault_of,
    open_events,
    place_of,
    raw_text,
)
from binder.source.findings import Findings, whole_file
from binder.source.keys import is_plain_words, report_key
from binder.source.syntax import explain
from binder.source.text import SourceText
from binder.source.tree import Node, Row, Table, Written

_new_tuple = tuple.__new__  # a Span without the detour through its named arguments


@dataclass(frozen=True, slots=True)
class Composed:
    """A file's tree, and how many keys and values it holds."""

    root: Table
    values: int


class _Stopped(Exception):
    """Nothing more can be read of this file; the finding says why."""

    def __init__(self, finding: Diagnostic) -> None:
        super().__init__(finding.message)
        self.finding = finding


def compose(source: SourceText, found: Findings, room: int = bounds.VALUES) -> Composed | None:
    """The tree of a file, or nothing where it cannot be read to its end.

    room: how many keys and values there may be.
    """
    composer = _Composer(source, found, room)
    try:
        root = composer.document()
    except _Stopped as stopped:
        found.take(stopped.finding)
        return None
    except PARSER_ERRORS as error:
        found.take(explain(source, fault_of(error), composer.last_quoted))
        return None
    return Composed(root, room - composer.room)


class _Composer:
    """Reads the events of one file; `_last` is the place of the last key or value."""

    def __init__(self, source: SourceText, found: Findings, room: int) -> None:
        self.room = room
        self.last_quoted: Span | None = None
        self._source = source
        self._found = found
        self._next = open_events(source.text)
        self._last = whole_file(source.file)
        self._file = source.file
        self._has_marks = "&" in source.text or "!" in source.text
        self._good_keys: set[str] = set()
        self._cut_lines = traps.lines_with_numbered_comments(source)
        self._tab_lines = traps.lines_with_tabs_first(source)
        self._is_suspect = bool(self._cut_lines or self._tab_lines)

    def document(self) -> Table:
        """The tree of the one document; raises `_Stopped`, or an error of the parser."""
        self._next()
        start = self._next()
        if not isinstance(start, DocumentStartEvent):
            raise _Stopped(refusals.nothing_in_file(self._source.file))
        if start.version or start.tags:
            refusals.refuse_directive(self._source, self._found)
        root = self._root(self._next())
        self._next()
        more = self._next()
        if isinstance(more, DocumentStartEvent):
            line = place_of(more)[0] - 1
            refusals.refuse_second_document(self._source, line, self._found)
        return root

    def _root(self, event: Event | None) -> Table:
        if isinstance(event, MappingStartEvent):
            return self._table(event, 1)
        if isinstance(event, ScalarEvent):
            self._next()  # a line without its colon is said to be one by the parser
            if not event.value:
                raise _Stopped(refusals.nothing_in_file(self._source.file))
        raise _Stopped(refusals.root_of_other_kind(self._source, self._start(event).line - 1))

    def _node(self, event: Event | None, depth: int) -> Node:
        if type(event) is ScalarEvent:
            return self._scalar(event)
        if type(event) is MappingStartEvent:
            return self._table(event, depth)
        if type(event) is SequenceStartEvent:
            return self._row(event, depth)
        if isinstance(event, AliasEvent):
            self._take_room(event)
            self._last = Span(self._file, *place_of(event))
            refusals.refuse_alias(self._source, event, self._found)
        return None

    def _table(self, start: MappingStartEvent, depth: int) -> Table:
        self._enter(start, depth)
        table = Table(NOWHERE)
        event = self._next()
        while type(event) is not MappingEndEvent:
            self._entry(event, table, depth, in_flow=bool(start.flow_style))
            event = self._next()
        table.span = self._span_of_all(start, event)
        return table

    def _row(self, start: SequenceStartEvent, depth: int) -> Row:
        self._enter(start, depth)
        row = Row(NOWHERE)
        event = self._next()
        while type(event) is not SequenceEndEvent:
            item = self._node(event, depth + 1)
            row.append(item)
            if type(item) is Written and not item.is_quoted and ":" in item:
                traps.check_item(self._source, item, self._found)
            event = self._next()
        if start.flow_style and len(row) > 1:
            traps.check_commas(self._source, row, self._found)
        row.span = self._span_of_all(start, event)
        return row

    def _entry(self, event: Event | None, table: Table, depth: int, *, in_flow: bool) -> None:
        if type(event) is not ScalarEvent:
            self._foreign_key(event, depth)
            return
        key, span = self._text(event)
        is_plain = not event.style
        value = self._node(self._next(), depth + 1)
        if value is None:
            if in_flow and traps.check_entry_without_colon(self._source, key, span, self._found):
                return
        elif type(value) is Written and value.span.line != span.end_line and not value.is_quoted:
            traps.check_own_line(self._source, value, span, self._found)
        if key not in self._good_keys and not self._is_good(key, span, is_plain=is_plain):
            return
        if key in table:
            refusals.refuse_second(key, span, table.key_spans[key], self._found)
            return
        table[key] = value
        table.key_spans[key] = span

    def _foreign_key(self, event: Event | None, depth: int) -> None:
        """A list, a table or a repeat before a colon: reported, and left out with its value."""
        place = self._start(event)
        node = self._node(event, depth + 1)
        refusals.refuse_key_kind(place if node is None else node.span, self._found)
        self._node(self._next(), depth + 1)

    def _is_good(self, key: str, span: Span, *, is_plain: bool) -> bool:
        """Whether a new key is kept; one with a wrong letter is, so that it is not missed too."""
        if key == "<<" and is_plain:
            refusals.refuse_merge(span, self._found)
            return False
        if is_plain_words(key):
            self._good_keys.add(key)
            return True
        report_key(key, span, self._found)
        return 0 < len(key) <= bounds.KEY_CHARACTERS

    def _scalar(self, event: ScalarEvent) -> Written | None:
        if not event.value and not event.style:
            self._nothing(event)
            return None
        text, span = self._text(event)
        written = Written(text, span, is_quoted=bool(event.style))
        if span[3] != span[1] and event.style not in ("|", ">"):
            traps.check_lines(self._source, written, self._found)
        if self._is_suspect:
            self._check_suspect(written)
        return written

    def _nothing(self, event: ScalarEvent) -> None:
        self._take_room(event)
        refusals.refuse_marks(self._source, event, self._found)
        line, column, *_ = place_of(event)
        traps.check_nothing_written(self._source, line - 1, column - 1, self._found)

    def _check_suspect(self, written: Written) -> None:
        span = written.span
        if span.end_line - 1 in self._cut_lines and not written.is_quoted:
            traps.check_tail(self._source, written, self._found)
        if span.line - 1 in self._tab_lines:
            traps.check_tab_first(self._source, span, self._found)

    def _text(self, event: ScalarEvent) -> tuple[str, Span]:
        """The text of a key or a value, within bounds and without hidden characters."""
        self.room -= 1
        if self.room < 0:
            raise self._no_room(event)
        text: str = event.value
        span = _new_tuple(Span, (self._file, *place_of(event)))
        if event.style:
            text, span = self._quoted(event, text, span)
        if self._has_marks:
            refusals.refuse_marks(self._source, event, self._found)
        if len(text) > TEXT_CHARACTERS:
            refusals.refuse_long_text(len(text), span, self._found)
            text = text[:TEXT_CHARACTERS]
        self._last = span
        return text, span

    def _quoted(self, event: ScalarEvent, text: str, span: Span) -> tuple[str, Span]:
        if event.style in ("|", ">"):
            return text, self._trimmed(span)
        self.last_quoted = span
        if event.style == '"' and not text.isprintable():
            raw = raw_text(self._source.text, event)
            text = cleaned_value(text, raw, span, self._found)
        return text, span

    def _trimmed(self, span: Span) -> Span:
        """A block of text without the lines after it, onto which YAML's end mark falls."""
        last = span.end_line if span.end_column > 1 else span.end_line - 1
        while last > span.line and not self._source.line(last - 1).strip():
            last -= 1
        end_column = len(self._source.line(last - 1).rstrip()) + 1
        return span._replace(end_line=last, end_column=end_column)

    def _enter(self, start: CollectionStartEvent, depth: int) -> None:
        if depth > bounds.DEPTH:
            raise _Stopped(refusals.nested_too_deep(self._start(start)))
        self._take_room(start)
        refusals.refuse_marks(self._source, start, self._found)

    def _take_room(self, event: Event) -> None:
        self.room -= 1
        if self.room < 0:
            raise self._no_room(event)

    def _no_room(self, event: Event) -> _Stopped:
        return _Stopped(refusals.too_many_values(self._start(event)))

    def _start(self, event: Event | None) -> Span:
        """The first character of what an event tells of."""
        line, column, *_ = (1, 1) if event is None else place_of(event)
        return self._source.span(line - 1, column - 1)

    def _span_of_all(self, start: CollectionStartEvent, end: Event | None) -> Span:
        """A table or a row from its start to the end of its last entry or its bracket."""
        line, column, *_ = place_of(start)
        last = self._last
        end_line, end_column = last.end_line, last.end_column
        if start.flow_style and end is not None:
            *_, end_line, end_column = place_of(end)
        self._last = Span(self._file, line, column, end_line, end_column)
        return self._last
