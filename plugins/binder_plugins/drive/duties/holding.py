"""Worms, racks, ratchets and the prototype's speed to what they give."""

from __future__ import annotations

import re
from math import pi

from binder.api import Design, Joint, Size
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.codes import TEETH_MISSING
from binder_plugins.drive.duties.duty import DutyFact, Rows, Told
from binder_plugins.drive.duties.noses import pawling
from binder_plugins.drive.duties.shown import size
from binder_plugins.drive.duties.worm_hand import turns_by
from binder_plugins.drive.gear_codes import GEAR_IMPOSSIBLE
from binder_plugins.drive.judging.running import turning_of
from binder_plugins.drive.train.strength import drum_radius, load_of
from binder_plugins.drive.train.told import module_of, teeth_of
from binder_solid.facts import FormFact
from binder_trade.explained import NotDefined, Step
from binder_trade.gears.stopping.pawls import pawl_load
from binder_trade.gears.worm import worm
from binder_trade.mechanisms.similarity import scale_speed

_LEAST_CLICKS = 4
_TOOTH_DEEP = 0.4  # of the pitch of the teeth; common practice, no source
_SCALE = re.compile(r"\s*1\s*:\s*([0-9]{1,4}(?:\.[0-9]{1,3})?)\s*")


def worming(joint: Joint, design: Design) -> Told:
    """A worm and wheel: sizes, what comes through, and whether it holds."""
    entry = joint.entry
    module, teeth = module_of(joint, design), teeth_of(joint, 1, design)
    diameter = getattr(entry, "diameter", None)
    if module is None or teeth is None or not isinstance(diameter, Size):
        return Told()
    starts = int(getattr(entry, "starts", None) or 1)
    try:
        made = worm(starts, teeth, float(module), diameter.mm)
    except NotDefined as refusal:
        finding = codes.WORM_IMPOSSIBLE.at(joint.at, refusal.reason, help=refusal.way_out)
        return Told(None, (finding,))
    throat = size(made.throat_mm, design)
    threads = f"{made.lead_deg:.2f}° lead, {size(made.worm_length_mm, design)} long"
    rows = (
        ("Ratio", f"{made.ratio:g} : 1"),
        ("Worm", f"{size(made.worm_outside_mm, design)} outside, {threads}"),
        ("Wheel", f"{size(made.wheel_outside_mm, design)} outside, {throat} in the throat"),
        ("Centres", size(made.centres_mm, design)),
        ("Comes through", f"{made.efficiency:.0%}"),
        ("Driven back", made.holding),
        ("Which way", turns_by(joint, design)),
    )  # fmt: skip
    duty = DutyFact(joint.name, "Worm", rows, made.steps)
    if not getattr(entry, "holds", False) or made.holding == "holds":
        return Told(duty)
    finding = codes.WORM_DOES_NOT_HOLD.at(
        joint.at,
        f"the worm of '{joint.name}' {made.holding}: its thread rises by {made.lead_deg:.1f}°",
        help="one start, a thicker worm, or a brake; shaking undoes a worm that only just holds",
    )
    return Told(duty, (finding,))


def racking(joint: Joint, design: Design) -> Told:
    """A pinion and its rack: travel for a turn and for a tooth."""
    module, teeth = module_of(joint, design), teeth_of(joint, 0, design)
    if teeth is None:
        return _no_teeth(joint)
    if module is None:
        return Told()
    tooth = pi * float(module)
    rows = (
        ("Travel", f"{size(tooth * teeth, design)} for a turn, {size(tooth, design)} for a tooth"),
    )
    return Told(DutyFact(joint.name, "Rack", rows))


def _no_teeth(joint: Joint) -> Told:
    finding = TEETH_MISSING.at(
        joint.ends[0].at, f"how many teeth has '{joint.ends[0]}'?", help="write `teeth: 12`"
    )
    return Told(None, (finding,))


