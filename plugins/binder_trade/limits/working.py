"""Limits or a fit to the steps by which they were found."""

from __future__ import annotations

from binder_trade.explained import Step
from binder_trade.limits.class_limits import Limits, deviation_of
from binder_trade.limits.deviation import Deviation
from binder_trade.limits.figures import plain, signed, size_text, term
from binder_trade.limits.fits import Fit
from binder_trade.limits.tolerances import tolerance_and_band

_TOLERANCES = "ISO 286-1:2010 table 1"
_TOLERANCES_FINE = "ISO 286-1:1988 annex A table 5"
_DELTA = "ISO 286-1:2010 table 3"
_RESULT = "ISO 286-1:2010 clause 4"
_FITS = "ISO 286-1:2010 clause 3.3"


def working(of: Limits | Fit) -> tuple[Step, ...]:
    """The steps to limits or to a fit: bands, tolerance, deviation, delta if any, result.

    Source: ISO 286-1:2010 tables 1 to 5, clauses 3.3 and 4.
    """
    if isinstance(of, Fit):
        return (*working(of.hole), *working(of.shaft), *_clearances(of))
    fixed = deviation_of(of.nominal_mm, of.letter, of.grade)
    return (*_tolerance(of), *_delta(of, fixed), _letter(of, fixed), *_limits(of, fixed))


def _tolerance(of: Limits) -> tuple[Step, Step]:
    value, band = tolerance_and_band(of.nominal_mm, of.grade)
    source = _TOLERANCES_FINE if of.grade in ("01", "0") else _TOLERANCES
    return (
        Step(f"{of.cls}: band of sizes", f"{of.nominal_mm:g} mm lies in", str(band), source),
        Step(f"{of.cls}: tolerance", f"IT{of.grade}, {band}", f"{value:g} µm", source),
    )


def _delta(of: Limits, fixed: Deviation) -> tuple[Step, ...]:
    if fixed.delta_um is None:
        return ()
    formula = f"Δ = IT{of.grade} − IT{int(of.grade) - 1}"
    return (Step(f"{of.cls}: delta", formula, f"{fixed.delta_um:g} µm", _DELTA),)


def _letter(of: Limits, fixed: Deviation) -> Step:
    formula = f"{fixed.formula}, {fixed.band}"
    value = f"±{fixed.value_um:g} µm" if fixed.end == "both" else f"{signed(fixed.value_um)} µm"
    return Step(f"{of.cls}: deviation of {of.letter}", formula, value, fixed.source)


def _limits(of: Limits, fixed: Deviation) -> tuple[Step, ...]:
    other = () if fixed.end == "both" else (_other_end(of, fixed),)
    sizes = (
        Step(
            f"{of.cls}: {name} size",
            f"{of.nominal_mm:g} {term(um / 1000)}",
            f"{size_text(size)} mm",
            _RESULT,
        )
        for name, um, size in (
            ("largest", of.upper_um, of.upper_mm),
            ("smallest", of.lower_um, of.lower_mm),
        )
    )
    return (*other, *sizes)


def _other_end(of: Limits, fixed: Deviation) -> Step:
    upper, lower = ("ES", "EI") if of.is_hole else ("es", "ei")
    tolerance = of.upper_um - of.lower_um
    start = plain(fixed.value_um)
    if fixed.end == "upper":
        formula = f"{lower} = {upper} − IT{of.grade} = {start} − {tolerance:g}"
        return Step(f"{of.cls}: lower deviation", formula, f"{signed(of.lower_um)} µm", _RESULT)
    formula = f"{upper} = {lower} + IT{of.grade} = {start} + {tolerance:g}"
    return Step(f"{of.cls}: upper deviation", formula, f"{signed(of.upper_um)} µm", _RESULT)


def _clearances(of: Fit) -> tuple[Step, Step, Step]:
    most = f"ES − ei = {plain(of.hole.upper_um)} {term(-of.shaft.lower_um)}"
    least = f"EI − es = {plain(of.hole.lower_um)} {term(-of.shaft.upper_um)}"
    words = {
        "clearance": "least clearance is not below 0",
        "interference": "greatest clearance is not above 0",
        "transition": "clearance at one end, interference at the other",
    }
    name = of.designation
    return (
        Step(f"{name}: greatest clearance", most, f"{signed(of.clearance_max_um)} µm", _FITS),
        Step(f"{name}: least clearance", least, f"{signed(of.clearance_min_um)} µm", _FITS),
        Step(f"{name}: kind of fit", words[of.kind], of.kind, _FITS),
    )
