"""A plain bearing's size, load and speed to its clearance, its length and what the bush bears."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, positive, within
from binder_trade.fits.naming import cited, plain, way_out
from binder_trade.fits.printed import SUM, figures, micrometres

_MM_PER_INCH = 25.4
_UM_PER_THOU = 25.4
_MOST_MM = 300.0
# Limits at which the rules stop being rules: speeds that plain bearings of models never see.
_MOST_SPEED = 60.0


@dataclass(frozen=True, slots=True)
class Clearance:
    """A running clearance on diameter in µm, by the rule named."""

    clearance_um: float
    rule: str
    source: str
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class BushMaterial:
    """What a bush material bears: N/mm², m/s, N/mm²·m/s, °C; None is not known."""

    material: str
    pressure_mpa: float | None
    speed_ms: float | None
    pv: float | None
    hottest_deg: float | None
    source: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class Wear:
    """Pressure, speed and their product in a bearing, and how much of each limit they use.

    The uses are parts of the limit (1 is all of it); None where the table has no limit.
    """

    pressure_mpa: float
    speed_ms: float
    pv: float
    pressure_use: float | None
    speed_use: float | None
    pv_use: float | None
    serves: bool
    says: str
    material: BushMaterial
    steps: tuple[Step, ...]


def running_clearance(diameter_mm: float, service: str = "general machinery") -> Clearance:
    """The clearance on diameter in µm by service: a constant and a part of the diameter.

    Raises NotDefined for another service or above 300 mm. Source: Mechanical Engineer's Data
    Handbook 2.9.4 (general machinery is one thousandth and one an inch).
    """
    diameter = within(diameter_mm, 1e-6, _MOST_MM, "the diameter")
    rows = {row["service"]: row for row in _table()["services"]}
    if service not in rows:
        raise NotDefined(f"no clearance for “{service[:40]}”", way_out(service, rows, rows))
    row = rows[service]
    thou = row["constant"] + row["per_inch"] * diameter / _MM_PER_INCH
    clearance = thou * _UM_PER_THOU
    formula = f"{row['constant']:g} + {row['per_inch']:g} × {diameter / _MM_PER_INCH:.4f} in"
    step = Step("clearance", formula, f"{thou:.2f} thou = {micrometres(clearance)}", cited(row))
    return Clearance(clearance, service, cited(row), (step,))


def clearance_by_speed(diameter_mm: float, turns_per_minute: float) -> Clearance:
    """The clearance on diameter in µm for a full oil film: 0.8 ‰ × ⁴√(v in m/s) of the diameter.

    A rule for oil-fed bearings; on small shafts roundness and alignment ask for more. Raises
    NotDefined. Source: Vogelpohl's rule as in DIN 31652 (from memory).
    """
    diameter = within(diameter_mm, 1e-6, _MOST_MM, "the diameter")
    speed = surface_speed_ms(diameter, turns_per_minute)
    row = _table()["by_speed"]
    part = row["factor"] * speed ** row["power"]
    clearance = part * diameter * 1000
    steps = (
        Step("speed", "π × d × n ÷ 60 000", figures(speed, "m/s"), SUM),
        Step("clearance ÷ diameter", "0.0008 × ⁴√v", f"{part * 1000:.2f} ‰", cited(row)),
        Step("clearance", "part × d", micrometres(clearance), SUM),
    )
    return Clearance(clearance, "by speed", cited(row), steps)


def surface_speed_ms(diameter_mm: float, turns_per_minute: float) -> float:
    """The speed of a shaft's surface in m/s; raises NotDefined."""
    turns = positive(turns_per_minute, "the speed of turning")
    speed = math.pi * positive(diameter_mm, "the diameter") * turns / 60_000
    if speed > _MOST_SPEED:
        raise NotDefined(f"{speed:.0f} m/s is no speed for a plain bearing", "use ball races")
    return speed


