"""Halves that are turned to a fit to findings: is there metal to turn, is the right half first."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import CutSize, Design, Diagnostic, Labelled
from binder_plugins.fits import codes
from binder_plugins.fits.facts import MadeFit
from binder_plugins.fits.families import PRESSED
from binder_plugins.fits.figures import with_unit
from binder_plugins.fits.suiting import master_of

_BARS = ("round bar", "drawn rod")
# The least on diameter that a tool still cuts off clean, and no bar is made closer than this to
# its nominal size: common practice, no source.
_LEAST_CUT_MM = 0.1


def check_turned(design: Design) -> Iterator[Diagnostic]:
    """All findings about halves that are made to the other."""
    for fit in design.facts.all(MadeFit):
        yield from _nothing_to_turn(fit, design)
        yield from _wrong_master(fit)


def _nothing_to_turn(fit: MadeFit, design: Design) -> Iterator[Diagnostic]:
    """A bar of the nominal size that has to be turned under it by a few hundredths."""
    shaft, item = fit.shaft, fit.shaft.end.item
    cut = design.facts.about(CutSize, item)
    if fit.joint.kind in PRESSED or shaft.is_fixed or shaft.way != "turned" or cut is None:
        return
    if cut.form not in _BARS or not cut.section or cut.section[0] != fit.nominal:
        return
    wanted = fit.mm + shaft.upper_um / 1000
    part = design.parts[item]
    if part.stock is None or float(cut.section[0]) - wanted >= _LEAST_CUT_MM:
        return
    yield codes.NOTHING_TO_TURN.at(
        part.stock.span,
        f"'{shaft.end}' is {with_unit(wanted, design.units)} at the most, and its bar "
        f"{with_unit(float(cut.section[0]), design.units)}: no tool takes that off clean",
        related=[Labelled(fit.joint.at, "fitted here")],
        help="take the next larger bar; or drawn rod as bought, with the bore made to suit it",
    )


def _wrong_master(fit: MadeFit) -> Iterator[Diagnostic]:
    """A half that is named as master, though it is the one that is made to the other."""
    named, first = fit.joint.master, master_of(fit)
    if named is None or first is None or str(named) == str(first.end):
        return
    yield codes.MASTER_MADE_TO_SUIT.at(
        named.at,
        f"'{named}' is named as master, and is made to suit '{first.end}', which comes as it comes",
        related=[Labelled(first.end.at, f"{first.way}: this half is there first")],
        help=f"name '{first.end}', or leave `master:` out",
    )
