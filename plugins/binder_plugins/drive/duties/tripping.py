"""A wheel that trips a hammer to its blows, and whether each lands before the next lift."""

from __future__ import annotations

from math import degrees

from binder.api import Design, Diagnostic, Joint, Size, exact, shown_length
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.duties.duty import DutyFact, Told
from binder_plugins.drive.duties.shown import size
from binder_plugins.drive.judging.running import turning_of
from binder_plugins.drive.motion.trips import lifting_rad, stood_trip
from binder_solid.tripped import tripped
from binder_trade.explained import NotDefined
from binder_trade.mechanisms.tappets import Blows, Trip, blow_energy_nmm, blows

# As near as a lever's rest is set by eye, and of its lift.
_NEAR_MM, _NEAR_SHARE = 0.1, 0.02


def head_lift(joint: Joint) -> float:
    """How far the far end is raised in mm: the lift as written, by the lever."""
    entry = joint.entry
    arm, reach = getattr(entry, "arm", None), getattr(entry, "reach", None)
    lift = float(entry.lift.mm)  # type: ignore[attr-defined]
    return lift * reach.mm / arm.mm if isinstance(arm, Size) and isinstance(reach, Size) else lift


def tripping(joint: Joint, design: Design) -> Told:
    """Blows a minute at every setting, and the most speed."""
    body = turning_of(joint.ends[0].item, design)
    speeds = sorted({abs(one) for one in body.speeds if one}) if body is not None else []
    if body is None or not speeds:
        return Told()
    lifts = int(joint.entry.lifts)  # type: ignore[attr-defined]
    high = head_lift(joint)
    try:
        stood, angle = stood_trip(joint, design), lifting_rad(joint, design)
        made = [blows(speed, lifts, high, angle) for speed in speeds]
    except NotDefined as refusal:
        return Told(None, (codes.LIFT_IMPOSSIBLE.at(joint.at, refusal.reason,
                                                    help=refusal.way_out),))  # fmt: skip
    where = ", as they stand" if stood is not None else ""
    lift = f"{size(joint.entry.lift.mm, design)}{_way(joint, design)}"  # type: ignore[attr-defined]
    rows = [
        ("Lift at the wheel", f"{lift}, over {degrees(angle):.3g}° of it{where}"),
        ("Lift of the head", size(high, design)),
        ("Blows a minute", ", ".join(f"{one.blows_per_minute:.3g}" for one in made)),
        ("Time to fall", f"{made[0].fall_s:.3f} s; to the next lift {_free(made)} s"),
        ("Fastest", f"{made[0].most_rpm:.0f} r/min of the shaft, a fifth in hand"),
    ]
    mass = getattr(joint.entry, "falls", None)
    if isinstance(mass, Size):
        energy = blow_energy_nmm(float(mass.exact) / 1000, high)
        rows.append(("Energy of a blow", f"{energy:.3g} N·mm"))
    steps = (*(stood.steps if stood is not None else ()), *made[-1].steps)
    duty = DutyFact(joint.name, "Blows", tuple(rows), steps)
    otherwise = _otherwise(joint, stood, design)
    fastest = speeds[-1]
    if fastest <= made[0].most_rpm:
        return Told(duty, otherwise)
    finding = codes.HAMMER_DOES_NOT_LAND.at(
        joint.at,
        f"at {fastest:.0f} r/min of the shaft the next lift comes {made[-1].free_s:.3f} s after "
        f"the drop, and the fall takes {made[-1].fall_s:.3f} s",
        help=f"run it at {made[0].most_rpm:.0f} r/min at the most, or with fewer lifts a turn",
    )
    return Told(duty, (*otherwise, finding))


def _way(joint: Joint, design: Design) -> str:
    """` down` or ` up`: which way the wheel moves the lever where it takes it."""
    found = tripped(joint, design)
    return (" down" if found.is_down else " up") if found is not None else ""


def _otherwise(joint: Joint, stood: Trip | None, design: Design) -> tuple[Diagnostic, ...]:
    """A finding where the lift that is written is not that of the parts as they stand."""
    reach = getattr(joint.entry, "reach", None)
    said = joint.entry.lift  # type: ignore[attr-defined]
    if stood is None or not isinstance(reach, Size):
        return ()
    lift = stood.helve_rad * stood.tail_mm
    if abs(lift - said.mm) <= max(_NEAR_MM, _NEAR_SHARE * said.mm):
        return ()
    has = shown_length(exact(round(lift, 2)), design.units)
    finding = codes.LINKAGE_STANDS_OTHERWISE.at(
        said.span,
        f"as the parts stand the wheel lifts {has} over {degrees(stood.shaft_rad):.1f}° of it, "
        f"not {said.text}",
        help=f"write {has}, or move the pivot: the tail reaches "
        f"{shown_length(exact(round(stood.overlap_mm, 2)), design.units)} into the teeth",
    )
    return (finding,)


def _free(made: list[Blows]) -> str:
    low, high = made[-1].free_s, made[0].free_s
    return f"{high:.3f}" if high - low < 1e-9 else f"{low:.3f} to {high:.3f}"
