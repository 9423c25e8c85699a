"""Bores to what they must be in line with, or square or parallel to.

The clearance of a joint is all that it bears; common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Design,
    Feature,
    FitFact,
    Joint,
    NumberOff,
    PlaceFact,
    Role,
    ShaftFact,
)
from binder_plugins.inspection.trueness import BAR_MM, Alignment, spare_mm, title_of
from binder_solid.facts import FormFact

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


def in_line(design: Design) -> Iterator[Alignment]:
    """Two bearings or more on one shaft: half of the tighter clearance between their axes."""
    for shaft in design.facts.all(ShaftFact):
        pieces = [piece for piece in shaft.pieces if piece.role is Role.BEARING]
        fits = [fit for one in pieces if (fit := design.facts.about(FitFact, one.joint))]
        spare = min((spare_mm(fit) for fit in fits), default=0.0)
        if len(pieces) < 2 or not spare:
            continue
        joint, title = design.joints[pieces[0].joint], title_of(shaft.subject, design)
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


def standing(design: Design) -> Iterator[Alignment]:
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
        f"{said} of the {title_of(item, design)} {way} to its {face}",
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


def _feature(item: str, name: str, design: Design) -> Feature | None:
    owner = design.parts.get(item) or design.fabrications.get(item)
    features = owner.features if owner is not None else ()
    return next((one for one in features if one.name == name), None)
