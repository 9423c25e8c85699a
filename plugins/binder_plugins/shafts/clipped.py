"""A pin that two clips of its own keep in: what play the grooves leave to what lies between."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

from binder.api import HardwareFact, Located, exact
from binder_solid.facts import FormFact
from binder_trade.hardware import NotListed, circlip_shaft, e_clip

if TYPE_CHECKING:
    from binder.api import Design, Piece, ShaftFact

_SAME = 1e-6


@dataclass(frozen=True, slots=True)
class Clips:
    """Two clips of a shaft: how far apart the outer walls of their grooves lie, and how thick."""

    walls: float
    thick: tuple[float, float]


def clips_of(fact: ShaftFact, design: Design) -> Clips | None:
    """The clips on the shaft itself that stop it both ways, in mm; None where no two hold it."""
    if fact.located not in (Located.OUTSIDE, Located.ONE) or fact.span is None:
        return None
    stops = [fact.pieces[n] for n in (fact.stops[0], fact.stops[-1])]
    form = design.facts.about(FormFact, fact.subject)
    if form is None or any(one.item != fact.subject for one in stops):
        return None
    found = [one for one in form.located if one.kind == "grooved" and one.face == "across"
             and one.name in {stop.place for stop in stops}]  # fmt: skip
    places = sorted((spot[0], one) for one in found for spot in one.spots)
    if len(places) != 2:
        return None
    (left, first), (right, last) = places
    rings = [_ring(fact.subject, one.name, _across(form, x), design) for x, one in places]
    thick = [one.thick for one in rings if one is not None]
    if len(thick) < len(rings):
        return None
    walls = right - left + ((first.diameter or 0.0) + (last.diameter or 0.0)) / 2
    return Clips(walls, (thick[0], thick[-1]))


def clipped_play(fact: ShaftFact, design: Design) -> Fraction | None:
    """The end float in mm between two clips on the shaft itself; None where no two hold it.

    Under load each clip lies on the outer wall of its groove, so its inner face stands one
    thickness inside of that wall.
    """
    clips = clips_of(fact, design)
    if clips is None or fact.span is None:
        return None
    return exact(round(clips.walls - sum(clips.thick), 3)) - fact.span


def _across(form: FormFact, x: float) -> float:
    """The diameter of the step at a place, in mm."""
    return next(
        (one.across for one in form.stretches if one.start - _SAME <= x <= one.end + _SAME), 0.0
    )


@dataclass(frozen=True, slots=True)
class Ring:
    """A clip on a shaft: how thick it is, and how wide over its lugs when fitted, both in mm."""

    thick: float
    outside: float


def ring_of(piece: Piece, fact: ShaftFact, design: Design) -> Ring | None:
    """The clip that a piece of a row stands for; None where it is none, or of no table."""
    form = design.facts.about(FormFact, fact.subject)
    if piece.item != fact.subject or form is None:
        return None
    grooves = (one for one in form.located if one.name == piece.place and one.kind == "grooved")
    across = next((_across(form, spot[0]) for one in grooves for spot in one.spots), 0.0)
    return _ring(fact.subject, piece.place, across, design)


def _ring(part: str, place: str, across: float, design: Design) -> Ring | None:
    """The clip in a groove; None where no clip of a table goes in it."""
    for joint in design.joints.values():
        if joint.kind != "clipped" or f"{part}.{place}" not in [str(end) for end in joint.ends]:
            continue
        said = " ".join(
            one.what for one in design.facts.all(HardwareFact) if one.joint == joint.name
        ).lower()
        try:
            if "e-clip" in said:
                clip = e_clip(across)
                return Ring(clip.thickness_mm, clip.outside_mm)
            ring = circlip_shaft(across)
        except NotListed:
            return None
        return Ring(ring.thickness_mm, ring.clear_mm) if "clip" in said else None
    return None
