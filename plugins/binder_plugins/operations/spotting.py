"""Holes spotted through a mate: where it is laid, what lines it up, and what holds the two."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import TogetherFact
from binder_plugins.operations.bench import drill_for, place_of
from binder_plugins.operations.facts import Grip
from binder_plugins.operations.hole_kinds import Where, through
from binder_plugins.operations.hole_tools import drill_name
from binder_plugins.operations.holes import hole_acts
from binder_plugins.operations.parallels import clear_of
from binder_plugins.operations.sides import SAID
from binder_plugins.operations.waste import on_waste
from binder_solid.each_on import each_on
from binder_solid.facts import FormFact
from binder_solid.laid_on import laid_on, overhangs, reach_along, rods_through

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.flat import Flat
    from binder_solid.facts import Located

# What a rod stands out beyond the bores that it lines up, over all, and the steps in which its
# length is told, both in mm; common practice, no source.
_OUT_MM, _ROUND_MM = 10.0, 5.0
_SCRIBED = ("scriber", "square")
_MARKING = "punch for the marks"
_OWN_DRILL, _CLAMPS = "drill through the mate", "toolmaker's clamps"


def spotted(flat: Flat, face: str, one: Located) -> None:
    """Spotted through its mate, then drilled with the mate off.

    On the bench where no vice holds the work with the mate on: plates that stand out over its
    sides, or under it, leave the jaws nothing to close on. Common practice, no source.
    """
    item, mate = _mate(flat, one.name)
    bore, rods = _lined(flat), _rods(flat, one, item)
    machine = drill_for(flat.workshop, one.diameter or 0.0)
    where = Where(machine, through(one, flat.form.size), tags=("later",), is_started=True)
    drilled = list(hole_acts(flat.work, one, where))
    place, up = place_of(flat.workshop, machine), f"{SAID[face]} up"
    vice, clear = clear_of(flat.vice(), flat.form.size, face, [one])
    vice, clear = on_waste(vice, clear, [one], is_wood=flat.is_wood)
    lines = _scribed(flat, item, mate)
    laid = "on by those lines" if lines else f"on where it will stand{_placed(flat, face, item)}"
    clamp, tools = f"{lines}clamp the {mate} {laid}", [_own_drill(flat, one, item)]
    tools += _SCRIBED if lines else ()
    if not (bore or rods or overhangs(flat.work.name, face, item, flat.work.design)):
        spot = _spot(flat, one, clamp, tools, machine)
        datum = f"{up}; the holes of the {mate}"
        flat.add(place, machine, vice, datum, [spot, *drilled], true=clear)
        return
    tools, off = [*tools, "hand drill", _CLAMPS], "it"
    if bore:
        stands = "by those lines" if lines else "where they will stand"
        clamp = lines + _on_bar(flat, bore, mate, stands)
        tools.append(_rod(flat, bore, _along(flat, bore)))
    elif rods:
        clamp, off = lines + _lined_up(flat, laid, mate, rods), "both"
        tools += [_rod(flat, hole, _between(flat, one, item)) for hole in rods]
        tools.append("screwdriver or key")
    spot = _spot(flat, one, clamp, tools, off=off)
    why = "no vice takes them together" if bore or rods else "in a vice no clamp reaches it"
    grip = Grip(_CLAMPS, "bench", f"the work and the {mate}: {why}")
    at_once = flat.work.count if bore else 1
    flat.add("bench", "", grip, f"{up}; the holes of the {mate}", [spot], at_once=at_once)
    datum = f"{up}; each spot in turn under the drill, the {mate} off"
    flat.add(place, machine, vice, datum, drilled, true=clear)


def _spot(
    flat: Flat, one: Located, up: str, tools: Sequence[str], machine: str = "", off: str = "it"
) -> Act:
    """The one act in which the mate is on, under the drill or, without a machine, by hand."""
    bore = _lined(flat)
    each = f" in each of the {flat.work.count}" if bore else ""
    count = len(one.spots)
    these, stand = ("each of them", "stands") if bore else ("the two", "stand")
    return flat.work.act(
        "spot-through",
        f"{up}, spot {count}{each} through its holes with their own drill, mark how {these} "
        f"{stand}, take {off} off",
        machine=machine,
        feature=one.name,
        tool=", ".join([*tools, _MARKING]),
        times=count * (flat.work.count if bore else 1),
        tags=("on-bar",) if bore else (),
    )


def _own_drill(flat: Flat, one: Located, item: str) -> str:
    """The drill that the holes of the mate were drilled with, where their size is told."""
    form = flat.work.design.facts.about(FormFact, item)
    part, joints = flat.work.design.parts.get(item), flat.work.joints_at(one.name)
    names = {each.name for each in (part.features if part else ()) if each.implied_by in joints}
    sizes = [
        hole.diameter
        for hole in (form.located if form is not None else ())
        if hole.name in names and hole.kind == "drilled" and hole.diameter
    ]
    if not sizes:
        return _OWN_DRILL
    return f"{drill_name(flat.work, min(sizes), fitted=False)}, led by the mate"


def _on_bar(flat: Flat, bore: Located, mate: str, stands: str) -> str:
    return (
        f"all {flat.work.count} on one straight rod through the {_said(bore)}, a close push in "
        f"each, clamp the {mate} on them {stands}, tried with a square"
    )


def _lined_up(flat: Flat, laid: str, mate: str, rods: Sequence[Located]) -> str:
    """The second of two mates, lined up by rods with the first, which is screwed on by then."""
    said = " and a ".join(
        f"⌀{flat.work.mm(one.diameter or 0.0)} rod through the {_said(one)}" for one in rods
    )
    return (
        f"screw the first {mate} on again and clamp the second {laid}; line it up with the "
        f"first, no bush in either yet: a {said} of both, then tighten the clamps"
    )


def _said(one: Located) -> str:
    return one.name.replace("_", " ")


def _rod(flat: Flat, hole: Located, spans: float) -> str:
    """`lining rod ⌀7 mm × 40 mm`: by these words it is made."""
    long = _ROUND_MM * math.ceil((spans + _OUT_MM) / _ROUND_MM)
    return f"lining rod ⌀{flat.work.mm(hole.diameter or 0.0)} × {flat.work.mm(long)}"


def _between(flat: Flat, one: Located, item: str) -> float:
    """From outside to outside in mm of two mates with the work between them."""
    axis = max(range(3), key=lambda n: abs(one.frame.z[n]))
    form = flat.work.design.facts.about(FormFact, item)
    return flat.form.size[axis] + (2 * min(form.size) if form is not None else 0.0)


def _along(flat: Flat, bore: Located) -> float:
    """Over all copies of the work along its bore in mm, as they will stand."""
    axis = max(range(3), key=lambda n: abs(bore.frame.z[n]))
    found = reach_along(flat.work.name, axis, flat.work.design)
    return found or flat.work.count * flat.form.size[axis]


def _placed(flat: Flat, face: str, item: str) -> str:
    """How the mate is laid on that face, since a hole that is spotted stays where it is."""
    if flat.work.count > 1:
        return ""  # Each of them has a place of its own.
    found = laid_on(flat.work.name, face, item, flat.work.design)
    return f": {found}" if found else ""


def _scribed(flat: Flat, item: str, mate: str) -> str:
    """Lines on the mate for copies that have a place each: it hides them once it lies on them."""
    found = each_on(item, flat.work.name, flat.work.design) if flat.work.count > 1 else None
    if found is None:
        return ""
    face = SAID.get(found.face, found.face)
    of = f"on the {face} of the {mate} with a steel rule"
    return f"scribe the edges of each {of}: {found.words}; then "


def _rods(flat: Flat, one: Located, item: str) -> Sequence[Located]:
    """The holes by which the second of two mates is lined up with the first, on by then."""
    is_second = any(
        act.act == "spot-through" and act.feature.partition(",")[0] == one.name
        for setup in flat.setups
        for act in setup.acts
    )
    design = flat.work.design
    form = design.facts.about(FormFact, item)
    if not is_second or form is None:
        return ()
    left = {place for fact in design.facts.all(TogetherFact) for place in fact.left}
    there = tuple(
        hole
        for hole in form.located
        if hole.kind in {"drilled", "reamed", "bored"}
        and hole.depth is None
        and len(hole.spots) == 1
        and f"{item}.{hole.name}" not in left
    )
    return rods_through(flat.work.name, item, there, design)


def lined_bore(flat: Flat) -> bool:
    """Whether its spotted holes wait for its bores, which a rod goes through."""
    return _lined(flat) is not None


def _lined(flat: Flat) -> Located | None:
    """The bore of a part that is made twice or more, sized on this leaf; None without one.

    Such parts carry one shaft: spotted one by one, their bores lie out of line.
    """
    if flat.work.count < 2:
        return None
    left = {place for one in flat.work.design.facts.all(TogetherFact) for place in one.left}
    for one in flat.form.located:
        is_here = f"{flat.work.name}.{one.name}" not in left
        if one.kind in {"bored", "reamed"} and is_here and len(one.spots) == 1:
            return one
    return None


def _mate(flat: Flat, place: str) -> tuple[str, str]:
    """The part whose holes are spotted through, and its title."""
    design, own = flat.work.design, flat.work.name
    for joint in flat.work.joints_at(place):
        others = (item for item in design.joints[joint].items if item != own)
        found = next((item for name in others if (item := design.item(name)) is not None), None)
        if found is not None:
            return found.name, found.title
    return "", "mate"
