"""Finishes to the acts that a part's route and the evenings take up: heat, polish, coats."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Contribution, Design, TreatmentFact, TreatmentStep
from binder_making.times import act_time
from binder_plugins.finishing.heat import Heat, Range, colour_in, said
from binder_plugins.finishing.treated import Treated, treated

_TONGS = "torch or furnace, tongs"
# Minutes of getting ready and of heating, apart from the soak: common practice, no source.
_READY = 10.0
_HEATING = 10.0


def treatments(design: Design) -> Contribution:
    """What is done to each item that has a finish."""
    facts = (_treatment(one) for one in treated(design))
    return Contribution(facts=[one for one in facts if one is not None])


def _treatment(one: Treated) -> TreatmentFact | None:
    coats = [process for process in one.processes if not process.is_heat]
    bright = [act for process in coats if process.is_bright for act in process.acts]
    last = [act for process in coats if not process.is_bright for act in process.acts]
    first, heat = tuple(_first(one)), tuple(_heat(one))
    if not (first or heat or bright or last):
        return None
    return TreatmentFact(one.item.name, first, heat, tuple(bright), tuple(last))


def _first(one: Treated) -> Iterator[TreatmentStep]:
    """What softens the stock before its fits are cut."""
    if one.heat is None:
        return
    if one.heat.anneal is not None and one.is_softened:
        yield TreatmentStep(
            "anneal",
            f"soften at {said(one.heat.anneal)}: {one.heat.anneal_how}",
            _TONGS,
            _READY,
            _HEATING,
            12.0 if "ash" in one.heat.anneal_how else 1.0,
            spoils="cooling it fast, where that hardens it",
        )
    if one.heat.stress is not None and one.is_eased:
        yield TreatmentStep(
            "stress-relieve",
            f"ease the stress at {said(one.heat.stress)}, an hour for each 25 mm; cool slowly",
            "furnace, or torch and patience",
            _READY,
            _HEATING,
            12.0,
            spoils="cooling one side faster than the other",
        )


def _heat(one: Treated) -> Iterator[TreatmentStep]:
    """Hardening and tempering; nothing where the metal takes none of it."""
    heat = one.heat
    if heat is None or not one.is_hardened:
        return
    if one.is_case:
        if heat.case is not None:
            yield _cased(heat, heat.case)
        return
    if not heat.hardens or heat.harden is None:
        return
    time = act_time("harden-temper")
    yield TreatmentStep(
        "harden",
        f"heat to {said(heat.harden)}, {heat.glow}; quench in {heat.quench}; a file must skate",
        f"{_TONGS}, {_bath(heat)}",
        time.set_min,
        time.run_min / 2,
        spoils="a sharp inside corner cracks; too hot makes it coarse",
    )
    if one.is_tempered:
        yield TreatmentStep(
            "temper",
            _tempered(one, heat),
            f"{_TONGS}, emery",
            0.0,
            time.run_min / 2,
            spoils="leaving it overnight before it is tempered",
        )


def _cased(heat: Heat, at: Range) -> TreatmentStep:
    return TreatmentStep(
        "harden",
        f"case-harden at {said(at)}: {heat.case_how}",
        f"{_TONGS}, case-hardening powder in a box, clean water",
        15.0,
        30.0,
        spoils="a face that has to stay soft and was not coppered",
    )


def _tempered(one: Treated, heat: Heat) -> str:
    colour = colour_in(one.text)
    if colour is None:
        return f"brighten a face; temper {heat.temper}"
    return f"brighten a face; let it down to {colour.colour} ({colour.celsius} °C), then quench"


def _bath(heat: Heat) -> str:
    return "oil in a metal bath with a lid" if heat.quench.startswith("oil") else "quenching bath"
