"""The workshop as a planner sees it: which machine, which grip, which speeds."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Workshop, exact
from binder_making.cutting import Machine, Speeds
from binder_making.measuring import Instrument

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

# Power is held in g mm²/s³.
_PER_WATT = 1e9


def lathe_for(workshop: Workshop, across: float) -> str:
    """The smallest lathe that swings so much, in mm; "" where none does."""
    lathes = workshop.entry.machines.lathes
    able = [(one.swing.mm, name) for name, one in lathes.items() if one.swing.mm >= across]
    return min(able)[1] if able else ""


def mill_for(workshop: Workshop) -> str:
    """The first mill, or nothing."""
    return _first(workshop.entry.machines.mills)


def drill_for(workshop: Workshop, across: float) -> str:
    """A drilling machine, else a mill, for a drill so large in mm; nothing where none is."""
    machines = workshop.entry.machines
    for name, one in machines.drilling_machines.items():
        if one.largest_drill.mm >= across:
            return name
    for name, mill in machines.mills.items():
        if mill.largest_drill is None or mill.largest_drill.mm >= across:
            return name
    return ""


def largest_drill_taken(workshop: Workshop) -> float:
    """The largest drill in mm that drilling machines and mills here take; 0 without either."""
    machines = workshop.entry.machines
    sizes = [one.largest_drill.mm for one in machines.drilling_machines.values()]
    sizes += [one.largest_drill.mm for one in machines.mills.values() if one.largest_drill]
    return max(sizes, default=0.0)


def place_of(workshop: Workshop, machine: str) -> str:
    """`lathe`, `mill`, `drill`, or `bench` for no machine."""
    machines = workshop.entry.machines
    if machine in machines.lathes:
        return "lathe"
    if machine in machines.mills:
        return "mill"
    return "drill" if machine in machines.drilling_machines else "bench"


def as_machine(workshop: Workshop, name: str) -> Machine | None:
    """Speeds, feeds, motor and swing of a machine; None for one without speeds."""
    ranges = workshop.speeds(name)
    if not ranges:
        return None
    found = workshop.machine(name)
    power = getattr(found, "power", None)
    feeds = getattr(found, "feeds", None) or ()
    swing = getattr(found, "swing", None)
    return Machine(
        speeds_of(ranges),
        feeds=tuple(one.mm for one in feeds),
        motor_w=_watts(power),
        swing_mm=swing.mm if swing is not None else 0.0,
    )


def speeds_of(ranges: Iterable[tuple[object, object]]) -> Speeds:
    """Steps, or a stepless drive from the slowest to the fastest where one is a range."""
    pairs = [(float(low), float(high)) for low, high in ranges]  # type: ignore[arg-type]
    if any(low != high for low, high in pairs):
        return Speeds.between(min(low for low, _ in pairs), max(high for _, high in pairs))
    return Speeds(tuple(low for low, _ in pairs))


def round_holder(workshop: Workshop, across: float, *, true: bool) -> tuple[str, str]:
    """The name and kind of what grips round work of a diameter in mm; nothing where nothing does.

    Where it must run true a collet, else the four-jaw, trued; else the three-jaw. Rod that is
    too thin for all of them goes in a drill chuck.
    """
    able = [
        (one.name, _kind(workshop, one.name, one.kind)) for one in workshop.holders(exact(across))
    ]
    wanted = ("collet", "four-jaw", "chuck") if true else ("chuck", "collet", "four-jaw")
    for kind in wanted:
        for name, found in able:
            if found == kind:
                return name, kind
    return _drill_chuck(workshop, across), "chuck"


def _drill_chuck(workshop: Workshop, across: float) -> str:
    chucks = workshop.entry.holding.drill_chucks
    able = (name for name, takes in chucks.items() if takes.holds(exact(across)))
    return next((f"{name} in the spindle" for name in able), "")


def flat_holder(workshop: Workshop, across: float) -> tuple[str, str]:
    """What holds flat or square work in the lathe: the four-jaw, else the faceplate."""
    for name, chuck in workshop.entry.holding.chucks.items():
        if chuck.independent and chuck.grips.holds(exact(across)):
            return name, "four-jaw"
    plate = workshop.entry.holding.faceplate
    if plate is not None and plate.mm >= across:
        return "faceplate", "faceplate"
    return "", ""


def vice_for(workshop: Workshop) -> str:
    """The machine vice, or the first vice; nothing where there is none."""
    vices = workshop.entry.holding.vices
    return next((name for name in vices if "machine" in name), _first(vices))


def bench_vice(workshop: Workshop) -> str:
    """The vice that stands on the bench, else any."""
    vices = workshop.entry.holding.vices
    return next((name for name in vices if "bench" in name), _first(vices))


def divider(workshop: Workshop) -> str:
    """The dividing head, else the rotary table; nothing where there is neither."""
    holding = workshop.entry.holding
    return _first(holding.dividing_heads) or _first(holding.rotary_tables)


def steady_for(workshop: Workshop, across: float) -> str:
    """A steady that takes a diameter in mm, nothing where none does."""
    steadies = workshop.entry.holding.steadies
    return next((n for n, one in steadies.items() if one.takes.holds(exact(across))), "")


def instruments(workshop: Workshop) -> tuple[Instrument, ...]:
    """The measuring tools, in mm."""
    return tuple(
        Instrument(one.name, one.measures, float(one.least), float(one.most), float(one.resolution))
        for one in workshop.instruments()
    )


def _kind(workshop: Workshop, name: str, kind: str) -> str:
    if kind == "collets":
        return "collet"
    return "four-jaw" if workshop.entry.holding.chucks[name].independent else "chuck"


def _watts(power: object) -> float:
    value = getattr(power, "exact", None)
    return float(value) / _PER_WATT if value is not None else 0.0


def _first(table: Mapping[str, object]) -> str:
    return next(iter(table), "")
