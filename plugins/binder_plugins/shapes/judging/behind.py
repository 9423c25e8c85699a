"""Blind holes to findings: too little metal behind their floor, before a slot or the far face."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, Diagnostic
from binder_plugins.shapes import form_codes
from binder_plugins.shapes.judging.bores import Bore, Look, looks
from binder_solid.facts import Located

# The point of a 118° drill is so long in its own diameters, and the least metal before it, in mm;
# common practice, no source.
_POINT, _LEAST = 0.3, 0.5
# A centre hole with its pilot is so many pilots deep (ISO 6411 form A, ISO 866; from memory).
_CENTRE = 2.2
_SAME = 1e-6
_POINTED = ("drilled", "reamed", "centred")
_HOLLOWS = ("slotted", "pocketed")
Span = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Hollow:
    """What is cut out of a block, as a box: its name, and from where to where on each axis."""

    name: str
    spans: tuple[Span, Span, Span]


def check_behind(design: Design) -> Iterator[Diagnostic]:
    """Of each blind hole in a block the nearest thing behind its floor."""
    for look in looks(design):
        if not look.is_box:
            continue
        hollows = [hollow for one in look.form.located for hollow in _hollows(look, one)]
        said: set[str] = set()
        for bore in look.bores:
            if bore.feature.name in said or bore.located.kind not in _POINTED:
                continue
            for finding in _behind(look, bore, hollows):
                said.add(bore.feature.name)
                yield finding


def _hollows(look: Look, one: Located) -> Iterator[Hollow]:
    """Slots and pockets that lie square in the block."""
    if one.kind not in _HOLLOWS or one.is_dummy or (one.length is None and one.kind == "slotted"):
        return
    along = max(range(3), key=lambda n: abs(one.frame.x[n]))
    out = max(range(3), key=lambda n: abs(one.frame.z[n]))
    aside = next(n for n in range(3) if n not in (along, out))
    size = one.diameter or 0.0
    reach = {along: one.length or size, aside: size if one.kind == "slotted" else one.width or 0.0}
    for spot in one.spots:
        spans = [(0.0, whole) for whole in look.form.size]
        for axis, wide in reach.items():
            spans[axis] = (spot[axis] - wide / 2, spot[axis] + wide / 2)
        if one.depth is not None:
            inner = spot[out] - (1 if one.frame.z[out] > 0 else -1) * one.depth
            spans[out] = (min(spot[out], inner), max(spot[out], inner))
        yield Hollow(one.name, (spans[0], spans[1], spans[2]))


def _behind(look: Look, bore: Bore, hollows: list[Hollow]) -> Iterator[Diagnostic]:
    if bore.located.depth is None and bore.located.kind != "centred":
        return
    floor, start = (bore.start, bore.end) if bore.side > 0 else (bore.end, bore.start)
    deep = abs(start - floor)
    if bore.located.kind == "centred":
        deep = _CENTRE * 2 * bore.radius
    point = _POINT * 2 * bore.radius
    for hollow in hollows:
        if not _is_over(bore, hollow):
            continue
        low, high = hollow.spans[bore.axis]
        wall = start - high if bore.side > 0 else low - start
        is_blind = deep <= wall + _SAME or bore.located.kind == "centred"
        if wall > _SAME and is_blind and wall - deep - point < _LEAST - _SAME:
            yield _thin(look, bore, wall - deep - point, f"'{hollow.name}'")
            return
    wall = look.form.size[bore.axis]
    if deep < wall - _SAME and wall - deep - point < -_SAME:
        yield _thin(look, bore, wall - deep - point, "the far face")


def _is_over(bore: Bore, hollow: Hollow) -> bool:
    """Whether a hole looks at a hollow, when it is followed along its own axis."""
    sides = [span for axis, span in enumerate(hollow.spans) if axis != bore.axis]
    return all(
        low - bore.radius < place < high + bore.radius
        for place, (low, high) in zip(bore.middle, sides, strict=True)
    )


def _thin(look: Look, bore: Bore, left: float, behind: str) -> Diagnostic:
    metal = f"{left:.2f} mm of metal is" if left > _SAME else "no metal is"
    return form_codes.WALL_TOO_THIN.at(
        bore.feature.at,
        f"{metal} left between the point of '{bore.feature.name}' and {behind} on "
        f"'{look.part.name}'; {_LEAST:g} mm is the least",
        help=f"make it {_LEAST - left:.2f} mm shallower, or the metal so much deeper",
    )
