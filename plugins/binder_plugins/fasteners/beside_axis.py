"""Holes round the axis of turned work to the metal that is there, so far out."""

from __future__ import annotations

import math
from dataclasses import replace
from fractions import Fraction

from binder.api import PlaceFact, exact, metal_at
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.recesses import recess_in
from binder_plugins.fasteners.room_beside import laid
from binder_plugins.fasteners.seen import Seen
from binder_trade.fastening import Layout


def beside_axis(seen: Seen) -> Seen:
    """The joint with each half as thick as its flange is where the holes stand.

    Holes on a circle enter a step along the axis: nobody drills a pitch circle from the side.
    """
    if seen.pattern is not None and seen.pattern.kind == "circle":
        seen = replace(seen, halves=tuple(replace(one, is_axial=True) for one in seen.halves))
    radius = radius_of(seen)
    if radius is None:
        return seen
    return replace(seen, halves=tuple(_at_radius(half, radius, seen) for half in seen.halves))


def radius_of(seen: Seen) -> Fraction | None:
    """How far from the middle of their face the nearest holes stand, None for one in the middle."""
    layout = laid(seen)
    if not isinstance(layout, Layout):
        return None
    radius = exact(round(min(math.hypot(x, y) for x, y in layout.places), 6))
    return radius if radius > 0 else None


def _at_radius(half: Half, radius: Fraction, seen: Seen) -> Half:
    face = face_of_holes(half, seen) if not half.hole or not half.hole.pattern else None
    if face is None or half.is_radial or not face.stack:
        return half
    metal = metal_at(radius, face.stack)
    if metal is None:
        return half
    recess = recess_in(half.end, face, seen.design, metal, radius) if half.recess else Fraction(0)
    filled = min(half.filled, float(recess))
    thick = float(metal * half.plates)
    return replace(half, thick=thick, recess=float(recess), filled=filled)


def face_of_holes(half: Half, seen: Seen) -> PlaceFact | None:
    """What the holes are drilled into."""
    if half.hole is None:
        return half.place
    return seen.design.facts.about(PlaceFact, f"{half.end.item}.{half.hole.on or 'top'}")
