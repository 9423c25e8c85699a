"""Alignments to the instrument that can judge them, lines of the sheet, and what nothing judges."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Blank,
    Block,
    Column,
    Design,
    Diagnostic,
    Paragraph,
    Subheading,
    Table,
    Text,
    Workshop,
    exact,
    shown_length,
)
from binder_plugins.inspection import codes
from binder_plugins.inspection.alignment import alignments
from binder_plugins.inspection.gauging import BEST, LEAST
from binder_plugins.inspection.trueness import Alignment

_COLUMNS = (
    Column("What", 3.2),
    Column("Within", 2, is_figure=True),
    Column("How", 4.6),
    Column("With", 2.2),
    Column("Read", 3.3),
    Column("If it is out", 3.5),
)
_WORDS = (
    "Right sizes do not make it turn: these must be true to each other. How far off they may be "
    "follows from the clearance of the joint, so a looser one bears more. A reading round a bar "
    "is twice what its axis is off."
)


def check_alignment(design: Design) -> Iterator[Diagnostic]:
    """What neither an instrument of this workshop nor the joint itself can judge."""
    for one in alignments(design):
        if not one.by_feel and not judged_by(one, design.workshop):
            yield codes.ALIGNMENT_CANNOT_BE_JUDGED.at(
                one.at,
                f"{one.what} within {one.allowed:.3f} mm, and no instrument here tells it",
                help=f"a {one.measures} instrument that reads {one.allowed / LEAST:.3f} mm, or a "
                "looser fit",
            )


def judged_by(one: Alignment, workshop: Workshop) -> str:
    """The owned instrument that judges it, with a fifth of what is allowed at the most."""
    if not one.measures:
        return "a straight edge"
    tools = [tool for tool in workshop.instruments() if one.measures in tool.measures]
    able = [tool for tool in tools if float(tool.resolution) * LEAST <= one.allowed]
    best = min(able, key=lambda tool: (tool.resolution, tool.most), default=None)
    if best is None:
        return ""
    doubt = "" if float(best.resolution) * BEST <= one.allowed else ", read twice"
    return f"{best.name}{doubt}"


def alignment_blocks(design: Design) -> Iterator[Block]:
    """The second table of the inspection sheet."""
    rows = tuple(_row(one, design) for one in alignments(design))
    if rows:
        yield Subheading("In line, square, parallel")
        yield Paragraph((_WORDS,))
        yield Table(_COLUMNS, rows)


def _row(one: Alignment, design: Design) -> tuple[Text, ...]:
    tool = judged_by(one, design.workshop)
    how = one.how if tool or not one.by_feel else one.by_feel
    more = f"; {one.by_feel}" if tool and one.by_feel else ""
    return (
        (one.what,),
        (_within(one, design),),
        (f"{how}{more}",),
        (tool or ("by feel" if one.by_feel else "nothing here"),),
        (Blank(f"aligned {one.key}", design.units),),
        (one.if_out,),
    )


def _within(one: Alignment, design: Design) -> str:
    allowed = shown_length(exact(round(one.allowed, 3)), design.units)
    over = shown_length(exact(round(one.over, 1)), design.units) if one.over else ""
    return f"{allowed} in {over}" if over else allowed
