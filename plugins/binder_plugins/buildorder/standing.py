"""An assembly with a test to the finding that what carries the motion does not stand in it yet."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Assembly, Design, Diagnostic, FitFact, Joint, JointFact, NumberOff
from binder_plugins.buildorder import codes
from binder_plugins.buildorder.closing import inside_of

_RUNS = "runs_in"
_SCREW = "leads"
_WAYS = ("slides", "dovetailed")


def check_tests(design: Design) -> Iterator[Diagnostic]:
    """Tests of motion whose bearings, or whose way, are held by what is not there; one for each."""
    for one in design.assemblies.values():
        inside = inside_of(one, design)
        found = next(_loose(inside, design), None) if one.test else None
        if found is not None:
            yield _found(one, *found)


def _found(one: Assembly, carried: str, joint: Joint, missing: str) -> Diagnostic:
    return codes.TESTED_TOO_SOON.at(
        one.at,
        f"'{one.name}' is tested before its '{carried}' is held: '{missing}', to which "
        f"'{joint.name}' holds it, is not in it",
        help=f"put '{missing}' in it, or test it in the assembly that closes '{joint.name}'",
    )


def _loose(inside: frozenset[str], design: Design) -> Iterator[tuple[str, Joint, str]]:
    """What carries a motion, the joint that holds it, and the item outside that it is held to."""
    closed = [one for one in design.joints.values() if set(one.items) <= inside]
    for joint in closed:
        if joint.kind == _RUNS:
            for carrier in _carriers(joint, closed, design):
                yield from _held_outside(carrier, inside, design)
    if any(joint.kind == _SCREW for joint in closed):
        for joint in design.joints.values():
            within = [item for item in joint.items if item in inside]
            if joint.kind in _WAYS and within and len(within) < len(joint.items):
                yield within[0], joint, next(one for one in joint.items if one not in inside)


def _carriers(joint: Joint, closed: list[Joint], design: Design) -> list[str]:
    """The bearings of a shaft and what they are fixed in, where there are several of it.

    One alone is held in the hand while the shaft is turned.
    """
    fit = design.facts.about(FitFact, joint.name)
    if fit is None:
        return []
    bearing, shaft = fit.hole.partition(".")[0], fit.shaft.partition(".")[0]
    found = [bearing]
    for other in closed:
        is_sunk = _is_lasting(other, design) and shaft not in other.items
        if is_sunk and bearing in other.items:
            found += [item for item in other.items if item != bearing]
    return [item for item in found if _off(item, design) > 1]


def _held_outside(
    carrier: str, inside: frozenset[str], design: Design
) -> Iterator[tuple[str, Joint, str]]:
    """Where a carrier is fixed to nothing in the assembly, and to something outside."""
    fixings = [
        joint
        for joint in design.joints.values()
        if carrier in joint.items and _is_fixing(joint, design)
    ]
    if any(set(joint.items) <= inside for joint in fixings):
        return
    for joint in fixings:
        yield carrier, joint, next(item for item in joint.items if item not in inside)


def _is_lasting(joint: Joint, design: Design) -> bool:
    fact = design.facts.about(JointFact, joint.name)
    return fact is not None and fact.is_lasting


def _is_fixing(joint: Joint, design: Design) -> bool:
    fact = design.facts.about(JointFact, joint.name)
    return fact is not None and fact.group == "fixing" and not fact.is_lasting


def _off(item: str, design: Design) -> int:
    number = design.facts.about(NumberOff, item)
    return number.count if number is not None else 1
