"""A riveted fabrication: each rivet closed on its dolly, then held so that nothing caves in."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice
from binder_plugins.operations.facts import Grip, SetUp
from binder_trade.fastening.rivet_length import rivet_allowance

if TYPE_CHECKING:
    from binder.api import Bought, Fabrication
    from binder_plugins.operations.work import Work

# Minutes for each rivet: put in, cut, set, closed, tried. Common practice, no source.
_EACH_MIN = 3.0
_SUNK = ("countersunk", "flush")


def riveted(work: Work, item: Fabrication) -> SetUp:
    """The rivets closed over a dolly in the bench vice, the outer ones first."""
    rivets, count = _rivets(work, item)
    is_sunk = any(word in rivets.what for word in _SUNK) if rivets is not None else False
    many = f"{count} rivets, one" if count > 1 else "the rivet"
    dolly = "a flat dolly" if is_sunk else "a dolly hollowed to the rivet's head"
    shape = "into the countersink" if is_sunk else "round with the snap"
    tail = rivet_allowance("countersunk" if is_sunk else "snap")
    order = " at each end first, then the others from there inwards: each" if count > 1 else ":"
    act = work.act(
        "rivet",
        f"{many}{order} with its head on the dolly, the plates drawn down with a set, the tail cut "
        f"{tail:g} shanks over the plate, swelled with the hammer, closed {shape}; after each see "
        "that the whole is flat",
        feature="joint",
        tool=f"hammer, set, {'' if is_sunk else 'snap, '}{dolly}",
        spoils="a tail too long, which bends over in place of filling its hole",
    )
    vice = bench_vice(work.design.workshop)
    on = "the dolly, upright; the pieces pegged through holes not yet riveted"
    grip = Grip(vice or "on an anvil", "bench", on)
    return SetUp(1, "bench", "", grip, "", (replace(act, run=_EACH_MIN * max(count, 1)),))


def _rivets(work: Work, item: Fabrication) -> tuple[Bought | None, int]:
    """What is bought as rivets for it, and how many; each plate may be held by something else."""
    for piece in item.pieces:
        bought = work.design.bought.get(piece.item)
        if bought is not None and "rivet" in bought.what:
            return bought, piece.count
    return None, 0
