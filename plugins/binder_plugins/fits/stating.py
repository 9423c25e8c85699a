"""Fits as made to the facts, workings and features that other plugins and pages read."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from binder.api import (
    Contribution,
    Design,
    Diagnostic,
    Fact,
    Feature,
    FitFact,
    Given,
    HalfFact,
    Joint,
    PlaceFact,
    Size,
    Working,
    implied_feature,
    made_size,
)
from binder_plugins.fits.ends import feature_at
from binder_plugins.fits.facts import Half, MadeFit
from binder_plugins.fits.families import HUBS
from binder_plugins.fits.figures import (
    added_mm,
    how,
    limits_of,
    nominal,
    range_of,
    signed,
    span,
    to_size,
)
from binder_plugins.fits.hinges import Hinge, hinge_facts, hinge_of, hinge_pin
from binder_plugins.fits.kinds import FitEntry
from binder_plugins.fits.order import ordered_work
from binder_plugins.fits.pressing import pressings
from binder_plugins.fits.running import bearings
from binder_plugins.fits.safe_nips import eased_presses
from binder_plugins.fits.settling import settle
from binder_plugins.fits.suiting import master_of
from binder_plugins.fits.tapers import taper_fits, tapered
from binder_trade.explained import NotDefined
from binder_trade.fits.gaps import gap

_REAMABLE = ("reamed", "bored", "drilled")


def state_fits(design: Design) -> Contribution:
    """The fits of all joints: both halves, the hole that waits for its size, the order."""
    fits, findings = [], []
    sized: list[Feature] = []
    plain: list[Fact] = []
    hinges: list[Hinge] = []
    cones = taper_fits(design)
    for joint in design.joints.values():
        if joint.name in cones:
            continue
        made = settle(joint, design)
        if isinstance(made, Diagnostic):
            findings.append(made)
        elif made is not None:
            fits.append(made)
        elif (hinge := hinge_of(joint, design)) is not None:
            hinges.append(hinge)
        else:
            sized += _told_by_size(joint, design)
            plain += _plain_halves(joint, design)
    for hinge in hinges:
        plain += hinge_facts(hinge, design)
        sized += _eyes_to_suit(hinge, design)
    fits = eased_presses(fits, design)
    pressed = list(pressings(fits, design))
    running = list(bearings(fits, design))
    features = [feature for fit in fits for feature in _features(fit, design)]
    features += sized
    facts: list[Fact] = [*fits, *pressed, *running, *plain]
    for fit in fits:
        facts += [_fit(fit), *_halves(fit, design), *_settled(fit, features)]
    work = ordered_work(fits, pressed, design)
    facts += work.facts
    workings = [one for fit in fits for one in _workings(fit, design)]
    workings += [one.working for one in pressed]
    workings += [one.working for one in running]
    pins = [hinge_pin(one, design) for one in hinges]
    told = tapered(cones, design)
    return Contribution(
        [*facts, *told.facts], [*features, *told.features], pins, list(work.tasks.values()),
        work.befores,
        [*workings, *told.workings], [*findings, *told.findings],
    )  # fmt: skip


def id_of(joint: Joint) -> str:
    """The beginning of the ids of a joint's workings."""
    return joint.name.replace(" ", "_")


def _fit(fit: MadeFit) -> FitFact:
    return FitFact(
        subject=fit.subject,
        nominal=fit.nominal,
        says=fit.wish.says,
        hole=str(fit.hole.end),
        shaft=str(fit.shaft.end),
        hole_class=fit.hole.cls,
        shaft_class=fit.shaft.cls,
        hole_upper_um=fit.hole.upper_um,
        hole_lower_um=fit.hole.lower_um,
        shaft_upper_um=fit.shaft.upper_um,
        shaft_lower_um=fit.shaft.lower_um,
        suit=fit.suit,
        wanted_um=fit.wanted_um if fit.suit else 0.0,
        eased_um=(fit.least_um, fit.most_um) if fit.is_eased else None,
        suited_um=(fit.least_um, fit.most_um) if fit.suit else None,
        why=fit.wish.why,
        source=fit.wish.source,
    )


def _halves(fit: MadeFit, design: Design) -> Iterator[HalfFact]:
    first = master_of(fit)
    for which, half, mate in (("hole", fit.hole, fit.shaft), ("shaft", fit.shaft, fit.hole)):
        low, high = limits_of(fit, half)
        is_made = half.way != "bought" and half.has_limits
        yield HalfFact(
            subject=f"{fit.subject}: {half.end}{' fit' if fit.joint.kind in HUBS else ''}",
            joint=fit.subject,
            item=half.end.item,
            place=_place(fit, half),
            what=to_size(fit, half, design.units),
            mate=mate.title,
            how=how(fit, which, design.units),
            is_master=half is first,
            lower=low if is_made else None,
            upper=high if is_made else None,
            suits=added_mm(fit, half),
        )


def _place(fit: MadeFit, half: Half) -> str:
    """The name of the place; of a hole that the joint makes in a face, the joint's own."""
    return id_of(fit.joint) if half.place.form == "face" and half is fit.hole else half.end.place


