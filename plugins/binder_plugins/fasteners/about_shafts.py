"""The size of a shaft or bore turned into its key or its circlip."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Answer, Diagnostic, Reason, Result, Workshop
from binder_plugins.fasteners.words_asked import length_mm, one_line, refused
from binder_trade.explained import NotDefined
from binder_trade.hardware import NotListed, circlip_bore, circlip_shaft, parallel_key


def about_key(words: Sequence[str], _workshop: Workshop) -> Answer | Diagnostic:
    """The parallel key of a shaft and its keyways."""
    try:
        shaft = length_mm(one_line(words))
        key = parallel_key(shaft)
    except (NotDefined, NotListed) as fault:
        return refused(fault.reason, fault.way_out)
    results = (
        Result("key_width", key.b_mm, "mm", "key, wide"),
        Result("key_height", key.h_mm, "mm", "key, high"),
        Result("shaft_depth", key.shaft_depth_mm, "mm", "keyway in the shaft, deep"),
        Result("hub_depth", key.hub_depth_mm, "mm", "keyway in the hub, deep"),
        Result("depth_tolerance", key.depth_plus_mm, "mm", "both, up to so much deeper"),
    )
    band = f"table, shaft over {key.over_mm:g} to {key.to_mm:g} mm"
    sold = ", ".join(f"{one:g}" for one in key.lengths_mm)
    return Answer(
        f"parallel key for a shaft of {shaft:g} mm",
        results,
        (Reason("key", band, f"{key.b_mm:g} × {key.h_mm:g} mm", key.source),),
        (f"lengths sold: {sold} mm",),
    )


def about_circlip(words: Sequence[str], _workshop: Workshop) -> Answer | Diagnostic:
    """The circlip of a shaft, or of a bore, and its groove."""
    try:
        line = one_line(words)
        is_bore = line.startswith("bore ")
        size = length_mm(line.removeprefix("bore ").removeprefix("shaft "))
        clip = circlip_bore(size) if is_bore else circlip_shaft(size)
    except (NotDefined, NotListed) as fault:
        return refused(fault.reason, fault.way_out)
    results = (
        Result("groove_diameter", clip.groove_mm, "mm", "groove"),
        Result("groove_upper", clip.groove_upper_um, "um", "groove, upper"),
        Result("groove_lower", clip.groove_lower_um, "um", "groove, lower"),
        Result("groove_width", clip.width_mm, "mm", "groove, wide"),
        Result("thickness", clip.thickness_mm, "mm", "circlip, thick"),
        Result("land", clip.land_mm, "mm", "metal beyond the groove, at least"),
    )
    what = "bore" if is_bore else "shaft"
    return Answer(
        f"circlip for a {what} of {size:g} mm",
        results,
        (Reason("groove", f"table, {what} of {size:g} mm", f"{clip.groove_mm:g} mm", clip.source),),
    )
