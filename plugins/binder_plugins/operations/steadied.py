"""The end of turned work in a steady: the land its fingers run on, and how fast they may rub."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import steady_for
from binder_plugins.operations.lengthwise import SAME, is_spoiled

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Grip
    from binder_plugins.operations.turning import Turning

# A land is no shorter than the fingers of a small steady are wide; common practice, no source.
_LAND_MM = 4.0
# How fast bronze rubs on steel with grease or a drop of oil between, in m/min: 0.5 m/s, a maker's
# data sheet of plain bushes of solid bronze CuSn7Zn4Pb7; read in a public copy 2026-12-01. Fingers
# of brass are taken as no better.
_RUBS_M_MIN = 30.0
_FINGERS = "the land tapped true by the indicator, then the fingers of the steady touched on, oiled"


def steadied(turning: Turning, grip: Grip, end: str) -> Grip:
    """The grip with the steady on a finished round land at the end; what is amiss without."""
    place = 0 if end == "left" else len(turning.steps) - 1
    step = turning.steps[place]
    is_plain = not step.corners and abs(step.across - step.end_across) < SAME
    is_long = step.end - step.start >= _LAND_MM - SAME
    is_whole = not is_spoiled(turning.form.located, step)
    found = steady_for(turning.work.design.workshop, step.across)
    if found and is_plain and is_long and is_whole and place not in turning.plan.second:
        mm, name = turning.work.mm, step.name.replace("_", " ") or "end"
        on = f"{found} on the {name}, ⌀{mm(step.across)}, {mm(step.end - step.start)} long"
        support = f"{on}, at the {end}-hand end"
        return replace(grip, support=support, land=(step.start, step.end))
    words = (
        f"'{turning.work.name}' stands {grip.stand_out:g} mm out of jaws that grip "
        f"{grip.long:g} mm of it, and nothing carries its {end}-hand end: no steady here has a "
        f"finished round land of {_LAND_MM:g} mm to run on there"
    )
    turning.trouble.append(("stands-out-too-far", words))
    return grip


def most_rpm(turning: Turning, grip: Grip, end: str) -> float:
    """The most r/min at which the fingers of the steady do not rub too fast; infinite without."""
    if grip.land == (0.0, 0.0):
        return math.inf
    across = turning.steps[0 if end == "left" else -1].across
    return 1000 * _RUBS_M_MIN / (math.pi * across)


def fingers(most: float) -> str:
    """How the steady is set, and how fast the work runs in it; '' for infinite r/min."""
    if math.isinf(most):
        return ""
    step = 10.0 ** (math.floor(math.log10(most)) - 1)
    rpm = f"{math.floor(most / step + SAME) * step:.0f}"
    return f"{_FINGERS}, and oiled again as it runs: no faster than {rpm} r/min, as they rub"
