"""Metal for the nip: an outside that is pressed in is larger than its nominal size."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from binder.api import Design, End, Part
from binder_plugins.shapes.needed import Needed
from binder_plugins.shapes.turned import measured

_PRESSED = ("pressed", "shrunk")
# What is turned off over the nip, which is a thousandth or two of the diameter: common practice.
_OVER = Fraction(1, 20)


def with_nip(part: Part, needed: Needed, design: Design) -> Needed:
    """What a part needs of a bar that is still to be chosen, the nip of its outside included."""
    if not isinstance(part.shape, list) or needed.round is None or not needed.steps:
        return needed
    steps, _ = measured(part, part.shape)
    widest = {
        str(one.step.name or "")
        for one in steps
        if one.step.diameter is not None and one.step.diameter.exact == needed.round
    }
    if not any(end.place in {*widest, "outside"} - {""} for end in _pressed_ends(part, design)):
        return needed
    because = f"{needed.because}, and the nip by which it is pressed in"
    return replace(needed, round=needed.round + _OVER, because=because, over=_OVER)


def _pressed_ends(part: Part, design: Design) -> list[End]:
    return [
        end
        for joint in design.joints.values()
        if joint.kind in _PRESSED
        for end in joint.ends
        if end.item == part.name
    ]
