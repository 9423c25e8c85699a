"""What turns between two shoulders: the half made first is measured along, the other made to it."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import ChainFact, ChainLink

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work

_KIND = "shoulders"
_NEAR = 1e-6
_TRIED = "try both on, with what closes them, before it leaves the chuck"


def suited_step(work: Work, place: str) -> str:
    """The sum for a journal that is made to the hub on it, as words behind its last cut."""
    for chain, closing, other in _closed(work):
        if closing.key == _key(work, place):
            return f"; as long as the {_sum(work, chain, closing, other)}; {_TRIED}"
    return ""


def suited_hub(work: Work, length: float) -> str:
    """The sum for a hub that is faced to its journal; '' where it is not the whole of a part."""
    for chain, closing, other in _closed(work):
        if closing.factor < 0 and abs(closing.nominal - length) < _NEAR:
            return f"the {_sum(work, chain, closing, other)}"
    return ""


def lengths_measured(work: Work) -> Iterator[Act]:
    """The length of a hub, or of a journal, to which the other is made."""
    for chain, closing, other in _chains(work):
        if _item(other) != work.name:
            continue
        mate = work.design.item(_item(closing))
        title = mate.title if mate is not None else _item(closing)
        act = work.act(
            "measure",
            f"measure what turns between the shoulders, the {other.name}: ______, "
            f"{work.mm(other.nominal)} as drawn; the {title} is made to it",
            feature=other.name,
            tool=work.read_along(other.nominal),
            tags=("master",),
        )
        yield replace(act, joints=(chain.subject.partition(": ")[0],))


def _chains(work: Work) -> Iterator[tuple[ChainFact, ChainLink, ChainLink]]:
    """The floats between shoulders in which one length is made to the other as measured."""
    for chain in work.design.facts.all(ChainFact):
        closing = next((one for one in chain.links if one.name == chain.closing), None)
        others = [one for one in chain.links if one is not closing]
        if chain.kind == _KIND and closing is not None and len(others) == 1:
            yield chain, closing, others[0]


def _closed(work: Work) -> Iterator[tuple[ChainFact, ChainLink, ChainLink]]:
    """Those that this part closes."""
    return (found for found in _chains(work) if _item(found[1]) == work.name)


def _sum(work: Work, chain: ChainFact, closing: ChainLink, other: ChainLink) -> str:
    """`length of the saddle as measured + 0.2 mm = ______, 6.2 mm as drawn`."""
    wanted = (chain.least + chain.most) / 2
    sign, more = ("+", wanted) if closing.factor > 0 else ("−", -wanted)
    to = other.nominal + more
    return (
        f"{other.name} as measured {sign} {work.mm(wanted)} = ______, {work.mm(to)} if it "
        "came as drawn"
    )


def _key(work: Work, place: str) -> str:
    return f"{work.name}.{place} length"


def _item(link: ChainLink) -> str:
    return link.key.partition(".")[0]
