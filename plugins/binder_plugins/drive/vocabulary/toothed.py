"""Gears, worms, racks, chains, ratchets: what may be written of each."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.api import Angle, Count, Flag, JointEntry, Length, Name, Number, OneOf

MOST_ENDS = 8
Teeth = Annotated[list[Count], Field(min_length=1, max_length=MOST_ENDS)]
Hand = Annotated[str, OneOf("a hand", "left", "right")]


class PitchEntry(JointEntry):
    """Teeth that meet: their size by `module` or `dp`, else as the parts have it."""

    module: Length | None = None
    dp: Number | None = None
    pressure_angle: Angle | None = None
    face: Length | None = None


class ToothedEntry(PitchEntry):
    """How many teeth each has, in order, else as the parts have them by their shape."""

    teeth: Teeth | None = None


class GearsEntry(ToothedEntry):
    """Spur or helical gears in a row, each meshing with the next.

    `internal` says that the last one has its teeth inside; `shift` are profile shifts in
    modules; `centres` is what the frame has, where it is written by itself.
    """

    helix: Angle | None = None
    internal: Flag = False
    shift: Annotated[list[Number], Field(min_length=1, max_length=MOST_ENDS)] | None = None
    centres: Length | None = None
    backlash: Length | None = None


class BevelsEntry(ToothedEntry):
    """Two bevel gears; their shafts stand at a right angle where nothing is said."""

    shafts_at: Angle | None = None


class WormEntry(PitchEntry):
    """A worm and its wheel: `teeth` are those of the wheel, `diameter` the worm's at pitch."""

    teeth: Count | None = None
    starts: Count | None = None
    diameter: Length | None = None
    hand: Hand | None = None
    holds: Flag = False
    centres: Length | None = None


class RackEntry(PitchEntry):
    """A pinion and its rack: `teeth` are those of the pinion."""

    teeth: Count | None = None


class SkewEntry(ToothedEntry):
    """Two helical gears on shafts that cross: `helix` of each, `hand` of the first."""

    helix: Annotated[list[Angle], Field(min_length=2, max_length=2)]
    hand: Hand | None = None


class OrbitEntry(ToothedEntry):
    """Sun, planet, ring and arm of a planetary train: `teeth` of the first three.

    `held` names the one of sun, ring and arm that stands still.
    """

    held: Name
    planets: Count | None = None


class ChainEntry(JointEntry):
    """A chain over wheels: `pitch` and teeth; `bead` is a chain of balls."""

    pitch: Length | None = None
    teeth: Teeth | None = None
    centres: Length | None = None
    links: Count | None = None
    bead: Flag = False


class RatchetEntry(JointEntry):
    """A ratchet wheel and its pawl; `depth` is that of the teeth."""

    teeth: Count | None = None
    depth: Length | None = None


class IndexEntry(JointEntry):
    """A pin wheel that moves a slotted wheel by one of its `slots` each turn."""

    slots: Count
    centres: Length | None = None
    pin: Length | None = None
