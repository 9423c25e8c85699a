"""A taper and its mate: which is made first, how far they go together, what the other is tried by.

How the slide read for the first is written down, and the second is tried with marking blue: where
one lathe cuts both, one setting serves (`one_setting`), and that is for a slide that was moved.
Common practice, no source.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from binder.api import Design, End, Joint
    from binder_plugins.operations.work import Work

BLUE = "marking blue"
# What is left on the diameter for the first trial, in mm: the angle can still be mended with it.
# Common practice, no source.
_FIRST_TRIAL_MM = 0.2
_TENTH_IN = 2.54
WRITE = "; write down how the slide reads"
# How often a taper is tried in blue till it marks all round, and what each trial takes in min:
# stopped, wiped, blued, turned in its mate, looked at, the slide swung. Common practice, no source.
_TRIALS, _TRIAL_MIN = 3, 4.0


@dataclass(frozen=True, slots=True)
class Mate:
    """The other half of a taper joint, as `nose of the arbor`.

    The cone changes its diameter by one in `one_in`. Home, the mouth of the bore stands
    `off_mm` from the large end of the shaft, and at the first trial `early_mm`. `is_first` says
    that the mate is there when this half is cut, `is_written` that its setting was written down,
    `is_inside` that this half is the bore. `wide_mm` is the large end of this half, in mm.
    """

    title: str
    one_in: float
    off_mm: float
    early_mm: float
    wide_mm: float
    is_first: bool
    is_written: bool
    is_inside: bool


def mate_of(work: Work, place: str) -> Mate | None:
    """The mate of a cone or a taper bore; None where no joint is at it. Source: geometry."""
    joints = (work.design.joints.get(name) for name in work.joints_at(place))
    joint = next((one for one in joints if one is not None and one.kind == "tapered"), None)
    if joint is None:
        return None
    halves = (one for found in work.halves.values() for one in found if one.joint == joint.name)
    half = next(halves, None)
    shaft, mouth = _shaft(joint, work.design), _mouth(joint, work.design)
    other = next((end for end in joint.ends if half is not None and str(end) == half.mate), None)
    if half is None or shaft is None or mouth is None or other is None:
        return None
    large, one_in, long = shaft
    off = max((large - mouth) * one_in, 0.0)
    is_bought = other.item in work.design.bought
    is_inside = _stretch(next(end for end in joint.ends if end != other), work.design) is None
    return Mate(
        _title(other, work.design),
        one_in,
        off,
        off + min(_FIRST_TRIAL_MM * one_in, long / 2),
        mouth if is_inside else large,
        is_first=is_bought or not half.is_master,
        is_written=not is_bought,
        is_inside=is_inside,
    )


def writing(mate: str) -> str:
    """The words by which a setting is written down for a mate."""
    return f"{WRITE}: the {mate} is set by it"


def setting(mate: str) -> str:
    """The words by which the slide is set as it read for a mate."""
    return f"the slide set by what was written down for the {mate}, on this side of 0°; "


def written_for(what: str) -> str:
    """The mate for which the words of an act write a setting down; '' for none."""
    found = re.search(writing("([^;]*)"), what)
    return found[1] if found else ""


def set_from(what: str) -> str:
    """The mate by whose setting the words of an act set the slide; '' for none."""
    found = re.search(setting("([^;]*)"), what)
    return found[1] if found else ""


def tried(work: Work, mate: Mate | None) -> str:
    """How a half is tried on its mate, or what is written down for it; nothing without one.

    A bore that bears at its mouth alone narrows too slowly, a shaft too fast: geometry.
    """
    if mate is None:
        return ""
    if not mate.is_first:
        return writing(mate.title)
    mm, more, less = work.mm, "farther", "less"
    each = 1.0 if work.design.units == "mm" else _TENTH_IN
    early, off = mm(round(mate.early_mm, 2)), mm(round(mate.off_mm, 2))
    at_mouth, at_small = (more, less) if mate.is_inside else (less, more)
    read = setting(mate.title)
    return (
        f"; {read if mate.is_written else ''}try it on the {mate.title} in {BLUE}, the lathe "
        f"stopped and the tool drawn back, first when the mouth stands {early} from the large "
        f"end: marked at the mouth alone the slide is swung {at_mouth}, at the small end alone "
        f"{at_small}, till it marks all round, over three quarters; done when the mouth stands "
        f"{off} from the large end ({mm(each)} more is {mm(each / mate.one_in)} of ⌀ still to take)"
    )


def tried_min(mate: Mate | None) -> float:
    """Minutes that the trials of a half in blue take; 0 where none is tried."""
    return _TRIALS * _TRIAL_MIN if mate is not None and mate.is_first else 0.0


def _shaft(joint: Joint, design: Design) -> tuple[float, float, float] | None:
    """The large end in mm, the rate 1 in n and the length in mm of the cone of a joint."""
    for end in joint.ends:
        found = _stretch(end, design)
        if found is not None:
            return found
    return None


def _stretch(end: End, design: Design) -> tuple[float, float, float] | None:
    form = design.facts.about(FormFact, end.item)
    for one in form.stretches if form is not None else ():
        change = abs(one.across - one.end_across)
        if one.name == end.place and change > 0:
            long = one.end - one.start
            return max(one.across, one.end_across), long / change, long
    return None


def _mouth(joint: Joint, design: Design) -> float | None:
    """The mouth in mm of the taper bore of a joint: the feature named, or that on its face."""
    for end in joint.ends:
        item = design.parts.get(end.item) or design.fabrications.get(end.item)
        for one in item.features if item is not None else ():
            is_its = one.name == end.place or one.implied_by == joint.name
            if is_its and getattr(one.entry, "narrows_to", None) is not None:
                return float(getattr(one.entry, one.kind).mm)
    return None


def _title(end: End, design: Design) -> str:
    item = design.parts.get(end.item) or design.bought.get(end.item)
    title = item.title if item is not None else end.item
    is_step = _stretch(end, design) is not None
    features = getattr(item, "features", ())
    is_named = is_step or any(one.name == end.place for one in features)
    # A bore that a face gets has the name of the joint.
    return f"{end.place.replace('_', ' ') if is_named else 'taper bore'} of the {title}"
