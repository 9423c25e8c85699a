"""All that acts on one shaft of the train at one setting, as pushes along it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from binder.api import Design, Joint, Size, TrainFact, TurningFact
from binder_plugins.drive.carrying.camming import cam_push
from binder_plugins.drive.carrying.cranking import crank_push
from binder_plugins.drive.carrying.line import Line, Reach
from binder_plugins.drive.carrying.passing import Passing, ratio_at, step_at
from binder_plugins.drive.carrying.planes import plane_of
from binder_plugins.drive.carrying.pulls import Pull, pulls_of
from binder_plugins.drive.carrying.thrusts import Thrust, thrust_of
from binder_plugins.drive.carrying.weights import Weighed
from binder_plugins.drive.motion.reach import ring_of
from binder_plugins.drive.standing import Axis, axis_of
from binder_plugins.drive.train.strength import GRAVITY, rope_pull
from binder_solid.forms import Frame, Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y
from binder_trade.shafting.influence import Push

_NEAR = 0.2  # of the radius told: what sits there is what the hand holds

_NOT_RECKONED = ("trips", "cams", "cranks", "rocks", "indexes", "racks")
# There the slide stands still, and what is pushed with is what the fly of the shaft gives.
_DEAD = "what comes near the dead points"
# A load that comes on all at once strains a shaft twice as much as one laid on gently:
# strength of materials, from memory.
_SUDDEN = 2.0


@dataclass(frozen=True, slots=True)
class Loaded:
    """The pushes on a shaft with the pieces that they act on, and what is not reckoned.

    A thrust stands in both: along the shaft it is taken by a face, and it tilts the shaft.
    """

    pushes: tuple[tuple[str, str, Push], ...]  # item, joint ('' for a weight), push
    missing: tuple[str, ...]
    thrusts: tuple[Thrust, ...] = ()


@dataclass(frozen=True, slots=True)
class Bearer:
    """A body of the train with its shaft, the torques of the train, and what its pieces weigh."""

    body: TurningFact
    line: Line
    train: TrainFact
    given: Passing
    weighed: Mapping[str, Weighed | None]

    def torque(self, name: str, number: int) -> float:
        """What comes in at a body at a setting; N·mm."""
        return next(iter(self.given.into.get(name, ())[number : number + 1]), 0.0)


def loaded(bearer: Bearer, number: int, way_round: int, hand: int, design: Design) -> Loaded:
    """Pulls of the drives at a setting, one way round, and the weights.

    What makes a thrust may be of either hand: 1 where it goes to the right end, -1 to the left.
    """
    line = bearer.line
    found: list[tuple[str, str, Push]] = []
    thrusts: list[Thrust] = []
    missing: list[str] = []
    for pull, reach in (
        *_drives(bearer, number, way_round, design),
        *_alone(bearer, number, design),
    ):
        if isinstance(pull, str):
            missing.append(pull)
        elif reach is None:
            missing.append(f"the push of '{pull.joint}': where it acts is not told")
        else:
            missing += [f"{pull.left} of '{pull.joint}'"] if pull.left else []
            found.append((pull.item, pull.joint, _push(pull.size, pull.way, reach, line.frame)))
            if pull.thrust:
                one = thrust_of(pull, reach, hand, bearer.body, line, design)
                thrusts.append(one)
                found.append((pull.item, pull.joint, _tilt(pull, one, reach, line.frame)))
    for item, reach in line.stands.items():
        weight = bearer.weighed.get(item)
        if weight is not None:
            force = weight.mass * GRAVITY
            found.append((item, "", _push(force, (0.0, 0.0, -force), reach, line.frame)))
    return Loaded(tuple(found), tuple(dict.fromkeys(missing)), tuple(thrusts))


def _push(size: float, way: Vector | None, reach: Reach, frame: Frame | None) -> Push:
    """A force in the model as its shares across the shaft; along the shaft it bears nothing."""
    middle = (reach[0] + reach[1]) / 2
    if way is None or frame is None:
        return Push(middle, float(size))
    return Push(middle, (dot(way, frame_y(frame)), dot(way, frame.z)))


def _tilt(pull: Pull, one: Thrust, reach: Reach, frame: Frame | None) -> Push:
    """The couple that a thrust makes, since it acts at the rim and not in the axis."""
    made = _push(pull.thrust, pull.spot, reach, frame)
    if isinstance(made.across, float):
        return Push(made.at_mm, made.across, pull.lever)
    size = one.size * one.way
    return Push(made.at_mm, (made.across[0] * size, made.across[1] * size), pull.lever)


Found = tuple[Pull | str, Reach | None]


def _drives(bearer: Bearer, number: int, way_round: int, design: Design) -> Iterator[Found]:
    """What each drive of the train does to this body."""
    train, name = bearer.train, bearer.body.subject
    bodies = {one: body for one in train.order if (body := design.facts.about(TurningFact, one))}
    for one in train.passed:
        if name not in (one.driver, one.driven):
            continue
        step = step_at(one, ratio_at(one, number, bodies))
        turns = way_round * _sense(bodies[one.driver], bodies[train.order[0]], number, design)
        made = pulls_of(one, bearer.torque(one.driven, number), step, turns, design)
        if isinstance(made, str):
            yield made, None
        else:
            pull = made[0 if one.driver == name else 1]
            yield pull, plane_of(design.joints[one.joint], pull.item, step, bearer.line, design)


def _sense(driver: TurningFact, first: TurningFact, number: int, design: Design) -> int:
    """Whether a body turns as the first one does, about the way of its own axis."""
    axes = [axis_of(one.items, design) for one in (driver, first)]
    speed = driver.speeds[number] or 1.0
    same = axes[0] is None or axes[1] is None or dot(axes[0].way, axes[1].way) >= 0
    return (1 if speed > 0 else -1) * (1 if same else -1)


def _alone(bearer: Bearer, number: int, design: Design) -> Iterator[Found]:
    """A rope on its drum, a hand on its handle, and what is not reckoned."""
    body, line = bearer.body, bearer.line
    for joint in design.joints.values():
        item = joint.ends[0].item if joint.ends else ""
        if item not in body.items:
            continue
        if joint.kind == "winds":
            pull = rope_pull(joint)
            if pull is not None:
                yield Pull(joint.name, item, pull), plane_of(joint, item, 0, line, design)
        elif joint.kind == "turns" and getattr(joint.entry, "by", "") == "hand":
            radius, torque = (
                getattr(joint.entry, "radius", None),
                bearer.torque(body.subject, number),
            )
            if isinstance(radius, Size) and radius.mm > 0 and torque:
                where = _handle(radius.mm, bearer, design)
                where = where or (line.stands.get(item) if item != line.shaft else None)
                yield Pull(joint.name, item, torque / radius.mm), where
        elif joint.kind == "trips" and (push := lifted(joint)) is not None:
            where = plane_of(joint, item, 0, line, design)
            yield Pull(joint.name, item, _SUDDEN * push, left="the speed of the pick-up"), where
        elif push := _moved(joint, bearer.torque(body.subject, number)):
            left = _DEAD if joint.kind == "cranks" else ""
            where = plane_of(joint, item, 0, line, design)
            yield Pull(joint.name, item, push, left=left), where
        elif joint.kind in _NOT_RECKONED:
            yield f"the push of '{joint.name}'", None


def _moved(joint: Joint, torque: float) -> float | None:
    """The push of what a cam or a crank moves to and fro, in N; None for every other drive."""
    if joint.kind == "cams":
        return cam_push(joint, torque)
    return crank_push(joint, torque) if joint.kind == "cranks" else None


def lifted(joint: Joint) -> float | None:
    """What a lever weighs on the wheel that lifts it, in N: m g × reach / arm; at rest."""
    falls, arm, reach = (getattr(joint.entry, name, None) for name in ("falls", "arm", "reach"))
    if not (isinstance(falls, Size) and isinstance(arm, Size) and isinstance(reach, Size)):
        return None
    return float(falls.exact) / 1000 * GRAVITY * reach.mm / arm.mm if arm.mm > 0 else None


def _handle(radius: float, bearer: Bearer, design: Design) -> Reach | None:
    """Where the hand holds: what turns on a piece of the body, so far out from the axis."""
    line, body = bearer.line, bearer.body
    if line.frame is None:
        return None
    axis = Axis(line.frame.origin, line.frame.x)
    mates = {
        end.item
        for joint in design.joints.values()
        if joint.kind in ("runs_in", "swivels") and set(joint.items) & set(body.items)
        for end in joint.ends
        if end.item not in body.items
    }
    for copy in design.facts.all(PlacedFact):
        if copy.item in mates:
            ring = ring_of(copy, axis)
            if abs((ring.inside + ring.outside) / 2 - radius) < _NEAR * radius and ring.inside:
                return ring.low, ring.high
    return None
