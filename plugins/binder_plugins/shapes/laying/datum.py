"""The places of holes to the datum that their drawing tells them from."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator

from binder_plugins.shapes.laying.seen import Face
from binder_solid.facts import Located
from binder_solid.flats import Datum, FlatHole, PitchCircle
from binder_solid.views import axes_of

_SAME = 1e-4
_AXES = "xyz"


def datum_of(
    face: Face,
    located: Iterable[Located],
    holes: tuple[FlatHole, ...],
    circles: tuple[PitchCircle, ...],
) -> Datum:
    """The hole in the middle of a pitch circle or of a round face; else a corner."""
    middles = [circle.centre for circle in circles]
    if face.outline is not None:
        middles.append((-face.corner[0], -face.corner[1]))
    for middle in middles:
        if any(math.dist(hole.at, middle) < _SAME for hole in holes):
            return Datum(middle, "hole in the middle")
    if face.outline is not None:
        return Datum(middles[-1], "middle of the face")
    return _corner(face, located)


def _corner(face: Face, located: Iterable[Located]) -> Datum:
    """The corner between the two edges from which most places are told."""
    told = list(_edges(face, located))
    is_right = told.count("right") > told.count("left")
    is_upper = told.count("upper") > told.count("lower")
    at = (face.size[0] if is_right else 0.0, face.size[1] if is_upper else 0.0)
    words = f"{'upper' if is_upper else 'lower'} {'right' if is_right else 'left'} corner"
    return Datum(at, words, (-1 if is_right else 1, -1 if is_upper else 1))


def _edges(face: Face, located: Iterable[Located]) -> Iterator[str]:
    for told in (told for one in located for told in one.told):
        axis = _AXES.index(told.along)
        for n, (way, names) in enumerate(
            zip(axes_of(face.name), (("left", "right"), ("lower", "upper")), strict=True)
        ):
            start = told.start * way[axis] - face.corner[n]
            if abs(way[axis]) > 0.5 and abs(start) < _SAME:
                yield names[0]
            elif abs(way[axis]) > 0.5 and abs(start - face.size[n]) < _SAME:
                yield names[1]
