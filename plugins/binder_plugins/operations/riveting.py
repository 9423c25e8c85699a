"""A riveted fabrication: each rivet closed on its dolly, then held so that nothing caves in."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice
from binder_plugins.operations.facts import Grip, SetUp
from binder_trade.fastening import FastenerName, Unreadable, read_fastener, rivet_allowance

if TYPE_CHECKING:
    from binder.api import Bought, Fabrication
    from binder_plugins.operations.work import Work

# Minutes for each rivet: put in, cut, set, closed, tried. Common practice, no source.
_EACH_MIN = 3.0
_SUNK = ("countersunk", "flush")
# What wire cutters cut without springing the tail, in mm; common practice, no source.
_CUT_MM = 2.5


def riveted(work: Work, item: Fabrication) -> SetUp:
    """The rivets closed over a dolly in the bench vice, the outer ones first."""
    rivets, count = _rivets(work, item)
    is_sunk = any(word in rivets.what for word in _SUNK) if rivets is not None else False
    many = f"{count} rivets, one" if count > 1 else "the rivet"
    dolly = "a flat dolly" if is_sunk else "a dolly hollowed to the rivet's head"
    shape = "into the countersink" if is_sunk else "round with the snap"
    tail = rivet_allowance("countersunk" if is_sunk else "snap")
    across = _across(rivets)
    cutter = "wire cutters" if across <= _CUT_MM else "hacksaw"
    order = " at each end first, then the others from there inwards: each" if count > 1 else ":"
    act = work.act(
        "rivet",
        f"{many}{order} with its head on the dolly, the plates drawn down with a set, the tail cut "
        f"{tail:g} shanks over the plate and filed flat, swelled with the hammer, closed {shape}; "
        "after each see that the whole is flat",
        feature="joint",
        tool=f"hammer, set, {'' if is_sunk else 'snap, '}{dolly}, {cutter}, files",
        size=across,
        spoils="a tail too long, which bends over in place of filling its hole",
    )
    vice = bench_vice(work.design.workshop)
    pegged = "; the pieces pegged through holes not yet riveted" if count > 1 else ""
    on = f"the dolly, upright{pegged}"
    grip = Grip(vice or "on an anvil", "bench", on)
    return SetUp(1, "bench", "", grip, "", (replace(act, run=_EACH_MIN * max(count, 1)),))


def _across(rivets: Bought | None) -> float:
    """The shank in mm; 0 where what is bought does not tell it."""
    name: FastenerName | None = None
    if rivets is not None:
        with suppress(Unreadable):
            name = read_fastener(rivets.what)
    return (name.diameter_mm or 0.0) if name is not None else 0.0


def _rivets(work: Work, item: Fabrication) -> tuple[Bought | None, int]:
    """What is bought as rivets for it, and how many; each plate may be held by something else."""
    for piece in item.pieces:
        bought = work.design.bought.get(piece.item)
        if bought is not None and "rivet" in bought.what:
            return bought, piece.count
    return None, 0
