"""The thickness of a finish to what it takes from a clearance, and adds to a thread."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, not_negative, positive
from binder_trade.fits.naming import plain, way_out
from binder_trade.fits.printed import SUM, span


@dataclass(frozen=True, slots=True)
class Finish:
    """A finish: its thickness least and most in µm, the part that stands above the old surface."""

    finish: str
    least_um: float
    most_um: float
    build: float
    source: str

    @property
    def grows_um(self) -> tuple[float, float]:
        """How much one surface grows, least and most, in µm."""
        return self.least_um * self.build, self.most_um * self.build


@dataclass(frozen=True, slots=True)
class Coated:
    """A clearance before and after coating, least and most in µm, and what the coat took."""

    before_um: tuple[float, float]
    after_um: tuple[float, float]
    lost_um: tuple[float, float]
    steps: tuple[Step, ...]


def finish(name: str) -> Finish:
    """A finish by its name (`paint`, `zinc plated`); raises NotDefined. Source: with each."""
    rows = {
        word.lower(): row for row in _table()["finishes"] for word in (row["finish"], *row["words"])
    }
    asked = plain(name)
    if asked not in rows:
        listed = [row["finish"] for row in _table()["finishes"]]
        raise NotDefined(f"no thickness is known of “{asked}”", way_out(asked, rows, listed))
    return _finish(rows[asked])


def lost_clearance_um(hole_grows_um: float, shaft_grows_um: float) -> float:
    """What two coats take from a clearance on diameter: twice each growth, 4 t where alike.

    Growths a surface in µm; 0 is a half that is masked. Raises NotDefined. Source: arithmetic.
    """
    hole = not_negative(hole_grows_um, "the coat of the hole")
    return 2 * hole + 2 * not_negative(shaft_grows_um, "the coat of the shaft")


def coated(before_um: tuple[float, float], hole: Finish | None, shaft: Finish | None) -> Coated:
    """A clearance in µm before coating to what is left; None is a half that is not coated."""
    none = (0.0, 0.0)
    bore = hole.grows_um if hole else none
    pin = shaft.grows_um if shaft else none
    lost = (lost_clearance_um(bore[0], pin[0]), lost_clearance_um(bore[1], pin[1]))
    after = (before_um[0] - lost[1], before_um[1] - lost[0])
    sources = "; ".join(dict.fromkeys(each.source for each in (hole, shaft) if each))
    steps = (
        Step("taken by the coat", "2 × growth of each surface", span(*lost), sources or "no coat"),
        Step("left", "clearance − taken", span(*after), SUM),
    )
    return Coated(before_um, after, lost, steps)


def thread_grows_um(thickness_um: float, angle_deg: float = 60.0) -> float:
    """What a coat of so many µm adds to the pitch diameter of one thread: 2 t ÷ sin(angle/2).

    4 t at 60°; both halves coated eat twice that. Raises NotDefined for an angle outside 10° to
    120°. Source: ISO 4042 (table for thick coats), ASME B1.1 clause 7.
    """
    thickness = not_negative(thickness_um, "the coat")
    angle = positive(angle_deg, "the thread angle")
    if not 10 <= angle <= 120:
        raise NotDefined("no thread has that angle", "60 metric, 55 Whitworth, 47.5 BA")
    return 2 * thickness / math.sin(math.radians(angle / 2))


def _finish(row: Mapping[str, Any]) -> Finish:
    guessed = [
        what
        for what, status in zip(("thickness", "growth"), row["status"], strict=True)
        if status != "verified"
    ]
    noted = f" ({' and '.join(guessed)} from memory)" if guessed else ""
    return Finish(
        row["finish"],
        float(row["least"]),
        float(row["most"]),
        float(row["build"]),
        f"{row['source']}{noted}",
    )


def _table() -> Mapping[str, Any]:
    table: Mapping[str, Any] = load_data("binder_trade.fits", "finishes.yaml")
    return table
