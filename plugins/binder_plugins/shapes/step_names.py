"""The steps of a turned part by their names: the sheets call them so, and the drawing does not."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Blank,
    Block,
    Column,
    Design,
    Paragraph,
    Part,
    Strong,
    Table,
    Text,
    shown,
    shown_length,
    size_text,
)
from binder_plugins.shapes.forming.turned import section_text
from binder_plugins.shapes.kinds import TurnedStep
from binder_plugins.shapes.turned import measured
from binder_solid.suited import summed_in

_NAMED = (
    Column("Step", 3),
    Column("Section", 4),
    Column("Length", 2.4, is_figure=True),
    Column("From the left end", 4, is_figure=True),
)

_SAME_MM = 1e-6


def named_steps(part: Part, design: Design) -> Iterator[Block]:
    """By the drawing: which step bears which name; of a single one, a line."""
    steps, _ = measured(part, part.shape if isinstance(part.shape, list) else [])
    if len(steps) == 1 and steps[0].step.name:
        yield Paragraph(("Its one step is called ", Strong(_name(steps[0].step.name)), "."))
    if len(steps) < 2 or not any(one.step.name for one in steps):
        return
    sums = [one for one in summed_in(part.name, design) if not one.is_groove]
    suited = {one.place for one in sums}
    moving = {one.place for one in sums if one.moves_whole}
    shoulders = [one.shoulder for one in sums if one.shoulder is not None]
    rows: list[tuple[Text, ...]] = []
    for number, one in enumerate(steps, 1):
        ends = [shown_length(end, design.units) for end in (one.start, one.end)]
        name, length = _name(one.step.name or number), shown_length(one.length, design.units)
        is_beside = any(
            abs(float(end) - at) < _SAME_MM for end in (one.start, one.end) for at in shoulders
        )
        if one.step.name in suited or is_beside:
            length = f"({length}){' to suit' if one.step.name in suited else ''}"
        is_moved = is_beside or any(other.step.name in moving for other in steps[:number])
        run = f"({' to '.join(ends)})" if is_moved else " to ".join(ends)
        rows.append(((name,), (_section(one.step, design.units),), (length,), (run,)))
    yield Table(_NAMED, tuple(rows), caption="Steps by their names, from the left of the drawing")


def _name(name: object) -> str:
    return str(name).replace("_", " ")


def step_table(part: Part, units: str) -> Table:
    """Sections, lengths and blanks of the steps, where no drawing tells them."""
    columns = (
        Column("Step", 2),
        Column("Section", 3),
        Column("Length", 2, is_figure=True),
        Column("Ends at", 2, is_figure=True),
        Column("Measured", 2),
    )
    steps, _ = measured(part, part.shape if isinstance(part.shape, list) else [])
    rows: list[tuple[Text, ...]] = []
    for number, step in enumerate(steps, 1):
        name = str(step.step.name or number)
        length = shown_length(step.length, units) + (" (rest)" if step.is_rest else "")
        rows.append(
            (
                (name,),
                (_section(step.step, units),),
                (length,),
                (shown_length(step.end, units),),
                (Blank(f"{part.name} {name}", units),),
            )
        )
    return Table(columns, tuple(rows), caption="Steps, from the first face")


def _section(step: TurnedStep, units: str) -> str:
    words = section_text(step, units)
    if step.taper is not None:
        return f"taper {words}"
    if step.throw is None:
        return words
    clock = f", {shown(step.clock.quantity)} from the top" if step.clock is not None else ""
    return f"{words}, thrown {size_text(step.throw, units)}{clock}"
