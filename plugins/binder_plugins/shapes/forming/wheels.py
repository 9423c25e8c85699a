"""Pulleys, flywheels and handwheels to bodies."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from binder.api import Part, Size, shown, size_text
from binder_plugins.shapes.forming.body import Body
from binder_plugins.shapes.forming.told import figure, note_at, round_step
from binder_plugins.shapes.forming.toothed import hub_of
from binder_plugins.shapes.forming.turned import AXIS, round_body
from binder_plugins.shapes.vocabulary.wheels import Pulley, Wheel
from binder_solid.facts import Located, Stretch
from binder_solid.forms import (
    Arc,
    Cut,
    Cylinder,
    Form,
    Frame,
    Joined,
    Outline,
    Raised,
    Revolved,
    Ring,
    Straight,
    Vector,
)
from binder_solid.outlines import annulus, polygon

_VEE = 40.0
_BEYOND = 1.0


def groove_depth(shape: Pulley) -> float:
    """How deep the groove is: as told, else as deep as the belt is thick."""
    if shape.groove == "flat":
        return 0.0
    belt = shape.belt.mm if shape.belt is not None else 0.0
    return shape.depth.mm if shape.depth is not None else belt


def pulley_body(part: Part, shape: Pulley, units: str) -> Body | None:
    """Steps from x = 0 with a groove in the middle of each, and the hub behind the last."""
    if (shape.groove != "flat" and shape.belt is None) or pulley_fault(shape) is not None:
        return None
    steps = tuple(_steps(part, shape, units))
    forms: list[Form] = [_blank(shape, one) for one in steps]
    tools = [tool for one in steps for tool in _grooves(shape, one)]
    hub = hub_of(part, shape, steps[-1].end, units)
    forms += [form for form, _ in hub]
    stretches = (*steps, *(step for _, step in hub))
    form: Form = Joined(tuple(forms)) if len(forms) > 1 else forms[0]
    if tools:
        form = Cut(form, tuple(tools))
    widest = max(one.across for one in stretches) / 2
    top = (steps[0].end / 2, 0.0, steps[0].across / 2)
    note = note_at(part, "groove", top, *_words(shape, units))
    return round_body("pulley", (form,), stretches, widest, (note,))


def _steps(part: Part, shape: Pulley, units: str) -> Iterator[Stretch]:
    wide = shape.width.mm
    for n, size in enumerate(shape.diameters):
        name = "outside" if len(shape.diameters) == 1 else f"step{n + 1}"
        fields = (f"diameters.{n + 1}", "width" if n == 0 else f"width.{n + 1}")
        texts = (f"⌀{size_text(size, units)}", size_text(shape.width, units))
        yield round_step(part, name, n * wide, (n + 1) * wide, size.mm, texts, fields)


def _blank(shape: Pulley, one: Stretch) -> Form:
    """A plain disc, or one that is higher in the middle."""
    top, crown = one.across / 2, shape.crown.mm if shape.crown is not None else 0.0
    if not crown:
        return Cylinder(top, one.end - one.start, Frame((one.start, 0.0, 0.0), AXIS.z, AXIS.x))
    middle = (one.start + one.end) / 2
    return Revolved(
        Outline(
            (one.start, 0.0),
            (
                Straight((one.start, top - crown)),
                Arc((middle, top), (one.end, top - crown)),
                Straight((one.end, 0.0)),
            ),
        ),
        AXIS,
    )


def _grooves(shape: Pulley, one: Stretch) -> Iterator[Form]:
    deep, top = groove_depth(shape), one.across / 2
    belt = shape.belt.mm if shape.belt is not None else 0.0
    middle = (one.start + one.end) / 2
    out = top + _BEYOND
    if shape.groove == "round":
        half, centre = belt / 2, top - deep + belt / 2
        yield Revolved(
            Outline(
                (middle - half, out),
                (
                    Straight((middle - half, centre)),
                    Arc((middle, centre - half), (middle + half, centre)),
                    Straight((middle + half, out)),
                ),
            ),
            AXIS,
        )
    elif shape.groove == "vee":
        lean = math.tan(math.radians(_vee(shape) / 2))
        mouth, root = belt / 2, belt / 2 - deep * lean
        wide = mouth + _BEYOND * lean
        yield Revolved(
            polygon(
                [
                    (middle - wide, out),
                    (middle - root, top - deep),
                    (middle + root, top - deep),
                    (middle + wide, out),
                ]
            ),
            AXIS,
        )


def _vee(shape: Pulley) -> float:
    return float(shape.angle.exact) if shape.angle is not None else _VEE


def pulley_fault(shape: Pulley) -> str | None:
    """What does not fit of a groove, or of the crown."""
    deep, belt = groove_depth(shape), shape.belt.mm if shape.belt is not None else 0.0
    least = min(one.mm for one in shape.diameters)
    if not 10.0 <= _vee(shape) <= 120.0:
        return "a vee is from 10 to 120 degrees"
    if shape.groove != "flat" and belt >= shape.width.mm:
        return f"a groove of {belt:g} mm is as wide as its step"
    if 2 * deep >= least:
        return "the groove goes down to the axis"
    if shape.groove == "round" and deep < belt / 2:
        return f"a round groove is at least half a belt deep: {belt / 2:g} mm"
    if shape.groove == "vee" and deep * math.tan(math.radians(_vee(shape) / 2)) >= belt / 2:
        return "the sides of the vee meet above its floor"
    crown = shape.crown.mm if shape.crown is not None else 0.0
    return "the crown is as high as the pulley" if 2 * crown >= least else None


def _words(shape: Pulley, units: str) -> tuple[str, tuple[str, ...]]:
    if shape.groove == "flat":
        crown = shape.crown
        words = f", crowned {size_text(crown, units)}" if crown is not None else ""
        return f"flat{words}", ("groove", *(("crown",) if crown is not None else ()))
    fields = [name for name in ("belt", "depth", "angle") if getattr(shape, name) is not None]
    belt = size_text(shape.belt, units) if shape.belt is not None else ""
    words = (
        f"round groove for ⌀{belt} belt" if shape.groove == "round" else f"vee groove {belt} wide"
    )
    if shape.depth is not None:
        words += f", {size_text(shape.depth, units)} deep"
    if shape.groove == "vee":
        words += f", {shown(shape.angle.quantity) if shape.angle is not None else '40°'}"
    return words, ("groove", *fields)


def wheel_fault(part: Part, shape: Wheel) -> tuple[str, Size] | None:
    """Sizes of a wheel that do not grow from the hub outwards."""
    inside = shape.outside.mm - 2 * shape.rim.mm
    if shape.hub.mm >= inside:
        return "the hub reaches the rim", shape.hub
    wide = rim_width(part, shape)
    if shape.web is not None and shape.web.mm > wide:
        return "the web is thicker than the rim is wide", shape.web
    if shape.spoke is not None and shape.spoke.mm > min(wide, shape.hub_length.mm):
        return "the spokes are thicker than the wheel", shape.spoke
    return None


def rim_width(part: Part, shape: Wheel) -> float:
    """How wide the rim is; that of a handwheel is round."""
    if part.shape_kind == "handwheel" or shape.width is None:
        return shape.rim.mm
    return shape.width.mm


def wheel_body(part: Part, shape: Wheel, units: str) -> Body | None:
    """Rim, spokes or web, and hub, about one middle plane."""
    if wheel_fault(part, shape) is not None:
        return None
    wide, long = rim_width(part, shape), shape.hub_length.mm
    middle = max(wide, long) / 2
    forms = (
        *_rim(part, shape, middle),
        _disc(shape.hub.mm / 2, long, middle),
        *_arms(shape, middle),
    )
    stretches = tuple(_wheel_steps(part, shape, units))
    notes = tuple(_wheel_notes(part, shape, units, middle))
    return round_body(part.shape_kind, forms, stretches, shape.outside.mm / 2, notes)


def _disc(radius: float, long: float, middle: float) -> Form:
    return Cylinder(radius, long, _at(middle - long / 2))


def _at(x: float) -> Frame:
    return Frame((x, 0.0, 0.0), AXIS.z, AXIS.x)


def _rim(part: Part, shape: Wheel, middle: float) -> Iterator[Form]:
    outside, thick = shape.outside.mm / 2, shape.rim.mm
    if part.shape_kind == "handwheel":
        yield Ring(outside - thick / 2, thick, _at(middle))
        return
    wide = rim_width(part, shape)
    yield Raised(annulus(outside, outside - thick), wide, _at(middle - wide / 2))


def _arms(shape: Wheel, middle: float) -> Iterator[Form]:
    """Round spokes from the hub into the rim, or a web."""
    if shape.web is not None:
        yield _disc(shape.outside.mm / 2 - shape.rim.mm / 2, shape.web.mm, middle)
    if shape.spoke is None or not shape.spokes:
        return
    for out in _ways(shape.spokes):
        frame = Frame((middle, 0.0, 0.0), out, (1.0, 0.0, 0.0))
        yield Cylinder(shape.spoke.mm / 2, shape.outside.mm / 2 - shape.rim.mm / 2, frame)


def _ways(count: int) -> Iterator[Vector]:
    for n in range(count):
        turn = 2 * math.pi * n / count
        yield (0.0, -math.sin(turn), math.cos(turn))


def _wheel_steps(part: Part, shape: Wheel, units: str) -> Iterator[Stretch]:
    """The rim, and the hub where it stands out on both sides."""
    wide, long = rim_width(part, shape), shape.hub_length.mm
    out = max(0.0, (long - wide) / 2)
    hub, across = shape.hub.mm, shape.outside.mm
    texts = (f"⌀{size_text(shape.hub, units)}", size_text(shape.hub_length, units))
    if out:
        first = (texts[0], f"{figure(out)} mm")
        yield round_step(part, "hub", 0.0, out, hub, first, ("hub", "hub.end"))
    rim = (f"⌀{size_text(shape.outside, units)}", f"{figure(wide)} mm")
    yield round_step(part, "outside", out, out + wide, across, rim, ("outside", "rim.wide"))
    if out:
        yield round_step(part, "hub2", out + wide, long, hub, texts, ("hub.2", "hub_length"))


def _wheel_notes(part: Part, shape: Wheel, units: str, middle: float) -> Iterator[Located]:
    top = shape.outside.mm / 2
    rim, fields = f"rim {size_text(shape.rim, units)}", ["rim"]
    if shape.width is not None and part.shape_kind == "flywheel":
        rim, fields = f"{rim}, {size_text(shape.width, units)} wide", ["rim", "width"]
    yield note_at(part, "rim", (middle, 0.0, top - shape.rim.mm / 2), rim, fields)
    if shape.hub_length.mm <= rim_width(part, shape):
        hub = f"hub ⌀{size_text(shape.hub, units)}, {size_text(shape.hub_length, units)} long"
        spot = (middle, 0.0, shape.hub.mm / 2)
        yield note_at(part, "hub", spot, hub, ("hub", "hub_length"))
    half = (top - shape.rim.mm + shape.hub.mm / 2) / 2
    if shape.web is not None:
        web = f"web {size_text(shape.web, units)}"
        yield note_at(part, "web", (middle, 0.0, half), web, ("web",))
    if shape.spoke is not None and shape.spokes:
        words = f"{shape.spokes} spokes ⌀{size_text(shape.spoke, units)}"
        spots = tuple((middle, half * y, half * z) for _, y, z in _ways(shape.spokes))
        note = note_at(part, "spokes", spots[0], words, ("spokes", "spoke"), face="axis")
        yield replace(note, spots=spots)
