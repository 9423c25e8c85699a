"""The row on a shaft to its tolerance chain: what the lengths leave as end float."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from binder.api import Bought, ChainFact, ChainLink, Design, Piece, ShaftFact
from binder_plugins.shafts.stacking import bearings
from binder_trade.limits import stray_mm

_GENERAL = "ISO 2768-1 m"


def chain_of(fact: ShaftFact, design: Design) -> ChainFact | None:
    """The chain of a row that stands between two bearings, where all its lengths are told."""
    if fact.play is None or fact.apart is None:
        return None
    links = [_gap(float(fact.apart), fact.subject), *_pieces(fact, design)]
    title = design.parts[fact.subject].title
    closing = _closing(fact, links)
    return ChainFact(
        subject=f"{fact.subject}: end float",
        kind="end float",
        title=f"End float of the {title}",
        items=tuple(dict.fromkeys([fact.subject, *(one.item for one in fact.pieces)])),
        links=tuple(links),
        least=float(fact.least),
        most=float(fact.most),
        jams=0.0,
        closing=closing,
        way_out=f"write `to_suit: {_offered(fact)}`, and turn that last",
        at=fact.at,
    )


def _gap(apart: float, shaft: str) -> ChainLink:
    half = stray_mm(apart)
    return ChainLink("gap between the bearings", apart, half, -half, 1.0, f"{shaft} gap", _GENERAL)


def _pieces(fact: ShaftFact, design: Design) -> Iterator[ChainLink]:
    """What stands between the outer bearings; alike pieces are told apart by their number."""
    places = bearings(fact.pieces)
    inside = range(places[0] + 1, places[-1])
    alike = Counter(fact.pieces[n].title for n in inside)
    for n in inside:
        piece = fact.pieces[n]
        name = f"{piece.title} (no. {n + 1})" if alike[piece.title] > 1 else piece.title
        yield _link(n, name, piece, fact.subject, design)


def _link(n: int, name: str, piece: Piece, shaft: str, design: Design) -> ChainLink:
    length = float(piece.length or 0)
    item = design.item(piece.item)
    is_measured = isinstance(item, Bought) and bool(item.measured)
    half = 0.0 if is_measured else stray_mm(length)
    why = "measured first" if is_measured else _GENERAL
    return ChainLink(name, length, half, -half, -1.0, f"{shaft} {n + 1}", why)


def _closing(fact: ShaftFact, links: Sequence[ChainLink]) -> str:
    if fact.to_suit is None:
        return ""
    key = f"{fact.subject} {fact.to_suit + 1}"
    return next((one.name for one in links if one.key == key), "")


def _offered(fact: ShaftFact) -> str:
    """The shortest piece between the bearings: the least work to make again."""
    places = bearings(fact.pieces)
    inside = fact.pieces[places[0] + 1 : places[-1]]
    return min(inside, key=lambda one: one.length or 0).item
