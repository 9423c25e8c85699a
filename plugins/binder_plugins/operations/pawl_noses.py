"""The nose of a pawl: which end it is, and the wedge that goes in the space of its ratchet."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import Size
from binder_plugins.operations.ratchets import ratchet_cut

if TYPE_CHECKING:
    from binder.api import Feature
    from binder_plugins.operations.work import Work

# How much sharper the nose is than the space, at the least, to the next lower step, in degrees;
# what is left on it for the trial in its place, in mm. Common practice, no source.
_SHARPER, _STEP = 3.0, 5.0
_LEFT_MM = 0.3


def nose_words(work: Work, one: Feature) -> str:
    """What the filing of a nose says besides; '' where the part is no pawl of a straight tooth."""
    wheel = _wheel(work)
    end = _end(work)
    said = str(getattr(one.entry, "filed", ""))
    if wheel is None or not end or "ratchet" not in said:
        return ""
    space = _space(wheel)
    if space is None:
        return ""
    wedge = math.floor((space - _SHARPER) / _STEP) * _STEP
    return (
        f"; it is the {end}-hand end, a wedge of {wedge:.0f}° for a space of {space:.1f}°: the end "
        "itself stays square to the bar and is stopped by the tooth, the side towards the wheel is "
        f"filed back to it; {work.mm(_LEFT_MM)} of length stays on for the trial in its place"
    )


def _wheel(work: Work) -> object:
    """The shape of the ratchet wheel that the part is the pawl of."""
    for joint in work.design.joints.values():
        if joint.kind == "ratchets" and joint.ends[-1].item == work.name:
            part = work.design.parts.get(joint.ends[0].item)
            return part.shape if part is not None else None
    return None


def _space(wheel: object) -> float | None:
    """The angle between a radial stopping face and the back beside it, in degrees."""
    teeth, outside = getattr(wheel, "teeth", None), getattr(wheel, "outside", None)
    depth, lean = getattr(wheel, "depth", None), getattr(wheel, "lean", None)
    if not isinstance(teeth, int) or not isinstance(outside, Size) or not isinstance(depth, Size):
        return None
    if isinstance(lean, Size) and lean.exact:
        return None
    cut = ratchet_cut(teeth, outside.mm, depth.mm, 0.0)
    return math.degrees(math.asin(min(1.0, cut.back_to / cut.root)))


def _end(work: Work) -> str:
    """`left` or `right`: the end that is further from the hole of its pin."""
    names = {
        end.place
        for joint in work.design.joints.values()
        if joint.kind in {"hinged", "swivels"}
        for end in joint.ends
        if end.item == work.name
    }
    located = work.form.located if work.form is not None else ()
    place = next((one.spots[0][0] for one in located if one.name in names), None)
    if place is None or work.form is None:
        return ""
    return "right" if place < work.form.size[0] / 2 else "left"
