"""A press fit that its metals do not bear, to what they do: a lighter nip, a thicker wall."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from binder.api import Design
from binder_plugins.fits.facts import MadeFit, Wish
from binder_plugins.fits.figures import with_unit
from binder_plugins.fits.limiting import limited
from binder_plugins.fits.pressing import Pressing, pressings
from binder_plugins.fits.suiting import unlimited
from binder_trade.explained import NotDefined
from binder_trade.fits.press import grip
from binder_trade.limits import fit as fit_of

# The least nip that a bench micrometer can be trusted with; common practice, no source.
LEAST_UM = 6.0
_HALF = 0.5
_MARGIN = 0.8  # of the nip that would spoil a wall; common practice, no source
_LIGHTER = ("r6", "p6", "n6")
_WALL_STEP_MM = 0.5
_THICKEST = 4.0  # times the joint's diameter


def eased_presses(fits: Iterable[MadeFit], design: Design) -> list[MadeFit]:
    """The fits, those pressed without a word of how tight brought to what their metals bear."""
    made = list(fits)
    tight = {one.subject: one for one in pressings(made, design) if one.tightest.plastic_use > 1}
    return [
        _eased(fit, tight[fit.subject], design.units) if fit.subject in tight else fit
        for fit in made
    ]


def _eased(fit: MadeFit, pressing: Pressing, units: str) -> MadeFit:
    nip = safe_nip_um(pressing)
    if fit.wish.is_said or fit.written_um is not None or not fit.suit or nip is None:
        return fit
    least, most = nip
    says = f"nip of {_nip_words(nip, units)}, what the thin wall bears"
    wish = Wish(says, f"{fit.wish.says.split(',')[0]} would stretch the wall past holding",
                "Lamé, thick cylinders, as in DIN 7190-1", -most, -least)  # fmt: skip
    try:
        hole, shaft = limited(fit.mm, fit.hole, fit.shaft, wish, fit.suit)
    except NotDefined:
        return fit
    return unlimited(replace(fit, hole=hole, shaft=shaft, wish=wish))


def _nip_words(nip: tuple[float, float], units: str) -> str:
    least, most = nip
    return f"{with_unit(least / 1000, units)} to {with_unit(most / 1000, units)}"


def safe_nip_um(pressing: Pressing) -> tuple[float, float] | None:
    """Least and most nip in µm that both walls bear; None where it is too fine to measure."""
    most = float(int(pressing.most_mm * 1000))
    return (_HALF * most, most) if most >= LEAST_UM else None


def ways_out(pressing: Pressing, units: str) -> Iterator[str]:
    """What would hold and not split, each worked out: a nip or class, a thicker wall, a bond."""
    nip = safe_nip_um(pressing)
    lighter = _lighter_class(pressing)
    if lighter:
        yield f"write `fit: {lighter}`"
    elif nip is not None:
        yield f"leave `fit:` out and a nip of {_nip_words(nip, units)} is aimed at"
    thicker = _thicker_mm(pressing)
    if thicker is not None:
        yield f"make the boss {with_unit(thicker, units)} outside"
    yield "retain it with compound"


def _lighter_class(pressing: Pressing) -> str:
    """The tightest usual press class that spoils no wall, '' where none is."""
    fit, tight = pressing.fit, pressing.tightest
    most_um = _MARGIN * 1000 * tight.interference_mm / tight.plastic_use
    if not fit.hole.cls:
        return ""
    for shaft in _LIGHTER:
        try:
            pair = fit_of(fit.mm, fit.hole.cls, shaft)
        except NotDefined:
            continue
        if pair.clearance_max_um <= 0 and -pair.clearance_min_um <= most_um:
            return f"{fit.hole.cls}/{shaft}"
    return ""


def _thicker_mm(pressing: Pressing) -> float | None:
    """The outside in mm at which the boss bears the nip as it is; None where it is not the boss."""
    made, nip = pressing.cylinders, pressing.tightest.interference_mm
    if made.outside_mm is None:
        return None
    steps = int((_THICKEST * made.diameter_mm - made.outside_mm) / _WALL_STEP_MM)
    for number in range(1, max(0, steps) + 1):
        outside = made.outside_mm + number * _WALL_STEP_MM
        if grip(replace(made, outside_mm=outside), nip).plastic_use <= 1:
            return outside
    return None
