"""Rows between two walls: the walls measured when they stand, spacers and grooves made to that.

Common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import ChainFact, Role, ShaftFact, exact
from binder_plugins.operations.gauging import read_along
from binder_solid.row_walls import spacers_of, walls_of

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.row_walls import Walls

_NEAR = 1e-6


def spaced_length(work: Work, length: float) -> str:
    """The sum for a spacer that is `length` mm over all; '' for any other part."""
    for shaft in work.design.facts.all(ShaftFact):
        found = spacers_of(shaft, work.design)
        if found is None or found.item != work.name or abs(found.long - length) > _NEAR:
            continue
        others = "".join(f" − the {one.title} as measured" for one in found.others)
        wanted = work.mm(float(shaft.least + shaft.most) / 2)
        total = f"the gap of the {_title(work, found.walls.item)} as measured{others} − {wanted}"
        if found.count > 1:
            total = f"({total}) ÷ {found.count}"
        return f"{total} = ______, {work.mm(round(found.drawn, 3))} if they come as drawn"
    return ""


def clipped_length(work: Work, length: float) -> str:
    """The sum for a plain pin of `length` mm that two clips hold; '' for any other part.

    Each groove keeps its distance from its end, so that facing it to length sets them apart.
    """
    chain = _of_clips(work)
    walls = _closing(chain) if chain is not None else None
    if chain is None or walls is None:
        return ""
    beyond, middle = length - walls, (chain.least + chain.most) / 2
    others = [one for one in chain.links if one.name != chain.closing]
    mates = [one.name for one in others if not one.name.startswith("clip at")]
    said = " + ".join(f"the {name} as measured" for name in mates)
    total = sum(one.nominal for one in others) + middle + beyond
    return (
        f"{said} + both clips as measured + {work.mm(middle)} of float + {work.mm(beyond)} "
        f"outside the grooves = ______, {work.mm(round(total, 3))} if they come as drawn"
    )


def rows_measured(work: Work) -> Iterator[Act]:
    """What spacers, or the grooves of a pin, are made to: the gap, over both walls, a hub."""
    for shaft in work.design.facts.all(ShaftFact):
        chain = _chain_of(shaft, work)
        spacers = spacers_of(shaft, work.design)
        walls = walls_of(shaft)
        if walls is not None and walls.item == work.name:
            if spacers is not None:
                yield _gap(walls, shaft, spacers.title, work)
            if chain is not None:
                yield _over(walls, shaft, work)
        others = spacers.others if spacers is not None else ()
        for piece in others:
            if piece.item == work.name and spacers is not None and piece.length is not None:
                yield _along(float(piece.length), shaft, spacers.title, work)
        if chain is None or walls is not None:
            continue
        for piece in shaft.pieces:
            if piece.item == work.name and piece.role is Role.BEARING and piece.length is not None:
                yield _along(float(piece.length), shaft, _title(work, shaft.subject), work)


def _gap(walls: Walls, shaft: ShaftFact, closing: str, work: Work) -> Act:
    place = walls.place.replace("_", " ")
    found = work.design.workshop.finest(exact(walls.gap), exact(walls.gap), "inside")
    return _measured(
        f"measure the gap between both walls beside the {place}: ______, {work.mm(walls.gap)} as "
        f"drawn; the {closing} is made to it",
        f"gap at the {place}",
        found.name if found is not None else "a borrowed instrument",
        shaft,
        work,
    )


def _over(walls: Walls, shaft: ShaftFact, work: Work) -> Act:
    place = walls.place.replace("_", " ")
    over = round(walls.over, 3)
    return _measured(
        f"measure over both walls beside the {place}: ______, {work.mm(over)} as drawn; the "
        f"{_title(work, shaft.subject)} is made to it",
        f"over the walls at the {place}",
        read_along(work, over),
        shaft,
        work,
    )


def _along(length: float, shaft: ShaftFact, closing: str, work: Work) -> Act:
    return _measured(
        f"measure it along its bore, face to face: ______, {work.mm(length)} as drawn; the "
        f"{closing} is made to it",
        "length",
        read_along(work, length),
        shaft,
        work,
    )


def _measured(words: str, feature: str, tool: str, shaft: ShaftFact, work: Work) -> Act:
    act = work.act("measure", words, feature=feature, tool=tool)
    joints = tuple(dict.fromkeys(one.joint for one in shaft.pieces if one.item == work.name))
    return replace(act, joints=tuple(name for name in joints if name))


def _of_clips(work: Work) -> ChainFact | None:
    shaft = work.design.facts.about(ShaftFact, work.name)
    return _chain_of(shaft, work) if shaft is not None else None


def _chain_of(shaft: ShaftFact, work: Work) -> ChainFact | None:
    """The chain from groove to groove of a pin; None where no two clips hold it."""
    for chain in work.design.facts.all(ChainFact):
        keys = {one.key for one in chain.links if one.name == chain.closing}
        if f"{shaft.subject} walls" in keys:
            return chain
    return None


def _closing(chain: ChainFact) -> float | None:
    return next((one.nominal for one in chain.links if one.name == chain.closing), None)


def _title(work: Work, name: str) -> str:
    item = work.design.item(name)
    return item.title if item is not None else name
