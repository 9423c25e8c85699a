"""Turned work made to measured mates: a piece that closes a row, a journal between shoulders."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import ChainFact, ShaftFact

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


def closing_journal(work: Work, step: str) -> str:
    """The sum for a step between shoulders that is made to its measured mate; '' for any other."""
    for chain in work.design.facts.all(ChainFact):
        closing = next((one for one in chain.links if one.name == chain.closing), None)
        if chain.kind != "shoulders" or closing is None:
            continue
        if closing.key != f"{work.name}.{step} length":
            continue
        others = " + ".join(
            f"the {one.name} as measured" for one in chain.links if one is not closing
        )
        return f"{others} + {work.mm((chain.least + chain.most) / 2)}"
    return ""


def measured_for(work: Work) -> str:
    """What is made to the length of this part as it came out; '' where nothing is."""
    for chain in work.design.facts.all(ChainFact):
        own = [one for one in chain.links if one.key.partition(".")[0] == work.name]
        is_mate = chain.kind == "shoulders" and chain.closing and own
        if is_mate and chain.closing not in {one.name for one in own}:
            return f"write down what it came to: ______; the {chain.closing} is made to it"
    return ""
