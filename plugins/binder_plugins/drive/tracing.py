"""Gears, belts and duties to the figures that a fault is traced by, each with what it should be."""

from __future__ import annotations

from collections.abc import Iterator
from math import degrees

from binder.api import Contribution, Design, TraceFact
from binder_plugins.drive.duties.duty import DutyFact
from binder_plugins.drive.duties.shown import size
from binder_plugins.drive.pairs.facts import BeltFact, MeshFact, ToothFact
from binder_trade.belts.run import LEAST_WRAP_DEG

# Rows of duties that a maker can count or measure on the model, and the unit of what he reads.
_COUNTED = {
    "Lift of the head": "length",
    "Lift at the wheel": "length",
    "Blows a minute": "a minute",
    "Fastest": "r/min",
    "Stroke": "length",
    "Lift": "length",
    "Length": "length",
    "Centres": "length",
    "Centres for them": "length",
    "Travel for a turn": "length",
    "Travel": "length",
    "Load drops back": "length",
    "Force on the handle": "g",
    "Turns of the handle": "turns",
    "Rope on the drum": "length",
    "Rim": "r/min",
    "Looks right": "r/min",
}
_STANDARD_FALL = 9.80665


def trace_drive(design: Design) -> Contribution:
    """All of them, joint by joint in the order of their kinds."""
    found = [*_belts(design), *_meshes(design), *_teeth(design), *_duties(design)]
    return Contribution(facts=found)


def _fact(joint: str, what: str, should: str, unit: str) -> TraceFact:
    return TraceFact(f"{joint}: {what}", joint, what, should, unit)


def _belts(design: Design) -> Iterator[TraceFact]:
    for belt in design.facts.all(BeltFact):
        if not belt.runs:
            continue
        joint, unit = belt.subject, str(design.units)
        wrap = degrees(min(run.least_wrap_rad for run in belt.runs))
        words = f"{wrap:.0f}°; under {LEAST_WRAP_DEG:.0f}° it slips"
        yield _fact(joint, "wrap on the small pulley", words, "°")
        lengths = sorted(run.length_mm for run in belt.runs)
        told = size(lengths[0], design)
        if lengths[-1] - lengths[0] >= 0.05:
            told += f" to {size(lengths[-1], design)}"
        yield _fact(joint, "length of the belt", told, unit)
        if belt.free is not None:
            pull = f"{size(belt.free, design)} before it is put on: the stretch is its pull"
            yield _fact(joint, "cord cut to", pull, unit)


def _meshes(design: Design) -> Iterator[TraceFact]:
    for one in design.facts.all(MeshFact):
        if one.mesh is None:
            continue
        pair = f", {_title(one.pinion, design)} and {_title(one.wheel, design)}"
        unit = str(design.units)
        yield _fact(one.joint, f"centre distance{pair}", _places(one.wanted, design), unit)
        play = _places(one.mesh.backlash_mm, design)
        words = f"{play} at the pitch circle, by an indicator on a tooth, the other gear held"
        yield _fact(one.joint, f"play of the teeth{pair}", words, unit)


def _teeth(design: Design) -> Iterator[TraceFact]:
    for one in design.facts.all(ToothFact):
        if one.span is not None and one.subject in design.parts:
            words = f"{_places(one.span.span_mm, design)} over {one.span.across} teeth"
            title = _title(one.subject, design)
            yield _fact(one.joint, f"teeth of the {title}", words, str(design.units))


def _duties(design: Design) -> Iterator[TraceFact]:
    for duty in design.facts.all(DutyFact):
        for name, value in duty.rows:
            unit = _COUNTED.get(name)
            if unit is not None:
                shown = str(design.units) if unit == "length" else unit
                should = _hung(value) if unit == "g" else value
                yield _fact(duty.subject, f"{name[0].lower()}{name[1:]}", should, shown)


def _hung(force: str) -> str:
    """A force in N as what is weighed and hung: no list has a spring balance in it.

    1 kg weighs 9.80665 N (ISO 80000-4).
    """
    grams = float(force.split(" ", 1)[0]) / _STANDARD_FALL * 1000
    return (
        f"{force}: {grams:.3g} g in a small bag, hung from the handle with its arm level, on the "
        "side that goes down as it winds, just wind the load up"
    )


def _places(mm: float, design: Design) -> str:
    """A centre distance or play to the hundredth, or half a thou."""
    return f"{mm / 25.4:.4f} in" if str(design.units).startswith("in") else f"{mm:.3f} mm"


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return item.title if item is not None else name
