"""Does a belt pull what is asked of it before it slips, and does it run dangerously fast."""

from __future__ import annotations

from collections.abc import Iterator
from math import pi

from binder.api import Design, Diagnostic, Joint, Size
from binder_plugins.drive import belt_codes as codes
from binder_plugins.drive.judging.running import turning_of
from binder_plugins.drive.pairs.facts import BeltFact
from binder_plugins.drive.train.strength import newtons
from binder_trade.belts.grip import (
    friction_range,
    grip_by_pretension,
    pretension_for,
    tension_ratio,
)
from binder_trade.explained import NotDefined

_MADE_OF = {"round": "polyurethane", "flat": "leather", "vee": "rubber"}
_FLAT_DEG = 180.0
# 250 ft a minute, at which a belt within reach is guarded: 29 CFR 1910.219, from memory.
_GUARDED_M_S = 1.27
_MM_MIN = 60_000.0


def check_grip(fact: BeltFact, joint: Joint, design: Design) -> Iterator[Diagnostic]:
    """A belt that is put on with a told pull, and the speed of every belt."""
    yield from _nip(fact, joint, design)
    pull = newtons(getattr(joint.entry, "pull", None))
    body = turning_of(joint.ends[1].item, design)
    needed = max((one for one in body.torques if one), default=0.0) if body is not None else 0.0
    if pull and needed and fact.belt in _MADE_OF:
        try:
            yield from _slip(fact, joint, pull, needed)
        except NotDefined as refusal:
            yield codes.BELT_PULL_SHORT.at(joint.at, refusal.reason, help=refusal.way_out)


def _slip(fact: BeltFact, joint: Joint, pull: float, needed: float) -> Iterator[Diagnostic]:
    """At the step that pulls least."""
    said, groove = (getattr(joint.entry, name, None) for name in ("friction", "groove_angle"))
    friction = (
        float(said.exact) if isinstance(said, Size) else friction_range(_MADE_OF[fact.belt])[0]
    )
    angle = float(groove.exact) if isinstance(groove, Size) else _FLAT_DEG
    found = []
    for run in fact.runs:
        ratio = tension_ratio(friction, run.least_wrap_rad, angle)
        grip = grip_by_pretension(pull, ratio)
        found.append((grip.torque_nmm(run.second_mm), run.second_mm, ratio))
    carried, driven, ratio = min(found)
    if carried >= needed:
        return
    wanted = pretension_for(2 * needed / driven, ratio)
    yield codes.BELT_PULL_SHORT.at(
        joint.at,
        f"the belt of '{joint.name}' carries {carried:.3g} N·mm at its driven pulley, and "
        f"{needed:.3g} N·mm are needed there",
        help=f"put it on with {wanted:.3g} N in each strand, or take larger pulleys",
    )


def _nip(fact: BeltFact, joint: Joint, design: Design) -> Iterator[Diagnostic]:
    body = turning_of(joint.ends[0].item, design)
    speeds = [abs(one) for one in body.speeds if one] if body is not None else []
    if not speeds or not fact.runs:
        return
    metres = pi * max(run.first_mm for run in fact.runs) * max(speeds) / _MM_MIN
    if metres > _GUARDED_M_S:
        yield codes.GUARD_WANTED.at(
            joint.at,
            f"the belt of '{joint.name}' runs at {metres:.3g} m/s: its nips draw a finger in",
            help="cover belt and pulleys, on show above all; what rules hold where you are, ask "
            "those who know them",
        )
