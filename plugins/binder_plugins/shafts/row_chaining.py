"""A row between two walls of one piece to its chain: what the spacers leave it to turn."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Before, ChainFact, ChainLink, Role
from binder_plugins.shafts.chaining import GENERAL, gap_of, link_of
from binder_solid.row_walls import spacers_of
from binder_trade.limits import stray_mm

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, ShaftFact
    from binder_solid.row_walls import Walls

_WHY = "it is faced to the gap as measured, once its walls stand"


def row_chain(fact: ShaftFact, design: Design) -> ChainFact | None:
    """The chain of a row that spacers close between two walls; None where none are made for it."""
    found = spacers_of(fact, design)
    if found is None:
        return None
    title = design.parts[fact.subject].title
    closing = found.title if found.count == 1 else f"{found.title}, {found.count} off together"
    whole = found.count * found.long
    strays = (stray_mm(found.long),) * found.count
    spacers = ChainLink(
        closing, whole, sum(strays), -sum(strays), -1.0, f"{fact.subject} spacers", GENERAL, strays
    )
    others = [
        link_of(n, piece.title, piece, fact.subject, design)
        for n, piece in enumerate(fact.pieces)
        if any(piece is one for one in found.others)
    ]
    return ChainFact(
        subject=f"{fact.subject}: row",
        kind="end float",
        title=f"End float of the row on the {title}",
        items=tuple(dict.fromkeys([found.walls.item, found.item, *(o.item for o in found.others)])),
        links=(gap_of(found.walls.gap, fact.subject), spacers, *others),
        least=float(fact.least),
        most=float(fact.most),
        jams=0.0,
        closing=closing,
        at=fact.at,
    )


def spaced_last(fact: ShaftFact, design: Design) -> Iterator[Before]:
    """The spacers after the walls and after what shares the gap with them."""
    found = spacers_of(fact, design)
    if found is None:
        return
    for name in dict.fromkeys([found.walls.item, *(one.item for one in found.others)]):
        kind = "measure" if name in design.bought else "make"
        yield Before(f"{kind} {name}", f"make {found.item}", _WHY, is_must=False, at=fact.at)


def over_walls(walls: Walls, fact: ShaftFact, design: Design) -> ChainLink:
    """What clips grip of two walls: the gap and both walls, which stray each by itself."""
    thick = [float(one.length or 0) for one in fact.pieces if one.role is Role.BEARING]
    strays = tuple(stray_mm(mm) for mm in (walls.gap, *thick))
    item = design.item(walls.item)
    name = f"{item.title if item is not None else walls.item} over both walls"
    half = sum(strays)
    return ChainLink(name, walls.over, half, -half, -1.0, f"{fact.subject} over", GENERAL, strays)
