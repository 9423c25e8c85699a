"""The named sizes and how each was reached."""

from __future__ import annotations

from collections.abc import Iterator

from binder.design import Design
from binder.pages import Code, Column, Paragraph, Place, Reckoned, Section, Table, Text
from binder.parameters import Named, working_of
from binder.units import shown


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
    columns = (
        Column("Name", 2),
        Column("As written", 4),
        Column("Comes to", 2, is_figure=True),
        Column("Or", 2, is_figure=True),
        Column("Line", 1, is_figure=True),
    )
    return Table(columns, tuple(_row(design, one) for one in named))


def _row(design: Design, named: Named) -> tuple[Text, ...]:
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
        (result,),
        (shown(named.quantity, other) if is_length else "",),
        (line,),
    )


def _given(given: tuple[object, ...]) -> tuple[str, ...]:
    return tuple(f"{one.name} = {one.value}" for one in given)  # type: ignore[attr-defined]
