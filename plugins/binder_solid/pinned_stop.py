"""A stop that a pin through it fixes on a shaft, to how the float is set before it is drilled."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import Located, ShaftFact, shown_length
from binder_solid.drilled_as_one import is_drilled_as_one

if TYPE_CHECKING:
    from binder.api import Design, Joint, Piece


@dataclass(frozen=True, slots=True)
class PinnedStop:
    """The stop of a row that is drilled last: the shaft's fact, and its place among the pieces."""

    shaft: ShaftFact
    number: int

    @property
    def piece(self) -> Piece:
        """The stop itself."""
        return self.shaft.pieces[self.number]

    @property
    def other(self) -> Piece:
        """The stop on the far side of the bearing, which is pushed up against it."""
        return self.shaft.pieces[next(n for n in self.shaft.stops if n != self.number)]

    @property
    def beside(self) -> Piece:
        """What the stop stands off from, towards the other one."""
        toward = 1 if any(n > self.number for n in self.shaft.stops) else -1
        return self.shaft.pieces[self.number + toward]

    def said(self, design: Design) -> str:
        """How it is brought to its place, and marked there. Common practice, no source."""
        shaft = design.parts[self.shaft.subject].title
        middle = shown_length((self.shaft.least + self.shaft.most) / 2, design.units)
        stop, beside = (f"the {one.title}" for one in (self.piece, self.beside))
        return (
            f"put the {shaft} in its bearing with all of its row on it, the {self.other.title} up "
            f"against its side; push {stop} up with {middle} of feeler between it and {beside}; "
            f"scribe the {shaft} along the outer face of {stop}, and take it out again: {stop} "
            "goes back to that line"
        )


def pinned_stop(joint: Joint, design: Design) -> PinnedStop | None:
    """The stop that a joint drilled as one closes a row by; None where it closes none.

    Of two such stops the one that is written last: the other stands where it is drawn.
    """
    if not is_drilled_as_one(joint):
        return None
    for shaft in design.facts.all(ShaftFact):
        if shaft.located not in (Located.OUTSIDE, Located.ONE) or len(shaft.stops) != 2:
            continue
        held = {shaft.pieces[n].joint: n for n in shaft.stops}
        drilled = [name for name, one in design.joints.items()
                   if name in held and is_drilled_as_one(one)]  # fmt: skip
        if drilled and drilled[-1] == joint.name and len(held) == 2:
            return PinnedStop(shaft, held[joint.name])
    return None


def waits_for(stop: PinnedStop) -> list[str]:
    """The made or bought items that have to be there to set it: all of the row but itself."""
    names = [
        one.item
        for one in stop.shaft.pieces
        if one.item not in (stop.shaft.subject, stop.piece.item)
    ]
    return list(dict.fromkeys(names))
