"""A task: one feature that is to be cut, with its sizes, its place and the body it is cut in."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import Feature, Size
from binder_plugins.shapes.forming.body import Body, cross, moved
from binder_plugins.shapes.forming.whereabouts import Whereabouts
from binder_solid.forms import Frame, Vector

CLEAR = 1.0
AXIS_X: Vector = (1.0, 0.0, 0.0)
AXIS = Frame(z=AXIS_X, x=(0.0, 0.0, 1.0))


# The angles that a cutter can have, or that can be set up: of a countersink the whole angle,
# of an edge that to its face, of a dovetail that at its corner.
_ANGLES: dict[tuple[str, str], tuple[float, float]] = {
    ("countersunk", "angle"): (30.0, 150.0),
    ("chamfered", "angle"): (5.0, 80.0),
    ("bevelled", "angle"): (5.0, 80.0),
    ("dovetailed", "angle"): (30.0, 80.0),
}
_LEANS = (-60.0, 60.0)
_TURNS = (-360.0, 360.0)


def angles_of(kind: str, name: str) -> tuple[float, float]:
    """The least and the most that an angle of a feature can be."""
    return _ANGLES.get((kind, name), _LEANS if name == "lean" else _TURNS)


@dataclass(frozen=True, slots=True)
class Task:
    """A feature to be cut: its size and depth in mm, where it is, and on which body.

    A groove that `is_round` has a bottom half round, as wide as the groove.
    """

    feature: Feature
    size: float
    depth: float | None
    length: float | None
    place: Whereabouts
    body: Body
    is_round: bool = False

    def mm(self, name: str, otherwise: float = 0.0) -> float:
        """A further size of the feature, in mm."""
        value = getattr(self.feature.entry, name, None)
        return value.mm if isinstance(value, Size) else otherwise

    def degrees(self, name: str, otherwise: float = 0.0) -> float:
        """An angle of the feature; one that no cutter has is brought to the nearest that has."""
        value = getattr(self.feature.entry, name, None)
        if not isinstance(value, Size):
            return otherwise
        least, most = angles_of(self.feature.kind, name)
        return min(max(float(value.exact), least), most)

    def word(self, name: str) -> str:
        """A word of the feature, '' where it is not said."""
        return str(getattr(self.feature.entry, name, None) or "")


def inwards(frame: Frame, above: float = 0.0) -> Frame:
    """The frame turned to point into the metal, started so far above the surface."""
    a, b, c = frame.z
    return Frame(moved(frame, 0.0, 0.0, above), (-a, -b, -c), frame.x)


def run_of(task: Task, frame: Frame) -> Frame:
    """The frame with x along the run of a slot: along its face, or across it."""
    if task.word("runs") != "across":
        return frame
    return Frame(frame.origin, frame.z, cross(frame.z, frame.x))


def section_of(frame: Frame, along: float) -> Frame:
    """A frame square to a run: its x lies across the run, its y points out of the metal."""
    return Frame(moved(frame, along, 0.0), frame.x, cross(frame.z, frame.x))


def size_of(feature: Feature) -> Size | None:
    """The size that opens a feature, None where it is a thread or words."""
    value = getattr(feature.entry, feature.kind, None)
    return value if isinstance(value, Size) else None


def depth_of(feature: Feature) -> float | None:
    """How deep, None where it goes through."""
    depth = getattr(feature.entry, "depth", None)
    return depth.mm if isinstance(depth, Size) else None


def length_of(feature: Feature) -> float | None:
    """How long a slot or flat is, None where its step or face decides."""
    length = getattr(feature.entry, "length", None)
    return length.mm if isinstance(length, Size) else None
