"""A coordinate to whole turns and divisions of the handwheel that winds it."""

from __future__ import annotations

import math
from dataclasses import dataclass

from binder_trade.explained import positive

# An eye puts a mark on a line or half way between two.
_READ = 0.5
_HAIR = 1e-9


@dataclass(frozen=True, slots=True)
class Wound:
    """Turns and divisions from nought; `is_back` where the coordinate lies before it.

    `left_mm` is what the dial cannot show: the coordinate less what is wound.
    """

    turns: int
    divisions: float
    is_back: bool
    left_mm: float


def wound(coordinate_mm: float, turn_mm: float, division_mm: float) -> Wound:
    """Turns and divisions, to half a division, of a screw that travels so far for one turn.

    Each is worked from nought, so that roundings do not add up. NotDefined for a turn or a
    division of no size. Source: common practice.
    """
    turn = positive(turn_mm, "one turn")
    step = positive(division_mm, "one division") * _READ
    far = abs(coordinate_mm)
    turns = math.floor(far / turn + _HAIR)
    steps = math.floor((far - turns * turn) / step + 0.5)
    if steps * step > turn - step / 2.0:
        turns, steps = turns + 1, 0
    is_back = coordinate_mm < 0 and (turns > 0 or steps > 0)
    shown = (turns * turn + steps * step) * (-1 if is_back else 1)
    return Wound(turns, steps * _READ, is_back, coordinate_mm - shown)
