"""Press and shrink fits to findings: does the metal bear them, and does the bar have them."""

from __future__ import annotations

import math
from collections.abc import Iterator
from fractions import Fraction

from binder.api import CutSize, Design, Diagnostic, Labelled
from binder_plugins.fits import codes
from binder_plugins.fits.facts import MadeFit
from binder_plugins.fits.families import PRESSED
from binder_plugins.fits.figures import with_unit
from binder_plugins.fits.order import shafts_in
from binder_plugins.fits.pressing import Pressing
from binder_plugins.fits.safe_nips import ways_out
from binder_trade.fits.bush import bush_wall_is_thin

_BARS = ("round bar", "drawn rod", "tube")
_HAIR_MM = 1e-6


def check_presses(design: Design) -> Iterator[Diagnostic]:
    """All findings about what is pressed or shrunk."""
    fits = design.facts.all(MadeFit)
    for fit in fits:
        yield from _from_bar(fit, design)
    for pressing in design.facts.all(Pressing):
        yield from _pressed(pressing, design)
        yield from _bush(pressing, fits, design)


def _pressed(pressing: Pressing, design: Design) -> Iterator[Diagnostic]:
    fit, grip = pressing.fit, pressing.tightest
    if grip.plastic_use > 1:
        nip = with_unit(grip.interference_mm, design.units)
        made = pressing.cylinders
        does = "cracks" if made.hub.brittle else "stretches past all holding"
        weaker = made.hub.name if grip.hub_use >= grip.shaft_use else made.shaft.name
        yield codes.PRESS_SPLITS_BOSS.at(
            fit.joint.at,
            f"{nip} of nip {does}: the wall of {weaker} is too thin",
            help=", or ".join(ways_out(pressing, design.units)),
        )


def _from_bar(fit: MadeFit, design: Design) -> Iterator[Diagnostic]:
    """An outside with nip that the bar does not have: a bar of the nominal size is too small."""
    item, shaft = fit.shaft.end.item, fit.shaft
    cut = design.facts.about(CutSize, item)
    is_bar = cut is not None and cut.form in _BARS and len(cut.section) > 0
    if fit.joint.kind not in PRESSED or shaft.is_fixed or cut is None or not is_bar:
        return
    wants = fit.mm + shaft.upper_um / 1000
    if float(cut.section[0]) >= wants - _HAIR_MM:
        return
    part = design.parts[item]
    size = with_unit(wants, design.units)
    yield codes.BAR_TOO_SMALL_FOR_NIP.at(
        part.stock.span if part.stock is not None else shaft.end.at,
        f"'{item}' is turned to {size} to press in, and its bar is "
        f"{with_unit(float(cut.section[0]), design.units)}",
        related=[Labelled(fit.joint.at, "pressed here")],
        help=f"take the next larger bar, or make seat and outside "
        f"{with_unit(_below(cut.section[0]), design.units)}",
    )


def _below(section: Fraction) -> float:
    """The next whole half millimetre under the bar, which leaves metal to turn off."""
    return float(math.ceil(2 * section) - 1) / 2


def _bush(pressing: Pressing, fits: tuple[MadeFit, ...], design: Design) -> Iterator[Diagnostic]:
    bore, fit = pressing.bore, pressing.fit
    if bore is None or bore.diameter is None:
        return
    if bush_wall_is_thin(float(bore.diameter), fit.mm):
        wall = (fit.mm - float(bore.diameter)) / 2
        yield codes.BUSH_WALL_THIN.at(
            fit.shaft.end.at,
            f"the wall of '{fit.shaft.end.item}' is {with_unit(wall, design.units)}",
            help="make it 1 mm or a tenth of the bore at least, or retain it with compound",
        )
    for shaft in shafts_in(pressing, fits):
        # A bore to suit gets its size in place, as a reamed one does: the plan says when.
        is_planned = bore.kind == "reamed" or shaft.hole.place.is_to_suit
        is_sized = is_planned or pressing.cylinders.shaft.porous
        if not is_sized and pressing.closes_mm * 1000 > max(0.0, shaft.least_um):
            yield codes.BUSH_BORE_TOO_SOON.at(
                shaft.hole.end.at,
                f"'{shaft.hole.end}' closes by {with_unit(pressing.closes_mm, design.units)} "
                f"when it is pressed in",
                related=[Labelled(fit.joint.at, "pressed here")],
                help="write it as reamed: it is then sized in place",
            )
