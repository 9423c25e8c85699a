"""A cam to what it does to its follower, and what is amiss with it."""

from __future__ import annotations

from collections.abc import Iterator
from math import degrees, isfinite, pi

from binder.api import Design, Diagnostic, Joint
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.cams.contours import impossible
from binder_plugins.drive.cams.made import Cam, made_cam
from binder_plugins.drive.carrying.camming import into_guide
from binder_plugins.drive.duties.duty import Curve, DutyFact, Rows, Told
from binder_plugins.drive.duties.shown import size
from binder_plugins.drive.judging.running import turning_of
from binder_trade.explained import NotDefined
from binder_trade.mechanisms.cam_profile import MOST_PRESSURE_DEG

_POINTS = 144
_LEAST_SHARE = 0.005


def camming(joint: Joint, design: Design) -> Told:
    """A cam: its motion, the steepest push and the sharpest place of its outline."""
    try:
        cam = made_cam(joint)
    except NotDefined as refusal:
        return Told(None, (impossible(joint, refusal),))
    duty = DutyFact(
        joint.name,
        "Cam",
        (*_rows(cam, design), *_at_speed(cam, joint, design)),
        (*cam.motion.steps, *(step for step in cam.steps if step not in cam.motion.steps)),
        tuple(_curves(cam)),
    )
    return Told(duty, tuple(_amiss(cam, joint)))


def _rows(cam: Cam, design: Design) -> Rows:
    base = size(2 * cam.base_mm, design)
    pressure = degrees(cam.most_pressure_rad)
    sharp = f"{size(cam.least_radius_mm, design)} radius"
    return (
        ("Lift", f"{size(cam.motion.lift_mm, design)} on a base circle of {base}"),
        ("Steepest push", f"{pressure:.1f}° off the follower's line{_guide(cam)}"),
        ("Sharpest place", sharp if cam.least_radius_mm else "a corner"),
    )


def _guide(cam: Cam) -> str:
    """`, so that its guide bears 0.36 of what it lifts`."""
    share = into_guide(cam)
    return f", so that its guide bears {share:.2g} of what it lifts" if share > _LEAST_SHARE else ""


def _at_speed(cam: Cam, joint: Joint, design: Design) -> Iterator[tuple[str, str]]:
    """Speed and acceleration of the follower at the fastest setting of the cam's shaft."""
    body = turning_of(joint.ends[0].item, design)
    fastest = max((abs(one) for one in body.speeds if one), default=0.0) if body else 0.0
    if not fastest:
        return
    omega = fastest * pi / 30
    speed, push = cam.motion.most_speed * omega, cam.motion.most_acceleration * omega**2 / 1000
    at = f"at {fastest:.3g} r/min"
    yield "Follower's most speed", f"{speed:.3g} mm/s {at}"
    yield "Most acceleration", f"{push:.3g} m/s² {at}" if isfinite(push) else "a blow, at any speed"


def _curves(cam: Cam) -> Iterator[Curve]:
    """Lift, speed and acceleration; what jumps without end has no acceleration to draw."""
    rows = [cam.motion.at(2 * pi * n / _POINTS) for n in range(_POINTS)]
    lifts, speeds, pushes = ((*row, row[0]) for row in zip(*rows, strict=True))
    yield Curve("follower", lifts)
    yield Curve("follower's speed", speeds, "mm/rad", "the follower's speed")
    if not cam.strikes:
        yield Curve("acceleration", pushes, "mm/rad²", "the follower's acceleration")


def _amiss(cam: Cam, joint: Joint) -> Iterator[Diagnostic]:
    pressure = degrees(cam.most_pressure_rad)
    if pressure > MOST_PRESSURE_DEG:
        yield codes.CAM_TOO_STEEP.at(
            joint.at,
            f"the cam pushes {pressure:.0f}° off the follower's line; "
            f"{MOST_PRESSURE_DEG:g}° is the most",
            help="a larger base circle, a longer rise or a smaller lift",
        )
    if cam.is_undercut and cam.drawn:
        yield codes.CAM_UNDERCUT.at(
            joint.at,
            f"the cam of '{joint.name}' has a hollow that its follower does not reach into",
            help="a smaller roller, or a gentler hollow",
        )
    elif cam.is_undercut:
        yield codes.CAM_UNDERCUT.at(
            joint.at,
            "the outline of the cam crosses itself: part of the motion is cut away",
            help="a larger base circle, a smaller roller, or a gentler law",
        )
    if cam.strikes:
        yield codes.CAM_STRIKES.at(
            joint.at,
            f"the follower of '{joint.name}' jumps from one speed to another, by "
            f"{cam.strikes:.3g} mm a radian",
            help="a roller on straight flanks, bowed flanks under a flat follower, or a law that "
            "begins and ends at rest",
        )
