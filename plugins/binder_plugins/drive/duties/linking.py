"""Cranks, four bars and slotted wheels to what they do in one turn."""

from __future__ import annotations

from math import degrees, pi

from binder.api import Design, Diagnostic, Joint, Size
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.duties.duty import Curve, DutyFact, Told
from binder_plugins.drive.duties.shown import size
from binder_trade.explained import NotDefined
from binder_trade.gears.stopping.geneva import geneva
from binder_trade.mechanisms.crank_slider import crank_slider
from binder_trade.mechanisms.four_bar import LEAST_TRANSMISSION_DEG, four_bar

_POINTS = 72
_LEAST_SLOTS = 3
_ROUND = ("crank-rocker", "double-crank")


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
    return Told(DutyFact(joint.name, "To and fro", found, made.steps, (Curve("slide", heights),)))


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
    duty = DutyFact(
        joint.name, "Rocking", tuple(rows), bar.steps, (Curve("rocker's pin", heights),)
    )
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
