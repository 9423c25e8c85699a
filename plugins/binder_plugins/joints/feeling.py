"""How a fit should feel when it is put together, where its clearance can be felt."""

from __future__ import annotations

from binder.api import Design, FitFact, exact, shown_length

# From so much clearance on, in µm, a finger feels it. Common practice, no source.
_FELT_UM = 50.0
_TIGHT = ("without shake", "and does not rock")


def felt(step: str, fit: FitFact | None, design: Design) -> str:
    """The words of a step, with the shake that its fit leaves instead of none."""
    if fit is None or fit.suit or fit.clearance_max_um <= _FELT_UM:
        return step
    least, most = (
        shown_length(exact(round(max(um, 0.0) / 1000, 3)), design.units).removesuffix(unit)
        for um, unit in ((fit.clearance_min_um, f" {design.units}"), (fit.clearance_max_um, ""))
    )
    shake = f"with a little shake: the fit leaves {least} to {most}"
    for tight in _TIGHT:
        step = step.replace(tight, shake)
    return step
