"""A shape to its body: envelope, faces with their frames, and steps along the axis."""

from __future__ import annotations

from dataclasses import dataclass

from binder_solid.facts import Datum, Located, Stretch, Told
from binder_solid.forms import Form, Frame, Vector

_LEFT = Frame(z=(-1.0, 0.0, 0.0), x=(0.0, -1.0, 0.0))
_RIGHT = Frame(z=(1.0, 0.0, 0.0), x=(0.0, 1.0, 0.0))
_FRONT = Frame(z=(0.0, -1.0, 0.0), x=(1.0, 0.0, 0.0))
_BACK = Frame(z=(0.0, 1.0, 0.0), x=(-1.0, 0.0, 0.0))
_TOP = Frame(z=(0.0, 0.0, 1.0), x=(1.0, 0.0, 0.0))
_UNDER = Frame(z=(0.0, 0.0, -1.0), x=(1.0, 0.0, 0.0))
FACES = {
    "left": _LEFT,
    "right": _RIGHT,
    "front": _FRONT,
    "back": _BACK,
    "top": _TOP,
    "underside": _UNDER,
}
# A turned part stands on its first face in the spec's words, and lies on its side when drawn.
_TURNED_FACES = {"left": "left", "underside": "left", "right": "right", "top": "right"}


@dataclass(frozen=True, slots=True)
class Body:
    """A shape before anything is cut in it; `least` and `most` are its corners in mm.

    `told` and `notes` are the sizes of the shape that its envelope does not tell. Bent sheet
    has a face for each leg in `faces`, the first one `top`, and is as thick as `metal` there.
    """

    shape: str
    form: Form
    least: Vector
    most: Vector
    stretches: tuple[Stretch, ...] = ()
    told: tuple[Told, ...] = ()
    notes: tuple[Located, ...] = ()
    faces: tuple[tuple[str, Frame], ...] = ()
    metal: float | None = None
    data: tuple[Datum, ...] = ()

    @property
    def is_turned(self) -> bool:
        """Whether it is round about x."""
        return bool(self.stretches)

    @property
    def size(self) -> Vector:
        """Along x, y and z."""
        x, y, z = (most - least for least, most in zip(self.least, self.most, strict=True))
        return (x, y, z)

    @property
    def middle(self) -> Vector:
        """The centre of the envelope."""
        x, y, z = ((most + least) / 2 for least, most in zip(self.least, self.most, strict=True))
        return (x, y, z)

    def face_named(self, name: str) -> str:
        """The face of a name, '' where it is none: a turned part has two."""
        if self.is_turned:
            return _TURNED_FACES.get(name, "")
        return name if name in FACES or name in dict(self.faces) else ""

    def frame_of(self, face: str) -> Frame:
        """The frame in the middle of a face."""
        legs = dict(self.faces)
        if face in legs:
            return legs[face]
        if face == "top" and legs:
            return legs["leg1"]
        frame = FACES[face]
        centre = list(self.middle)
        for axis, way in enumerate(frame.z):
            if way:
                centre[axis] = self.most[axis] if way > 0 else self.least[axis]
        return Frame((centre[0], centre[1], centre[2]), frame.z, frame.x)

    def through(self, frame: Frame) -> float:
        """The metal along a frame's z."""
        if self.metal is not None:
            return self.metal
        return sum(abs(way) * size for way, size in zip(frame.z, self.size, strict=True))

    def stretch(self, name: str) -> Stretch | None:
        """The step of a name; `outside` is the widest."""
        found = next((one for one in self.stretches if one.name and one.name == name), None)
        if found is None and name in ("outside", "middle") and self.stretches:
            return max(self.stretches, key=lambda one: one.across)
        return found


def cross(one: Vector, other: Vector) -> Vector:
    """The vector at right angles to two."""
    a, b, c = one
    d, e, f = other
    return (b * f - c * e, c * d - a * f, a * e - b * d)


def moved(frame: Frame, u: float, v: float, w: float = 0.0) -> Vector:
    """The point of a frame at u along its x, v along its y and w along its z."""
    y = cross(frame.z, frame.x)
    a, b, c = (
        origin + u * x + v * one + w * z
        for origin, x, one, z in zip(frame.origin, frame.x, y, frame.z, strict=True)
    )
    return (a, b, c)
