"""Does the belt reach, lie, grip and bend as it should, on every step."""

from __future__ import annotations

from collections.abc import Iterator
from math import degrees

from binder.api import Design, Diagnostic, Joint, Size
from binder_plugins.drive import belt_codes as codes
from binder_plugins.drive.judging.grip import check_grip
from binder_plugins.drive.pairs.facts import BeltFact
from binder_trade.belts.centres import change_of_centres, jockey
from binder_trade.belts.round_belt import cord
from binder_trade.explained import NotDefined

_LEAST_WRAP = 120.0  # degrees; common practice, no source
_SAME_MM = 0.01
_STANDS_MM = 0.1
_TAKES_UP = 0.02  # of its length, what a stretching belt forgives from step to step
_QUARTER = 4.0  # diameters between the shafts; common practice, no source
_STRETCH = (1.04, 1.14)  # of a polyurethane cord as fitted, round the usual 8 to 12 %


def check_belts(design: Design) -> Iterator[Diagnostic]:
    """Each belt of the model."""
    for fact in design.facts.all(BeltFact):
        joint = design.joints[fact.subject]
        if fact.refusal:
            yield codes.BELT_CANNOT_REACH.at(joint.at, fact.refusal, help=fact.way_out)
            continue
        yield from _placed(fact, joint)
        yield from _lengths(fact, joint)
        yield from _wrap(fact, joint)
        yield from _bend(fact, joint)
        yield from _bought(fact, joint, design)
        yield from check_grip(fact, joint, design)
        if getattr(joint.entry, "quarter_turn", False):
            yield from _quarter(fact, joint)


def _placed(fact: BeltFact, joint: Joint) -> Iterator[Diagnostic]:
    """The centres as written are those at which the shafts stand."""
    said = getattr(joint.entry, "centres", None)
    if fact.placed is None or not isinstance(said, Size):
        return
    if abs(fact.placed - fact.centres) > _STANDS_MM:
        yield codes.SHAFTS_STAND_OTHERWISE.at(
            said.span,
            f"the shafts of '{joint.name}' stand {fact.placed:.2f} mm apart in the arrangement, "
            f"{fact.centres:.2f} mm is written",
            help="leave `centres:` out, or move one of the shafts",
        )


def _lengths(fact: BeltFact, joint: Joint) -> Iterator[Diagnostic]:
    allowed = _TAKES_UP * fact.runs[0].length_mm if fact.belt == "round" else _SAME_MM
    if fact.apart <= max(allowed, _SAME_MM):
        return
    steps = ", ".join(
        f"{run.first_mm:.2f} and {other:.2f} mm"
        for run, other in zip(fact.runs, fact.suited, strict=False)
    )
    yield codes.BELT_LENGTHS_DIFFER.at(
        joint.at,
        f"the steps of '{joint.name}' want belts that differ by {fact.apart:.2f} mm",
        help=f"one belt serves all at {steps}; or {_taken_up(fact)}" if steps else _taken_up(fact),
    )


def _taken_up(fact: BeltFact) -> str:
    """What keeps a belt for the longest step taut on the others: a jockey, or moving shafts."""
    longest = max(run.length_mm for run in fact.runs)
    shortest = min(fact.runs, key=lambda run: run.length_mm)
    deep = max(jockey(fact.runs, longest).depths_mm)
    apart = change_of_centres(shortest, longest - shortest.length_mm)
    return (
        f"take a belt of {longest:.1f} mm run and a jockey that goes {deep:.1f} mm in, at the "
        f"middle of the slack side, or shafts that move {apart:.2f} mm further apart"
    )


def _wrap(fact: BeltFact, joint: Joint) -> Iterator[Diagnostic]:
    least = min(degrees(run.least_wrap_rad) for run in fact.runs)
    if least < _LEAST_WRAP:
        yield codes.BELT_SLIPS.at(
            joint.at,
            f"the belt of '{joint.name}' lies on its small pulley over {least:.0f}°",
            help="set the shafts further apart, lead it over a jockey, or take two stages",
        )


def _bend(fact: BeltFact, joint: Joint) -> Iterator[Diagnostic]:
    if fact.belt != "round" or not fact.section:
        return
    try:
        least = cord(fact.section).least_pulley_mm
    except NotDefined:
        return
    smallest = min(min(run.first_mm, run.second_mm) for run in fact.runs) - fact.section
    if smallest < least:
        yield codes.BELT_BENDS_TOO_SHARP.at(
            joint.at,
            f"a cord of {fact.section:g} mm on a groove bottom of {smallest:g} mm; "
            f"{least:g} mm is the least",
            help=f"a pulley of {least + fact.section:g} mm, or a thinner cord",
        )


def _bought(fact: BeltFact, joint: Joint, design: Design) -> Iterator[Diagnostic]:
    item = design.bought.get(joint.held_by) if joint.held_by else None
    length = next((size for name, size in item.sizes if name == "length"), None) if item else None
    if length is None or item is None:
        return
    low = min(run.length_mm for run in fact.runs)
    least, most = (low / one for one in reversed(_STRETCH)) if fact.free else (low, low * 1.01)
    if not least <= length.mm <= most:
        free = f"{fact.free:.1f} mm, to stretch a tenth" if fact.free else f"{low:.1f} mm"
        yield codes.BELT_STRETCH_OUT.at(
            length.span,
            f"'{item.name}' is {length.mm:g} mm long, the run of '{joint.name}' {low:.1f} mm",
            help=f"take {free}",
        )


def _quarter(fact: BeltFact, joint: Joint) -> Iterator[Diagnostic]:
    largest = max(max(run.first_mm, run.second_mm) for run in fact.runs)
    if fact.centres < _QUARTER * largest:
        yield codes.QUARTER_TURN_CLOSE.at(
            joint.at,
            f"a quarter-turn belt over {largest:g} mm at {fact.centres:g} mm",
            help=f"set the shafts {_QUARTER * largest:g} mm or more apart",
        )
