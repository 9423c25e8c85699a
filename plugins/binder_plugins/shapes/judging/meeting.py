"""Features that vanish in another: smaller and no deeper, in one place."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import permutations

from binder.api import Design, Diagnostic
from binder_plugins.shapes import form_codes
from binder_plugins.shapes.judging.bores import Bore, Look, looks
from binder_solid.facts import Located

_SAME = 1e-6
_WIDE = ("pocketed", "slotted")


def check_swallowed(design: Design) -> Iterator[Diagnostic]:
    """Each feature of which nothing is left once the other is cut."""
    for look in looks(design):
        gone = {inner.feature.name: outer for inner, outer in _pairs(look)}
        for inner, outer in gone.items():
            feature = next(one for one in look.part.features if one.name == inner)
            yield form_codes.FEATURES_OVERLAP.at(
                feature.at,
                f"nothing is left of '{inner}' on '{look.part.name}': '{outer}' takes it all",
                help="leave it out, or make it deeper",
            )


def _pairs(look: Look) -> Iterator[tuple[Bore, str]]:
    for inner, outer in permutations(look.bores, 2):
        if inner.feature is not outer.feature and _is_inside(inner, outer):
            yield inner, outer.feature.name
    for bore in look.bores:
        for other in look.form.located:
            if other.name != bore.feature.name and _is_in_pocket(look, bore, other):
                yield bore, other.name


def _is_inside(inner: Bore, outer: Bore) -> bool:
    """Written twice alike is for those to say who look at joints; a thread is not a hole."""
    if inner.axis != outer.axis or inner.located.is_thread or outer.located.kind == "countersunk":
        return False
    is_within = outer.start - _SAME <= inner.start and inner.end <= outer.end + _SAME
    room = outer.radius - inner.radius - inner.apart(outer)
    return is_within and room >= -_SAME and outer.radius > inner.radius + _SAME


def _is_in_pocket(look: Look, bore: Bore, other: Located) -> bool:
    if other.kind not in _WIDE or other.face != bore.located.face or not look.is_box:
        return False
    deep = other.depth
    if deep is None or bore.located.depth is None or bore.located.depth > deep + _SAME:
        return False
    size = other.diameter or 0.0
    long, wide = (size, other.width or 0.0) if other.kind == "pocketed" else (other.length, size)
    if long is None or other.kind == "slotted":
        return False
    spot = _in_frame(bore, other)
    return abs(spot[0]) + bore.radius <= long / 2 and abs(spot[1]) + bore.radius <= wide / 2


def _in_frame(bore: Bore, other: Located) -> tuple[float, float]:
    places = [place for number, place in enumerate(other.spots[0]) if number != bore.axis]
    u, v = (one - place for one, place in zip(bore.middle, places, strict=True))
    first = next(number for number in range(3) if number != bore.axis)
    return (u, v) if abs(other.frame.x[first]) > 0.5 else (v, u)
