"""A strip of paper between the teeth to the centres at which two gears are set."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data
from binder_trade.explained import positive
from binder_trade.gears.pair import Mesh, mesh


@dataclass(frozen=True, slots=True)
class Strip:
    """A paper by name and thickness, how far it holds the centres, and the play it leaves; mm."""

    name: str
    thick_mm: float
    apart_mm: float
    play_mm: float


def held_by(pair: Mesh, thick_mm: float, name: str = "paper") -> Strip:
    """The centres of two gears pushed together on a strip that lies on both flanks; mm.

    Each flank is off by the thickness t along its normal, so that the centres are t ÷ sin α
    wider than without play. Raises NotDefined for a thickness that is none, or teeth that no
    longer mesh. Source: geometry of the involute, ISO 21771.
    """
    thick = positive(thick_mm, "the thickness of a strip")
    apart = thick / math.sin(pair.pinion.angle)
    made = mesh(pair.pinion, pair.wheel, centres_mm=pair.tight_mm + apart)
    return Strip(name, thick, apart, made.backlash_mm)


def strip_for(pair: Mesh, centres_mm: float) -> Strip:
    """The thinnest paper that holds two gears at least so far apart, else the thickest; mm.

    Raises NotDefined where the teeth do not mesh on it.
    """
    asked = (centres_mm - pair.tight_mm) * math.sin(pair.pinion.angle)
    papers = sorted((float(one["mm"]), str(one["name"])) for one in _papers())
    thick, name = next((one for one in papers if one[0] >= asked - 1e-9), papers[-1])
    return held_by(pair, thick, name)


@cache
def _papers() -> tuple[Mapping[str, Any], ...]:
    table: Mapping[str, Any] = load_data("binder_trade.gears", "papers.yaml")
    return tuple(table["papers"])
