"""With what a half is measured when it is made, and ever after."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from binder.api import FitFact, HalfFact, exact
from binder_making.measuring import is_tried, told_by
from binder_plugins.operations.taper_mates import mate_of

if TYPE_CHECKING:
    from binder_plugins.operations.taper_mates import Mate
    from binder_plugins.operations.work import Work

# How a half says that it is bored for a gap over the shaft as it was measured.
_OVER_SHAFT = re.compile(r"([0-9.]+) to ([0-9.]+) (?:mm|in) over the measured shaft")


def seen(work: Work, half: HalfFact | None, act: str) -> str:
    """What it is measured with; nothing where it has no limits."""
    if half is None or half.judged is None:
        return "" if half is None else _plugs(work, half, act) or _second(work, half)
    way = "inside" if act in {"ream", "bore", "drill", "lap"} else "outside"
    fit, joint = work.design.facts.about(FitFact, half.joint), work.design.joints[half.joint]
    by_mate = fit is None or is_tried(joint.kind, fit.clearance_min_um, fit.clearance_max_um)
    first = half.is_master or ("as bought" in half.what and not by_mate)
    shanks = ((one.name, float(one.mm)) for one in work.design.workshop.drills())
    return told_by(half.judged, way, work.tools, is_master=first, by_mate=by_mate, shanks=shanks)


def _second(work: Work, half: HalfFact) -> str:
    """Pins tell the half that is cut to a measured one, which has a line of its own for that."""
    return "" if half.is_master else _over_pins(work, half)


def _plugs(work: Work, half: HalfFact, act: str) -> str:
    """What tells a bore that is bored for a gap over its measured shaft.

    The shaft itself tells neither the least gap nor the greatest.
    """
    over = _OVER_SHAFT.search(half.what)
    if act != "bore" or over is None:
        return ""
    if not float(over[1]):
        return "its shaft, tried in it"
    return f"two plugs turned to the shaft: + {over[1]} goes in, + {over[2]} does not"


def read_with(work: Work, half: HalfFact) -> str:
    """What a half without limits that is made first, as bright bar is, is read with."""
    fit = work.design.facts.about(FitFact, half.joint)
    if (mate := mate_of(work, half.place)) is not None:
        return _at_large_end(work, mate)
    if fit is None:
        return _over_pins(work, half) or "a gauge that fits it"
    size = float(fit.nominal)
    return _read(work, size, size, "inside" if fit.hole == half_of(half) else "outside")


def _at_large_end(work: Work, mate: Mate) -> str:
    """What reads the large end of a taper: the mouth of a bore, the thick end of a shaft."""
    read = _read(work, mate.wide_mm, mate.wide_mm, "inside" if mate.is_inside else "outside")
    return f"{read}, at its {'mouth' if mate.is_inside else 'large end'}"


def _over_pins(work: Work, half: HalfFact) -> str:
    """`digital caliper, over two 1.9 mm pins`; nothing where it is not told so."""
    if half.over is None or half.pin is None:
        return ""
    way, where = ("inside", "between") if half.is_inside else ("outside", "over")
    return f"{_read(work, half.over, half.over, way)}, {where} two {work.mm(half.pin)} pins"


def read_along(work: Work, length: float) -> str:
    """What a length in mm is read with over its two ends."""
    return _read(work, length, length, "outside")


def measured_with(work: Work, half: HalfFact) -> str:
    """The gauge with which a half was measured when it was made: the same ever after."""
    if "as bought" in half.what:
        return read_with(work, half)
    feature = work.feature(half.place)
    act = {"reamed": "ream", "bored": "bore", "drilled": "drill"}
    kind = feature.kind if feature is not None else ""
    return seen(work, half, act.get(kind, "turn")) or read_with(work, half)


def _read(work: Work, least: float, most: float, way: str) -> str:
    """The finest instrument that reaches: its mate, which is made to it, is not there yet."""
    found = work.design.workshop.finest(exact(least), exact(most), way)
    return found.name if found is not None else "a borrowed instrument"


def half_of(half: HalfFact) -> str:
    """`part.place`, as facts of fits name a half."""
    return f"{half.item}.{half.place}" if half.place else half.item
