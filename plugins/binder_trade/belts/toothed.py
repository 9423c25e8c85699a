"""Toothed belts: teeth and pitch to pulleys, whole-tooth lengths and centre distances."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from binder.api import load_data
from binder_trade.belts.centres import centres_for
from binder_trade.belts.run import GEOMETRY, run
from binder_trade.explained import NotDefined, Step, mm, within

_CODE: Final = re.compile(r"\s*(\d{2,5})\s*(MXL|XXL|XL|L|H|XH|XXH)\s*(\d{3})?\s*", re.IGNORECASE)
_INCH: Final = 25.4
NAMING: Final = "ANSI/RMA IP-24 naming: length in tenths of an inch, width in hundredths"


@dataclass(frozen=True, slots=True)
class Section:
    """A section of toothed belt: pitch, neutral line above the pulley's outside; mm."""

    name: str
    pitch_mm: float
    line_mm: float
    fewest_teeth: int
    source: str


@dataclass(frozen=True, slots=True)
class ToothedPulley:
    """A toothed pulley; mm. `is_too_small` says that it has fewer teeth than is usual."""

    section: Section
    teeth: int
    pitch_diameter_mm: float
    outside_mm: float
    is_too_small: bool
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class ToothedDrive:
    """A belt of whole teeth on two pulleys: length and centres in mm."""

    section: Section
    belt_teeth: int
    length_mm: float
    centres_mm: float
    teeth_in_mesh: int
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Designation:
    """What the code on an inch belt says: teeth, length and width in mm (None: not told)."""

    section: Section
    teeth: int
    length_mm: float
    width_mm: float | None


def section(name: str) -> Section:
    """A section by its name, as XL, T5, 3M. Raises NotDefined for one that is not kept."""
    rows = _data()["sections"]
    key = next((each for each in rows if each.lower() == name.strip().lower()), None)
    if key is None:
        raise NotDefined(
            f"no toothed belt “{name[:20]}” is kept here", "one of: " + ", ".join(rows)
        )
    row = rows[key]
    source = _data()["sources"][row["source"]]
    doubt = [
        what
        for what, status in zip(("pitch", "line", "teeth"), row["status"], strict=True)
        if status == "memory"
    ]
    told = f"{source} ({', '.join(doubt)} from memory)" if doubt else source
    return Section(key, row["pitch"], row["line"], row["teeth"], told)


def toothed_pulley(name: str, teeth: int) -> ToothedPulley:
    """A pulley of this section; mm. Source: pitch × teeth / π, less the neutral line twice."""
    kind = section(name)
    count = _teeth(teeth)
    pitch_diameter = kind.pitch_mm * count / math.pi
    outside = pitch_diameter - 2 * kind.line_mm
    steps = (
        Step("pitch diameter", "pitch × teeth / π", mm(pitch_diameter), kind.source),
        Step("outside", "pitch diameter − 2 × neutral line", mm(outside), kind.source),
    )
    return ToothedPulley(kind, count, pitch_diameter, outside, count < kind.fewest_teeth, steps)


def toothed_drive(name: str, first: int, second: int, belt_teeth: int) -> ToothedDrive:
    """The centres in mm for pulleys and belt of whole teeth, exact. Raises NotDefined."""
    one, two = toothed_pulley(name, first), toothed_pulley(name, second)
    count = int(within(belt_teeth, 10, 5000, "the number of teeth of the belt"))
    length = count * one.section.pitch_mm
    found = centres_for(one.pitch_diameter_mm, two.pitch_diameter_mm, length)
    small = min(one.teeth, two.teeth)
    mesh = math.floor(found.run.least_wrap_rad / (2 * math.pi) * small)
    steps = (
        Step("length of the belt", "teeth × pitch", mm(length), one.section.source),
        Step("centre distance", "exact length solved", mm(found.centres_mm), GEOMETRY),
        Step("teeth in mesh", "wrap / 2π × teeth, whole", str(mesh), _data()["mesh"]["source"]),
    )
    return ToothedDrive(one.section, count, length, found.centres_mm, mesh, steps)


def near_centres(name: str, first: int, second: int, centres_mm: float) -> tuple[ToothedDrive, ...]:
    """The two belts of whole teeth just below and above a wanted centre distance; mm."""
    one, two = toothed_pulley(name, first), toothed_pulley(name, second)
    wanted = run(one.pitch_diameter_mm, two.pitch_diameter_mm, centres_mm).length_mm
    least = math.floor(wanted / one.section.pitch_mm + 1e-9)
    found = []
    for count in (least, least + 1):
        try:
            found.append(toothed_drive(name, first, second, count))
        except NotDefined:
            continue
    return tuple(found)


def fewest_in_mesh() -> int:
    """Teeth that should be in mesh before a toothed belt may jump; common practice, no source."""
    return int(_data()["mesh"]["teeth"])


def read_designation(code: str) -> Designation:
    """What `300L075` says; raises NotDefined for what is no code. Source: `NAMING`."""
    found = _CODE.fullmatch(code[:40])
    if not found:
        raise NotDefined(f"“{code[:40]}” is no code of a toothed belt", "write it as 300L075")
    kind = section(found[2].upper())
    length = int(found[1]) / 10 * _INCH
    width = None if found[3] is None else int(found[3]) / 100 * _INCH
    return Designation(kind, round(length / kind.pitch_mm), length, width)


def _teeth(teeth: int) -> int:
    return int(within(teeth, 6, 500, "the number of teeth of the pulley"))


def _data() -> Mapping[str, Any]:
    data: Mapping[str, Any] = load_data("binder_trade.belts", "toothed.yaml")
    return data
