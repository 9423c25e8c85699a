"""A bead chain and its pockets to the wheel and the whole beads of a loop."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.belts.centres import centres_for
from binder_trade.belts.run import run
from binder_trade.explained import NotDefined, Step, mm, positive, within

BEADS: Final = "geometry: beads one pitch apart along the chord of the wheel"


@dataclass(frozen=True, slots=True)
class BeadWheel:
    """A wheel with a pocket for each bead; mm. The beads' middles lie on the pitch circle."""

    pockets: int
    pitch_circle_mm: float
    rim_mm: float
    pocket_mm: float
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class BeadLoop:
    """A closed chain of whole beads and its centre distance; mm."""

    beads: int
    length_mm: float
    centres_mm: float
    steps: tuple[Step, ...]


def bead_wheel(pitch_mm: float, bead_mm: float, pockets: int) -> BeadWheel:
    """A wheel for a bead chain: bead diameter and pitch in mm, half of each bead in the rim.

    Raises NotDefined where beads are thicker than their pitch. Source: `BEADS`.
    """
    pitch, bead = positive(pitch_mm, "the pitch"), positive(bead_mm, "the bead")
    if bead >= pitch:
        raise NotDefined("the beads are thicker than they are apart", "measure over ten pitches")
    count = int(within(pockets, 5, 200, "the number of pockets"))
    circle = pitch / math.sin(math.pi / count)
    steps = (Step("pitch circle", "pitch / sin(180° / pockets)", mm(circle), BEADS),)
    return BeadWheel(count, circle, circle, bead, steps)


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
