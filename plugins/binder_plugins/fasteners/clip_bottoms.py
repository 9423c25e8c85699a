"""The groove of a clip to how its bottom is told: what reaches it, else the dial and the clip."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Design, exact, shown_length
from binder_making.measuring import Instrument, fed_mm, reached_by

if TYPE_CHECKING:
    from binder_plugins.fasteners.clip_grooves import Ring

_TRIED = "the dial from the touch, then a clip tried in it{}"
_PLIERS = " with circlip pliers"


def told(ring: Ring, kind: str, nominal_mm: float, design: Design) -> tuple[str, str]:
    """What tells the bottom, and how it is fed to size where nothing reads it.

    '' for both where the groove is wide enough for jaws. Common practice, no source.
    """
    owned = (
        Instrument(one.name, one.measures, float(one.least), float(one.most), float(one.resolution))
        for one in design.workshop.instruments()
    )
    way = "inside" if ring.is_inside else "outside"
    found = reached_by(ring.wide_mm, (ring.low_mm, ring.high_mm), way, owned)
    if found is None or found:
        return found or "", ""
    low, high = (
        shown_length(exact(round(mm, 3)), design.units)
        for mm in fed_mm(nominal_mm, (ring.low_mm, ring.high_mm))
    )
    size = shown_length(exact(round(nominal_mm, 3)), design.units)
    mate, off = ("bore", "over") if ring.is_inside else ("shaft", "under")
    return _TRIED.format(_PLIERS if "circlip" in kind else ""), (
        f"touch the {mate}, set the dial to 0, feed {low} to {high} from ⌀{size}, less by half of "
        f"what it measures {off} that; the clip goes home all round, without shake"
    )
