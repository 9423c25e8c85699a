"""Routes to findings about holes: too deep for the drill, the quill, the bar, or for any use."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import Design, Diagnostic, ThreadFact, exact, load_data, shown_length
from binder_making.cutting import point_length
from binder_plugins.operations.aids.owning import in_plain_words
from binder_plugins.operations.facts import Act, Route, SetUp
from binder_plugins.operations.judging import reach_codes
from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

# Common practice, no source: a long-series drill ends at so many diameters (another check tells
# what goes deeper), a bar bends when so many diameters long, and a thread wants no more.
_LONGEST, _STIFF, _ENOUGH = 20.0, 4.0, 3.0
_NEAR = 1e-6
# A bar goes into a hole that is so much smaller than it is told for, in mm: rounding of inches.
_ENTERS = 0.01


def check_reach(design: Design) -> Iterator[Diagnostic]:
    """Everything that a tool or a grip of this workshop does not reach."""
    for route in design.facts.all(Route):
        form = design.facts.about(FormFact, route.subject)
        deepest = _deepest(route)
        reamed = {one.name for one in form.located if one.kind == "reamed"} if form else set()
        for setup in route.setups:
            for act in setup.acts:
                if act is deepest.get(act.feature):
                    yield from _drilled(act, setup, route, design)
                # A hole to be reamed is bored where no reamer is owned: another check tells it.
                if act.act == "bore" and setup.place == "lathe" and act.feature not in reamed:
                    yield from _bored(act, route, design)
                if act.act == "taper" and "inside" in act.tags:
                    yield from _tapered(act, deepest.get(act.feature), route, design)
        if form is not None:
            yield from _threads(form, deepest, design)


def _deepest(route: Route) -> dict[str, Act]:
    """The last drill of each hole: a pilot that is too short is told with it."""
    return {act.feature: act for act in route.acts if act.act == "drill" and act.deep > 0}


def flute_length(diameter_mm: float) -> float:
    """The flutes of a jobber drill in mm; 0 over the table. Source: in the data file."""
    rows = load_data("binder_plugins.operations", "jobber_drills.yaml")["flutes"]
    return next((float(long) for most, long in rows if diameter_mm <= most + _NEAR), 0.0)


def _drilled(act: Act, setup: SetUp, route: Route, design: Design) -> Iterator[Diagnostic]:
    flutes = flute_length(act.size)
    if flutes and flutes < act.deep - _NEAR and act.deep <= _LONGEST * act.size:
        yield reach_codes.DRILL_TOO_SHORT.at(
            act.at,
            f"'{act.feature}' of '{route.subject}' is {_mm(act.deep, design)} deep; the flutes of "
            f"a {_mm(act.size, design)} drill are {_mm(flutes, design)} long",
            help="a long-series drill, from both ends, or stepped from a larger hole",
        )
    machine = design.workshop.entry.machines.drilling_machines.get(setup.machine)
    travel = machine.travel.mm if machine is not None and machine.travel is not None else math.inf
    if act.deep + point_length(act.size) > travel + _NEAR:
        yield reach_codes.QUILL_TOO_SHORT.at(
            act.at,
            f"'{act.feature}' of '{route.subject}' is {_mm(act.deep, design)} deep; the "
            f"{setup.machine} travels {_mm(travel, design)}",
            help="in the lathe, or from both ends",
        )


def _bored(act: Act, route: Route, design: Design) -> Iterator[Diagnostic]:
    bars = [
        bar.reach.mm
        for bar in design.workshop.entry.cutters.boring_bars
        if bar.least_bore.mm <= act.size + _NEAR
    ]
    most = max(bars, default=_STIFF * act.size)
    if act.deep > most + _NEAR:
        reach = "a bar here reaches" if bars else "a tool ground to enter it reaches"
        yield reach_codes.BORE_TOO_DEEP.at(
            act.at,
            f"'{act.feature}' of '{route.subject}' is {_mm(act.deep, design)} deep; {reach} "
            f"{_mm(most, design)}",
            help="ream it, or bore from both ends with a relief in the middle",
        )


def _tapered(act: Act, drill: Act | None, route: Route, design: Design) -> Iterator[Diagnostic]:
    """The bar of a taper bore goes in where it is narrowest: through the hole as drilled."""
    size = drill.size if drill is not None else act.size
    shop = design.workshop
    bars = [bar for bar in shop.entry.cutters.boring_bars if bar.least_bore.mm <= size + _ENTERS]
    is_ground = any("small boring tool" in one for one in in_plain_words(shop))
    of = f"the taper bore '{act.feature}' of '{route.subject}'"
    if not bars and not is_ground:
        yield reach_codes.TAPER_BORE_TOO_SMALL.at(
            act.at,
            f"{of} is drilled {_mm(size, design)} under its small end, and no boring bar here "
            "enters that",
            help="a small boring tool ground to enter, listed under `others:`; or a larger taper",
        )
        return
    most = max((bar.reach.mm for bar in bars), default=_STIFF * size)
    if act.deep > most + _NEAR:
        yield reach_codes.BORE_TOO_DEEP.at(
            act.at,
            f"{of} is {_mm(act.deep, design)} deep; what enters its small end reaches "
            f"{_mm(most, design)}",
            help="a taper reamer of its rate, or a shorter hub",
        )


def _threads(form: FormFact, drills: Mapping[str, Act], design: Design) -> Iterator[Diagnostic]:
    """A through thread is as long as its drill goes deep."""
    for one in form.located:
        fact = design.facts.about(ThreadFact, f"{form.subject}.{one.name}")
        drill = drills.get(one.name)
        if one.kind != "tapped" or fact is None or drill is None:
            continue
        long, size = one.depth or drill.deep, float(fact.major)
        if long > _ENOUGH * size + _NEAR:
            yield reach_codes.TAPPED_DEEPER_THAN_NEEDED.at(
                one.at,
                f"'{one.name}' of '{form.subject}' is tapped {_mm(long, design)} deep, "
                f"{long / size:.1f} diameters",
                help=f"{_mm(2 * size, design)} of thread hold all that the screw does",
            )


def _mm(size: float, design: Design) -> str:
    return shown_length(exact(round(size, 2)), design.units)
