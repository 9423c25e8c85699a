"""A cord to its least pulley, its groove, and the length that it is cut and welded to."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final, Literal

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, amount, mm, positive, within
from binder_trade.fits.naming import cited
from binder_trade.fits.printed import figures

_INCH: Final = 25.4
_LBF: Final = 4.4482216152605
CORD: Final = "geometry of a cord in its groove"
GrooveForm = Literal["round", "vee"]


@dataclass(frozen=True, slots=True)
class Cord:
    """A round polyurethane cord: least pulley in mm, most working tension in N (None: unknown)."""

    cord_mm: float
    least_pulley_mm: float
    tension_n: float | None
    source: str


@dataclass(frozen=True, slots=True)
class Cut:
    """A cord cut to weld: its free length, how thick it is when fitted, and its pull at rest.

    mm and N; the pull is an order of magnitude.
    """

    free_mm: float
    stretch: float
    fitted_cord_mm: float
    pretension_n: float
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Groove:
    """A groove for a round belt; mm. `neutral_mm` is the diameter that sets ratio and length.

    `bottom_mm` is the diameter where the groove ends: a round one's floor, a vee's point.
    """

    form: GrooveForm
    bottom_mm: float
    neutral_mm: float
    rim_mm: float
    depth_mm: float
    width_mm: float
    angle_deg: float
    steps: tuple[Step, ...]


def cord(cord_mm: float) -> Cord:
    """What a polyurethane cord asks for; by a maker's table, else 6 × cord (common practice)."""
    size = within(cord_mm, 0.5, 20, "the cord in mm")
    table = _data()["cords"]
    row = table["rows"].get(size)
    if row is None:
        rule = _data()["rule"]
        return Cord(size, rule["minimum"] * size, None, rule["source"])
    tension = row.get("tension_lbf")
    return Cord(
        size,
        row["minimum_in"] * _INCH,
        None if tension is None else tension * _LBF,
        cited(table),
    )


def stretch_range(material: str) -> tuple[float, float, float, str]:
    """Least, usual and most stretch as fitted, parts of the free length, with the source."""
    rows = _data()["stretch"]
    if material not in rows:
        raise NotDefined(f"no stretch known for “{material[:40]}”", "one of: " + ", ".join(rows))
    row = rows[material]
    return row["least"], row["usual"], row["most"], row["source"]


def cut_length(run_mm: float, cord_mm: float, stretch: float = 0.10) -> Cut:
    """The free length in mm to cut and weld for a run of this length, and its pull at rest.

    Source: free = run / (1 + stretch); the volume of rubber is kept; stiffness as in the table.
    """
    length = positive(run_mm, "the length of the run")
    size = within(cord_mm, 0.5, 20, "the cord in mm")
    part = within(stretch, 0, 0.3, "the stretch")
    free = length / (1 + part)
    thinned = size / math.sqrt(1 + part)
    soft = _data()["stiffness"]
    pull = soft["mpa"] * math.pi / 4 * size**2 * part
    rule = _data()["stretch"]["welded polyurethane"]["source"]
    steps = (
        Step("cut and weld to", f"run / (1 + {part:g})", mm(free), rule),
        Step("cord as fitted", "cord / √(1 + stretch)", mm(thinned), "volume is kept"),
        Step("pull of each strand at rest", "E A × stretch", figures(pull, "N"), soft["source"]),
    )
    return Cut(free, part, thinned, pull, steps)


def stretch_of(run_mm: float, free_mm: float) -> float:
    """The stretch as a part of one of a belt of this free length on a run of that length; mm."""
    return positive(run_mm, "the length of the run") / positive(free_mm, "the free length") - 1


def cord_mass_kg_m(cord_mm: float, density_kg_m3: float = 1200.0) -> float:
    """The mass of a metre of cord in kg; polyurethane where no density is given (from memory)."""
    size = within(cord_mm, 0.5, 20, "the cord in mm")
    return amount(density_kg_m3, "the density") * math.pi / 4 * size**2 * 1e-6


def round_groove(neutral_mm: float, cord_mm: float) -> Groove:
    """A round groove as deep and as wide as the cord, whose cord runs on this diameter; mm."""
    neutral, size = positive(neutral_mm, "the neutral diameter"), positive(cord_mm, "the cord")
    rule = _data()["groove"]["round"]
    bottom = neutral - size
    if bottom < rule["bottom_least"] * size:
        least = (rule["bottom_least"] + 1) * size
        raise NotDefined(
            f"a groove bottom of {bottom:g} mm bends a {size:g} mm cord too sharply",
            f"let the cord run on {least:g} mm or more, or take a thinner cord",
        )
    depth = rule["depth"] * size
    return _groove("round", bottom, neutral, depth, rule["width"] * size, 0.0, rule["source"])


def vee_groove(neutral_mm: float, cord_mm: float, angle_deg: float | None = None) -> Groove:
    """A vee groove in which the cord lies on both flanks, its middle on this diameter; mm."""
    neutral, size = positive(neutral_mm, "the neutral diameter"), positive(cord_mm, "the cord")
    rule = _data()["groove"]["vee"]
    angle = within(
        rule["angle"] if angle_deg is None else angle_deg, 25, 120, "the angle of the groove", "°"
    )
    above = size / 2 / math.sin(math.radians(angle / 2))
    depth = max(rule["depth"] * size, above + size / 2)
    bottom = neutral - 2 * above
    if bottom <= 0:
        raise NotDefined("the groove is deeper than the pulley", "take a larger pulley")
    width = 2 * depth * math.tan(math.radians(angle / 2))
    return _groove("vee", bottom, neutral, depth, width, angle, rule["source"])


def neutral_of(bottom_mm: float, cord_mm: float) -> float:
    """The diameter that sets ratio and length: floor of a round groove and one cord; mm."""
    return positive(bottom_mm, "the floor of the groove") + positive(cord_mm, "the cord")


def _groove(
    form: GrooveForm,
    bottom: float,
    neutral: float,
    depth: float,
    width: float,
    angle: float,
    source: str,
) -> Groove:
    rim = bottom + 2 * depth
    steps = (
        Step("bottom of the groove", "neutral − twice the middle's height", mm(bottom), CORD),
        Step("depth of the groove", "by the rule for the form", mm(depth), source),
        Step("width at the rim", "by the rule for the form", mm(width), source),
        Step("rim", "bottom + 2 × depth", mm(rim), CORD),
    )
    return Groove(form, bottom, neutral, rim, depth, width, angle, steps)


def _data() -> Mapping[str, Any]:
    data: Mapping[str, Any] = load_data("binder_trade.belts", "round.yaml")
    return data
