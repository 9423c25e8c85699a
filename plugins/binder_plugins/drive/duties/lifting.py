"""A drum and its rope to turns, speed of the load and the force on the crank."""

from __future__ import annotations

from math import pi

from binder.api import Design, Diagnostic, Joint, PlaceFact, Size, TrainFact, TurningFact
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.cords.hand import hand_rows
from binder_plugins.drive.cords.tipping import cord_fact, tip_row, tips
from binder_plugins.drive.duties.duty import DutyFact, Rows, Told
from binder_plugins.drive.duties.reeving import reeved
from binder_plugins.drive.duties.shown import is_inch, size
from binder_plugins.drive.judging.running import turning_of
from binder_plugins.drive.train.strength import (
    drum_radius,
    load_of,
    rope_of,
    rope_pull,
    tackle_of,
)
from binder_trade.explained import NotDefined, Step
from binder_trade.mechanisms.drum import Tackle, drum, hoist, tackle_pull

_SAME_MM = 0.05
_FOOT_M = 0.3048


def lifting(joint: Joint, design: Design) -> Told:
    """What the winding gear does with its load."""
    load, pull, radius = load_of(joint), rope_pull(joint), drum_radius(joint, design)
    body = turning_of(joint.ends[0].item, design)
    if load and pull is None:
        return Told(None, (_no_tackle(joint),))
    if load is None or pull is None or radius is None or body is None:
        return Told()
    tackle = tackle_of(joint)
    lines = tackle.falls
    rows: list[tuple[str, str]] = [
        ("Load", f"{load:.3g} N"),
        ("Pull in the rope", f"{pull:.3g} N, over {_lines(tackle)}"),
        ("Torque on the drum", f"{pull * radius:.3g} N·mm"),
    ]
    steps: list[Step] = []
    found, more = _crank(design, body, load, pull * radius, radius, tackle)
    rows += found
    steps += more
    speeds = [abs(one) for one in body.speeds if one]
    if speeds:
        rises = [2 * pi * radius * n / lines for n in speeds]
        rows.append(("Load rises", _rising(rises, design)))
    rope = reeved(joint, design)
    hand, tipped = hand_rows(joint, design), tips(joint, design)
    rows += [*rope.rows, *hand]
    if tipped is not None:
        rows.append(tip_row(tipped))
        steps += tipped.made.steps
    findings = rope.findings
    try:
        rows += _wound(joint, design, radius, lines)
    except NotDefined as refusal:
        finding = codes.ROPE_NOT_HELD.at(joint.at, refusal.reason, help=refusal.way_out)
        findings = (finding, *findings)
    duty = DutyFact(joint.name, "Winding", tuple(rows), tuple(steps))
    return Told(duty, findings, (cord_fact(joint, design, dict(hand), tipped, rope.cut),))


def _no_tackle(joint: Joint) -> Diagnostic:
    try:
        tackle_pull(1.0, tackle_of(joint))
    except NotDefined as refusal:
        return codes.TACKLE_IMPOSSIBLE.at(joint.at, refusal.reason, help=refusal.way_out)
    return codes.TACKLE_IMPOSSIBLE.at(
        joint.at, f"'{joint.name}' has a load that no rope lifts", help="write a smaller load"
    )


def _lines(tackle: Tackle) -> str:
    lines = f"{tackle.falls} lines" if tackle.falls > 1 else "one line"
    if not tackle.leads:
        return lines
    sheaves = f"{tackle.leads} sheaves" if tackle.leads > 1 else "one sheave"
    return f"{lines} and {sheaves} on the way to the drum"


def _rising(values: list[float], design: Design) -> str:
    low, high = size(min(values), design), size(max(values), design)
    return f"{low} a minute" if low == high else f"{low} to {high} a minute"


def _crank(
    design: Design,
    drum_body: TurningFact,
    load: float,
    own: float,
    radius: float,
    tackle: Tackle,
) -> tuple[Rows, tuple[Step, ...]]:
    """The force at the handle and its turns for a metre, where a hand turns it at a radius."""
    train = design.facts.about(TrainFact, "")
    for name, body in zip(train.movers, train.mover_bodies, strict=True) if train else ():
        arm = getattr(design.joints[name].entry, "radius", None)
        mover = design.facts.about(TurningFact, body)
        if not isinstance(arm, Size) or mover is None or not drum_body.speeds[0]:
            continue
        gear = abs((mover.speeds[0] or 0.0) / drum_body.speeds[0])
        needed = mover.torques[0]
        kept = own / gear / needed if needed else 1.0
        try:
            made = hoist(
                load, 2 * radius, arm.mm, gear=gear,
                tackle=tackle, train=min(kept, 1.0),
            )  # fmt: skip
        except NotDefined:
            continue
        rows = (
            ("Force on the handle", f"{made.handle_n:.3g} N"),
            ("To hold it still", f"{made.holding_n:.3g} N, friction left out"),
            ("Turns of the handle", _turns(made.turns_per_metre, design)),
        )
        return rows, made.steps
    return (), ()


def _turns(for_a_metre: float, design: Design) -> str:
    if is_inch(design):
        return f"{for_a_metre * _FOOT_M:.3g} for a foot of lift"
    return f"{for_a_metre:.3g} for a metre of lift"


def _flange(joint: Joint, design: Design) -> float | None:
    """The lower of the flanges beside the drum, None where it has none or one side only."""
    drum_place = design.facts.about(PlaceFact, str(joint.ends[0]))
    if drum_place is None or drum_place.start is None or drum_place.length is None:
        return None
    first, last = drum_place.start, drum_place.start + drum_place.length
    beside = [
        float(place.diameter)
        for place in design.facts.all(PlaceFact)
        if place.item == drum_place.item
        and place.form == "step"
        and place.diameter is not None
        and place.start is not None
        and place.length is not None
        and (place.start == last or place.start + place.length == first)
    ]
    return min(beside) if len(beside) > 1 else None


def _wound(joint: Joint, design: Design, radius: float, lines: int) -> Rows:
    """Turns and layers on the drum for the height that is lifted."""
    height = getattr(joint.entry, "height", None)
    rope = rope_of(joint, design)
    place = design.facts.about(PlaceFact, str(joint.ends[0]))
    if not isinstance(height, Size) or not rope or place is None or place.length is None:
        return ()
    length = height.mm * lines
    made = drum(2 * radius - rope, float(place.length), rope, length)
    flange = _flange(joint, design)
    if flange is not None and flange < made.flange_mm - _SAME_MM:
        raise NotDefined(
            f"{made.turns:.0f} turns in {len(made.layers)} layers want flanges of "
            f"{size(made.flange_mm, design)}; '{joint.ends[0].item}' has {size(flange, design)}",
            f"turn the flanges {size(made.flange_mm, design)}, a thinner drum, or wind up less",
        )
    layers = "one layer" if len(made.layers) == 1 else f"{len(made.layers)} layers"
    return (
        ("Rope on the drum", f"{size(length, design)}, {made.turns:.1f} turns in {layers}"),
        ("Least flange", f"{size(made.flange_mm, design)}"),
    )
