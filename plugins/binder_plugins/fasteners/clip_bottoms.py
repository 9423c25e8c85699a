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
    is_double = _reads_diameter(design)
    low, high = (
        shown_length(exact(round(mm * (2 if is_double else 1), 3)), design.units)
        for mm in fed_mm(nominal_mm, (ring.low_mm, ring.high_mm))
    )
    less = "what" if is_double else "half of what"
    on = "on the dial, which reads diameter," if is_double else "of travel"
    size = shown_length(exact(round(nominal_mm, 3)), design.units)
    mate, off = ("bore", "over") if ring.is_inside else ("shaft", "under")
    return _TRIED.format(_PLIERS if "circlip" in kind else ""), (
        f"touch the {mate}, set the dial to 0, feed {low} to {high} {on} from ⌀{size}, less by "
        f"{less} it measures {off} that; the clip goes home all round, without shake"
    )


def _reads_diameter(design: Design) -> bool:
    """Whether the cross-slide's dial of the first lathe tells what comes off the diameter."""
    lathe = next(iter(design.workshop.entry.machines.lathes.values()), None)
    slide = lathe.cross_slide if lathe is not None else None
    return slide is not None and slide.reads == "diameter"
