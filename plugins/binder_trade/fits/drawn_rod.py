"""A duty and the class of a bought rod to the hole that gives nearly the same clearance."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from binder_trade.explained import NotDefined, Step, positive
from binder_trade.fits.duties import Choice, choose
from binder_trade.fits.printed import span
from binder_trade.limits import Limits, fit, limits

CONVENTION = "hole class with the least sum of the two misses; H first where two are alike"
# H first: it is what a reamer gives, so it wins where it is no worse. Grade 7 is the finest
# that a bench bores.
_LETTERS = ("H", "G", "F", "E", "D", "C", "JS", "K", "M", "N", "P", "R", "S", "U")
_GRADES = (7, 8, 9, 10, 11)
_REAMED = "H7"


@dataclass(frozen=True, slots=True)
class RodFit:
    """A hole for a rod as bought, with clearances wanted, got, and got by a plain reamer, in µm.

    `reaches` is true where all that may come out lies within what the duty wants.
    """

    duty: str
    hole: str
    rod: str
    wanted_um: tuple[float, float]
    got_um: tuple[float, float]
    reamed_um: tuple[float, float]
    reaches: bool
    says: str
    convention: str
    steps: tuple[Step, ...]


def on_drawn_rod(duty: str, nominal_mm: float, rod_class: str = "h9") -> RodFit:
    """The hole class for a duty where the shaft is a rod as bought, at a nominal size in mm.

    Clearances in µm, least and most; less than nothing is interference. Raises NotDefined for a
    duty or class that is not known. Source: ISO 286-1, fits on a shaft basis.
    """
    size = positive(nominal_mm, "the diameter")
    choice = choose(duty, size)
    wanted = clearances(size, choice.hole, choice.shaft)
    rod = limits(size, rod_class)
    hole = min(_holes(size), key=lambda hole: _miss(wanted, _between(hole, rod)))
    got = _between(hole, rod)
    return RodFit(
        choice.duty,
        hole.cls,
        rod_class,
        wanted,
        got,
        clearances(size, _REAMED, rod_class),
        wanted[0] <= got[0] and got[1] <= wanted[1],
        _says(wanted, got),
        CONVENTION,
        _steps(choice, rod_class, hole.cls, wanted, got),
    )


def clearances(nominal_mm: float, hole: str, shaft: str) -> tuple[float, float]:
    """Least and most clearance of two classes in µm; raises NotDefined. Source: ISO 286-1."""
    pair = fit(nominal_mm, hole, shaft)
    return pair.clearance_min_um, pair.clearance_max_um


def _between(hole: Limits, rod: Limits) -> tuple[float, float]:
    return hole.lower_um - rod.upper_um, hole.upper_um - rod.lower_um


def _miss(wanted: tuple[float, float], got: tuple[float, float]) -> float:
    return abs(got[0] - wanted[0]) + abs(got[1] - wanted[1])


@cache
def _holes(nominal_mm: float) -> tuple[Limits, ...]:
    return tuple(_defined(nominal_mm))


def _defined(nominal_mm: float) -> Iterator[Limits]:
    for letter in _LETTERS:
        for grade in _GRADES:
            try:
                yield limits(nominal_mm, f"{letter}{grade}")
            except NotDefined:
                continue


def _says(wanted: tuple[float, float], got: tuple[float, float]) -> str:
    tight, loose = got[0] < wanted[0], got[1] > wanted[1]
    if not tight and not loose:
        return "the rod as bought serves"
    if wanted[1] <= 0 < got[1]:
        return "the rod may fall through: turn the shaft, or bond it"
    if tight and loose:
        return "the rod may vary more than the duty allows: measure it, or turn the shaft"
    if tight:
        return "it may come tighter than the duty wants: measure the rod, then bore to it"
    return "it may come looser than the duty wants: measure the rod, then bore to it"


def _steps(
    choice: Choice,
    rod: str,
    hole: str,
    wanted: tuple[float, float],
    got: tuple[float, float],
) -> tuple[Step, ...]:
    return (
        Step("wanted", f"{choice.hole}/{choice.shaft}", span(*wanted), choice.source),
        Step("chosen", f"{hole} on a rod {rod}", span(*got), CONVENTION),
    )
