"""Limits and fits of ISO 286 for sizes over 0 to 500 mm."""

from binder_trade.explained import NotDefined, Step
from binder_trade.limits.class_limits import Limits, limits
from binder_trade.limits.fits import Fit, fit
from binder_trade.limits.general import general_source, general_tolerance, stray_mm
from binder_trade.limits.preferred import PreferredFit, name_of, preferred_fits
from binder_trade.limits.reading import read_class, read_fit, shaft_letters
from binder_trade.limits.tolerances import GRADES, tolerance_factor_um, tolerance_um
from binder_trade.limits.working import working

__all__ = [
    "GRADES",
    "Fit",
    "Limits",
    "NotDefined",
    "PreferredFit",
    "Step",
    "fit",
    "general_source",
    "general_tolerance",
    "limits",
    "name_of",
    "preferred_fits",
    "read_class",
    "read_fit",
    "shaft_letters",
    "stray_mm",
    "tolerance_factor_um",
    "tolerance_um",
    "working",
]
