"""What a tooth bears by Lewis, as an order of magnitude, and the forces of a mesh; N, mm."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, not_negative, positive, within
from binder_trade.gears.gear import Gear
from binder_trade.gears.racks import Rack

BARTH: Final = "Barth, 600 / (600 + ft/min), for cut teeth"
ORDER: Final = "order of magnitude: no account of wear, shock or fit of the teeth"
_BARTH_M_S: Final = 3.048


@dataclass(frozen=True, slots=True)
class Strength:
    """The load that a tooth bears; N, N mm, W. `order` says how far it may be trusted."""

    form: float
    stress_mpa: float
    at_rest_n: float
    speed_m_s: float
    speed_factor: float
    running_n: float
    torque_n_mm: float
    power_w: float
    order: str
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Forces:
    """Forces at the pitch point; N: along the pitch circle, apart, along the shaft, and whole."""

    tangential_n: float
    radial_n: float
    axial_n: float
    total_n: float
    steps: tuple[Step, ...]


@cache
def _data() -> dict[str, Any]:
    data: dict[str, Any] = load_data("binder_trade.gears", "lewis.yaml")
    return data


def form_factor(teeth: float, rack: Rack) -> float:
    """Lewis's form factor Y of a full-depth or stub tooth. Raises NotDefined under 8 teeth.

    Source: y = 0.154 − 0.912 / z at 20°, and its fellows; Y = π y.
    """
    if teeth < 8:
        raise NotDefined(f"Lewis gives no form factor for {teeth:g} teeth", "take 8 or more")
    key = "stub" if rack.addendum < 0.9 else f"{rack.angle_deg:g}"
    if key not in _data()["formulas"]:
        raise NotDefined(f"no form factor for {rack.name}", "14½°, 20° and stub teeth have one")
    row = _data()["formulas"][key]
    return float(math.pi * (row["a"] - row["b"] / teeth))


def tabulated_factor(teeth: float) -> float:
    """The form factor Y of 20° full-depth teeth by the table, lower than the formula's.

    Between rows it is in proportion; past the last it stays. Raises NotDefined under 12 teeth.
    Source: table of Lewis form factors.
    """
    rows: dict[int, float] = _data()["tabulated"]["rows"]
    if not min(rows) <= teeth < math.inf:
        raise NotDefined(f"the table begins at {min(rows)} teeth", "use the formula")
    low = max(each for each in rows if each <= teeth)
    high = min((each for each in rows if each > teeth), default=low)
    part = (teeth - low) / (high - low) if high > low else 0.0
    return rows[low] + part * (rows[high] - rows[low])


def safe_factor(teeth: float, rack: Rack) -> float:
    """The lesser of formula and table where both speak. Raises NotDefined where neither does."""
    by_formula = form_factor(teeth, rack)
    if rack.angle_deg == 20 and rack.addendum >= 0.9 and teeth >= 12:
        return min(by_formula, tabulated_factor(teeth))
    return by_formula


def stress_of(metal: str) -> float:
    """The bending stress in MPa that a tooth of a metal is trusted with. Raises NotDefined."""
    rows: dict[str, float] = _data()["stress"]["rows"]
    if metal in rows:
        return float(rows[metal])
    raise NotDefined(f"no stress is kept for '{metal}'", f"these are: {', '.join(rows)}")


def strength(
    gear: Gear,
    face_mm: float,
    stress_mpa: float,
    *,
    rpm: float = 0.0,
    form: float | None = None,
) -> Strength:
    """The load of a tooth, F = σ b m Y, less what Barth takes off for speed; N, mm, r/min.

    Source: Lewis; Barth.
    """
    positive(face_mm, "a face width")
    positive(stress_mpa, "a stress")
    factor = safe_factor(gear.virtual_teeth, gear.rack) if form is None else form
    at_rest = stress_mpa * face_mm * gear.module_mm * factor
    speed = math.pi * gear.pitch_mm * not_negative(rpm, "a speed") / 60_000
    part = _BARTH_M_S / (_BARTH_M_S + speed)
    running = at_rest * part
    torque = running * gear.pitch_mm / 2
    return Strength(
        factor,
        stress_mpa,
        at_rest,
        speed,
        part,
        running,
        torque,
        running * speed,
        ORDER,
        (
            Step(
                "form factor",
                "π (a − b / z), or the table where less",
                f"{factor:.3f}",
                _data()["formulas_source"],
            ),
            Step("load at rest", "σ b m Y", f"{at_rest:.1f} N", f"Lewis; {ORDER}"),
            Step("speed of the teeth", "π d n", f"{speed:.3f} m/s", "geometry"),
            Step("load running", "F × 3.048 / (3.048 + v)", f"{running:.1f} N", BARTH),
            Step("torque", "F d / 2", f"{torque:.0f} N mm", "statics"),
        ),
    )


def forces(gear: Gear, torque_n_mm: float) -> Forces:
    """The forces that a torque makes at a gear's pitch circle; N from N mm. Source: statics."""
    tangential = 2 * within(torque_n_mm, 0, 1e12, "a torque") / gear.pitch_mm
    radial = tangential * math.tan(gear.angle)
    axial = tangential * math.tan(math.radians(gear.helix_deg))
    total = math.sqrt(tangential**2 + radial**2 + axial**2)
    return Forces(
        tangential,
        radial,
        axial,
        total,
        (
            Step("tangential", "2 T / d", f"{tangential:.2f} N", "statics"),
            Step("radial", "F_t tan α_t", f"{radial:.2f} N", "statics"),
            Step("axial", "F_t tan β", f"{axial:.2f} N", "statics"),
        ),
    )
