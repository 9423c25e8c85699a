"""The plane in which a drive runs on a wheel: the wheel's face, or the groove of a step."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, End, Joint, PlaceFact
from binder_plugins.drive.carrying.line import Line, Reach
from binder_solid.facts import FormFact
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed


def plane_of(joint: Joint, item: str, step: int, line: Line, design: Design) -> Reach | None:
    """From where to where along the shaft a drive runs on one of its wheels; mm."""
    whole = line.stands.get(item)
    end = next((one for one in joint.ends if one.item == item), None)
    if whole is None or end is None:
        return whole
    own = own_plane(joint, end, step, design)
    if own is None:
        return whole
    along = [_along(at, item, line, design) for at in own]
    if along[0] is None or along[1] is None:
        return whole
    return min(along[0], along[1]), max(along[0], along[1])


def own_plane(joint: Joint, end: End, step: int, design: Design) -> Reach | None:
    """The same on the wheel itself, along its own axis; None for a wheel of one face."""
    part = design.parts.get(end.item)
    form = design.facts.about(FormFact, end.item)
    if part is None or form is None or len(form.stretches) < 2:
        return None
    if joint.kind != "belted":
        return _step(end, end.place, design)
    if part.shape_kind == "pulley":
        steps = [(one.start, one.end) for one in form.stretches]
        count = len(getattr(part.shape, "diameters", ()))
    else:
        steps = list(_grooves(end, design))
        count = len(steps)
    return steps[step] if step < count else None


def _grooves(end: End, design: Design) -> Iterator[Reach]:
    """The steps that carry the grooves, in the order in which the part lists them."""
    for groove in design.parts[end.item].features:
        on = getattr(groove.entry, "on", None) or ""
        if groove.kind == "grooved" and (not end.place or end.place in (on, groove.name)):
            found = _step(end, on, design)
            if found is not None:
                yield found


def _step(end: End, name: str, design: Design) -> Reach | None:
    place = design.facts.about(PlaceFact, f"{end.item}.{name}") if name else None
    if place is None or place.form != "step" or place.start is None or place.length is None:
        return None
    return float(place.start), float(place.start + place.length)


def _along(at: float, item: str, line: Line, design: Design) -> float | None:
    """A place on a wheel's own axis as it lies along the shaft; None where that is not known."""
    if line.frame is None:
        return None
    copies = [one for one in design.facts.all(PlacedFact) if one.item == item]
    if len(copies) != 1:
        return None
    point = placed((at, 0.0, 0.0), copies[0].frame)
    return dot(minus(point, line.frame.origin), line.frame.x)
