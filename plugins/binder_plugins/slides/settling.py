"""Turns the dovetailed joints of a design into slides with the sizes of both halves."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from binder.api import Contribution, Design, End, Fabrication, Joint, Part, PlaceFact
from binder_plugins.slides.astride import off_middle
from binder_plugins.slides.chaining import chain_of
from binder_plugins.slides.facts import Side, SlideFact
from binder_plugins.slides.gibs import set_gibs
from binder_plugins.slides.halves import features, halves, workings
from binder_plugins.slides.kinds import DovetailEntry
from binder_plugins.slides.wanted import wanted, written_mm
from binder_trade.slides import Dovetail, NotDefined, dovetail, over_pins, owned_pin, pin_range


def settle_slides(design: Design) -> Contribution:
    """A `SlideFact`, the chain, features, halves and workings of each dovetailed joint."""
    facts = list(_slides(design))
    gibs = set_gibs(facts, design)
    chains = [one for one in map(chain_of, facts) if one is not None]
    return Contribution(
        facts=[
            *facts,
            *chains,
            *(one for one in map(off_middle, facts) if one is not None),
            *(half for fact in facts for half in halves(fact, design)),
            *gibs.facts,
        ],
        bought=gibs.bought,
        findings=gibs.findings,
        features=[one for fact in facts for one in features(fact, design)],
        workings=[one for fact in facts for one in workings(fact, design)],
    )


def _slides(design: Design) -> Iterator[SlideFact]:
    for joint in design.joints.values():
        if isinstance(joint.entry, DovetailEntry) and len(joint.ends) > 1:
            yield _settled(joint, joint.entry, design)


def _settled(joint: Joint, entry: DovetailEntry, design: Design) -> SlideFact:
    male, female = _sides(joint, design)
    fact = SlideFact(joint.name, joint, entry, male, female)
    try:
        asked = wanted(entry, male, female, design)
        if asked is None:
            return fact
        slide = dovetail(asked)
    except NotDefined as refusal:
        return replace(fact, refusal=refusal)
    fact = replace(fact, wanted=asked, slide=slide, play_mm=_play(female, slide))
    return _with_pins(fact, entry, slide, design)


def _sides(joint: Joint, design: Design) -> tuple[Side, Side]:
    """Tail and slot: "A slides on the dovetail of B", unless the written halves say otherwise."""
    first, second = (_side(end, design) for end in joint.ends[:2])
    is_turned = first.is_inside is False or second.is_inside is True
    return (first, second) if is_turned else (second, first)


def _side(end: End, design: Design) -> Side:
    item = design.item(end.item)
    written = item.features if isinstance(item, (Part, Fabrication)) else ()
    feature = next((one for one in written if one.name == end.place), None)
    place = design.facts.about(PlaceFact, str(end))
    if feature is not None:
        on = getattr(feature.entry, "on", None) or "top"
        place = design.facts.about(PlaceFact, f"{end.item}.{on}") or place
    return Side(end, feature, place, isinstance(item, (Part, Fabrication)))


def _play(female: Side, slide: Dovetail) -> float | None:
    mouth = written_mm(female)
    return None if mouth is None else mouth - slide.male.narrow_mm - slide.gib_width_mm


def _with_pins(fact: SlideFact, entry: DovetailEntry, slide: Dovetail, design: Design) -> SlideFact:
    names = {float(drill.mm): drill.name for drill in design.workshop.drills()}
    pin = entry.pins.mm if entry.pins is not None else _owned(slide, names)
    try:
        return replace(fact, pins=over_pins(slide, pin), pin_name=names.get(pin, ""))
    except NotDefined:
        return fact


def _owned(slide: Dovetail, names: dict[float, str]) -> float:
    """The owned drill whose shanks serve best, else the best pin there is."""
    try:
        return owned_pin(slide, names)
    except NotDefined:
        return pin_range(slide).best_mm
