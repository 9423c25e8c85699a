"""Metal for a fit: an outside with nip is over its nominal size, one that runs must be turned.

So must the blank of a toothed wheel, in the grip of its bore: its teeth run as true as it does.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from binder.api import Design, End, Part
from binder_plugins.shapes.needed import Needed
from binder_plugins.shapes.turned import measured
from binder_plugins.shapes.vocabulary.toothed import Gear, Ratchet, Sprocket

_PRESSED = ("pressed", "shrunk")
# A bar of the nominal size leaves nothing to turn under it by the few hundredths of these.
_TURNED = ("runs_in", "slides", "swivels", "retained")
_AS_BOUGHT = ("drawn rod",)
# What is turned off over the nip, which is a thousandth or two of the diameter: common practice.
_OVER = Fraction(1, 20)


def with_metal(part: Part, needed: Needed, design: Design) -> Needed:
    """What a part needs of a bar that is still to be chosen, with metal for its fits."""
    if part.stock is not None and part.stock.form in _AS_BOUGHT:
        return needed
    if needed.round is not None and isinstance(part.shape, (Gear, Ratchet, Sprocket)):
        because = f"{needed.because}, and metal to turn the blank true to its bore"
        return replace(needed, round=needed.round + _OVER, because=because)
    if not isinstance(part.shape, list) or needed.round is None or not needed.steps:
        return needed
    steps, _ = measured(part, part.shape)
    widest = {
        str(one.step.name or "")
        for one in steps
        if one.step.diameter is not None and one.step.diameter.exact == needed.round
    }
    places = {*widest, "outside"} - {""}
    if any(end.place in places for end in _ends(part, _PRESSED, design)):
        because = f"{needed.because}, and the nip by which it is pressed in"
    elif any(end.place in places for end in _ends(part, _TURNED, design)):
        because = f"{needed.because}, and metal to turn it to its fit"
    else:
        return needed
    return replace(needed, round=needed.round + _OVER, because=because, over=_OVER)


def _ends(part: Part, kinds: tuple[str, ...], design: Design) -> list[End]:
    return [
        end
        for joint in design.joints_at(part.name)
        if joint.kind in kinds
        for end in joint.ends
        if end.item == part.name
    ]
