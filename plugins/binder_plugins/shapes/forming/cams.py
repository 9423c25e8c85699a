"""Plate cams to bodies: the contour raised to its width, and the hub behind it."""

from __future__ import annotations

from dataclasses import replace

from binder.api import Part, size_text
from binder_plugins.shapes.forming.body import Body
from binder_plugins.shapes.forming.told import figure, note_at, round_step
from binder_plugins.shapes.forming.toothed import hub_of
from binder_plugins.shapes.forming.turned import AXIS, round_body
from binder_plugins.shapes.vocabulary.cams import Cam
from binder_solid.forms import Form, Raised


def cam_body(part: Part, shape: Cam, units: str) -> Body | None:
    """The cam from x = 0; None before a drive has given its contour."""
    contour = shape.contour
    if contour is None:
        return None
    wide, across = shape.width.mm, 2 * contour.reach_mm
    texts = (f"blank ⌀{figure(across)}", size_text(shape.width, units))
    steps = [round_step(part, "outside", 0.0, wide, across, texts, ("outside", "width"))]
    forms: list[Form] = [Raised(contour.outline, wide, AXIS)]
    for form, step in hub_of(part, shape, wide, units):
        forms.append(form)
        steps.append(step)
    note = note_at(part, "contour", (0.0, 0.0, contour.reach_mm), "", ())
    widest = max(one.across for one in steps) / 2
    body = round_body("cam", tuple(forms), tuple(steps), widest, (note,))
    return replace(body, data=contour.data)
