"""The mandrel that carries a wheel on the divider: its neck under the teeth, and what bears it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder_plugins.operations.gripping import SUPPORTED
from binder_plugins.operations.ratchets import lowest
from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder.api import Design

# Common practice, no source, all in mm: how far the neck stays under the bottoms of the teeth, to
# what step it is turned, how much thicker than the bore it need be and how much it must be; the
# least body behind it; what cutter, spindle and clamps stay clear of one another; the spindle's
# nose with its chuck, as a radius; how high clamps and nuts stand before the flange; the ledge that
# they bear on; the flange; the thread for the nut; what the lathe's chuck holds, or the head's.
_UNDER, _STEP, _MORE, _SHOULDER = 0.25, 0.5, 8.0, 1.0
_BODY, _CLEAR, _NOSE = 16.0, 2.0, 25.0
_CLAMPS, _LEDGE = 16.0, 7.0
FLANGE, THREAD, _HELD = 8.0, 8.0, 20.0
# From so large on a cutter is a disc that swings beside the wheel; smaller ones come from above.
_DISC = 25.0
# The depth of an involute tooth in modules, as in `teeth`. Source: ISO 53, profile A.
_WHOLE_DEPTH = 2.25
_LEAST_TEETH = 3
# In so many depths at the most teeth are cut because of a mandrel that bends, and so many mm a
# body is made thicker for its sake: common practice, no source.
_DEPTHS, _THICKER = 3, 8
_SAME = 1e-6


@dataclass(frozen=True, slots=True)
class TableMandrel:
    """Sizes of a mandrel in mm.

    `root` is the diameter over the bottoms of the teeth, `low` that which the cutter leaves whole:
    the backs of a few ratchet teeth pass nearer to the axis than their bottoms. `neck` is that
    under them, `swing` how long the neck must be before the `body` begins, `apart` from the wheel
    to the flange or the chuck of the head.
    """

    bore: float
    wide: float
    root: float
    low: float
    neck: float
    swing: float
    body: float
    apart: float
    is_on_head: bool

    @property
    def is_grazed(self) -> bool:
        """Whether the bore leaves no room for a shoulder that the cutter does not touch."""
        return self.neck > self.low

    @property
    def stands_out(self) -> float:
        """How many times its thickness neck or body stand out to the far side of the wheel."""
        return max((self.swing + self.wide) / self.neck, (self.apart + self.wide) / self.body)

    @property
    def out(self) -> float:
        """From the flange or the chuck to the far side of the wheel, in mm."""
        return self.apart + self.wide

    @property
    def thin(self) -> float:
        """How much of that is no thicker than the neck, in mm."""
        return self.swing + self.wide if self.swing else self.out

    @property
    def bends(self) -> float:
        """How far it bends under the cutter, over what a plain one does that is just stiff enough.

        The cutter pushes with F at the far side of the wheel. A cantilever of two thicknesses
        bends there by F / 3E (L1³ / I1 + (L³ − L1³) / I2), with L1 and I1 of the thin end,
        I = π d⁴ / 64; it is the integral of M² / 2EI, piece by piece (Castigliano). The plain
        one is as long, and L / `SUPPORTED` thick all along.
        """
        thin, out = self.thin, self.out
        yields = thin**3 / self.neck**4 + (out**3 - thin**3) / self.body**4
        return yields * (out / SUPPORTED) ** 4 / out**3

    @property
    def depths(self) -> int:
        """In how many depths teeth are cut, so that each bends it no more than it may.

        What pushes goes with the section of the chip, and each depth takes as much of that.
        """
        return max(math.ceil(self.bends - _SAME), 1)

    @property
    def is_carried(self) -> bool:
        """Whether its end must be carried, since it would bend away from the cutter."""
        return self.stands_out > SUPPORTED + _SAME or self.depths > _DEPTHS

    @property
    def across(self) -> float:
        """The bar: its full size is the flange, or what the head grips."""
        return self.body if self.is_on_head else self.body + 2 * _LEDGE

    @property
    def long(self) -> float:
        """The bar's length, from the thread for the nut to what is held in a chuck."""
        flange = 0.0 if self.is_on_head else FLANGE
        return THREAD + self.wide + self.apart + flange + _HELD


@dataclass(frozen=True, slots=True)
class Cut:
    """Teeth as they are cut: of which feature, how deep, by a cutter of what diameter, in mm."""

    feature: str
    deep: float
    cutter: float


def table_mandrel(design: Design, name: str, bore: float, cut: Cut) -> TableMandrel | None:
    """The mandrel of a toothed part with a bore; None where its teeth tell no outside."""
    part, form = design.parts.get(name), design.facts.about(FormFact, name)
    outside = _outside(part, form, cut) if form is not None else 0.0
    root = outside - 2 * cut.deep
    if part is None or form is None or bore <= 0 or root <= 0 or cut.cutter <= 0:
        return None
    low = _low(part.shape, form, root, cut)
    neck = math.floor((low - _UNDER) / _STEP) * _STEP
    neck = max(min(neck, max(bore + _MORE, _BODY)), bore + _SHOULDER)
    is_on_head = bool(design.workshop.entry.holding.dividing_heads)
    radius = cut.cutter / 2
    clamps = 0.0 if is_on_head else _CLAMPS
    apart = math.ceil(max(radius, _NOSE) + _CLEAR + clamps)
    wide = form.size[0]
    least = float(max(neck, _BODY, math.ceil((apart + wide) / SUPPORTED)))
    able = []
    for body in (least + more for more in range(_THICKER + 1)):
        swing = _swing(radius, low / 2, body / 2) if cut.cutter >= _DISC else radius
        swing = 0.0 if body <= neck else math.ceil(swing + _CLEAR)
        able.append(TableMandrel(bore, wide, root, low, neck, swing, body, apart, is_on_head))
    return _stiffest(able)


def _stiffest(able: Sequence[TableMandrel]) -> TableMandrel:
    """The first that is stiff enough; where none is, the one that bends least.

    A thicker body is stiffer, and wants a longer neck for the cutter to swing past it. Where the
    end must be carried all the same, none is made thicker for it.
    """
    enough = (one for one in able if one.bends <= 1 + _SAME and one.stands_out <= SUPPORTED + _SAME)
    best = next(enough, None) or min(able, key=lambda one: one.bends)
    return able[0] if best.is_carried else best


def _low(shape: object, form: FormFact, root: float, cut: Cut) -> float:
    """The diameter that the cutter leaves whole."""
    count = int(getattr(shape, "teeth", 0) or 0)
    if form.shape != "ratchet" or cut.feature != "teeth" or count < _LEAST_TEETH:
        return root
    lean = getattr(shape, "lean", None)
    degrees = float(lean.exact) if lean is not None else 0.0
    return 2 * lowest(count, root + 2 * cut.deep, cut.deep, degrees)


def _swing(radius: float, root: float, body: float) -> float:
    """How far past the wheel a disc that stands at the bottoms reaches over what is so thick."""
    off = radius + root - body
    if off >= radius:
        return 0.0
    return math.sqrt(radius**2 - max(off, 0.0) ** 2)


def _outside(part: object, form: FormFact, cut: Cut) -> float:
    """The diameter over the teeth, of the part's own shape or of toothed work on it."""
    for one in getattr(part, "features", ()):
        if one.kind == "toothed" and one.name == cut.feature:
            return (int(getattr(one.entry, "toothed", 0)) + 2) * cut.deep / _WHOLE_DEPTH
    return max(form.size[1:])
