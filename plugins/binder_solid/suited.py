"""Lengths that close a chain: made to the others as measured, so that no drawing fixes them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import ChainFact, ShaftFact, SummedFact
from binder_solid.facts import FormFact
from binder_solid.row_walls import spacers_of

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import ChainLink, Design

_NEAR = 1e-6
_LENGTH = " length"


@dataclass(frozen=True, slots=True)
class Suited:
    """A length of `item` that is made to `chain`, whose closing link is `link`.

    `step` names the step of turned work whose length it is, '' where it is the whole of the part.
    `shaft` is the shaft whose row it closes, '' between shoulders.
    """

    item: str
    chain: ChainFact
    link: ChainLink
    step: str = ""
    shaft: str = ""


def suited_lengths(design: Design) -> Iterator[Suited]:
    """Every length of a made part that closes a chain; tools and what is set by hand are none."""
    for chain in design.facts.all(ChainFact):
        link = next((one for one in chain.links if one.name == chain.closing), None)
        if link is None or chain.is_set:
            continue
        found = _between_shoulders(chain, link, design) or _on_a_shaft(chain, link, design)
        if found is not None and found.item in design.parts:
            yield found


def suited_in(item: str, design: Design) -> tuple[Suited, ...]:
    """Those of one part, by the order of the chains."""
    return tuple(one for one in suited_lengths(design) if one.item == item)


def summed_in(item: str, design: Design) -> tuple[SummedFact, ...]:
    """The lengths of one part that its leaf works to a sum, by the order of the chains."""
    return tuple(one for one in design.facts.all(SummedFact) if one.item == item)


def sheet_id(chain: ChainFact, design: Design) -> str:
    """The id of the sheet on which a chain is reckoned: they are numbered as the facts stand."""
    for number, one in enumerate(design.facts.all(ChainFact), 1):
        if one is chain:
            return f"chain-{number}"
    return ""


def _between_shoulders(chain: ChainFact, link: ChainLink, design: Design) -> Suited | None:
    """A journal by the name of its step; a hub that is faced to it, where that is all of it."""
    if not link.key.endswith(_LENGTH):
        return None
    item, _, place = link.key.removesuffix(_LENGTH).partition(".")
    form = design.facts.about(FormFact, item)
    steps = {one.name for one in form.stretches} if form is not None else set()
    if place in steps:
        return Suited(item, chain, link, "" if len(steps) == 1 else place)
    is_whole = form is not None and abs(form.size[0] - link.nominal) < _NEAR
    return Suited(item, chain, link) if is_whole and bool(steps) else None


def _on_a_shaft(chain: ChainFact, link: ChainLink, design: Design) -> Suited | None:
    """What closes a row: a piece of it, spacers that share a gap, or the shaft by its grooves."""
    name, _, which = link.key.rpartition(" ")
    shaft = design.facts.about(ShaftFact, name)
    if shaft is None:
        return None
    if which == "walls":
        return Suited(name, chain, link, shaft=name)
    if which == "spacers":
        found = spacers_of(shaft, design)
        return Suited(found.item, chain, link, shaft=name) if found is not None else None
    if not which.isdigit():
        return None
    piece = shaft.pieces[int(which) - 1]
    return Suited(piece.item, chain, link, shaft=name)
