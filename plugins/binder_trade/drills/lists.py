"""The table of drills to lists of drills, smallest first."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from functools import cache
from typing import Any

from binder.api import load_data
from binder_trade.drills.drill import Drill, NoDrill

_SERIES = {
    "metric": "metric_drills_standard",
    "metric as sold": "metric_drills",
    "fraction": "fraction_drills",
}
_GAUGES = {
    "number": ("number_drill", "no. {} drill"),
    "letter": ("letter_drill", "letter {} drill"),
}
SYSTEMS = ("metric", "metric as sold", "number", "letter", "fraction")
_UNITS = {"mm": Fraction(1), "in": Fraction("25.4")}
_SAME_MM = 1e-6


@cache
def standard_drills(system: str) -> tuple[Drill, ...]:
    """The drills of a system, smallest first; raises `NoDrill` for a system that is not kept.

    `metric` is the basic series of BS 328 and `metric as sold` what shops keep beside it (no
    standard); `number`, `letter` and `fraction` are ASME B94.11M.
    """
    if system in _SERIES:
        members = _row("series", _SERIES[system])["members"]
        found = [Drill(text, float(size_of(text)), system) for text in members]
    elif system in _GAUGES:
        name, pattern = _GAUGES[system]
        sizes = _row("gauges", name)["members"]
        found = [
            Drill(pattern.format(key), float(size_of(text)), system) for key, text in sizes.items()
        ]
    else:
        raise NoDrill(f"no drills are known as {system!r}", f"ask for {', '.join(SYSTEMS)}")
    return tuple(sorted(found, key=lambda drill: drill.mm))


@cache
def all_drills() -> tuple[Drill, ...]:
    """Every drill of every list, smallest first; a size of both metric lists stands once."""
    basic = standard_drills("metric")
    beside = [d for d in standard_drills("metric as sold") if not is_member(d.mm, "metric")]
    others = [standard_drills(system) for system in ("number", "letter", "fraction")]
    every = [*basic, *beside, *(drill for drills in others for drill in drills)]
    return tuple(sorted(every, key=lambda drill: (drill.mm, drill.name)))


def is_member(mm: float, system: str = "metric") -> bool:
    """Whether a drill of just this diameter in mm stands in the list of a system."""
    return any(abs(drill.mm - mm) < _SAME_MM for drill in standard_drills(system))


def size_of(text: str) -> Fraction:
    """The exact mm of a length as the tables write it: `3.3 mm`, `0.111 in`, `1 3/64 in`."""
    *numbers, unit = text.split()
    return sum((Fraction(number) for number in numbers), Fraction(0)) * _UNITS[unit]


def _row(kind: str, name: str) -> Mapping[str, Any]:
    rows: list[Mapping[str, Any]] = load_data("binder_trade.drills", "drills.yaml")[kind]
    return next(row for row in rows if row["name"] == name)
