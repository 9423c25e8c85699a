"""A cam as it is written to its motion and its outline: by a law, by arcs and flats, by radii."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from binder.api import Joint, Size
from binder_trade.explained import NotDefined, Step
from binder_trade.mechanisms.cam_followed import Followed, followed
from binder_trade.mechanisms.cam_laws import CamMotion, Law, Segment, cam_motion
from binder_trade.mechanisms.cam_outlines import OutlinePoint, arc_cam, radii_cam
from binder_trade.mechanisms.cam_profile import Follower, cam_profile

Spot = tuple[float, float]
_LAWS: dict[str, Law] = {
    "uniform": "uniform",
    "parabolic": "parabolic",
    "harmonic": "harmonic",
    "cycloidal": "cycloidal",
    "polynomial": "3-4-5",
}
_FOLLOWERS: dict[str, Follower] = {"roller": "roller", "flat": "flat", "pointed": "knife"}
_BY_LAW = ("rise", "dwell", "fall", "law")
_LEAST_JUMP = 1e-9


@dataclass(frozen=True, slots=True)
class Cam:
    """A cam that can be made; mm and rad, radii.

    `outline` are points in the order in which the follower meets them, from the angle at which
    the cam's turn is counted; `drawn` the same with their normals where arcs or radii are told.
    `strikes` is the greatest jump of the follower's speed in mm/rad.
    """

    motion: CamMotion | Followed
    follower: Follower
    base_mm: float
    roller_mm: float
    most_pressure_rad: float
    least_radius_mm: float
    is_undercut: bool
    strikes: float
    outline: tuple[Spot, ...]
    drawn: tuple[OutlinePoint, ...]
    steps: tuple[Step, ...]


def made_cam(joint: Joint) -> Cam:
    """The cam of a drive. Raises NotDefined for one that says too little, or what cannot be."""
    entry = joint.entry
    follower = _FOLLOWERS[str(getattr(entry, "follower", None) or "flat")]
    roller = _mm(entry, "roller") or 0.0
    radius = roller / 2 if follower == "roller" else 0.0
    is_drawn = [getattr(entry, name, None) for name in ("radii", "nose")]
    return _drawn(joint, follower, radius) if any(is_drawn) else _by_law(joint, follower, radius)


def motion_of(joint: Joint) -> CamMotion | Followed:
    """What the cam does to its follower; raises NotDefined."""
    entry = joint.entry
    if getattr(entry, "radii", None) or getattr(entry, "nose", None):
        return made_cam(joint).motion
    return _law_motion(joint)


def _mm(entry: object, name: str) -> float | None:
    size = getattr(entry, name, None)
    return size.mm if isinstance(size, Size) else None


def _needed(joint: Joint, name: str) -> float:
    size = _mm(joint.entry, name)
    if size is None:
        raise NotDefined(
            f"the cam of '{joint.name}' has no {name}",
            "write `lift:` and `base:`, or its `radii:` as drawn",
        )
    return size


def _by_law(joint: Joint, follower: Follower, roller: float) -> Cam:
    motion = _law_motion(joint)
    base = _needed(joint, "base") / 2
    made = cam_profile(motion, base, follower, roller)
    jump = motion.most_speed if any(one.law == "uniform" for one in motion.segments) else 0.0
    return Cam(
        motion,
        follower,
        base,
        roller,
        made.most_pressure_rad,
        made.least_radius_mm,
        made.is_undercut,
        jump,
        # Drawn clockwise from the top; met in that order.
        tuple((one.y_mm, one.x_mm) for one in made.points),
        (),
        made.steps,
    )


def _law_motion(joint: Joint) -> CamMotion:
    """Rise, dwell, fall, and rest for what is left of the turn."""
    entry = joint.entry
    law = _LAWS[str(getattr(entry, "law", None) or "harmonic")]
    angles = []
    for name, usual in (("rise", 120.0), ("dwell", 0.0), ("fall", 120.0)):
        said = getattr(entry, name, None)
        angles.append(float(said.exact) if isinstance(said, Size) else usual)
    if min(angles) < 0:
        raise NotDefined("an angle of the cam is less than nothing", "write it above 0°")
    lift = _needed(joint, "lift")
    rest = 360 - sum(angles)
    if rest < 0:
        raise NotDefined(
            f"rise, dwell and fall come to {sum(angles):g}°", "keep them within one turn of 360°"
        )
    parts = ((angles[0], lift), (angles[1], 0.0), (angles[2], -lift), (rest, 0.0))
    return cam_motion([Segment(angle, change, law) for angle, change in parts if angle > 0])


def _drawn(joint: Joint, follower: Follower, roller: float) -> Cam:
    entry = joint.entry
    twice = [name for name in _BY_LAW if getattr(entry, name, None) is not None]
    if twice:
        raise NotDefined(
            f"'{joint.name}' tells its cam as drawn, and by its {twice[0]} as well",
            "leave one of the two out",
        )
    points = _points(joint)
    made = followed(points, follower, roller)
    return Cam(
        made,
        follower,
        made.base_mm,
        roller,
        made.most_pressure_rad,
        made.least_radius_mm,
        made.is_bridged,
        made.strikes_mm_rad if made.strikes_mm_rad > _LEAST_JUMP else 0.0,
        tuple((one.x_mm, one.y_mm) for one in points),
        points,
        made.steps,
    )


def _points(joint: Joint) -> tuple[OutlinePoint, ...]:
    entry = joint.entry
    radii: Sequence[object] | None = getattr(entry, "radii", None)
    if radii is None:
        base, lift = _needed(joint, "base") / 2, _needed(joint, "lift")
        return arc_cam(base, lift, _needed(joint, "nose"), _mm(entry, "flank"))
    twice = [name for name in ("lift", "base", "nose", "flank") if _mm(entry, name) is not None]
    if twice:
        raise NotDefined(
            f"'{joint.name}' tells its cam by radii, and its {twice[0]} as well",
            "leave it out: it follows from the radii",
        )
    return radii_cam([(float(one.at.exact), one.radius.mm) for one in radii])  # type: ignore[attr-defined]
