"""A row that two clips hold to its tolerance chain, from the wall of one groove to the other's."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from typing import TYPE_CHECKING

from binder.api import ChainFact, ChainLink, Located, Role
from binder_plugins.shafts.chaining import GENERAL, gap_of, link_of, named
from binder_plugins.shafts.clipped import clips_of
from binder_plugins.shafts.row_chaining import over_walls
from binder_plugins.shafts.stacking import bearings
from binder_solid.row_walls import walls_of
from binder_trade.limits import stray_mm

if TYPE_CHECKING:
    from binder.api import Design, ShaftFact


def clip_chain(fact: ShaftFact, design: Design) -> ChainFact | None:
    """The chain of a row between two clips on the shaft; None where a length is not told.

    The clips lie on the outer walls of their grooves, so the walls open it; the clips and all that
    they grip close it. The grooves are cut last, to what is gripped as measured.
    """
    clips = clips_of(fact, design)
    if clips is None:
        return None
    title = design.parts[fact.subject].title
    half = stray_mm(clips.walls)
    closing = f"outer walls of the grooves of the {title}"
    walls = ChainLink(closing, clips.walls, half, -half, 1.0, f"{fact.subject} walls", GENERAL)
    rings = [
        ChainLink(
            f"clip at the {end}", thick, 0.0, 0.0, -1.0, f"{fact.subject} {end}", "measured first"
        )
        for end, thick in zip(("left", "right"), clips.thick, strict=True)
    ]
    return ChainFact(
        subject=f"{fact.subject}: end float",
        kind="end float",
        title=f"End float of the {title}",
        items=tuple(dict.fromkeys([fact.subject, *(one.item for one in fact.pieces)])),
        links=(walls, *rings, *_gripped(fact, design)),
        least=float(fact.least),
        most=float(fact.most),
        jams=0.0,
        closing=closing,
        at=fact.at,
    )


def _gripped(fact: ShaftFact, design: Design) -> Iterator[ChainLink]:
    """The bearings, the gap between them, and what is loose outside, from stop to stop.

    Two walls of one piece are measured over both, in one.
    """
    first, last = sorted((fact.stops[0], fact.stops[-1]))
    walls = walls_of(fact) if fact.located is Located.OUTSIDE else None
    if walls is not None:
        yield over_walls(walls, fact, design)
    places = [n for n in bearings(fact.pieces) if first < n < last]
    alike = Counter(piece.title for piece in fact.pieces[first + 1 : last])
    for n in range(first + 1, last):
        piece = fact.pieces[n]
        is_outside = not places[0] < n < places[-1]
        if walls is not None and piece.role is Role.BEARING:
            continue
        if is_outside and piece.role in (Role.BEARING, Role.LOOSE):
            yield link_of(n, named(fact, n, alike), piece, fact.subject, design)
    if walls is None and fact.located is Located.OUTSIDE and fact.apart is not None:
        yield gap_of(float(fact.apart), fact.subject, -1.0)
