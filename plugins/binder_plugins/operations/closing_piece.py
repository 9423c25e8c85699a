"""A turned piece that closes a row on a shaft: faced to what the measured row leaves."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import ShaftFact

if TYPE_CHECKING:
    from binder_plugins.operations.work import Work

_NEAR = 1e-6


def suited_length(work: Work, length: float) -> str:
    """The sum for a piece that is made to suit over its whole length in mm, with its blank."""
    for shaft in work.design.facts.all(ShaftFact):
        if shaft.to_suit is None or shaft.play is None:
            continue
        piece = shaft.pieces[shaft.to_suit]
        if piece.item != work.name or piece.length is None:
            continue
        if abs(float(piece.length) - length) > _NEAR:
            continue  # The row takes a part of it alone.
        wanted = float(shaft.least + shaft.most) / 2
        drawn = work.mm(length + float(shaft.play) - wanted)
        is_alone = shaft.inside == piece.length
        others = "" if is_alone else " − the others of the row as measured"
        return f"the gap as measured{others} − {work.mm(wanted)} = ______, {drawn} as drawn"
    return ""
