"""Two pulleys and the distance of their shafts to how far out of line they may stand."""

from __future__ import annotations

import math

from binder.api import load_data
from binder_trade.explained import NotDefined, positive
from binder_trade.fits.naming import cited


def offset_allowed_mm(kind: str, centres_mm: float) -> tuple[float, str]:
    """The most offset along the shafts in mm for a belt (or `chain`), and its source.

    Raises NotDefined for a belt that is not kept.
    """
    rows = load_data("binder_trade.belts", "alignment.yaml")["rows"]
    if kind not in rows:
        raise NotDefined(f"no limit known for “{kind[:40]}”", "one of: " + ", ".join(rows))
    lean = math.tan(math.radians(rows[kind]["degrees"]))
    return lean * positive(centres_mm, "the distance of the shafts"), cited(rows[kind])