def wear(
    load_n: float, diameter_mm: float, length_mm: float, turns_per_minute: float, material: str
) -> Wear:
    """Whether a bush bears load (N) and speed (turns a minute) on d × L in mm.

    Pressure is load over d × L. Raises NotDefined for a material that is not in the table.
    Source: pressure × speed rule; limits as printed with each material.
    """
    load = positive(load_n, "the load")
    area = positive(diameter_mm, "the diameter") * positive(length_mm, "the length of the bush")
    pressure, speed = load / area, surface_speed_ms(diameter_mm, turns_per_minute)
    bush = bush_material(material)
    pv = pressure * speed
    of_pressure, of_speed, of_pv = (
        _use(pressure, bush.pressure_mpa),
        _use(speed, bush.speed_ms),
        _use(pv, bush.pv),
    )
    named = zip(
        ("pressure", "speed", "pressure × speed"), (of_pressure, of_speed, of_pv), strict=True
    )
    over = [name for name, use in named if use is not None and use > 1]
    says = f"too much {' and '.join(over)} for {bush.material}" if over else "the bush bears it"
    steps = _wear_steps(pressure, speed, bush)
    return Wear(pressure, speed, pv, of_pressure, of_speed, of_pv, not over, says, bush, steps)


def length_for_pv_mm(load_n: float, turns_per_minute: float, material: str) -> float:
    """The length in mm at which pressure × speed just meets the limit; the diameter cancels.

    Raises NotDefined where no limit is known. Source: L = π × load × n ÷ (60 000 × pv).
    """
    bush = bush_material(material)
    if bush.pv is None:
        raise NotDefined(f"no pressure × speed limit for {bush.material}", "choose another bush")
    turns = positive(turns_per_minute, "the speed of turning")
    return math.pi * positive(load_n, "the load") * turns / (60_000 * bush.pv)


def usual_length_mm(diameter_mm: float) -> tuple[float, float]:
    """The usual length of a plain bush in mm, least and most: 1 to 1.5 diameters.

    Raises NotDefined. Source: common practice, no source.
    """
    diameter = positive(diameter_mm, "the diameter")
    rule = _table()["length"]
    return rule["least"] * diameter, rule["most"] * diameter


def bush_material(name: str) -> BushMaterial:
    """What a bush material bears, by its name or another word for it; raises NotDefined."""
    asked = plain(name)
    words = {
        word.lower(): row
        for row in _table()["materials"]
        for word in (row["material"], *row["words"])
    }
    if asked not in words:
        listed = [row["material"] for row in _table()["materials"]]
        raise NotDefined(f"no limits for a bush of “{asked}”", way_out(asked, words, listed))
    row = words[asked]
    return BushMaterial(
        row["material"],
        row.get("pressure"),
        row.get("speed"),
        row.get("pv"),
        row.get("hottest"),
        _material_source(row),
        row.get("note", ""),
    )


def _wear_steps(pressure: float, speed: float, bush: BushMaterial) -> tuple[Step, ...]:
    def against(limit: float | None) -> str:
        return "no limit known" if limit is None else f"limit {limit:g}"

    return (
        Step(
            "pressure",
            f"load ÷ (d × L), {against(bush.pressure_mpa)}",
            figures(pressure, "N/mm²"),
            bush.source,
        ),
        Step(
            "speed",
            f"π × d × n ÷ 60 000, {against(bush.speed_ms)}",
            figures(speed, "m/s"),
            bush.source,
        ),
        Step(
            "pressure × speed",
            against(bush.pv),
            figures(pressure * speed, "N/mm²·m/s"),
            bush.source,
        ),
    )


def _use(amount: float, limit: float | None) -> float | None:
    return None if limit is None else amount / limit


def _material_source(row: Mapping[str, Any]) -> str:
    source, status = str(_table()["sources"][row["source"]]), row["status"]
    if status == "verified":
        return source
    if status == "memory":
        return f"{source} (from memory)"
    names = ("pressure", "speed", "pressure × speed", "temperature")
    guessed = [name for name, each in zip(names, status, strict=True) if each == "memory"]
    return f"{source}; {', '.join(guessed)} from memory"


def _table() -> Mapping[str, Any]:
    table: Mapping[str, Any] = load_data("binder_trade.fits", "bearings.yaml")
    return table
