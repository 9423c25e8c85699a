"""Cranks, four bars, cams and slotted wheels to what they do in one turn."""

from __future__ import annotations

from math import degrees, pi

from binder.api import Design, Diagnostic, Joint, Size
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.duties.duty import DutyFact, Told
from binder_plugins.drive.duties.shown import size
from binder_trade.explained import NotDefined
from binder_trade.gears.stopping.geneva import geneva
from binder_trade.mechanisms.cam_laws import CamMotion, Law, Segment, cam_motion
from binder_trade.mechanisms.cam_profile import MOST_PRESSURE_DEG, Follower, cam_profile
from binder_trade.mechanisms.crank_slider import crank_slider
from binder_trade.mechanisms.four_bar import LEAST_TRANSMISSION_DEG, four_bar

_POINTS = 72
_LEAST_SLOTS = 3
_ROUND = ("crank-rocker", "double-crank")
_LAWS: dict[str, Law] = {
    "uniform": "uniform",
    "parabolic": "parabolic",
    "harmonic": "harmonic",
    "cycloidal": "cycloidal",
    "polynomial": "3-4-5",
}
_FOLLOWERS: dict[str, Follower] = {"roller": "roller", "flat": "flat", "pointed": "knife"}


def _refused(joint: Joint, refusal: NotDefined) -> Told:
    finding = codes.LINKAGE_CANNOT_TURN.at(joint.at, refusal.reason, help=refusal.way_out)
    return Told(None, (finding,))


def cranking(joint: Joint, design: Design) -> Told:
    """A crank with its rod, or without one as a slotted link."""
    entry = joint.entry
    throw = float(entry.throw.mm)  # type: ignore[attr-defined]
    rod, offset = getattr(entry, "rod", None), getattr(entry, "offset", None)
    if not isinstance(rod, Size):
        rows = (("Stroke", size(2 * throw, design)), ("Motion", "harmonic: a slotted link"))
        return Told(DutyFact(joint.name, "To and fro", rows))
    try:
        made = crank_slider(throw, rod.mm, offset.mm if isinstance(offset, Size) else 0.0)
    except NotDefined as refusal:
        return _refused(joint, refusal)
    found = (
        ("Stroke", size(made.stroke_mm, design)),
        (
            "Ends",
            " and ".join(size(end, design) for end in (made.inner_mm, made.outer_mm))
            + " from the crank's centre",
        ),
        (
            "Dead points",
            f"{degrees(made.outer_dead_rad):.1f}° and {degrees(made.inner_dead_rad):.1f}°",
        ),
        ("Steepest rod", f"{degrees(made.most_rod_rad):.1f}°"),
    )
    heights = tuple(made.at(2 * pi * n / _POINTS).x_mm - made.inner_mm for n in range(_POINTS + 1))
    return Told(DutyFact(joint.name, "To and fro", found, made.steps, (("slide", heights),)))


def rocking(joint: Joint, design: Design) -> Told:
    """Four bars: does the crank go round, and how far does the rocker swing."""
    entry = joint.entry
    sizes = [float(getattr(entry, name).mm) for name in ("frame", "crank", "rod", "rocker")]
    try:
        bar = four_bar(*sizes)
    except NotDefined as refusal:
        return _refused(joint, refusal)
    if bar.kind not in _ROUND:
        finding = codes.LINKAGE_CANNOT_TURN.at(
            joint.at,
            f"the crank of '{joint.name}' does not go right round: it is a {bar.kind}",
            help="shorten the crank until crank and longest bar are less than the other two",
        )
        return Told(None, (finding,))
    angle = degrees(bar.least_transmission_rad)
    rows = [("Linkage", bar.kind), ("Least angle of rod and rocker", f"{angle:.1f}°")]
    if bar.rocker_span_rad is not None:
        low, high = (degrees(one) for one in bar.rocker_span_rad)
        rows.insert(1, ("Rocker swings", f"{high - low:.1f}°"))
    states = [bar.at(2 * pi * n / _POINTS) for n in range(_POINTS + 1)]
    heights = tuple(state.rocker_pin_mm[1] for state in states)
    duty = DutyFact(joint.name, "Rocking", tuple(rows), bar.steps, (("rocker's pin", heights),))
    return Told(duty, tuple(_poor(joint, angle)))


