"""The nose of a pawl: which end it is, how it is filed, and what stays on for its trial."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder_solid.pawls import PawlFact

if TYPE_CHECKING:
    from binder.api import Feature
    from binder_plugins.operations.work import Work

# What is left on the nose for the trial in its place, in mm; how far past the next point the side
# is relieved; an angle that no file shows, in degrees. Common practice, no source.
_LEFT_MM, _PAST_MM = 0.3, 1.0
_SQUARE_DEG = 0.5


def left_on(work: Work) -> float:
    """What of the length stays on for the trial of a nose, in mm; 0 where none is filed."""
    return _LEFT_MM if any(_is_nose(one) for one in work.item.features) and _found(work) else 0.0


def ended(work: Work, long: float) -> str:
    """The length that the second end is made to, as printed, with what is left on it."""
    left = left_on(work)
    if not left:
        return work.mm(long)
    end = _end(work)
    more = f"; sizes from that end are {work.mm(left)} more until then" if end == "left" else ""
    return (
        f"{work.mm(long + left)}: it is {work.mm(long)} when the nose, its {end}-hand end, is "
        f"tried, {work.mm(left)} stays on for that{more}"
    )


def nose_words(work: Work, one: Feature) -> str:
    """What the filing of a nose says besides; '' where the part is no straight pawl in place."""
    fact = _found(work)
    if fact is None or not _is_nose(one):
        return ""
    return (
        f"; it is the {fact.end}-hand end, its corner at the {fact.side} goes to the foot of a "
        f"tooth: {_filed(fact, work)}, so that it lies on the whole face; {_side(fact, work)}; "
        f"{work.mm(_LEFT_MM)} of length stays on for the trial in its place"
    )


def _filed(fact: PawlFact, work: Work) -> str:
    """How far out of square the end goes, and where."""
    out = fact.nose.out_deg
    if abs(out) < _SQUARE_DEG:
        return "the end stays square"
    far = "front" if fact.side == "back" else "back"
    if out > 0:
        less = fact.across * math.tan(math.radians(out))
        return (
            f"file the end {out:.0f}° out of square, the corner at the {fact.side} left and the "
            f"one at the {far} {work.mm(round(less, 1))} shorter"
        )
    return (
        f"file the end {-out:.0f}° out of square as far as a tooth is deep, the corner at the "
        f"{fact.side} {work.mm(round(fact.nose.back_mm, 1))} back"
    )


def _side(fact: PawlFact, work: Work) -> str:
    """What is filed off the side towards the wheel, so that the next tooth clears it."""
    nose = fact.nose
    if not nose.relief_deg:
        return f"the {fact.side} stays as it is, {nose.clear_deg:.0f}° clear of the next back"
    long = work.mm(math.ceil(fact.space.back_mm + _PAST_MM))
    return (
        f"file the {fact.side} back by {math.ceil(nose.relief_deg)}° from that corner, "
        f"over {long}: it must clear the next back"
    )


def _found(work: Work) -> PawlFact | None:
    return work.design.facts.about(PawlFact, work.name)


def _end(work: Work) -> str:
    fact = _found(work)
    return fact.end if fact is not None else ""


def _is_nose(one: Feature) -> bool:
    return "ratchet" in str(getattr(one.entry, "filed", ""))
