"""What can be cut or formed in a part: the fields that each family of features has."""

from __future__ import annotations

from typing import Annotated

from binder.api import (
    Angle,
    At,
    Count,
    FeatureEntry,
    Flag,
    Length,
    LengthOrThrough,
    Name,
    OneOf,
    Words,
)

Way = Annotated[str, OneOf("a direction", "along", "across")]

Style = Annotated[str, OneOf("a knurl", "straight", "diamond")]


class Placed(FeatureEntry):
    """A feature with its place: on which step or face, across which, and where along it.

    `off` is how many alike, `pattern` how they stand (`on 16 mm PCD`, `in a row at 8 mm`);
    `clock` is the angle round the axis from the top, for what lies across turned work.
    """

    on: Name | None = None
    across: Name | None = None
    at: At | None = None
    clock: Angle | None = None
    off: Count | None = None
    pattern: Words | None = None
    each_end: Flag = False


class Hole(Placed):
    """A hole: its depth is that of the full diameter, without the point of the drill.

    `angle` is the included angle of a countersink, `lean` how far a hole leans along the part.
    A taper bore is told at its mouth, and by what it `narrows_to` at its depth.
    """

    depth: LengthOrThrough | None = None
    counterbore: Length | None = None
    narrows_to: Length | None = None
    angle: Angle | None = None
    lean: Angle | None = None


class Screwed(Placed):
    """An outside thread."""

    length: Length | None = None


class Cut(Placed):
    """A groove, slot or flat; a slot runs along its face, or across it."""

    depth: LengthOrThrough | None = None
    length: Length | None = None
    runs: Way | None = None


class Keyway(Cut):
    """A keyway; `cutter` is the diameter of the Woodruff cutter that sinks a round seat."""

    cutter: Length | None = None


class Knurl(Placed):
    """A knurl, all over its step or over a length of it; diamond where nothing is said."""

    length: Length | None = None
    style: Style | None = None


class TeeSlot(Cut):
    """A T-slot: its neck is the size that opens it, `depth` goes to the floor of its head."""

    head: Length
    head_depth: Length


class Pocket(Placed):
    """A pocket: its length, width, depth, and the radius of its upright corners."""

    width: Length
    depth: LengthOrThrough
    corner: Length | None = None
    runs: Way | None = None


class Rebate(Placed):
    """A step milled off: how far in from `side`, and how deep below the face it is on."""

    side: Name
    depth: Length


class Bevel(Placed):
    """The edge between a face and a `side` taken off at an angle to the face."""

    side: Name
    angle: Angle | None = None


class Boss(Placed):
    """A round boss left standing, or put on: its diameter and height."""

    height: Length


class Edge(Placed):
    """A broken, chamfered or rounded edge."""

    angle: Angle | None = None


class Filed(Edge):
    """What is filed in words; `length` is how far along its part, about the middle told `at:`."""

    length: Length | None = None
