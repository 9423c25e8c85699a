"""Wheels that run loose on a pin between two plates, to the finding that they wander along it."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Design,
    Diagnostic,
    FitFact,
    Joint,
    JointFact,
    PlaceFact,
    ShaftFact,
    exact,
    shown_length,
)
from binder_plugins.arrangement import codes
from binder_solid.facts import FormFact
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, length, minus, placed, plus
from binder_solid.stands_at import corners_of

_TURNS = ("runs_in", "swivels")
_MOST_MM = 1.0
"""Side play of a sheave or wheel on its pin beyond which it runs askew: common practice."""
_NEAR = 1e-3
_COAXIAL = 0.5
Span = tuple[float, float]


def wandering(design: Design) -> Iterator[Diagnostic]:
    """Wheels with more side play between what stands beside them than a millimetre."""
    for joint in design.joints.values():
        fit = design.facts.about(FitFact, joint.name)
        if joint.kind not in _TURNS or fit is None or not _is_loose(fit, joint, design):
            continue
        pin, wheel = _item(fit.shaft), _item(fit.hole)
        for rod, disc in _pairs(pin, wheel, design):
            play = _play(rod, disc, fit, design)
            if play is not None and play > _MOST_MM + _NEAR:
                yield _found(joint, disc, rod, play, design)
                break


def _item(place: str) -> str:
    return place.partition(".")[0]


def _is_loose(fit: FitFact, joint: Joint, design: Design) -> bool:
    """Whether the wheel has a bore right through, and no other joint that fixes it to a thing."""
    bore = design.facts.about(PlaceFact, fit.hole)
    wheel = _item(fit.hole)
    others = (one for one in design.joints.values() if wheel in one.items and one is not joint)
    facts = (design.facts.about(JointFact, one.name) for one in others)
    is_fixed = any(one is not None and one.group != "drive" for one in facts)
    return bore is not None and bore.is_through and not is_fixed


def _pairs(pin: str, wheel: str, design: Design) -> Iterator[tuple[PlacedFact, PlacedFact]]:
    """Each wheel with the pin that it stands on."""
    stood = design.facts.all(PlacedFact)
    for disc in (one for one in stood if one.item == wheel):
        low, high = disc.corners
        a, b, c = ((x + y) / 2 for x, y in zip(low, high, strict=True))
        middle = placed((a, b, c), disc.frame)
        for rod in (one for one in stood if one.item == pin):
            way = minus(middle, rod.frame.origin)
            if length(plus(way, rod.frame.x, -dot(way, rod.frame.x))) < _COAXIAL:
                yield rod, disc


def _play(rod: PlacedFact, disc: PlacedFact, fit: FitFact, design: Design) -> float | None:
    """What the wheel can move in mm, None where nothing stands on one side of it."""
    low, high = _along(disc, rod)
    spans = [*_shoulders(rod, fit, design)]
    spans += [_along(one, rod) for one in _beside(rod, disc, design)]
    left = max((b for _, b in spans if b <= low + _NEAR), default=None)
    right = min((a for a, _ in spans if a >= high - _NEAR), default=None)
    return None if left is None or right is None else (low - left) + (right - high)


def _along(one: PlacedFact, rod: PlacedFact) -> Span:
    """From where to where a copy reaches along the axis of the pin, in mm."""
    far = [dot(minus(corner, rod.frame.origin), rod.frame.x) for corner in corners_of(one)]
    return min(far), max(far)


def _shoulders(rod: PlacedFact, fit: FitFact, design: Design) -> Iterator[Span]:
    """The steps of the pin that do not go through the bore."""
    form = design.facts.about(FormFact, rod.item)
    for step in form.stretches if form is not None else ():
        if max(step.across, step.end_across) > float(fit.nominal) + _NEAR:
            yield step.start, step.end


def _beside(rod: PlacedFact, disc: PlacedFact, design: Design) -> Iterator[PlacedFact]:
    """The copies of what is joined to the pin, or stands in a row along it."""
    names = {
        end.item
        for joint in design.joints.values()
        if rod.item in joint.items and not _is_drive(joint)
        for end in joint.ends
    }
    row = design.facts.about(ShaftFact, rod.item)
    names |= {piece.item for piece in row.pieces} if row is not None else set()
    for whole in design.fabrications.values():
        if whole.name in names:
            names |= {piece.item for piece in whole.pieces if _has_hole(piece.item, design)}
    for one in design.facts.all(PlacedFact):
        if one.item in names - {rod.item} and one.subject != disc.subject:
            yield one


def _is_drive(joint: Joint) -> bool:
    meeting = joint.entry.meeting
    return meeting is not None and meeting.group == "drive"


def _has_hole(item: str, design: Design) -> bool:
    """Whether a piece has a hole that a pin could go through."""
    part = design.parts.get(item)
    return part is not None and any(one.kind in ("drilled", "reamed") for one in part.features)


def _found(
    joint: Joint, disc: PlacedFact, rod: PlacedFact, play: float, design: Design
) -> Diagnostic:
    shown = shown_length(exact(round(play, 1)), design.units)
    return codes.WHEEL_WANDERS.at(
        joint.at,
        f"'{disc.subject}' can wander {shown} along '{rod.subject}': nothing stands beside it",
        help="a spacer on either side of it, a boss on it, or shoulders on the pin, to leave "
        "0.1 to 0.3 mm",
    )
