"""A drum and its rope to turns, speed of the load and the force on the crank."""

from __future__ import annotations

from math import pi

from binder.api import Design, Joint, PlaceFact, Size, TrainFact, TurningFact
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.duties.duty import DutyFact, Rows, Told
from binder_plugins.drive.judging.running import turning_of
from binder_plugins.drive.train.strength import drum_radius, rope_of, rope_pull
from binder_trade.explained import NotDefined, Step
from binder_trade.mechanisms.drum import Tackle, drum, hoist

_SAME_MM = 0.05
_FREE_SHEAVES = 1.0  # as the train reckons the pull, so that the two agree


def lifting(joint: Joint, design: Design) -> Told:
    """What the winding gear does with its load."""
    pull, radius = rope_pull(joint), drum_radius(joint, design)
    body = turning_of(joint.ends[0].item, design)
    if pull is None or radius is None or body is None:
        return Told()
    lines = int(getattr(joint.entry, "lines", None) or 1)
    rows: list[tuple[str, str]] = [
        ("Load", f"{pull * lines:.4g} N"),
        ("Pull in the rope", f"{pull:.4g} N, over {_lines(lines)}"),
        ("Torque on the drum", f"{pull * radius:.4g} N·mm"),
    ]
    steps: list[Step] = []
    found, more = _crank(joint, design, body, pull * lines, radius, lines)
    rows += found
    steps += more
    speeds = [abs(one) for one in body.speeds if one]
    if speeds:
        rows.append(("Load rises", _range([2 * pi * radius * n / lines for n in speeds], "mm/min")))
    try:
        rows += _wound(joint, design, radius, lines)
    except NotDefined as refusal:
        finding = codes.ROPE_NOT_HELD.at(joint.at, refusal.reason, help=refusal.way_out)
        return Told(DutyFact(joint.name, "Winding", tuple(rows), tuple(steps)), (finding,))
    return Told(DutyFact(joint.name, "Winding", tuple(rows), tuple(steps)))


def _lines(lines: int) -> str:
    return f"{lines} lines" if lines > 1 else "one line"


def _range(values: list[float], unit: str) -> str:
    low, high = min(values), max(values)
    return f"{low:.4g} {unit}" if high - low < 1e-9 else f"{low:.4g} to {high:.4g} {unit}"


def _crank(
    joint: Joint, design: Design, drum_body: TurningFact, load: float, radius: float, lines: int
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
        own = load / lines * radius
        kept = own / gear / needed if needed else 1.0
        try:
            made = hoist(
                load, 2 * radius, arm.mm, gear=gear,
                tackle=Tackle(lines, _FREE_SHEAVES, 0), train=min(kept, 1.0),
            )  # fmt: skip
        except NotDefined:
            continue
        rows = (
            ("Force on the handle", f"{made.handle_n:.3g} N"),
            ("To hold it still", f"{made.holding_n:.3g} N, friction left out"),
            ("Turns of the handle", f"{made.turns_per_metre:.4g} for a metre of lift"),
        )
        return rows, made.steps
    return (), ()


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
            f"{made.flange_mm:.3g} mm, and '{joint.ends[0].item}' has {flange:.3g} mm",
            f"turn the flanges {made.flange_mm:.3g} mm, a thinner drum, or wind up less",
        )
    layers = "one layer" if len(made.layers) == 1 else f"{len(made.layers)} layers"
    return (
        ("Rope on the drum", f"{length:.4g} mm, {made.turns:.1f} turns in {layers}"),
        ("Least flange", f"{made.flange_mm:.4g} mm"),
    )
