"""Rows between two walls: the walls measured when they stand, spacers and grooves made to that.

Common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import ChainFact, ShaftFact, exact
from binder_plugins.operations.gauging import read_along
from binder_solid.row_walls import spacers_of, walls_of

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import ChainLink, Piece
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


def rows_measured(work: Work) -> Iterator[Act]:
    """What a row is closed to: the gap, over both walls, and each made piece in the sum."""
    for shaft in work.design.facts.all(ShaftFact):
        spacers = spacers_of(shaft, work.design)
        walls = walls_of(shaft)
        if walls is not None and walls.item == work.name:
            if spacers is not None:
                yield _gap(walls, shaft, spacers.title, work)
            if _chain_of(shaft, work) is not None:
                yield _over(walls, shaft, work)
    for chain in work.design.facts.all(ChainFact):
        closing = next((one for one in chain.links if one.name == chain.closing), None)
        shaft_name, _, which = closing.key.rpartition(" ") if closing is not None else ("", "", "")
        found = work.design.facts.about(ShaftFact, shaft_name)
        if closing is not None and found is not None and not chain.is_set:
            title = _closing_title(closing, which, found, work)
            yield from _in_the_sum(chain, closing, found, title, work)


def _in_the_sum(
    chain: ChainFact, closing: ChainLink, shaft: ShaftFact, title: str, work: Work
) -> Iterator[Act]:
    """The pieces of this part, or the steps of this shaft, in the sum that closes a row."""
    for link in chain.links:
        name, _, which = link.key.rpartition(" ")
        if name != shaft.subject or link is closing:
            continue
        if which.isdigit():
            piece = shaft.pieces[int(which) - 1]
            if piece.item == work.name and piece.length is not None:
                yield _along(piece, shaft, title, work)
        elif name == work.name and work.form is not None:
            steps = {one.name: one.end - one.start for one in work.form.stretches}
            if which in steps:
                yield _step(which, steps[which], shaft, title, work)


def _closing_title(closing: ChainLink, which: str, shaft: ShaftFact, work: Work) -> str:
    """What is made to the sum: a piece of the row, spacers, the shaft itself, or a tube."""
    spacers = spacers_of(shaft, work.design)
    if which == "spacers" and spacers is not None:
        return spacers.title
    if which == "walls":
        return _title(work, shaft.subject)
    return shaft.pieces[int(which) - 1].title if which.isdigit() else closing.name


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


def _along(piece: Piece, shaft: ShaftFact, closing: str, work: Work) -> Act:
    """The length of a piece along its bore; of a plate how thick it is there."""
    length, place = float(piece.length or 0), piece.place.replace("_", " ")
    is_turned = work.form is not None and bool(work.form.stretches)
    way = (
        "measure it along its bore" if is_turned else f"measure how thick it is beside the {place}"
    )
    if work.count > 1:
        way = way.replace(" it ", " each ", 1).replace("thick it", "thick each")
    return _measured(
        f"{way}, face to face: ______, {work.mm(length)} as drawn; the {closing} is made to it",
        "length" if is_turned else f"thickness at the {place}",
        read_along(work, length),
        shaft,
        work,
    )


def _step(name: str, long: float, shaft: ShaftFact, closing: str, work: Work) -> Act:
    said = name.replace("_", " ")
    found = work.design.workshop.finest(exact(long), exact(long), "depth")
    return _measured(
        f"measure the {said} from its shoulder to the end: ______, {work.mm(long)} as drawn; the "
        f"{closing} is made to it",
        f"length of the {said}",
        found.name if found is not None else "a borrowed instrument",
        shaft,
        work,
    )


def _measured(words: str, feature: str, tool: str, shaft: ShaftFact, work: Work) -> Act:
    act = work.act("measure", words, feature=feature, tool=tool)
    joints = tuple(dict.fromkeys(one.joint for one in shaft.pieces if one.item == work.name))
    return replace(act, joints=tuple(name for name in joints if name))


def _chain_of(shaft: ShaftFact, work: Work) -> ChainFact | None:
    """The chain from groove to groove of a pin; None where no two clips hold it."""
    for chain in work.design.facts.all(ChainFact):
        keys = {one.key for one in chain.links if one.name == chain.closing}
        if f"{shaft.subject} walls" in keys:
            return chain
    return None


def _title(work: Work, name: str) -> str:
    item = work.design.item(name)
    return item.title if item is not None else name
