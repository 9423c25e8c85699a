"""Bearings, bonds and soldered joints to findings."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from binder.api import Design, Diagnostic, Joint, Labelled, PlaceFact
from binder_plugins.fits import joining_codes as codes
from binder_plugins.fits.facts import MadeFit
from binder_plugins.fits.families import BONDED, HOT
from binder_plugins.fits.figures import range_of, with_unit
from binder_plugins.fits.kinds import FitEntry
from binder_plugins.fits.oil_ways import check_oil
from binder_plugins.fits.running import Bearing, carries
from binder_trade.fits.gaps import gap, judge_gap

_SOFT = {"aluminium": "aluminium", "stainless steel": "stainless steel", "titanium": "titanium",
         "carbon steel": "soft steel"}  # fmt: skip
_IN_LINE = ("reamed in line", "drilled together", "lapped together")
_WET = ("wet", "water", "steam", "outdoors", "rain", "weather")
_FERROUS = ("carbon steel", "alloy steel", "tool steel", "spring steel", "cast iron")
_NOBLER = ("brass", "bronze", "copper", "aluminium")


def check_joining(design: Design) -> Iterator[Diagnostic]:
    """All findings about bearings, and about what is pressed, bonded or soldered."""
    for fit in design.facts.all(MadeFit):
        yield from _rubbing(fit)
        yield from _wet(fit)
        yield from _gap(fit, design)
        yield from _blind(fit, design)
        if fit.joint.kind == "pressed":
            yield from _lead_in(fit, design)
    for bearing in design.facts.all(Bearing):
        yield from _bearing(bearing, design)
        yield from check_oil(bearing, design)
    yield from _bonded_then_heated(design)
    yield from _same_heat(design)


def _rubbing(fit: MadeFit) -> Iterator[Diagnostic]:
    metal = _SOFT.get(fit.hole.group)
    alike = metal is not None and fit.hole.group == fit.shaft.group
    turns = fit.joint.kind in ("runs_in", "swivels")
    if alike and turns and not fit.joint.entry.fixed:
        yield codes.LIKE_METALS_RUB.at(
            fit.joint.at,
            f"{metal} rubs on {metal} in '{fit.subject}'",
            help="put a bronze bush between, or make one half of silver steel or bronze",
        )


def _wet(fit: MadeFit) -> Iterator[Diagnostic]:
    entry = fit.joint.entry
    duty = entry.duty if isinstance(entry, FitEntry) else None
    words = f"{entry.note or ''} {duty or ''}".lower().split()
    groups = {fit.hole.group, fit.shaft.group}
    is_wet = any(word.strip(".,;") in _WET for word in words)
    if is_wet and groups & set(_FERROUS) and groups & set(_NOBLER):
        yield codes.METALS_CORRODE.at(
            fit.joint.at,
            f"{fit.shaft.group} and {fit.hole.group} in the wet: '{fit.subject}' rusts in",
            help="make the steel half of stainless steel or bronze",
        )


def _bearing(bearing: Bearing, design: Design) -> Iterator[Diagnostic]:
    fit = bearing.fit
    if bearing.count > 1 and carries(fit) and fit.joint.made not in _IN_LINE:
        yield codes.BEARINGS_NOT_IN_LINE.at(
            fit.joint.at,
            f"'{fit.shaft.end.item}' runs in {bearing.count} bearings that are made apart",
            help="add `made: reamed in line`, or leave one loose until the shaft turns",
        )
    if bearing.count == 1 and bearing.length_mm is not None and bearing.length_mm < 0.99 * fit.mm:
        yield codes.BEARING_SHORT.at(
            fit.joint.at,
            f"{with_unit(bearing.length_mm, design.units)} of bearing for a shaft of "
            f"{with_unit(fit.mm, design.units)}",
            help=f"make it {with_unit(fit.mm, design.units)} to "
            f"{with_unit(1.5 * fit.mm, design.units)} long",
        )
    if bearing.wear is not None and not bearing.wear.serves:
        entry = fit.joint.entry
        at = entry.load.span if isinstance(entry, FitEntry) and entry.load else fit.joint.at
        worn = bearing.wear
        yield codes.PV_TOO_HIGH.at(
            at,
            f"{worn.pressure_mpa:.2g} N/mm² at {worn.speed_ms:.2g} m/s: {worn.says}",
            help=f"{worn.material.material} bears {_bears(bearing)}; make it longer or change it",
        )


def _bears(bearing: Bearing) -> str:
    bush = bearing.wear.material if bearing.wear is not None else None
    if bush is None:
        return "less"
    parts = (
        (bush.pressure_mpa, "N/mm²"),
        (bush.speed_ms, "m/s"),
        (bush.pv, "N/mm² × m/s"),
    )
    return ", ".join(f"{amount:g} {unit}" for amount, unit in parts if amount is not None)


def _gap(fit: MadeFit, design: Design) -> Iterator[Diagnostic]:
    """A gap that was written, or that both halves have as they come."""
    kind = fit.joint.kind
    if kind not in (*BONDED, "soft_soldered", "silver_soldered"):
        return
    comes = not fit.suit and (fit.hole.is_fixed and fit.shaft.is_fixed)
    if not comes and not fit.wish.is_said and fit.written_um is None:
        return
    if "bought" in (fit.hole.way, fit.shaft.way) and not fit.wish.is_said:
        return
    least, most = (fit.least_um, fit.most_um) if comes else _meant(fit)
    verdict = judge_gap(kind, least, most)
    if verdict.fails:
        wanted = gap(kind)
        code = codes.BOND_GAP_WRONG if kind in BONDED else codes.SOLDER_GAP_WRONG
        right = range_of(wanted.least_um, wanted.most_um, design.units)
        yield code.at(
            fit.wish.at if fit.wish.is_said else fit.joint.at,
            f"'{fit.subject}' has {range_of(least, most, design.units)}: {verdict.says}",
            help=f"{wanted.filler} wants {right} on diameter",
        )


def _meant(fit: MadeFit) -> tuple[float, float]:
    """A written gap, without the width that its making has."""
    middle = (fit.wish.least_um + fit.wish.most_um) / 2
    return middle, middle


def _blind(fit: MadeFit, design: Design) -> Iterator[Diagnostic]:
    """A closed hollow behind a shaft: air in a press fit or bond, a bomb in a flame."""
    kind, hole = fit.joint.kind, fit.hole.place
    if kind not in ("pressed", *BONDED, *HOT) or hole.depth is None or hole.is_through:
        return
    if _has_vent(fit, design):
        return
    where = f"'{fit.hole.end}' is {with_unit(float(hole.depth), design.units)} deep and blind"
    if kind in HOT:
        yield codes.SEALED_CAVITY_HEATED.at(
            fit.hole.end.at,
            f"{where}, and closed in a flame",
            help="let a hole of 1 mm into it first and call it `vent`",
        )
    else:
        yield codes.AIR_TRAPPED.at(
            fit.hole.end.at,
            f"{where}: the air cannot get out",
            help="drill a `vent` of 1 mm, or file a flat along the shaft",
        )


def _has_vent(fit: MadeFit, design: Design) -> bool:
    for feature in design.features():
        if feature.owner not in (fit.hole.end.item, fit.shaft.end.item):
            continue
        on_shaft = feature.owner == fit.shaft.end.item
        place = design.facts.about(PlaceFact, f"{feature.owner}.{feature.name}")
        goes_through = place is not None and place.form == "hole" and place.is_through
        if "vent" in feature.name or (on_shaft and (feature.kind == "flatted" or goes_through)):
            return True
    return False


def _lead_in(fit: MadeFit, design: Design) -> Iterator[Diagnostic]:
    """A chamfer or round on the half that enters, or on the mouth of the hole."""
    owners = (fit.hole.end.item, fit.shaft.end.item)
    edges = [
        one
        for one in design.features()
        if one.owner in owners and one.kind in ("chamfered", "rounded")
    ]
    if not edges and fit.shaft.way != "bought":
        yield codes.LEAD_IN_MISSING.at(
            fit.shaft.end.at,
            f"'{fit.shaft.end}' has a sharp edge to press in",
            help=f"add to '{fit.shaft.end.item}': "
            "`lead: {chamfered: 0.3 mm, on: STEP, angle: 20 deg}`".replace(
                "STEP", fit.shaft.end.place or "outside"
            ),
        )


def _bonded_then_heated(design: Design) -> Iterator[Diagnostic]:
    """A bond between two pieces of one thing that is soldered."""
    for one in design.fabrications.values():
        pieces = {piece.item for piece in one.pieces}
        if "solder" not in one.joined and "braz" not in one.joined:
            continue
        for joint in design.joints.values():
            if joint.kind in BONDED and set(joint.items) <= pieces:
                yield codes.BOND_NEAR_HEAT.at(
                    joint.at,
                    f"'{joint.name}' is bonded, and '{one.name}' is {_worded(one.joined)}",
                    related=[Labelled(one.at, "heated here")],
                    help="pin or rivet the two, or bond after soldering",
                )


def _same_heat(design: Design) -> Iterator[Diagnostic]:
    """Two joints of one solder on one part, with nothing said of their alloys."""
    soldered = [one for one in design.joints.values() if one.kind in HOT and one.kind != "shrunk"]
    for first, second in combinations(soldered, 2):
        if first.kind != second.kind or not set(first.items) & set(second.items):
            continue
        if _compound(first) == _compound(second) and not _one_heat(first, second):
            yield codes.SOLDER_STEPS_CLASH.at(
                second.at,
                f"'{first.name}' comes apart while '{second.name}' is heated",
                related=[Labelled(first.at, "the same solder")],
                help="name a lower-melting alloy here by `compound:`, or say `one heat`",
            )


def _compound(joint: Joint) -> str:
    entry = joint.entry
    return str(entry.compound or "") if isinstance(entry, FitEntry) else ""


def _one_heat(*joints: Joint) -> bool:
    return any(
        "one heat" in f"{_compound(joint)} {joint.entry.note or ''}".lower() for joint in joints
    )


def _worded(name: str) -> str:
    return name.replace("_", " ")
