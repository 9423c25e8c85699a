"""A bead chain and its pockets to the wheel and the whole beads of a loop."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.belts.centres import centres_for
from binder_trade.belts.run import run
from binder_trade.explained import NotDefined, Step, mm, positive, within

BEADS: Final = "geometry: beads one pitch apart along the chord of the wheel"
_PLAY, _GROOVE = 1.05, 1.3


@dataclass(frozen=True, slots=True)
class BeadWheel:
    """A wheel with a pocket for each bead; mm. The beads' middles lie on the pitch circle.

    `pocket_mm` is the diameter of a pocket, with its play; `groove_mm` the groove for the wire.
    """

    pockets: int
    pitch_circle_mm: float
    rim_mm: float
    pocket_mm: float
    groove_mm: float
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class BeadLoop:
    """A closed chain of whole beads and its centre distance; mm."""

    beads: int
    length_mm: float
    centres_mm: float
    steps: tuple[Step, ...]


def bead_wheel(pitch_mm: float, bead_mm: float, pockets: int, link_mm: float = 0.0) -> BeadWheel:
    """A wheel for a bead chain: bead diameter and pitch in mm, half of each bead in the rim.

    `link_mm` is the thickness of the wire between the beads. Raises NotDefined where beads are
    thicker than their pitch. Source: `BEADS`; play of a twentieth common practice.
    """
    pitch, bead = positive(pitch_mm, "the pitch"), positive(bead_mm, "the bead")
    if bead >= pitch:
        raise NotDefined("the beads are thicker than they are apart", "measure over ten pitches")
    count = int(within(pockets, 5, 200, "the number of pockets"))
    circle = pitch / math.sin(math.pi / count)
    pocket = _PLAY * bead
    steps = (
        Step("pitch circle", "pitch / sin(180° / pockets)", mm(circle), BEADS),
        Step("pocket", "1.05 × the bead", mm(pocket), "common practice, no source"),
    )
    return BeadWheel(count, circle, circle, pocket, _GROOVE * (link_mm or bead / 3), steps)


def bead_loop(pitch_mm: float, first: int, second: int, centres_mm: float) -> BeadLoop:
    """The whole beads nearest to a centre distance, and the distance that they want; mm."""
    pitch = positive(pitch_mm, "the pitch")
    # Along the polygon a wheel takes up pockets × pitch, as a pulley of that girth would.
    one, two = (
        pitch * within(z, 5, 200, "the number of pockets") / math.pi for z in (first, second)
    )
    beads = round(run(one, two, centres_mm).length_mm / pitch)
    found = centres_for(one, two, beads * pitch).centres_mm
    steps = (
        Step("beads", "length / pitch, whole", str(beads), BEADS),
        Step("centre distance", "solved for whole beads", mm(found), BEADS),
    )
    return BeadLoop(beads, beads * pitch, found, steps)
