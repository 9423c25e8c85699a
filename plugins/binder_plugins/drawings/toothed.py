"""Teeth by convention: their pitch line as a centre line, and never cut in a section (ISO 2203)."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from binder_drafting import AxisLine, Chain, Outline, PitchCircle, View
from binder_solid.facts import FormFact, Located

_KINDS = ("gear", "sprocket")


def _teeth(fact: FormFact) -> Iterator[tuple[Located, float, float]]:
    """Teeth, and where along the axis they begin and end."""
    for one in fact.located:
        if one.kind in _KINDS and one.circle is not None and fact.stretches:
            rim = fact.stretches[0]
            yield one, rim.start, rim.end


def pitch_lines(fact: FormFact, name: str) -> Iterator[AxisLine | PitchCircle]:
    """The pitch circle from the end, its two lines from the side."""
    for one, start, end in _teeth(fact):
        radius = (one.circle or 0.0) / 2
        if name == "front":
            yield AxisLine((start, radius), (end, radius))
            yield AxisLine((start, -radius), (end, -radius))
        else:
            yield PitchCircle((0.0, 0.0), radius)


def with_teeth_uncut(view: View, fact: FormFact) -> View:
    """A section whose hatching stops at the roots, with the line of the roots."""
    for one, start, end in _teeth(fact):
        if one.face != "across" or not _is_outside(one):
            continue
        root = one.frame.origin[2] - (one.depth or 0.0)
        view = replace(
            view,
            edges=(*view.edges, Chain(((start, root), (end, root)), "visible")),
            outlines=tuple(_up_to(face, root) for face in view.outlines),
        )
    return view


def _is_outside(one: Located) -> bool:
    """Whether the teeth stand outwards: those of an internal gear lie within their pitch circle."""
    return one.frame.origin[2] * 2 - 2.5 * (one.depth or 0.0) <= (one.circle or 0.0)


def _up_to(face: Outline, root: float) -> Outline:
    return replace(face, points=tuple((u, min(v, root)) for u, v in face.points))