def ratcheting(joint: Joint, design: Design) -> Told:
    """A ratchet: the step between two clicks, and how far a load drops back at the most."""
    teeth = teeth_of(joint, 0, design)
    if teeth is None:
        return _no_teeth(joint)
    if teeth < _LEAST_CLICKS:
        finding = GEAR_IMPOSSIBLE.at(
            joint.ends[0].at,
            f"a ratchet of {teeth} teeth lets its load fall {360 / teeth:.3g}° before it catches",
            help=f"take {_LEAST_CLICKS} teeth or more; twelve are usual",
        )
        return Told(None, (finding,))
    rows = [("Click", f"every {360 / teeth:.3g}° of the wheel")]
    steps: list[Step] = []
    own = turning_of(joint.ends[0].item, design)
    for other in design.joints.values():
        radius = drum_radius(other, design) if other.kind == "winds" else None
        if radius is not None and own is not None and other.ends[0].item in own.items:
            lines = int(getattr(other.entry, "lines", None) or 1)
            drop = 2 * pi * radius / teeth / lines
            rows.append(
                ("Load drops back", f"{size(drop, design)} at the most, before a tooth catches")
            )
            held, more = _held(joint, teeth, (load_of(other) or 0.0) / lines * radius, design)
            rows += held
            steps += more
    speeds = [abs(one) for one in own.speeds if one] if own is not None else []
    if speeds:
        rows.append(("Sound", f"{max(speeds) * teeth:.3g} clicks a minute when winding"))
    pawls, found = pawling(joint, design)
    steps += [step for one in pawls for step in one.nose.steps]
    return Told(DutyFact(joint.name, "Ratchet", tuple(rows), tuple(steps)), found, pawls)


def _held(joint: Joint, teeth: int, torque: float, design: Design) -> tuple[Rows, tuple[Step, ...]]:
    """What one tooth bears while the load hangs on it, friction left out."""
    form = design.facts.about(FormFact, joint.ends[0].item)
    if form is None or not torque:
        return (), ()
    part = design.parts.get(joint.ends[0].item)
    shape = part.shape if part is not None and form.shape == "ratchet" else None
    face, outside = _mm(shape, "width") or form.size[0], _mm(shape, "outside") or form.size[1]
    # The teeth bear as they are cut: what is usual stands in for a depth that nobody tells.
    depth = _mm(shape, "depth") or _mm(joint.entry, "depth") or _TOOTH_DEEP * pi * outside / teeth
    try:
        push, pressure, steps = pawl_load(torque, outside - depth, face, depth)
    except NotDefined:
        return (), ()
    return (("A tooth bears", f"{push:.3g} N, {pressure:.2g} N/mm² on its face"),), steps


def _mm(entry: object, name: str) -> float:
    found = getattr(entry, name, None)
    return found.mm if isinstance(found, Size) else 0.0


def scaled(joint: Joint, design: Design) -> Told:
    """The speed of the prototype to what the model should run at."""
    found = _SCALE.fullmatch(str(design.spec.written.model.scale or ""))
    if found is None:
        finding = codes.SCALE_MISSING.at(
            joint.at,
            f"'{joint.name}' tells the prototype's speed, and the model no scale",
            help='write `scale: "1:16"` under `model:`',
        )
        return Told(None, (finding,))
    speed = float(joint.entry.speed.exact) / 6  # type: ignore[attr-defined]
    try:
        made = scale_speed(speed, float(found[1]))
    except NotDefined as refusal:
        return Told(None, (codes.SCALE_MISSING.at(joint.at, refusal.reason,
                                                  help=refusal.way_out),))  # fmt: skip
    low, high = made.looks_right_rpm
    rows = (
        ("Prototype", f"{speed:.4g} r/min"),
        ("Looks right", f"{low:.3g} to {high:.3g} r/min"),
        ("By similarity", f"{made.froude_rpm:.3g} r/min: it falls and swings as the large one"),
    )
    duty = DutyFact(joint.name, "Scale speed", rows, made.steps)
    own = turning_of(joint.ends[0].item, design)
    speeds = [abs(one) for one in own.speeds if one] if own is not None else []
    if not speeds or any(low * 0.8 <= one <= high * 1.25 for one in speeds):
        return Told(duty)
    finding = codes.SPEED_LOOKS_WRONG.at(
        joint.at,
        f"'{joint.ends[0].item}' runs at {speeds[0]:.4g} r/min; "
        f"{low:.3g} to {high:.3g} looks right",
        help="gear it towards that, or turn it at another speed",
    )
    return Told(duty, (finding,))
