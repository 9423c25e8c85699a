"""Running bearings to what they carry: length, pressure and speed."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from binder.api import Design, Fact, Given, NumberOff, Working, parse_size
from binder_plugins.fits.facts import MadeFit
from binder_plugins.fits.kinds import FitEntry
from binder_plugins.fits.pressing import length_of
from binder_trade.explained import NotDefined, Step
from binder_trade.fits.bearings import Wear, clearance_by_speed, wear

# Bush metals by the id of a material; a family stands in where a metal has no row.
_BUSHES = {
    "sintered-bronze": "sintered bronze",
    "leaded-bronze": "leaded bronze",
    "gunmetal": "leaded bronze",
    "aluminium-bronze": "aluminium bronze",
    "cast-iron": "cast iron",
    "cast-iron-bar": "cast iron",
    "sg-iron": "cast iron",
    "nylon": "nylon",
    "acetal": "acetal",
    "ptfe": "ptfe",
    "cotton-phenolic-laminate": "phenolic laminate",
}
_BY_GROUP = {
    "bronze": "tin bronze",
    "brass": "brass",
    "aluminium": "aluminium",
    "carbon steel": "steel on steel",
    "tool steel": "steel on steel",
    "alloy steel": "steel on steel",
}


@dataclass(frozen=True, slots=True)
class Bearing(Fact):
    """A running bearing; the subject is the joint. `length_mm` bears, `count` carry the shaft.

    `wear` is what load and speed do, where both are told.
    """

    fit: MadeFit
    length_mm: float | None
    count: int
    wear: Wear | None
    working: Working


def bearings(fits: Iterable[MadeFit], design: Design) -> Iterator[Bearing]:
    """The running joints with what they carry."""
    running = [fit for fit in fits if fit.joint.kind == "runs_in"]
    for fit in running:
        length = length_of(fit)
        worn, steps = _wear(fit, length)
        count = _count(fit, running, design)
        yield Bearing(fit.subject, fit, length, count, worn, _working(fit, length, steps))


def carries(fit: MadeFit) -> bool:
    """Whether the hole stands and the shaft turns: the shaft is named first."""
    return str(fit.joint.ends[0]) == str(fit.shaft.end)


def _count(fit: MadeFit, running: list[MadeFit], design: Design) -> int:
    """How many bearings carry one shaft: those of all its joints, by how many there are."""
    shaft = fit.shaft.end.item
    shafts = _off(shaft, design)
    holes = sum(_off(one.hole.end.item, design) for one in running if one.shaft.end.item == shaft)
    return max(1, holes // shafts)


def _off(item: str, design: Design) -> int:
    number = design.facts.about(NumberOff, item)
    if number is not None:
        return number.count
    found = design.item(item)
    return (found.quantity if found is not None else None) or 1


def _wear(fit: MadeFit, length: float | None) -> tuple[Wear | None, tuple[Step, ...]]:
    entry = fit.joint.entry
    if not isinstance(entry, FitEntry) or entry.speed is None:
        return None, ()
    turns = float(entry.speed.exact / parse_size("1 r/min").amount)
    try:
        steps = clearance_by_speed(fit.mm, turns).steps
        if entry.load is None or length is None:
            return None, steps
        newtons = float(entry.load.exact / parse_size("1 N").amount)
        bush = _BUSHES.get(fit.hole.material) or _BY_GROUP.get(fit.hole.group, "")
        worn = wear(newtons, fit.mm, length, turns, bush)
    except NotDefined:
        return None, ()
    return worn, (*worn.steps, *steps)


def _working(fit: MadeFit, length: float | None, steps: tuple[Step, ...]) -> Working:
    bears = f"{length / fit.mm:.1f} diameters" if length else "not known"
    return Working(
        id=f"{fit.subject.replace(' ', '_')}.bearing",
        title=f"bearing of '{fit.subject}'",
        given=tuple(Given(step.name, step.value) for step in steps),
        formula="; ".join(
            ["length ÷ diameter", *(f"{step.name}: {step.formula}" for step in steps)]
        ),
        result=bears,
        because="1 to 1.5 diameters, or two bearings apart",
        source="; ".join(dict.fromkeys(["common practice, no source", *(s.source for s in steps)])),
        span=fit.joint.at,
    )
