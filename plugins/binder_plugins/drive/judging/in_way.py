"""Do the tips of a gear clear the shafts, posts and wheels with which it does not mesh."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, TurningFact
from binder_plugins.drive import shaft_codes as codes
from binder_plugins.drive.carrying.row import Row, row_of
from binder_plugins.drive.judging.running import turning_of
from binder_plugins.drive.motion.reach import ring_of
from binder_plugins.drive.pairs.facts import ToothFact
from binder_plugins.drive.pairs.frame import centres_in_frame
from binder_plugins.drive.standing import Axis, between
from binder_solid.facts import FormFact
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, plus

_TOUCH_MM = 0.01
_ONE_AXIS_MM = 0.05


def check_in_way(design: Design) -> Iterator[Diagnostic]:
    """Each gear with outside teeth, as it stands in the model."""
    for tooth in design.facts.all(ToothFact):
        if tooth.refusal or tooth.gear.is_internal:
            continue
        copies = [one for one in design.facts.all(PlacedFact) if one.item == tooth.subject]
        for gear in copies:
            yield from _round(gear, tooth, design)
        if not copies:
            yield from _in_frame(tooth, design)


def _in_frame(tooth: ToothFact, design: Design) -> Iterator[Diagnostic]:
    """The other shafts of the train by the bores of their frame, where rows tell what lies beside.

    Both rows have to start at one and the same piece of the frame.
    """
    body = turning_of(tooth.subject, design)
    own = _rowed(body, design) if body is not None else None
    if body is None or own is None or tooth.subject not in own.stands:
        return
    face = own.from_carrier(own.stands[tooth.subject])
    met = {name for one in design.joints.values() if tooth.subject in one.items
           for name in one.items}  # fmt: skip
    for other in design.facts.all(TurningFact):
        row = _rowed(other, design)
        if row is None or other.subject == body.subject or row.carrier != own.carrier:
            continue
        apart = centres_in_frame(body.items, other.items, design)
        between = (0.0, row.from_carrier(row.bearings[-1][1])[0])
        beside = {item: row.from_carrier(reach) for item, reach in row.stands.items()}
        for item, reach in {**beside, other.subject: between}.items():
            form = design.facts.about(FormFact, item)
            is_beside = reach[0] < face[1] - _TOUCH_MM and reach[1] > face[0] + _TOUCH_MM
            if apart is None or form is None or item in met or not is_beside:
                continue
            across = (min if item == other.subject else max)(
                (one.across for one in form.stretches), default=0.0
            )
            deep = (tooth.gear.tip_mm + across) / 2 - apart
            if deep > _TOUCH_MM:
                yield _finding(tooth, item, item, deep, design)


def _rowed(body: TurningFact, design: Design) -> Row | None:
    """The row of the shaft that a body turns with."""
    return next((row for item in body.items if (row := row_of(item, design))), None)


def _round(gear: PlacedFact, tooth: ToothFact, design: Design) -> Iterator[Diagnostic]:
    """All round work with its axis along that of the gear."""
    axis = Axis(gear.frame.origin, gear.frame.x)
    body = turning_of(gear.item, design)
    own = set(body.items) if body is not None else {gear.item}
    met = {name for one in design.joints.values() if gear.item in one.items for name in one.items}
    wide = ring_of(gear, axis)
    told: set[str] = set()
    for other in design.facts.all(PlacedFact):
        if other.item in own | met | told:
            continue
        deep = _cuts(other, axis, (wide.low, wide.high), tooth.gear.tip_mm / 2, design)
        if deep > _TOUCH_MM:
            told.add(other.item)
            yield _finding(tooth, other.item, other.subject, deep, design)


def _cuts(
    other: PlacedFact, axis: Axis, face: tuple[float, float], tip: float, design: Design
) -> float:
    """How deep the tips go into the thickest of the steps beside the gear; mm."""
    form = design.facts.about(FormFact, other.item)
    tooth = design.facts.about(ToothFact, other.item)
    apart = between(axis, Axis(other.frame.origin, other.frame.x))
    if form is None or apart is None or apart < _ONE_AXIS_MM:
        return 0.0
    if tooth is not None and tooth.gear.is_internal:
        return 0.0
    deep = 0.0
    for step in form.stretches:
        ends = [_along(other, axis, at) for at in (step.start, step.end)]
        if min(ends) < face[1] - _TOUCH_MM and max(ends) > face[0] + _TOUCH_MM:
            deep = max(deep, tip + max(step.across, step.end_across) / 2 - apart)
    return deep


def _along(other: PlacedFact, axis: Axis, at: float) -> float:
    point: Vector = plus(other.frame.origin, other.frame.x, at)
    return dot(minus(point, axis.origin), axis.way)


def _finding(tooth: ToothFact, item: str, name: str, deep: float, design: Design) -> Diagnostic:
    joint = design.joints[tooth.joint]
    end = next((one for one in joint.ends if one.item == tooth.subject), joint.ends[0])
    gear = tooth.gear
    return codes.GEAR_HITS_SHAFT.at(
        end.at,
        f"the tips of '{tooth.subject}', {gear.tip_mm:g} mm across, reach {deep:.2f} mm into "
        f"'{name}'",
        help=f"move '{item}' {deep + gear.module_mm / 4:.2f} mm further away, or thin it where "
        "they pass",
    )
