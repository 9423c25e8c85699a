"""What turns between two shoulders: the half made first is measured along, the other made to it."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import ChainFact, ChainLink
from binder_plugins.operations.gauging import read_along
from binder_solid.float_tried import RIVETED, float_tried

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work

_KIND = "shoulders"
_NEAR = 1e-6
_CLEAR = "draw the tailstock centre back, and "
_SHOULDER = "; too little: take the shoulder next to the chuck back"
_DRIVER = "screwdriver or key"
_BY_SCREWS = frozenset({"screwed", "bolted", "studded"})


def trials(work: Work, acts: Sequence[Act], *, carried: bool = False) -> Iterator[Act]:
    """How a journal that is turned in these acts is tried before it leaves the grip.

    What is `carried` by a centre is free of it for that; where a tail is spread later, what it
    closes is on it, or nothing stops what turns.
    """
    turned = {f"{work.name}.{act.feature} length": act.feature for act in acts if act.act == "turn"}
    for chain, closing, other in _closed(work):
        if closing.key in turned and closing.factor > 0:
            act = work.act(
                "gauge",
                f"{_CLEAR if carried else ''}try {_tried(work, chain, other)} on before it leaves "
                f"the chuck{_stopped(work, chain)}: it turns freely, and has "
                f"{work.mm(chain.least)} to {work.mm(chain.most)} of float"
                f"{_SHOULDER if _is_riveted(work, chain) else ''}",
                feature=turned[closing.key],
                tool=_DRIVER if _is_screwed(work, chain) else "",
                tags=("tried-on",),
            )
            yield replace(act, measure=float_tried(chain.least, chain.most, work.design))


def _tried(work: Work, chain: ChainFact, other: ChainLink) -> str:
    """`the saddle, the keeper and its screw`: what turns, and what stops it."""
    joint = work.design.joints.get(chain.closed_by)
    names = [_item(other)]
    if joint is not None:
        names += [name for name in joint.items if name not in (work.name, names[0])]
    items = [(name, work.design.item(name)) for name in names]
    said = [f"the {item.title if item is not None else name}" for name, item in items]
    if _is_screwed(work, chain):
        said.append("its screw")
    return said[0] if len(said) == 1 else f"{', '.join(said[:-1])} and {said[-1]}"


def _stopped(work: Work, chain: ChainFact) -> str:
    """`, the crank arm on the tail dry, hard against its shoulder`, where that is riveted later."""
    joint = work.design.joints.get(chain.closed_by)
    if joint is None or not _is_riveted(work, chain):
        return ""
    place = next((end.place for end in joint.ends if end.item == work.name), "")
    tail = f"the {place.replace('_', ' ')}" if place else "it"
    on = next((name for name in joint.items if name != work.name), "")
    item = work.design.item(on)
    return (
        f", the {item.title if item is not None else on} dry on {tail}, hard against its shoulder"
    )


def _is_screwed(work: Work, chain: ChainFact) -> bool:
    joint = work.design.joints.get(chain.closed_by)
    return joint is not None and joint.kind in _BY_SCREWS


def _is_riveted(work: Work, chain: ChainFact) -> bool:
    joint = work.design.joints.get(chain.closed_by)
    return joint is not None and joint.kind == RIVETED


def suited_hub(work: Work, length: float) -> str:
    """The sum for a hub that is faced to its journal; '' where it is not the whole of a part."""
    for chain, closing, other in _closed(work):
        is_alone = len(chain.links) == 2
        if is_alone and closing.factor < 0 and abs(closing.nominal - length) < _NEAR:
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
            tool=read_along(work, other.nominal),
            # A bore comes before its journal: a journal's length cannot come before the hub.
            tags=("master",) if closing.factor > 0 else (),
        )
        yield replace(act, joints=(chain.subject.partition(": ")[0],))


def _chains(work: Work) -> Iterator[tuple[ChainFact, ChainLink, ChainLink]]:
    """The floats between shoulders in which one length is made to the others as measured."""
    for chain in work.design.facts.all(ChainFact):
        closing = next((one for one in chain.links if one.name == chain.closing), None)
        others = [one for one in chain.links if one is not closing]
        if chain.kind == _KIND and closing is not None:
            yield from ((chain, closing, other) for other in others)


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


def _item(link: ChainLink) -> str:
    return link.key.partition(".")[0]
