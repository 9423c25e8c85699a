"""Holes to findings: out of the metal, or so near an edge or neighbour that the wall is thin."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import combinations

from binder.api import Design, Diagnostic, exact, shown_length
from binder_plugins.shapes import form_codes
from binder_plugins.shapes.judging.bores import Bore, Look, looks
from binder_solid.facts import Stretch

# Common practice, no source: 0.8 mm of metal, and half the hole to an edge or neighbour; from
# a large bore no more than this, which a shop would rather not bore either.
_LEAST = 0.8
_SHARE = 0.5
_ENOUGH = 2.0
# A wall that no tool leaves standing.
_PAPER = 0.1
_SAME = 1e-6
_OPEN = ("counterbored", "countersunk", "spotfaced", "recessed")


def check_walls(design: Design) -> Iterator[Diagnostic]:
    """Of each hole its worst place alone."""
    for look in looks(design):
        for bore in _first_of_each(look):
            if look.is_box:
                yield from _in_box(look, bore)
            elif look.form.stretches and bore.axis == 0:
                yield from _in_round(look, bore)
        yield from _neighbours(look)


def _first_of_each(look: Look) -> Iterator[Bore]:
    """The one nearest to an edge of those alike."""
    worst: dict[str, Bore] = {}
    for bore in look.bores:
        name = bore.feature.name
        if name not in worst or _to_edge(look, bore) < _to_edge(look, worst[name]):
            worst[name] = bore
    yield from worst.values()


def _to_edge(look: Look, bore: Bore) -> float:
    """From the middle of a hole to the nearest edge of the face that it is cut in."""
    if look.form.stretches:
        return _radius_at(look, bore) - math.hypot(*bore.middle)
    sides = [size for number, size in enumerate(look.form.size) if number != bore.axis]
    return min(min(place, side - place) for place, side in zip(bore.middle, sides, strict=True))


def _radius_at(look: Look, bore: Bore) -> float:
    # Just inside the metal: at a shoulder it is the larger step that the hole is cut in.
    x = bore.end - 2 * _SAME if bore.side > 0 else bore.start + 2 * _SAME
    inside = [one for one in look.form.stretches if one.start - _SAME <= x <= one.end + _SAME]
    return min((_inner(one) for one in inside), default=look.form.size[2] / 2)


def _inner(one: Stretch) -> float:
    return min(one.across, one.end_across) / 2


def _least(bore: Bore) -> float:
    return least_wall(2 * bore.radius)


def _at_edge(look: Look, bore: Bore) -> float:
    """What must stand to the edge: what a fastener wants more than bare metal is left to it."""
    return _LEAST if bore.feature.name in look.held else _least(bore)


def least_wall(across: float) -> float:
    """The least metal in mm beside a hole of this diameter in mm; common practice, no source."""
    return max(_LEAST, min(_SHARE * across, _ENOUGH))


def _in_box(look: Look, bore: Bore) -> Iterator[Diagnostic]:
    edge = _to_edge(look, bore)
    if edge < bore.radius + _SAME and (edge < -_SAME or bore.located.kind not in _OPEN):
        yield _out(look, bore, edge)
    elif bore.radius + _SAME <= edge < bore.radius + _at_edge(look, bore) - _SAME:
        yield _thin(look, bore, edge - bore.radius, "the edge")


def _in_round(look: Look, bore: Bore) -> Iterator[Diagnostic]:
    off = math.hypot(*bore.middle)
    if off > _SAME:
        yield from _in_box(look, bore)
        return
    for step in look.form.stretches:
        is_own = step.name and step.name == str(getattr(bore.feature.entry, "on", None) or "")
        if is_own and not bore.feature.implied_by:
            continue  # What is written larger than its own step was found when it was read.
        passes = bore.start < step.end - _SAME and step.start + _SAME < bore.end
        wall = _inner(step) - bore.radius
        if passes and wall <= _PAPER:
            left = f"{wall:.2f} mm" if wall > _SAME else "nothing"
            yield form_codes.HOLE_OUT_OF_METAL.at(
                bore.feature.at,
                f"'{bore.feature.name}' leaves {left} of the step '{step.name}' of "
                f"'{look.part.name}'",
                help="a smaller or shallower hole, or a larger step",
            )
            return


def _out(look: Look, bore: Bore, edge: float) -> Diagnostic:
    past = shown_length(exact(round(max(0.0, bore.radius - edge), 3)))
    where = "its middle lies outside" if edge < -_SAME else f"its rim is {past} past the edge"
    if abs(bore.radius - edge) <= _SAME:
        where = "its rim touches the edge"
    return form_codes.HOLE_OUT_OF_METAL.at(
        bore.feature.at,
        f"'{bore.feature.name}' comes out of '{look.part.name}': {where}",
        help=f"move it {shown_length(exact(round(bore.radius - edge + _least(bore), 3)))} in, "
        "or make it smaller",
    )


def _thin(look: Look, bore: Bore, left: float, beside: str) -> Diagnostic:
    least = _least(bore)
    return form_codes.WALL_TOO_THIN.at(
        bore.feature.at,
        f"{left:.2f} mm of metal is left between '{bore.feature.name}' and {beside} on "
        f"'{look.part.name}'; {least:.2f} mm is the least",
        help=f"move it {least - left:.2f} mm away, or make it smaller",
    )


def _neighbours(look: Look) -> Iterator[Diagnostic]:
    """Two features whose holes stand side by side; each pair of features is said once."""
    said: set[frozenset[str]] = set()
    for one, other in combinations(look.bores, 2):
        names = frozenset((one.feature.name, other.feature.name))
        is_left = names <= look.held or names in said
        if is_left or not one.meets(other) or one.apart(other) < _SAME:
            continue
        left = one.apart(other) - one.radius - other.radius
        small = min(one, other, key=lambda bore: bore.radius)
        if left <= _SAME:
            said.add(names)
            yield _runs_into(look, one, other, small)
        elif left < _least(small) - _SAME:
            said.add(names)
            mate = other if small is one else one
            yield _thin(look, small, left, f"'{mate.feature.name}'")


def _runs_into(look: Look, one: Bore, other: Bore, small: Bore) -> Diagnostic:
    mate = other if small is one else one
    need = one.radius + other.radius + _least(small)
    return form_codes.FEATURES_OVERLAP.at(
        small.feature.at,
        f"'{small.feature.name}' runs into '{mate.feature.name}' on '{look.part.name}'",
        help=f"set them {need:.2f} mm apart, or on one axis",
    )
