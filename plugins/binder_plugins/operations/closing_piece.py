"""Turned work made to measured mates: a piece that closes a row, a journal between shoulders."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder.api import ChainFact, Located, Role, ShaftFact, TogetherFact, exact

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
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


@dataclass(frozen=True, slots=True)
class Gap:
    """What lies between the bearings of a shaft, `wide` mm as drawn; `closing` is made to it."""

    bearing: str
    closing: str
    wide: float
    is_inside: bool


def gaps_of(fact: TogetherFact, work: Work) -> tuple[Gap, ...]:
    """The gaps that pieces made to suit close, between the bearings that this work finishes."""
    found = []
    for shaft in work.design.facts.all(ShaftFact):
        bearings = [one for one in shaft.pieces if one.role is Role.BEARING]
        if shaft.to_suit is None or not {one.joint for one in bearings} & set(fact.joints):
            continue
        is_inside = shaft.located is Located.INSIDE
        wide = shaft.apart if is_inside else shaft.span
        if wide is not None:
            closing = shaft.pieces[shaft.to_suit].title
            found.append(Gap(bearings[0].title, closing, float(wide), is_inside))
    return tuple(found)


def gaps_measured(fact: TogetherFact, work: Work, *, has_stub: bool) -> Iterator[Act]:
    """The gap of each piece made to suit, taken while its bearings stand; they part after.

    Between the bearings a blank tells it better than jaws that do not go in beside a shaft:
    common practice, no source. `has_stub` says that one was faced to it.
    """
    for gap in gaps_of(fact, work):
        between = "between the inner faces" if gap.is_inside else "over the outer faces"
        found = work.design.workshop.finest(exact(gap.wide), exact(gap.wide), "outside")
        reads = found.name if found is not None else "a borrowed instrument"
        way = "measure it straight across"
        if gap.is_inside:
            way = "over the ends of the stub that just goes in"
            if not has_stub:
                way += ", rubbed down square on fine abrasive cloth on a flat plate"
                reads += ", fine abrasive cloth, flat plate"
        act = work.act(
            "measure",
            f"with all down, measure {between} of the {gap.bearing} at either "
            f"end: {way}; write it down, ______ ({work.mm(gap.wide)} as drawn): the "
            f"{gap.closing} is made to it",
            feature="gap",
            tool=reads,
            tags=("in-line",),
        )
        yield replace(act, joints=fact.joints)


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
