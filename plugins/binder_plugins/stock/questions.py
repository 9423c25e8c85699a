"""The question at the bench that this plugin answers."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import (
    COMMAND_LINE,
    Answer,
    Diagnostic,
    Reason,
    Reckoning,
    Result,
    Workshop,
    said_back,
)
from binder_plugins.stock import codes
from binder_plugins.stock.wire_gauges import thickness

_INCH = 25.4


def about_gauge(words: Sequence[str], _workshop: Workshop) -> Answer | Diagnostic:
    """The thickness of a gauge of wire or sheet."""
    text = " ".join(words)
    found = thickness(text)
    if found is None:
        return codes.GAUGE_NOT_LISTED.at(
            COMMAND_LINE,
            f"there is no gauge {said_back(text)}",
            help="write it as 12 swg or 22 awg",
        )
    results = (
        Result("thickness", round(found.mm, 6), "mm", "thickness", found.name),
        Result("thickness_inch", round(found.mm / _INCH, 6), "in", "in inches"),
    )
    reason = Reason("thickness", found.formula, f"{found.mm:.4f} mm", found.source)
    return Answer(found.name, results, (reason,))


RECKONINGS = (Reckoning("gauge", 'GAUGE, as "12 swg" or "22 awg"', "Its thickness.", about_gauge),)
