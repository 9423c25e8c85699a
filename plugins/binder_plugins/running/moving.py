"""The moving joints of a design along the path of motion, with speed, material and way in."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from binder.api import Design, Feature, FitFact, Joint, MaterialFact, TrainFact, TurningFact

_RUNS = (
    "runs_in",
    "swivels",
    "hinged",
    "slides",
    "dovetailed",
    "leads",
)
_HOLES = ("drilled", "reamed", "bored", "tapped", "slotted")
_KEEPERS = ("clipped", "pinned", "screwed", "bolted", "riveted", "clamped")
_NO_MOTION = ("turns", "works", "steadies", "prototype")


@dataclass(frozen=True, slots=True)
class Moving:
    """A joint that moves: its fastest turning in r/min and rubbing in m/s, None if not told."""

    joint: Joint
    phrase: str
    rpm: float | None
    rubbing: float | None
    materials: tuple[MaterialFact, ...]
    words: str
    way_in: str


def moving(design: Design) -> tuple[Moving, ...]:
    """All of them: outwards from what drives the model, then the others as they are written."""
    speeds = _speeds(design)
    joints = [one for one in design.joints.values() if _moves(one) and not _is_kept(one, design)]
    rank = {name: number for number, name in enumerate(_path(design))}
    joints.sort(key=lambda one: min((rank.get(end.item, len(rank)) for end in one.ends), default=0))
    return tuple(_moving(one, speeds, design) for one in joints)


def _moves(joint: Joint) -> bool:
    if joint.entry.fixed or joint.kind in _NO_MOTION:
        return False
    meeting = joint.entry.meeting
    return by_its_kind(joint) or (meeting is not None and meeting.group == "drive")


def by_its_kind(joint: Joint) -> bool:
    """Whether one of its kind runs or slides; a fixed or kept one of that kind does not."""
    return joint.kind in _RUNS


def _is_kept(joint: Joint, design: Design) -> bool:
    """A pin that slides in where clips, pins or screws keep it moves no more."""
    return joint.kind == "slides" and any(
        one.kind in _KEEPERS and set(joint.items) <= set(one.items)
        for one in design.joints_at(joint.items[0])
    )


def _path(design: Design) -> Iterator[str]:
    """The items of each body, outwards from the mover."""
    train = design.facts.about(TrainFact, "")
    for body in train.order if train is not None else ():
        fact = design.facts.about(TurningFact, body)
        yield from fact.items if fact is not None else ()


def _speeds(design: Design) -> Mapping[str, float]:
    """The fastest turning of each item in r/min."""
    found: dict[str, float] = {}
    for fact in design.facts.all(TurningFact):
        known = [abs(one) for one in fact.speeds if one is not None]
        if known:
            found.update(dict.fromkeys(fact.items, max(known)))
    return found


def _moving(joint: Joint, speeds: Mapping[str, float], design: Design) -> Moving:
    known = [speeds.get(item, 0.0) for item in joint.items]
    rpm = max(known) if any(known) else None
    fit = design.facts.about(FitFact, joint.name)
    rubbing = None
    if rpm is not None and fit is not None:
        rubbing = math.pi * float(fit.nominal) / 1000 * rpm / 60
    facts = (design.facts.about(MaterialFact, item) for item in joint.items)
    duty = getattr(joint.entry, "duty", None) or ""
    return Moving(
        joint,
        f"{_title(joint, 0, design)} {_says(joint)} {_title(joint, -1, design)}",
        rpm,
        rubbing,
        tuple(one for one in facts if one is not None),
        f"{duty} {joint.entry.note or ''}".lower(),
        _way_in(joint, design),
    )


def _title(joint: Joint, end: int, design: Design) -> str:
    item = design.item(joint.ends[end].item)
    return item.title if item is not None else joint.ends[end].item


def _says(joint: Joint) -> str:
    return joint.entry.meeting.says if joint.entry.meeting is not None else "moves on"


def _way_in(joint: Joint, design: Design) -> str:
    """The outermost of the oil holes through every wall of the joint; else its ends."""
    ways = [_hole_in(one, design) for one in walls_of(joint, design)]
    shaft = design.facts.about(FitFact, joint.name)
    inside = _hole_in(shaft.shaft.partition(".")[0], design) if shaft is not None else None
    if ways and ways[-1] is not None and None not in ways:
        return _named(ways[-1], design)
    if inside is not None:
        return _named(inside, design)
    return "wipe it on" if joint.kind not in _RUNS else "at the ends"


def walls_of(joint: Joint, design: Design) -> tuple[str, ...]:
    """What has the bore, and what it is fixed in, outwards."""
    fit = design.facts.about(FitFact, joint.name)
    if fit is None:
        return joint.items[-1:]
    walls = [fit.hole.partition(".")[0]]
    for made in design.joints_at(walls[0]):
        other = design.facts.about(FitFact, made.name)
        if other is not None and made.kind in ("pressed", "retained"):
            outer, inner = (end.partition(".")[0] for end in (other.hole, other.shaft))
            if inner == walls[0]:
                walls.append(outer)
    return tuple(dict.fromkeys(walls))


def _hole_in(item: str, design: Design) -> Feature | None:
    """Its oil hole; a groove carries oil, and lets none in."""
    owner = design.parts.get(item) or design.fabrications.get(item)
    features = owner.features if owner is not None else ()
    return next((one for one in features if "oil" in one.name and one.kind in _HOLES), None)


def _named(feature: Feature, design: Design) -> str:
    item = design.item(feature.owner)
    title = item.title if item is not None else feature.owner
    for joint in design.joints_at(feature.owner):
        for end in joint.ends:
            if joint.kind == "threaded" and str(end) == f"{feature.owner}.{feature.name}":
                cups = [design.item(one) for one in joint.items if one != feature.owner]
                return f"{cups[0].title if cups and cups[0] else 'cup'} on the {title}"
    return f"oil hole of the {title}"
