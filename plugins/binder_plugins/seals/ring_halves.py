"""Turns an O-ring and its groove into features of both parts, and what their leaves print."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Design,
    Feature,
    HalfFact,
    Quantity,
    Size,
    Slot,
    Working,
    exact,
    implied_feature,
    made_size,
    parse_size,
    shown_length,
)
from binder_plugins.seals.bought import Supply, made_times
from binder_plugins.seals.facts import RingFact
from binder_plugins.seals.ring_findings import LEAST_DEPTH, lead_feature
from binder_plugins.seals.sums import workings_of

# What the floor of a groove may be out by, on diameter; common practice, no source.
FLOOR_WITHIN = 0.05


def ring_features(fact: RingFact, design: Design) -> Iterator[Feature]:
    """The groove where none is written or it is left to suit, and the lead-in of its mate."""
    known = design.spec.kinds.of(Slot.FEATURE)
    if fact.depth_mm < LEAST_DEPTH:
        return
    if "grooved" in known and fact.grooved.is_made and not _is_sized(fact):
        yield _groove(fact, design)
    if "chamfered" in known and fact.mate.is_made and lead_feature(fact, design) is None:
        yield _lead(fact, design)


def _is_sized(fact: RingFact) -> bool:
    feature = fact.grooved.feature
    value = getattr(feature.entry, feature.kind, None) if feature is not None else None
    return fact.grooved.is_grooved and isinstance(value, Size)


def _groove(fact: RingFact, design: Design) -> Feature:
    joint, section = fact.joint, fact.groove.housing
    old = fact.grooved.feature if fact.grooved.is_grooved else None
    kept = {name: getattr(old.entry, name) for name in type(old.entry).model_fields} if old else {}
    name = old.name if old is not None else f"{joint.name.replace(' ', '_')}_groove"
    radius = shown_length(exact(section.corner_mm), design.units)
    values: dict[str, object] = {
        "on": fact.grooved.on or None,
        **kept,
        "grooved": made_size(section.width_mm, joint),
        "depth": made_size(fact.depth_mm, joint),
        "note": f"for the {fact.groove.ring.name} O-ring, R{radius} in its corners",
    }
    return implied_feature(design, joint, fact.grooved.end.item, name, "grooved", **values)


def _lead(fact: RingFact, design: Design) -> Feature:
    joint, lead = fact.joint, fact.lead
    text = f"{lead.angle_deg:g} deg"
    angle: Quantity = parse_size(text)
    return implied_feature(
        design,
        joint,
        fact.mate.end.item,
        f"{joint.name.replace(' ', '_')}_lead",
        "chamfered",
        chamfered=made_size(lead.length_mm, joint),
        angle=Size(angle, made_size(1, joint, text).text),
        on=fact.mate.on or None,
        note="at the end where the ring goes in, no burr",
    )


def ring_halves(fact: RingFact, design: Design) -> Iterator[HalfFact]:
    """The groove on one part, the surface it seals on the other."""
    groove, units, joint = fact.groove, design.units, fact.joint
    floor, width, most = (
        shown_length(exact(size), units)
        for size in (
            groove.diameter_mm,
            groove.housing.width_mm,
            groove.housing.width_mm + groove.housing.width_plus_mm,
        )
    )
    is_outside = groove.place == "piston"
    yield HalfFact(
        subject=f"{joint.name}: {fact.grooved.end}",
        joint=joint.name,
        item=fact.grooved.end.item,
        place=fact.grooved.end.place,
        what=f"groove ⌀{floor} at its floor, {width} to {most} wide",
        mate=str(fact.mate.end),
        how=f"to suit the other half and the {groove.ring.name} ring",
        is_master=_is_master(fact, str(fact.grooved.end)),
        lower=groove.diameter_mm - FLOOR_WITHIN if is_outside else None,
        upper=groove.diameter_mm + FLOOR_WITHIN if is_outside else None,
    )
    lead = shown_length(exact(fact.lead.length_mm), units)
    surface = "bore" if is_outside else "rod"
    size = shown_length(exact(fact.mate_mm), units)
    yield HalfFact(
        subject=f"{joint.name}: {fact.mate.end}",
        joint=joint.name,
        item=fact.mate.end.item,
        place=fact.mate.end.place,
        what=f"{surface} ⌀{size}, smooth, lead-in {lead} at {fact.lead.angle_deg:g}°",
        mate=str(fact.grooved.end),
        how="finish and measure",
        is_master=_is_master(fact, str(fact.mate.end)),
    )


def _is_master(fact: RingFact, end: str) -> bool:
    master = fact.joint.master
    return end == (str(master) if master is not None else str(fact.mate.end))


def ring_workings(fact: RingFact, _design: Design) -> Iterator[Working]:
    """The sums behind ring and groove."""
    given = (
        ("diameter sealed", fact.mate_mm),
        ("cord of the ring", fact.groove.ring.cord_mm),
        ("inside of the ring", fact.groove.ring.inside_mm),
    )
    return workings_of(fact.joint, (*fact.groove.steps, *fact.lead.steps), given)


def ring_supply(fact: RingFact, design: Design) -> Iterator[Supply]:
    """The rings, and one to spare: the first is often cut at the first try."""
    place = fact.grooved.place
    count = made_times(fact.joint, fact.grooved.end.item, design)
    count *= place.count if place is not None and fact.grooved.is_grooved else 1
    why = "chosen by the diameter that it seals"
    yield Supply(fact.joint, f"O-ring {fact.groove.ring.name}", count, why, 1)
