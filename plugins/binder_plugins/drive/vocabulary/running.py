"""Belts, friction wheels, cranks, cams and drums: what may be written of each."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.api import (
    Angle,
    Count,
    Flag,
    Force,
    JointEntry,
    Length,
    Mass,
    Model,
    Name,
    Number,
    OneOf,
    shown_length,
)

MOST_STEPS = 8
BeltKind = Annotated[str, OneOf("a belt", "round", "flat", "vee", "toothed")]
Law = Annotated[
    str,
    OneOf("a law of motion", "uniform", "parabolic", "harmonic", "cycloidal", "polynomial"),
]
Follower = Annotated[str, OneOf("a follower", "roller", "flat", "pointed")]
Pair = Annotated[list[Length], Field(min_length=2, max_length=2)]


class BeltEntry(JointEntry):
    """A belt over pulleys, each by its running diameter, at the middle of the belt.

    A plain belt has `diameters` in the order of the pulleys; `steps` are pairs of them, of
    the driving pulley and the driven. With `ratios` and the `smallest` diameter the steps
    are worked out so that one belt serves all. `section` is the diameter of a round belt, the
    thickness of a flat one, the top width of a vee, the pitch of a toothed one (with
    `teeth`). `pull` is the tension at rest, `friction` that of belt on pulley.
    """

    belt: BeltKind | None = None
    section: Length | None = None
    width: Length | None = None
    diameters: Annotated[list[Length], Field(min_length=2, max_length=8)] | None = None
    steps: Annotated[list[Pair], Field(min_length=1, max_length=MOST_STEPS)] | None = None
    ratios: Annotated[list[Number], Field(min_length=2, max_length=MOST_STEPS)] | None = None
    smallest: Length | None = None
    teeth: Annotated[list[Count], Field(min_length=2, max_length=8)] | None = None
    centres: Length | None = None
    crossed: Flag = False
    quarter_turn: Flag = False
    pull: Force | None = None
    friction: Number | None = None
    slip: Number | None = None
    groove_angle: Angle | None = None


class FrictionEntry(JointEntry):
    """A wheel that drives another by friction: `diameters` where they touch."""

    diameters: Pair
    pressed_by: Force | None = None
    friction: Number | None = None


class CrankEntry(JointEntry):
    """A crank (or eccentric) and what it moves to and fro by a rod.

    `throw` is the radius, `rod` from centre to centre; `offset` how far the line of the
    slide passes beside the shaft. A slotted link without a rod is a scotch yoke. `drawn_at` is
    the angle at which the model is drawn, from the outer dead point; where the parts have a pin
    that the rod turns on, its place says so. A rod that is made may be named between the two.
    """

    throw: Length
    rod: Length | None = None
    offset: Length | None = None
    drawn_at: Angle | None = None


class RockEntry(JointEntry):
    """Four bars: the `crank`, the `rod`, the `rocker`, and the `frame` between their centres."""

    crank: Length
    rod: Length
    rocker: Length
    frame: Length
    drawn_at: Angle | None = None


class CamRadius(Model):
    """A radius of a drawn cam, and the angle that it stands at."""

    at: Angle
    radius: Length


class CamEntry(JointEntry):
    """A cam and its follower: by a law, by arcs and flats, or by its radii as drawn.

    By a law: `lift` over `rise` degrees, `dwell`, then `fall`, on the diameter `base`. By arcs:
    `base` and `lift`, and the radius of its `nose`; its flanks are flat, or bowed by a radius
    (`flank`). By `radii`, at rising angles in the order in which the follower meets them.
    """

    lift: Length | None = None
    base: Length | None = None
    nose: Length | None = None
    flank: Length | None = None
    radii: Annotated[list[CamRadius], Field(min_length=2, max_length=360)] | None = None
    rise: Angle | None = None
    dwell: Angle | None = None
    fall: Angle | None = None
    law: Law | None = None
    follower: Follower | None = None
    roller: Length | None = None
    drawn_at: Angle | None = None


class TripEntry(JointEntry):
    """A wheel of `lifts` that raises and drops something so many times a turn.

    `lift` is how far it is raised where the wheel touches it; `arm` from the fulcrum to
    there, `reach` from the fulcrum to what falls, and `falls` its mass. `over` is the angle of
    the wheel over which it lifts. The tail of the lever is made so much longer as it is
    `left_long`, and filed back on the standing machine.
    """

    lifts: Count
    lift: Length
    over: Angle | None = None
    arm: Length | None = None
    reach: Length | None = None
    falls: Mass | None = None
    drawn_at: Angle | None = None
    left_long: Length | None = None

    def own_step(self, units: str) -> str:
        """How it is put together where that is not as of the kind, with {a} and {b}."""
        if self.left_long is None:
            return ""
        long, lift = (shown_length(one.exact, units) for one in (self.left_long, self.lift))
        return (
            f"turn {{a}} slowly by hand under {{b}}, and file back the end of the tail, left "
            f"{long} long, a little at a time, till each tooth moves it {lift} there and lets it "
            "go free; try every tooth"
        )


class WindEntry(JointEntry):
    """A drum and its rope: the `load` as a mass or the `pull` as a force, over `lines` of rope.

    `diameter` is the barrel's where it is not its place's. The rope runs over so many fixed
    `sheaves` on its way to the drum; one, where a block hangs in several lines. `over` names
    every sheave from the drum on, `dead_end` what its other end is made fast to. What `hangs`
    pulls back by itself.
    """

    diameter: Length | None = None
    rope: Length | None = None
    load: Mass | None = None
    pull: Force | None = None
    lines: Count | None = None
    sheaves: Count | None = None
    over: Annotated[list[Name], Field(max_length=24)] | None = None
    dead_end: Name | None = None
    height: Length | None = None
    layers: Count | None = None
    hangs: Flag = False
