"""Routes to findings about room: in the vice, under the spindle, between flanges, on a slope."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import Design, Diagnostic, exact, shown_length
from binder_plugins.operations.beside_steps import beside_step
from binder_plugins.operations.facts import Route, SetUp
from binder_plugins.operations.judging import reach_codes
from binder_plugins.operations.rings import is_beside
from binder_solid.facts import FormFact, Located

if TYPE_CHECKING:
    from collections.abc import Iterator

# Common practice, no source: on a steeper surface a drill slides before it cuts.
_STEEP_DEG = 10.0
# Half of what a free size up to 6 mm may be out, in mm: ISO 2768-1, medium.
_FREE_MM = 0.1
_NEAR = 1e-6


def check_room(design: Design) -> Iterator[Diagnostic]:
    """Work that does not go in, tools that do not go between, drills that slide off."""
    for route in design.facts.all(Route):
        form = design.facts.about(FormFact, route.subject)
        for setup in route.setups:
            yield from _gripped(setup, route, design)
            if form is not None:
                yield from _under_the_drill(setup, form, route, design)
        if form is not None:
            yield from _necks(form, route, design)
            yield from _brushing(form, route, design)


def _gripped(setup: SetUp, route: Route, design: Design) -> Iterator[Diagnostic]:
    vices = design.workshop.entry.holding.vices
    name = next((one for one in vices if setup.grip.holder.startswith(one)), "")
    if name and setup.grip.kind == "vice" and setup.grip.across > vices[name].opens.mm + _NEAR:
        yield reach_codes.VICE_TOO_SMALL.at(
            route.at,
            f"set-up {setup.number} of '{route.subject}' grips {_mm(setup.grip.across, design)}; "
            f"the {name} opens {_mm(vices[name].opens.mm, design)}",
            help="clamp it to the table against a stop",
        )


def _under_the_drill(
    setup: SetUp, form: FormFact, route: Route, design: Design
) -> Iterator[Diagnostic]:
    throat = _throat(setup, design)
    drilled = {act.feature for act in setup.acts if act.act == "drill"}
    for one in form.located:
        if one.name not in drilled:
            continue
        inwards = 0.0 if form.stretches else _from_edges(one, form)
        if inwards > throat:
            yield reach_codes.BEYOND_THROAT.at(
                one.at,
                f"'{one.name}' of '{route.subject}' is {_mm(inwards, design)} from its nearest "
                f"edge; the throat of the {setup.machine} is {_mm(throat, design)}",
                help="a hand drill with a guide, or drill it before it is cut out",
            )
        slope = _slope(one, form)
        if slope > _STEEP_DEG:
            yield reach_codes.STARTS_ON_SLOPE.at(
                one.at,
                f"'{one.name}' of '{route.subject}' starts on a slope of {slope:.0f}°",
                help="a flat first, milled with a slot drill of its size, or a guide bush",
            )


def _throat(setup: SetUp, design: Design) -> float:
    machine = design.workshop.entry.machines.drilling_machines.get(setup.machine)
    return machine.throat.mm if machine is not None and machine.throat is not None else math.inf


def _from_edges(one: Located, form: FormFact) -> float:
    """The hole of a pattern that lies farthest in, from the edge that is nearest to it."""
    axis = max(range(3), key=lambda n: abs(one.frame.z[n]))
    sides = [n for n in range(3) if n != axis]
    return max(
        (min(min(spot[n], form.size[n] - spot[n]) for n in sides) for spot in one.spots),
        default=0.0,
    )


def _slope(one: Located, form: FormFact) -> float:
    """The angle in degrees between the drill and what stands square on the surface."""
    if one.face != "across":
        return math.degrees(math.acos(min(max(map(abs, one.frame.z)), 1.0)))
    x = one.frame.origin[0]
    step = next((s for s in form.stretches if s.start - _NEAR <= x <= s.end + _NEAR), None)
    if step is None or step.corners:
        return 0.0
    fall = abs(step.across - step.end_across) / 2
    return math.degrees(math.atan2(fall, step.end - step.start))


def _necks(form: FormFact, route: Route, design: Design) -> Iterator[Diagnostic]:
    tool = design.workshop.parting_width
    turned = {act.feature for act in route.acts if act.act == "turn"}
    if tool is None:
        return
    for place in range(1, len(form.stretches) - 1):
        before, step, after = form.stretches[place - 1 : place + 2]
        name = step.name or f"step {place + 1}"
        long = step.end - step.start
        is_neck = max(step.across, step.end_across) < min(before.end_across, after.across) - _NEAR
        if is_neck and name in turned and long < float(tool) - _NEAR:
            yield reach_codes.NECK_TOO_NARROW.at(
                route.at,
                f"the {name} of '{route.subject}' is {_mm(long, design)} long between thicker "
                f"steps; the parting tool is {_mm(float(tool), design)} wide",
                help="as wide as the tool, or one of the flanges fitted separately",
            )


def _brushing(form: FormFact, route: Route, design: Design) -> Iterator[Diagnostic]:
    """Drills that pass a step beside their hole closer than a free size may be out."""
    drilled = {act.feature for act in route.acts if act.act == "drill"}
    for one in form.located:
        if one.name not in drilled or one.face != "axis" or not is_beside(one):
            continue
        room, high = beside_step(form.stretches, one)
        left = room - (one.diameter or 0.0) / 2
        if high > _NEAR and left < _FREE_MM - _NEAR:
            yield reach_codes.DRILL_BRUSHES_STEP.at(
                one.at,
                f"the drill of '{one.name}' of '{route.subject}' passes the step beside it with "
                f"{_mm(max(left, 0.0), design)}",
                help=f"turn the step {_mm(2 * (_FREE_MM - left), design)} thinner, or set the hole "
                "farther out",
            )


def _mm(size: float, design: Design) -> str:
    return shown_length(exact(round(size, 2)), design.units)
