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
    joints = [one for one in design.joints.values() if _moves(one)]
    rank = {name: number for number, name in enumerate(_path(design))}
    joints.sort(key=lambda one: min((rank.get(end.item, len(rank)) for end in one.ends), default=0))
    return tuple(_moving(one, speeds, design) for one in joints)


def _moves(joint: Joint) -> bool:
    if joint.entry.fixed or joint.kind in _NO_MOTION:
        return False
    meeting = joint.entry.meeting
    return joint.kind in _RUNS or (meeting is not None and meeting.group == "drive")


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
    """The oil hole or cup of the joint, or of what its bush is fixed in; else its ends."""
    items = set(joint.items)
    if joint.kind == "runs_in":
        for other in design.joints.values():
            if other.kind in ("pressed", "retained") and joint.ends[-1].item in other.items:
                items |= set(other.items)
    for feature in design.features():
        if feature.owner in items and "oil" in feature.name:
            return _named(feature, design)
    return "wipe it on" if joint.kind not in _RUNS else "at the ends"


def _named(feature: Feature, design: Design) -> str:
    item = design.item(feature.owner)
    title = item.title if item is not None else feature.owner
    for joint in design.joints.values():
        for end in joint.ends:
            if joint.kind == "threaded" and str(end) == f"{feature.owner}.{feature.name}":
                cups = [design.item(one) for one in joint.items if one != feature.owner]
                return f"{cups[0].title if cups and cups[0] else 'cup'} on the {title}"
    return f"oil hole of the {title}"
