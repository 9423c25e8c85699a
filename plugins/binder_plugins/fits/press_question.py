"""A press fit asked at the bench to what it does to shaft and ring."""

from __future__ import annotations

import re

from binder.api import Answer, Reckoning, Result, Workshop, reasons
from binder_plugins.fits.figures import with_unit
from binder_plugins.fits.reckoning import (
    UnreadableError,
    asked,
    classes,
    millimetres,
    size_first,
)
from binder_trade.explained import NotDefined, Step
from binder_trade.fits.bush import press_bush
from binder_trade.fits.cylinders import Joint, joint
from binder_trade.fits.metals import friction, metal
from binder_trade.fits.press import Grip, grip, hold, most_interference_mm
from binder_trade.fits.shrink import Heat, cool_shaft, heat_ring
from binder_trade.limits import fit

_EXAMPLE = 'press "12 mm" H7/s6 steel in brass, hub 24 mm, length 10 mm'
_PARTS = re.compile(r"\b(hub|length|bore)\s+([^,;]{1,40}?(?:mm|in|\"))(?![A-Za-z])")
_METALS = re.compile(r"\b([a-z][a-z -]{1,40}?) in(?:to)? ([a-z][a-z -]{1,40})\b")
_USUAL_HUB = 2.0


def press_reckonings() -> list[Reckoning]:
    """The question about a press fit."""
    usage = '"12 mm" H7/s6 steel in brass, hub 24 mm, length 10 mm, bore 6 mm'
    says = "what a press fit does: pressure, stress, force, heat; a hub of twice the size if untold"
    return [Reckoning("press", usage, says, asked(_press))]


def _press(text: str, workshop: Workshop) -> Answer:
    nominal, rest = size_first(text, _EXAMPLE)
    told = {name: millimetres(size, _EXAMPLE) for name, size in _PARTS.findall(rest)}
    rest = _PARTS.sub(" ", rest)
    shaft, hub, rest = _metals(rest)
    words = " ".join(re.sub(r"[,;]", " ", rest).split())
    if not words:
        raise UnreadableError("no class and no duty is named", f"write it as {_EXAMPLE}")
    hole_cls, shaft_cls, why = classes(words, nominal)
    pair = fit(nominal, hole_cls, shaft_cls)
    if pair.clearance_min_um >= 0:
        raise NotDefined(f"{pair.designation} has no nip at all", "take H7/p6, H7/s6 or H7/u6")
    made = joint(
        nominal,
        metal(shaft),
        metal(hub),
        told.get("hub", _USUAL_HUB * nominal),
        told.get("bore", 0.0),
    )
    tight = grip(made, -pair.clearance_min_um / 1000)
    loose = grip(made, -pair.clearance_max_um / 1000) if pair.clearance_max_um < 0 else None
    results, steps = _results(made, tight, loose, told.get("length"))
    units = workshop.units
    nip = with_unit(-pair.clearance_min_um / 1000, units)
    notes = (
        f"{made.shaft.name} in {made.hub.name}, {nip} of nip at the most",
        f"the metals bear {with_unit(most_interference_mm(made), units)}",
    )
    title = f"press fit {pair.designation} at ⌀{with_unit(nominal, units)}"
    return Answer(title, results, (*why, *reasons(steps)), notes)


def _metals(text: str) -> tuple[str, str, str]:
    """The shaft's metal, the hub's, and the words without them; steel where untold."""
    found = _METALS.search(text)
    if found is None:
        return "steel", "steel", text
    shaft, hub = found[1].strip(), found[2].strip()
    return shaft, hub, f"{text[: found.start()]} {text[found.end() :]}"


def _results(
    made: Joint, tight: Grip, loose: Grip | None, length: float | None
) -> tuple[tuple[Result, ...], tuple[Step, ...]]:
    results = [
        Result("pressure_max", _tenths(tight.pressure_mpa), "N/mm2", "pressure, tightest pair"),
        Result("pressure_min", _tenths(loose.pressure_mpa if loose else 0.0), "N/mm2",
               "pressure, loosest pair"),
        Result("hub_stress", _tenths(tight.hub_hoop_mpa), "N/mm2", "hoop stress of the hub"),
        Result("hub_use", _tenths(100 * tight.hub_use), "%", "of what the hub bears"),
        Result("shaft_use", _tenths(100 * tight.shaft_use), "%", "of what the shaft bears"),
        Result("outside_grows", _tenths(1000 * tight.outside_grows_mm), "um", "the hub grows"),
    ]  # fmt: skip
    steps = list(tight.steps)
    if made.bore_mm:
        bush = press_bush(made, tight.interference_mm)
        results.append(
            Result("bore_closes", _tenths(1000 * bush.closes_mm), "um", "the bore closes")
        )
        steps += bush.steps[len(tight.steps) :]
    if length is not None:
        rub = friction("pressed", made.hub)
        push = hold(made, tight.pressure_mpa, length, rub.most)
        least = loose.pressure_mpa if loose else 0.0
        grips = hold(made, least, length, rub.least) if least else None
        results.append(
            Result("press_force", _tenths(push.force_n), "N", "to press it in, at the most")
        )
        results.append(Result("torque", _tenths(grips.torque_nmm / 1000 if grips else 0.0), "N·m",
                              "torque carried, at the least"))  # fmt: skip
        steps += push.steps
    for name, title, heated in (
        ("heat_to", "ring heated to", heat_ring(made.diameter_mm, tight.interference_mm, made.hub)),
        ("cool_to", "or shaft cooled to", _cooled(made, tight)),
    ):
        if heated is not None:
            results.append(Result(name, round(heated.temperature_deg), "°C", title))
            steps += heated.steps[-1:]
    return tuple(results), tuple(steps)


def _tenths(value: float) -> float:
    """A figure as far as the theory is good for."""
    return round(value, 1)


def _cooled(made: Joint, tight: Grip) -> Heat | None:
    try:
        return cool_shaft(made.diameter_mm, tight.interference_mm, made.shaft)
    except NotDefined:
        return None