def _poor(joint: Joint, angle: float) -> list[Diagnostic]:
    if angle >= LEAST_TRANSMISSION_DEG:
        return []
    return [
        codes.TRANSMISSION_POOR.at(
            joint.at,
            f"rod and rocker of '{joint.name}' come to {angle:.0f}° of one line",
            help=f"keep {LEAST_TRANSMISSION_DEG:g}°: a longer rod, a shorter crank",
        )
    ]


def camming(joint: Joint, design: Design) -> Told:
    """A cam: its motion, the steepest push and the sharpest place of its outline."""
    entry = joint.entry
    try:
        motion = motion_of(joint)
        follower = _FOLLOWERS[str(getattr(entry, "follower", None) or "flat")]
        roller = getattr(entry, "roller", None)
        base = float(entry.base.mm)  # type: ignore[attr-defined]
        radius = roller.mm / 2 if isinstance(roller, Size) else 0.0
        made = cam_profile(motion, base / 2, follower, radius)
    except NotDefined as refusal:
        return _refused(joint, refusal)
    pressure = degrees(made.most_pressure_rad)
    rows = (
        ("Lift", f"{size(motion.lift_mm, design)} on a base circle of {size(base, design)}"),
        ("Steepest push", f"{pressure:.1f}° off the follower's line"),
        ("Sharpest place", f"{size(made.least_radius_mm, design)} radius"),
    )
    heights = tuple(motion.at(2 * pi * n / _POINTS)[0] for n in range(_POINTS))
    duty = DutyFact(joint.name, "Cam", rows, made.steps, (("follower", (*heights, heights[0])),))
    findings = []
    if pressure > MOST_PRESSURE_DEG:
        findings.append(
            codes.CAM_TOO_STEEP.at(
                joint.at,
                f"the cam pushes {pressure:.0f}° off the follower's line; "
                f"{MOST_PRESSURE_DEG:g}° is the most",
                help="a larger base circle, a longer rise or a smaller lift",
            )
        )
    if made.is_undercut:
        findings.append(
            codes.CAM_UNDERCUT.at(
                joint.at,
                "the outline of the cam crosses itself: part of the motion is cut away",
                help="a larger base circle, a smaller roller, or a gentler law",
            )
        )
    return Told(duty, tuple(findings))


def motion_of(joint: Joint) -> CamMotion:
    """Rise, dwell, fall, and rest for what is left of the turn; raises NotDefined for too much."""
    entry = joint.entry
    law = _LAWS[str(getattr(entry, "law", None) or "harmonic")]
    angles = []
    for name, usual in (("rise", 120.0), ("dwell", 0.0), ("fall", 120.0)):
        said = getattr(entry, name, None)
        angles.append(float(said.exact) if isinstance(said, Size) else usual)
    lift = float(entry.lift.mm)  # type: ignore[attr-defined]
    rest = 360 - sum(angles)
    if rest < 0:
        raise NotDefined(
            f"rise, dwell and fall come to {sum(angles):g}°", "keep them within one turn of 360°"
        )
    parts = ((angles[0], lift), (angles[1], 0.0), (angles[2], -lift), (rest, 0.0))
    return cam_motion([Segment(angle, change, law) for angle, change in parts if angle > 0])


def indexing(joint: Joint, design: Design) -> Told:
    """A pin wheel and its slotted wheel."""
    entry = joint.entry
    slots = int(entry.slots)  # type: ignore[attr-defined]
    centres, pin = getattr(entry, "centres", None), getattr(entry, "pin", None)
    if slots < _LEAST_SLOTS:
        return _refused(joint, NotDefined(f"{slots} slots make no slotted wheel", "take 3 or more"))
    if not isinstance(centres, Size) or not isinstance(pin, Size):
        return Told()
    from math import sin

    try:
        made = geneva(slots, centres.mm * sin(pi / slots), pin.mm)
    except NotDefined as refusal:
        return _refused(joint, refusal)
    rows = (
        ("Pin from its shaft", f"{size(made.crank_mm, design)} = centres × sin(180° / {slots})"),
        (
            "Slotted wheel",
            f"{size(made.wheel_mm, design)}, slots {size(made.slot_mm, design)} deep",
        ),
        ("Moves", f"{made.moving_deg:.4g}° of each turn, rests {made.resting_deg:.4g}°"),
    )
    return Told(DutyFact(joint.name, "Step by step", rows, made.steps))
