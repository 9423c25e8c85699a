"""Do the tips of a gear clear the shafts, posts and wheels with which it does not mesh."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic
from binder_plugins.drive import shaft_codes as codes
from binder_plugins.drive.judging.running import turning_of
from binder_plugins.drive.motion.reach import ring_of
from binder_plugins.drive.pairs.facts import ToothFact
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
        for gear in design.facts.all(PlacedFact):
            if gear.item == tooth.subject:
                yield from _round(gear, tooth, design)


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
            yield _finding(tooth, other, deep, design)


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


def _finding(tooth: ToothFact, other: PlacedFact, deep: float, design: Design) -> Diagnostic:
    joint = design.joints[tooth.joint]
    end = next((one for one in joint.ends if one.item == tooth.subject), joint.ends[0])
    gear = tooth.gear
    return codes.GEAR_HITS_SHAFT.at(
        end.at,
        f"the tips of '{tooth.subject}', {gear.tip_mm:g} mm across, reach {deep:.2f} mm into "
        f"'{other.subject}'",
        help=f"move '{other.item}' {deep + gear.module_mm / 4:.2f} mm further away, or thin it "
        "where they pass",
    )
