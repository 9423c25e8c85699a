"""Oil holes that stop at the bore which they are there for, instead of breaking into it."""

from __future__ import annotations

from collections.abc import Iterator
from math import sqrt

from binder.api import Design, Diagnostic, Feature
from binder_plugins.fits import joining_codes as codes
from binder_plugins.fits.figures import with_unit
from binder_solid.facts import FormFact, Located
from binder_solid.forms import Vector
from binder_solid.space import cross, dot, length, minus, plus

_BORES = ("reamed", "bored", "drilled")
# What a drill goes past the wall, so that its full width is open; common practice, no source.
_PAST_MM = 1.0
_HAIR_MM = 0.01


def check_oil_reach(design: Design) -> Iterator[Diagnostic]:
    """Every drilled hole called oil, of a told depth, that goes towards a bore of its part."""
    for one in design.features():
        if one.kind != "drilled" or "oil" not in one.name:
            continue
        form = design.facts.about(FormFact, one.owner)
        hole = _named(form, one.name)
        if form is None or hole is None or hole.depth is None:
            continue
        reach = min((far for bore in form.located if (far := _to_bore(hole, bore))), default=None)
        if reach is not None and hole.depth < reach + _PAST_MM - _HAIR_MM:
            yield _short(one, hole.depth, reach, design)


def _named(form: FormFact | None, name: str) -> Located | None:
    return next((one for one in form.located if one.name == name), None) if form else None


def _to_bore(hole: Located, bore: Located) -> float:
    """From the mouth of a hole to the wall of a bore that it would meet, in mm; 0 for none."""
    radius = (bore.diameter or 0.0) / 2
    if bore is hole or bore.kind not in _BORES or radius <= (hole.diameter or 0.0) / 2:
        return 0.0
    mouth, inwards, axis = hole.spots[0], _back(hole.frame.z), bore.frame.z
    across = cross(inwards, axis)
    if length(across) < 1 - _HAIR_MM:
        return 0.0
    to_axis = minus(bore.spots[0], mouth)
    aside, ahead = abs(dot(to_axis, across)), dot(to_axis, inwards)
    if aside > radius - _HAIR_MM or ahead <= radius:
        return 0.0
    return ahead - sqrt(radius**2 - aside**2)


def _back(way: Vector) -> Vector:
    return plus((0.0, 0.0, 0.0), way, -1.0)


def _short(one: Feature, depth: float, reach: float, design: Design) -> Diagnostic:
    wanted = with_unit(reach + _PAST_MM, design.units)
    return codes.OIL_HOLE_SHORT.at(
        one.at,
        f"'{one.name}' is {with_unit(depth, design.units)} deep, and the wall of its bore lies "
        f"{with_unit(reach, design.units)} below its mouth",
        help=f"drill it {wanted} deep, before the bore is finished",
    )