def _plain_halves(joint: Joint, design: Design) -> Iterator[HalfFact]:
    """Halves that meet without a round fit: each as it is drawn, named with its mate."""
    if not isinstance(joint.entry, FitEntry) or joint.kind == "glued":
        return
    for number, end in enumerate(joint.ends):
        if end.item not in design.parts and end.item not in design.fabrications:
            continue
        mate = joint.ends[1 - number] if number < 2 else joint.ends[0]
        place = design.facts.about(PlaceFact, str(end))
        across = place.diameter if place is not None else None
        what = nominal(across, design.units) if across is not None else "as drawn"
        is_bought = mate.item in design.bought
        suits = _under_bought(joint, place) if is_bought else None
        if suits is not None:
            what = f"{what} to suit: {span(*suits, design.units)} the measured bore"
        yield HalfFact(
            f"{joint.name}: {end}",
            joint.name,
            end.item,
            end.place,
            what,
            str(mate),
            how="to suit the measured other half" if is_bought else joint.made,
            suits=suits,
        )


def _under_bought(joint: Joint, place: PlaceFact | None) -> tuple[float, float] | None:
    """What a seat differs from the bore of a bought piece that has no size yet, in mm."""
    is_seat = place is not None and place.form == "step" and place.is_round
    try:
        wanted = gap(joint.kind.replace("_", " ")) if is_seat else None
    except NotDefined:
        return None
    return (-wanted.most_um / 1000, -wanted.least_um / 1000) if wanted is not None else None


def _told_by_size(joint: Joint, design: Design) -> Iterator[Feature]:
    """A hole to suit whose joint has no round pair, and says the size itself."""
    size = joint.entry.size if isinstance(joint.entry, FitEntry) else None
    for end in joint.ends if size is not None else ():
        written = feature_at(end, design)
        if written is not None and getattr(written.entry, written.kind, None) == "to suit":
            yield _sized(joint, written, size, design)


def _eyes_to_suit(hinge: Hinge, design: Design) -> Iterator[Feature]:
    """The eyes of a hinge that wait for the size of its pin."""
    for end, place in hinge.ends:
        written = feature_at(end, design)
        if written is not None and place.is_to_suit:
            yield _sized(hinge.joint, written, made_size(hinge.pin, hinge.joint), design)


def _sized(joint: Joint, written: Feature, size: Size | None, design: Design) -> Feature:
    """A written feature with the size that it waited for."""
    kept = {name: getattr(written.entry, name) for name in type(written.entry).model_fields}
    kept[written.kind] = size
    return implied_feature(design, joint, written.owner, written.name, written.kind, **kept)


def _features(fit: MadeFit, design: Design) -> Iterator[Feature]:
    """The hole that is left to suit, with its size; or the hole that a face gets."""
    hole = fit.hole
    written = feature_at(hole.end, design)
    size = made_size(fit.nominal, fit.joint)
    if written is not None and hole.place.is_to_suit and written.kind in _REAMABLE:
        yield _sized(fit.joint, written, size, design)
    elif written is None and hole.place.form == "face" and hole.end.item in design.parts:
        kind = "reamed" if hole.way == "reamed" else "bored"
        yield implied_feature(
            design,
            fit.joint,
            hole.end.item,
            id_of(fit.joint),
            kind,
            **{kind: size, "on": hole.end.place, "depth": "through"},
        )


def _settled(fit: MadeFit, features: list[Feature]) -> Iterator[PlaceFact]:
    """The place of a hole that now has its size, for the plugins that look it up later."""
    place = fit.hole.place
    for feature in features:
        if feature.implied_by == fit.subject:
            form = replace(
                place,
                subject=f"{feature.owner}.{feature.name}",
                place=feature.name,
                form="hole",
                kind=feature.kind,
                diameter=fit.nominal,
                is_to_suit=False,
                is_round=True,
                is_through=place.depth is None,
            )
            yield form


def _workings(fit: MadeFit, design: Design) -> Iterator[Working]:
    units = design.units
    clear = range_of(fit.least_um, fit.most_um, units)
    yield Working(
        id=f"{id_of(fit.joint)}.fit",
        title=f"fit of '{fit.subject}'",
        given=tuple(_given(fit, units)),
        formula=f"{fit.wish.says} at {nominal(fit.nominal, units)}: hole − shaft",
        result=clear,
        because=fit.wish.why,
        source=fit.wish.source,
        span=fit.joint.at,
    )
    if fit.suit:
        yield _suit_working(fit, units)


def _given(fit: MadeFit, units: str) -> Iterator[Given]:
    for name, half in (("hole", fit.hole), ("shaft", fit.shaft)):
        value = f"{to_size(fit, half, units)} ({half.source})" if half.source else ""
        yield Given(f"{name}, {half.title}", value or to_size(fit, half, units), half.end.at)
    if fit.wish.is_said:
        yield Given("said in the joint", fit.wish.says, fit.wish.at)


def _suit_working(fit: MadeFit, units: str) -> Working:
    measured = "bore" if fit.suit == "shaft" else "shaft"
    verb = "polish" if fit.is_eased else "turn" if fit.suit == "shaft" else "bore"
    most = " at the most" if fit.is_eased else ""
    add = aim_mm(fit)
    return Working(
        id=f"{id_of(fit.joint)}.suit",
        title=f"size of the {fit.suit} of '{fit.subject}'",
        given=(Given("least and most clearance", range_of(fit.least_um, fit.most_um, units)),),
        formula=f"{measured} as measured {signed(add, units)}",
        result=f"{verb} to the measured {measured} {signed(add, units)}{most}",
        because="what runs free stays as bought" if most else "the middle of least and most",
        source="clearance = hole − shaft, ISO 286-1",
        span=fit.joint.at,
    )


def aim_mm(fit: MadeFit) -> float:
    """What is added to the measured half to make the other, in mm."""
    return (-fit.wanted_um if fit.suit == "shaft" else fit.wanted_um) / 1000
