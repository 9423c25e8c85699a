"""Facts of chains to their sums."""

from __future__ import annotations

from binder.api import ChainFact, exact, shown_length
from binder_making.chains import Chain, Link, Suited, chain, made_to_suit
from binder_trade.explained import NotDefined


def reckoned(fact: ChainFact) -> Chain | None:
    """Worst case and root sum square; None where the sizes are no chain."""
    try:
        return chain(
            Link(one.name, one.nominal, one.upper, one.lower, one.factor, one.of)
            for one in fact.links
        )
    except NotDefined:
        return None


def suited(fact: ChainFact, whole: Chain) -> Suited | None:
    """The closing piece with all others as drawn: its target, its room, and the sum."""
    if not fact.closing:
        return None
    drawn = {one.name: one.nominal for one in fact.links if one.name != fact.closing}
    try:
        return made_to_suit(whole, fact.closing, (fact.least, fact.most), drawn)
    except NotDefined:
        return None


def closing_range(fact: ChainFact, whole: Chain) -> tuple[float, float] | None:
    """Between which lengths in mm the closing piece is made, wherever the others fall."""
    target = suited(fact, whole)
    if target is None:
        return None
    stray = sum(one.half_mm for one in whole.contributions if one.name != fact.closing)
    return target.target_mm - stray, target.target_mm + stray


def printed(mm: float, units: str) -> str:
    """A length in mm to a thousandth, in the units of the drawings."""
    return shown_length(exact(round(mm, 3) + 0.0), units).replace("-", "−")
