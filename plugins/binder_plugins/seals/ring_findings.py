"""Turns an O-ring and what is written of its groove and lead into findings."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder.api import Design, Diagnostic, Fabrication, Feature, Part, Size, exact, shown_length
from binder_plugins.seals import codes
from binder_plugins.seals.facts import RingFact
from binder_plugins.seals.kinds import SealEntry
from binder_trade.seals import NotDefined, for_bore, for_rod, remarks

LEAST_DEPTH = 0.2  # mm of groove wall that still holds a ring; common practice, no source
_WIDTH_OUT = 0.1
_CRUSHED = 40.0  # per cent; common practice, no source
_STEEPEST = 30.0
_FORTY_FIVE = 45.0


def ring_findings(fact: RingFact, entry: SealEntry, design: Design) -> Iterator[Diagnostic]:
    """What is wrong with the ring, a written groove, and the edge it goes in over."""
    groove = fact.groove
    span = entry.ring.span if entry.ring is not None else fact.joint.at
    for one in groove.remarks:
        better = _better(fact, design.units)
        yield codes.BY_NAME[one.code].at(
            span,
            f"'{fact.joint.name}': {one.reason}",
            notes=(f"{one.why}",),
            help=better or one.way_out,
        )
    if fact.depth_mm < LEAST_DEPTH:
        yield _no_metal(fact, design.units)
        return
    yield from _written(fact, design.units)
    yield from _lead(fact, design)


def _no_metal(fact: RingFact, units: str) -> Diagnostic:
    """The grooved half is so far from its mate that no groove holds the ring."""
    surface, mate = (shown_length(exact(mm), units) for mm in (fact.surface_mm, fact.mate_mm))
    return codes.GROOVE_WRONG.at(
        fact.joint.at,
        f"'{fact.joint.name}': ⌀{surface} against ⌀{mate} leaves no metal for a groove",
        help="let the two sizes be nearly alike, the sliding gap apart",
    )


def _better(fact: RingFact, units: str) -> str:
    """The ring that suits, with its groove."""
    choose = for_rod if fact.groove.place == "rod" else for_bore
    try:
        best = choose(fact.mate_mm, fact.groove.housing.duty)[0]
    except NotDefined:
        return ""
    floor = shown_length(exact(best.diameter_mm), units)
    return f"{best.ring.name} suits: groove to ⌀{floor}, pressed by {best.squeeze:.0f} %"


def _written(fact: RingFact, units: str) -> Iterator[Diagnostic]:
    """A groove with its own sizes, against that of the ring."""
    feature, groove = fact.grooved.feature, fact.groove
    if feature is None or not fact.grooved.is_grooved:
        return
    width, depth = getattr(feature.entry, "grooved", None), getattr(feature.entry, "depth", None)
    wanted = (
        f"{shown_length(exact(groove.housing.width_mm), units)} wide and "
        f"{shown_length(exact(fact.depth_mm), units)} deep (⌀"
        f"{shown_length(exact(groove.diameter_mm), units)}) suits the {groove.ring.name} ring"
    )
    if isinstance(depth, Size):
        room = abs(fact.mate_mm / 2 - _floor(fact, depth.mm) / 2)
        squeeze = 100 * (groove.ring.cord_mm - room) / groove.ring.cord_mm
        wrong = remarks(groove.place, groove.housing.duty, squeeze, 0.0, 75.0)
        if wrong:
            is_useless = squeeze <= 0 or squeeze > _CRUSHED
            code = codes.GROOVE_WRONG if is_useless else codes.SQUEEZE_OUT
            yield code.at(
                depth.span,
                f"a groove {shown_length(depth.exact, units)} deep presses the ring by "
                f"{max(0.0, squeeze):.0f} %",
                help=wanted,
            )
    if isinstance(width, Size) and not _is_wide_enough(fact, width.mm):
        yield codes.GROOVE_WRONG.at(
            width.span,
            f"a groove {shown_length(width.exact, units)} wide does not suit the ring",
            help=wanted,
        )


def _floor(fact: RingFact, depth: float) -> float:
    sign = 1 if fact.groove.place == "rod" else -1
    return fact.surface_mm + sign * 2 * depth


def _is_wide_enough(fact: RingFact, width: float) -> bool:
    housing = fact.groove.housing
    return housing.width_mm - _WIDTH_OUT <= width <= housing.width_mm * 1.2 + housing.width_plus_mm


def lead_feature(fact: RingFact, design: Design) -> Feature | None:
    """A chamfer that is written at the mouth which the ring passes."""
    item = design.item(fact.mate.end.item)
    written = item.features if isinstance(item, (Part, Fabrication)) else ()
    on = fact.mate.on
    return next(
        (
            one
            for one in written
            if one.kind == "chamfered" and str(getattr(one.entry, "on", None) or on) == on
        ),
        None,
    )


def _lead(fact: RingFact, design: Design) -> Iterator[Diagnostic]:
    """A written chamfer must be flat enough, and higher than the ring stands out."""
    feature = lead_feature(fact, design)
    size = getattr(feature.entry, "chamfered", None) if feature is not None else None
    if feature is None or not isinstance(size, Size) or feature.is_dummy:
        return
    slope = getattr(feature.entry, "angle", None)
    angle = float(slope.exact) if isinstance(slope, Size) else _FORTY_FIVE
    high = size.mm * math.tan(math.radians(min(max(angle, 1.0), 89.0)))
    stands_out = fact.groove.ring.cord_mm - fact.groove.depth_mm
    if angle <= _STEEPEST and high > stands_out:
        return
    long = shown_length(exact(fact.lead.length_mm), design.units)
    yield codes.LEAD_MISSING.at(
        size.span,
        f"the ring of '{fact.joint.name}' is cut on a chamfer of "
        f"{shown_length(size.exact, design.units)} at {angle:g}°",
        help=f"chamfer it {long} long at {fact.lead.angle_deg:g} deg",
    )
