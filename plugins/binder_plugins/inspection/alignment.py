"""Joints to what must be in line, square or parallel, with how far off it may be.

What a joint leaves as clearance is all that it bears: half of it between two bores in line, the
whole of it over the length of one that stands askew. Source of the shares and of the figures
below: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import (
    Design,
    Feature,
    FitFact,
    Joint,
    NumberOff,
    PlaceFact,
    Role,
    ShaftFact,
    Span,
    ThreadFact,
)
from binder_solid.facts import FormFact

# A test bar stands out so far, mm; the longer it is, the more a tilt shows.
BAR_MM = 100.0
# A screw beside its slide, over their whole length; grooves of a belt over 100 mm: mm.
_SLIDE_MM = 0.05
_GROOVES_MM = 0.5
# A bar tilts by its own shake in a bore that is shorter than so many of its diameters, and tells
# nothing of how the bore stands; common practice, no source.
_SHORTEST = 1.0
_SLACK = "slack the screws until it frees, set that one again; else ream in line"
_REAM = "ease the rod where it binds; else ream through all of them again"
_SCREWED = frozenset({"screwed", "bolted", "studded"})
_FOR_GOOD = frozenset({"silver_soldered"})
_STANDS = frozenset({"screwed", "bolted", "studded", "seated", "silver_soldered", "buttoned"})
_INSET = ("pressed", "retained", "shrunk")
_AXES = {"top": "z", "underside": "z", "front": "y", "back": "y", "left": "x", "right": "x",
         "ends": "x"}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Alignment:
    """What must be true to what: `allowed` mm of the reading, over `over` mm, and how to try it.

    `measures` is the way of an instrument (`run-out`), '' where a straight edge tells it; `by_feel`
    says how the joint itself tells it, '' where it does not.
    """

    key: str
    what: str
    allowed: float
    over: float
    how: str
    measures: str
    by_feel: str
    if_out: str
    at: Span


def alignments(design: Design) -> Iterator[Alignment]:
    """All that follow from the joints: bores in line, then square or parallel, then the rest."""
    yield from _in_line(design)
    yield from _standing(design)
    yield from _slides(design)
    yield from _throws(design)
    yield from _grooves(design)


def spare_mm(fit: FitFact) -> float:
    """The least clearance that a fit will have, in mm; nothing for one that nips."""
    least = fit.wanted_um if fit.suit else fit.clearance_min_um
    return max(least, 0.0) / 1000


def _in_line(design: Design) -> Iterator[Alignment]:
    """Two bearings or more on one shaft: half of the tighter clearance between their axes."""
    for shaft in design.facts.all(ShaftFact):
        pieces = [piece for piece in shaft.pieces if piece.role is Role.BEARING]
        fits = [fit for one in pieces if (fit := design.facts.about(FitFact, one.joint))]
        spare = min((spare_mm(fit) for fit in fits), default=0.0)
        if len(pieces) < 2 or not spare:
            continue
        joint, title = design.joints[pieces[0].joint], _title(shaft.subject, design)
        is_screwed = _is_screwed(fits, design)
        yield Alignment(
            f"in line {shaft.subject}",
            f"the {len(pieces)} bores of the {title} in line",
            spare / 2,
            float(shaft.apart or 0),
            f"a straight bar of its size through all of them{', screwed up' if is_screwed else ''};"
            " an indicator at the bar beside each, the bar turned",
            "run-out",
            f"{'with all screws tight ' if is_screwed else ''}it goes in by hand and turns by two "
            "fingers",
            _SLACK if is_screwed else _REAM,
            joint.at,
        )


def _standing(design: Design) -> Iterator[Alignment]:
    """A bore against the face that its part stands on."""
    for fit in design.facts.all(FitFact):
        joint = design.joints.get(fit.subject)
        if joint is None or joint.kind != "runs_in" or not spare_mm(fit):
            continue
        for item, place in _walls(fit, design):
            stands = _stands_on(item, design)
            long = _length(fit.hole, design)
            if stands and long:
                told = _stood(joint, fit, (item, place, *stands), long, design)
                yield from (told,) if told is not None else ()
                break


def _stood(
    joint: Joint, fit: FitFact, stands: tuple[str, str, str, str], long: float, design: Design
) -> Alignment | None:
    item, place, face, kind = stands
    way = "square" if _axis(item, place, design) == _AXES.get(face, "z") else "parallel"
    bar = "a bar of the bore's size in it"
    if not _guides(f"{item}.{place}", design):
        # Square to the face its rim may stand out of that: the face does not lie on the plate.
        if way == "square" or f"{item}.{place}" == fit.hole or not _guides(fit.hole, design):
            return None
        bar = "a bar of its size in the bush"
    said = place.replace("_", " ")
    said = said if said in ("bore", "seat") else f"bore '{said}'"
    along = "up the bar, from two sides" if way == "square" else "along the bar, to and fro"
    return Alignment(
        f"stands {joint.name} {item}",
        f"{said} of the {_title(item, design)} {way} to its {face}",
        spare_mm(fit) / long * BAR_MM,
        BAR_MM,
        f"the {face} down on a flat plate, {bar}; an indicator {along}",
        "run-out",
        "",
        _trued(face, kind, has_bush=f"{item}.{place}" != fit.hole),
        joint.at,
    )


def _trued(face: str, kind: str, *, has_bush: bool) -> str:
    """What is done to a face that is out; what is soldered on it is trued before that."""
    can_part = kind not in _FOR_GOOD
    first = (
        f"scrape or shim the {face}" if can_part else f"face the {face} again before it is fixed"
    )
    return f"{first}; a bush can be bored again true" if has_bush else first


def _walls(fit: FitFact, design: Design) -> list[tuple[str, str]]:
    """The part that has the bore, and what that is fixed in, outwards, with the place of each."""
    item, _, place = fit.hole.partition(".")
    found = [(item, place)]
    for other in design.facts.all(FitFact):
        joint = design.joints.get(other.subject)
        if joint is not None and joint.kind in _INSET:
            inner = other.shaft.partition(".")[0]
            if inner == found[-1][0]:
                outer, _, seat = other.hole.partition(".")
                found.append((outer, seat))
    return found


def _stands_on(item: str, design: Design) -> tuple[str, str] | None:
    """The face or step by which a part is fixed to what carries it, and the kind of that joint."""
    form = design.facts.about(FormFact, item)
    is_turned = form is not None and bool(form.stretches)
    for joint in design.joints.values():
        if joint.kind in _STANDS:
            for end in joint.ends:
                if end.item == item and end.place and (is_turned or end.place in _AXES):
                    return end.place, joint.kind
    return None


def _is_screwed(fits: list[FitFact], design: Design) -> bool:
    """Whether the bores are in parts that screws hold each by itself, so that one can be moved."""
    held = {_walls(fit, design)[-1][0] for fit in fits}
    counts = [design.facts.about(NumberOff, name) for name in held]
    if len(held) == 1 and not any(one is not None and one.count > 1 for one in counts):
        return False
    return any(
        joint.kind in _SCREWED and held & set(joint.items) for joint in design.joints.values()
    )


def _axis(item: str, place: str, design: Design) -> str:
    """Along which axis of its part a bore lies; that of a turned part stands on its ends."""
    form = design.facts.about(FormFact, item)
    if form is not None and form.stretches:
        return "z"
    feature = _feature(item, place, design)
    on = str(getattr(feature.entry, "on", "") or "top") if feature is not None else "top"
    return _AXES.get(on, "z")


def _length(hole: str, design: Design) -> float:
    """How long a bore bears, in mm; 0 where it is not known."""
    place = design.facts.about(PlaceFact, hole)
    long = (place.depth or place.thickness) if place is not None else None
    return float(long) if long else 0.0


def _guides(hole: str, design: Design) -> bool:
    """Whether a bore is long enough for a bar in it to tell how it stands."""
    place = design.facts.about(PlaceFact, hole)
    across = float(place.diameter) if place is not None and place.diameter else 0.0
    return _length(hole, design) >= _SHORTEST * across


def _slides(design: Design) -> Iterator[Alignment]:
    """A screw that moves a slide lies along it."""
    for joint in design.joints.values():
        if joint.kind != "leads":
            continue
        for way in design.joints.values():
            if _is_way(way, joint, design):
                yield Alignment(
                    f"along {joint.name}",
                    f"'{joint.name}' parallel to '{way.name}'",
                    _SLIDE_MM,
                    0.0,
                    "an indicator on the slide, run along the screw's outside in both planes",
                    "run-out",
                    "the handle turns as lightly at both ends of the travel as in the middle",
                    "slack the nut, run it up to it, and screw it down there",
                    joint.at,
                )
                break


def _is_way(way: Joint, screw: Joint, design: Design) -> bool:
    """Whether a joint guides what the nut of a screw moves."""
    if way.kind == "dovetailed":
        return bool(set(way.items) & set(screw.items))
    threads = [design.facts.about(ThreadFact, str(end)) for end in screw.ends]
    nuts = {one.item for one in threads if one is not None and one.is_internal}
    return way.kind == "slides" and bool(set(way.items) & nuts)


def _throws(design: Design) -> Iterator[Alignment]:
    """Pins that are set off the axis of their shaft."""
    for form in design.facts.all(FormFact):
        part = design.parts.get(form.subject)
        for one in form.located if part is not None else ():
            if one.kind != "throw" or part is None:
                continue
            fit = _fit_on(form.subject, one.name, design)
            spare = spare_mm(fit) if fit is not None else 0.02
            long = one.length or 0.0
            if spare:
                yield Alignment(
                    f"throw {form.subject} {one.name}",
                    f"{one.name.replace('_', ' ') or 'pin'} of the {part.title} parallel to its "
                    "journals",
                    spare,
                    long,
                    "the journals in vee blocks: an indicator along the pin, uppermost and at the "
                    "side",
                    "run-out",
                    "",
                    "bend it true between the webs; a pressed pin is pressed again",
                    part.at,
                )


def _fit_on(item: str, place: str, design: Design) -> FitFact | None:
    at = f"{item}.{place}"
    return next((one for one in design.facts.all(FitFact) if one.shaft == at), None)


def _grooves(design: Design) -> Iterator[Alignment]:
    """Pulleys of one belt stand in one plane."""
    for joint in design.joints.values():
        if joint.kind == "belted" and not getattr(joint.entry, "quarter_turn", False):
            yield Alignment(
                f"grooves {joint.name}",
                f"the grooves of '{joint.name}' in one plane",
                _GROOVES_MM,
                BAR_MM,
                "held across the faces of both pulleys, a light behind it",
                "",
                "it runs a minute at each step and does not climb",
                "move a pulley along its shaft",
                joint.at,
            )


def _feature(item: str, name: str, design: Design) -> Feature | None:
    owner = design.parts.get(item) or design.fabrications.get(item)
    features = owner.features if owner is not None else ()
    return next((one for one in features if one.name == name), None)


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return item.title if item is not None else name
