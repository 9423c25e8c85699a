"""A drilled hole to the limits that its gauge tells, so that one rule accepts it on every page."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_making.measuring import Instrument, by_shanks

if TYPE_CHECKING:
    from binder.api import Workshop
    from binder_plugins.fits.facts import Half

_BY = "told by shanks of drills"


def as_gauged(hole: Half, nominal_mm: float, workshop: Workshop) -> Half:
    """A drilled hole within what the shanks of owned drills tell, where these are its gauge.

    The table's limits are wider: a hole that refuses the thinner shank would lie within them and
    still be opened. Deviations are in µm from `nominal_mm`.
    """
    if hole.way != "drilled":
        return hole
    limits = (nominal_mm + hole.lower_um / 1000, nominal_mm + hole.upper_um / 1000)
    owned = (
        Instrument(one.name, one.measures, float(one.least), float(one.most), float(one.resolution))
        for one in workshop.instruments()
    )
    found = by_shanks(limits, owned, ((one.name, float(one.mm)) for one in workshop.drills()))
    if found is None:
        return hole
    (_, low), (_, high) = found
    return replace(
        hole,
        lower_um=(low - nominal_mm) * 1000,
        upper_um=(high - nominal_mm) * 1000,
        source="; ".join(filter(None, (hole.source, _BY))),
    )
