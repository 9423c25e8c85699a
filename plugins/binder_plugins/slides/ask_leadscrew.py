"""`binder reckon leadscrew`: a screw that moves, its nut, and what it takes to turn it."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from binder.api import Answer, Asked, NotAskedError, Result, Workshop, asked, reasons, unread
from binder_trade.slides import (
    Leadscrew,
    Lift,
    NotDefined,
    backlash,
    least_gap,
    lift,
    nut_pressure,
    square,
    trapezoidal,
    vee,
)

_NAMES = ("starts", "load", "friction", "nut")
_SIZES = r"([0-9]+(?:\.[0-9]+)?) ?[x×] ?([0-9]+(?:\.[0-9]+)?)"
_FORMS = (
    (re.compile(rf"tr ?{_SIZES}", re.IGNORECASE), trapezoidal),
    (re.compile(rf"square ?{_SIZES}", re.IGNORECASE), square),
    (re.compile(rf"m ?{_SIZES}", re.IGNORECASE), vee),
)
# Plain nuts, oiled; see FRICTION of the trade's table.
_FRICTION = 0.15


def leadscrew_answer(words: Sequence[str], _workshop: Workshop) -> Answer:
    """The answer; raises NotAskedError or NotDefined where there is none."""
    given = asked(words, _NAMES)
    screw = _screw(given)
    load, friction = given.newtons("load"), given.number("friction")
    worked = lift(
        screw, 100.0 if load is None else load, _FRICTION if friction is None else friction
    )
    steps = (*screw.steps, *worked.steps) if load is not None else screw.steps
    return Answer(
        f"{screw.form} screw {screw.major_mm:g} × {screw.pitch_mm:g}, {screw.starts} start"
        + ("" if screw.starts == 1 else "s"),
        (*_sizes(screw), *(_torques(screw, worked, given) if load is not None else ())),
        reasons(steps),
        tuple(_notes(screw, worked)),
    )


def _screw(given: Asked) -> Leadscrew:
    loose = given.words.get("", "")
    starts = given.number("starts") or 1
    if starts != int(starts):
        raise NotAskedError(f"a screw has no {starts:g} starts", "as `starts 2`")
    for pattern, make in _FORMS:
        if found := pattern.fullmatch(loose):
            return make(float(found[1]), float(found[2]), int(starts))
    raise unread(loose, "no screw that moves", "as `Tr 10 x 2` or `square 12 x 3`")


def _sizes(screw: Leadscrew) -> Iterator[Result]:
    yield Result("lead", screw.lead_mm, "mm", "travel for one turn")
    yield Result("major", screw.major_mm, "mm", "screw outside")
    yield Result("pitch_diameter", screw.pitch_diameter_mm, "mm", "pitch diameter")
    yield Result("minor", screw.minor_mm, "mm", "screw at the bottom")
    yield Result("nut_major", screw.nut_major_mm, "mm", "nut at the bottom")
    yield Result("nut_minor", screw.nut_minor_mm, "mm", "bore of the nut")
    yield Result("lead_angle", screw.lead_angle_deg, "deg", "lead angle")


def _torques(screw: Leadscrew, worked: Lift, given: Asked) -> Iterator[Result]:
    yield Result("torque_raise", worked.raise_nmm, "N mm", "torque to raise")
    yield Result("torque_lower", worked.lower_nmm, "N mm", "torque to lower")
    yield Result("efficiency", worked.efficiency * 100, "%", "efficiency")
    nut = given.mm("nut")
    if nut is not None:
        pressure = nut_pressure(screw, given.newtons("load") or 0.0, nut)
        yield Result("pressure", pressure, "MPa", "pressure on the threads")


def _notes(screw: Leadscrew, worked: Lift) -> Iterator[str]:
    if worked.holds_when_shaken:
        yield "It holds its load when let go, and when shaken."
    elif worked.holds:
        yield "It holds its load when let go; shaking may let it creep down."
    else:
        yield "It runs back under its load: give it a brake, a pawl or fewer starts."
    if screw.form == "trapezoidal" and not screw.is_listed:
        yield "ISO 2902 does not list this size; nuts and taps of it are sold all the same."
    try:
        play = backlash(screw, least_gap(screw.pitch_mm))
    except NotDefined:
        play = None
    if play is not None and screw.form == "trapezoidal":
        yield f"A new nut of 7H on a screw of 7e has {play.axial_mm:.3f} mm of play at least."
    yield "Torque is an order of magnitude: friction is known to a third at best."
