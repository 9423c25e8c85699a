"""Turns an O-ring joint into the ring and groove that suit it, or into what is wrong with it."""

from __future__ import annotations

import re
from functools import cache

from binder.api import Design, Joint
from binder_plugins.seals.facts import RingFact, Side
from binder_plugins.seals.kinds import SealEntry
from binder_plugins.seals.ring_words import ring_or_cord
from binder_plugins.seals.sides import side_of
from binder_trade.seals import (
    Duty,
    Groove,
    NotDefined,
    Ring,
    for_bore,
    for_rod,
    housing,
    lead_in,
    piston_groove,
    rings,
    rod_groove,
)

# A groove wants as much metal on each side of it as it is wide, less a little; common practice.
_BESIDE = 2.0
_STOUTEST = 4  # cord to bore, for a ring that is chosen here; common practice


class NoSizeError(ValueError):
    """Nothing tells the diameter of what is sealed."""


def ring_fact(joint: Joint, entry: SealEntry, design: Design) -> RingFact:
    """The seal; raises NoSizeError, or NotDefined where no ring or groove suits."""
    inner, outer = (side_of(end, design) for end in joint.ends[:2])
    is_in_outer = _is_in_outer(inner, outer)
    grooved, mate = (outer, inner) if is_in_outer else (inner, outer)
    told = entry.bore.mm if entry.bore is not None else None
    mate_mm = mate.across or told or grooved.across
    if mate_mm is None:
        raise NoSizeError(joint.name)
    groove = _groove(joint, entry, design, grooved, mate_mm, is_in_outer=is_in_outer)
    surface = grooved.across or mate_mm
    lead = lead_in(groove.ring.cord_mm)
    return RingFact(joint.name, joint, grooved, mate, groove, lead, surface, mate_mm)


def _is_in_outer(inner: Side, outer: Side) -> bool:
    """A groove is turned in the inner part, unless it stands elsewhere or cannot be cut there."""
    if outer.is_grooved or inner.is_grooved:
        return outer.is_grooved
    is_drawn = inner.place is not None and inner.place.is_bought_rod
    return outer.is_made and (is_drawn or not inner.is_made)


def _groove(
    joint: Joint,
    entry: SealEntry,
    design: Design,
    grooved: Side,
    mate_mm: float,
    *,
    is_in_outer: bool,
) -> Groove:
    duty: Duty = "moving" if entry.moving else "standing"
    cut = rod_groove if is_in_outer else piston_groove
    asked, cord = _asked(joint, entry, design)
    if asked is not None:
        return cut(asked, mate_mm, duty)
    if cord is not None:
        housing(cord, duty)  # so that a cord that no groove is listed for is named as such
    found = _suited(cord, mate_mm, duty, is_in_outer=is_in_outer)
    long = float(grooved.under.length or 0) if grooved.under is not None else 0.0
    fitting = [one for one in found if long == 0 or one.housing.width_mm * _BESIDE <= long]
    return (fitting or found)[0]


@cache
def _suited(
    cord: float | None, mate_mm: float, duty: Duty, *, is_in_outer: bool
) -> tuple[Groove, ...]:
    """The grooves that suit; NotDefined names the ring that would, where the cord has none."""
    choose = for_rod if is_in_outer else for_bore
    offered = [one for one in rings() if _is_offered(one, cord, mate_mm)]
    try:
        return choose(mate_mm, duty, offered)
    except NotDefined as refusal:
        if cord is None:
            raise
        best = choose(mate_mm, duty, [one for one in rings() if _is_offered(one, None, mate_mm)])
        way_out = f"{best[0].ring.name} suits, with its groove to ⌀{best[0].diameter_mm:.2f} mm"
        raise NotDefined(f"{refusal.reason} with this cord", way_out) from refusal


def _is_offered(one: Ring, cord: float | None, mate_mm: float) -> bool:
    if cord is not None:
        return abs(one.cord_mm - cord) < 0.01
    return one.cord_mm <= max(1.5, mate_mm / _STOUTEST)


def _asked(joint: Joint, entry: SealEntry, design: Design) -> tuple[Ring | None, float | None]:
    """The ring that the joint or the bought item names."""
    if entry.ring is not None:
        return ring_or_cord(entry.ring)
    held = design.bought.get(joint.held_by) if joint.held_by else None
    found = re.search(r"O-ring,? (.+)", held.what) if held is not None else None
    if found is None:
        return None, None
    try:
        return ring_or_cord(found[1])
    except NotDefined:
        return None, None
