"""The named sizes and how each was reached."""

from __future__ import annotations

import re
from collections.abc import Iterator

from binder.design import Design
from binder.pages import Code, Column, Paragraph, Place, Reckoned, Section, Table, Text
from binder.parameters import Named, working_of
from binder.units import shown

# A comment behind a value, whose closing quote is no part of it.
_COMMENT = re.compile(r"""["']?\s+#\s*(.*\S)""")


def sizes(design: Design) -> Iterator[Section]:
    """A table of the named sizes, where there are any."""
    named = design.spec.resolved.sizes
    if named:
        yield Section(
            id="sizes",
            title="Sizes and where they come from",
            place=Place.SIZES,
            blocks=(
                Paragraph(("Change one of these in the spec and all that follows moves with it.",)),
                _table(design, tuple(named.values())),
            ),
        )


def _table(design: Design, named: tuple[Named, ...]) -> Table:
    remarks = tuple(_remark(design, one) for one in named)
    columns = (
        Column("Name", 2),
        Column("As written", 4),
        *((Column("What for", 4),) if any(remarks) else ()),
        Column("Comes to", 2, is_figure=True),
        Column("Or", 2, is_figure=True),
        Column("Line", 1, is_figure=True),
    )
    told: tuple[tuple[Text, ...], ...] = tuple(((one,),) if any(remarks) else () for one in remarks)
    rows = zip(named, told, strict=True)
    return Table(columns, tuple(_row(design, one, words) for one, words in rows))


def _remark(design: Design, named: Named) -> str:
    """What its author wrote behind a size on its line, as a comment; '' for nothing."""
    span = named.text.span
    lines = design.spec.resolved.document.texts.get(span.file, "").splitlines()
    line = lines[span.end_line - 1] if 0 < span.end_line <= len(lines) else ""
    found = _COMMENT.match(line[span.end_column - 1 :])
    return found[1] if found is not None else ""


def _row(design: Design, named: Named, words: tuple[Text, ...]) -> tuple[Text, ...]:
    head = design.spec.written.model
    working = working_of(named, design.spec.resolved.environment)
    other = "inch" if head.units == "mm" else "mm"
    steps = (f"{working.formula} = {working.result}", *_given(working.given))
    result = Reckoned(shown(named.quantity, head.units), working.because, steps)
    is_length = named.quantity.dimension.is_length
    line = str(named.text.span.line) if named.text.span.line else "--set"
    return (
        (Code(named.name),),
        (str(named.text),),
        *words,
        (result,),
        (shown(named.quantity, other) if is_length else "",),
        (line,),
    )


def _given(given: tuple[object, ...]) -> tuple[str, ...]:
    return tuple(f"{one.name} = {one.value}" for one in given)  # type: ignore[attr-defined]
