"""The push of a cam on its follower and on its own shaft, by the torque that it passes on."""

from __future__ import annotations

from math import cos, isfinite, tan

from binder.api import Joint
from binder_plugins.drive.cams.made import Cam, made_cam
from binder_trade.explained import NotDefined


def cam_push(joint: Joint, torque: float) -> float | None:
    """The push on the shaft in N where the torque (N mm) lifts the follower at its fastest.

    The work of a small turn is that of a small lift, so that the follower is pushed by the torque
    over its speed in mm/rad; off its line by the pressure angle, square to the cam. Friction left
    out. None without a torque, or for a cam that lifts nothing.
    """
    try:
        cam = made_cam(joint)
    except NotDefined:
        return None
    speed = cam.motion.most_speed
    if torque <= 0 or speed <= 0 or not isfinite(speed):
        return None
    return torque / speed / cos(cam.most_pressure_rad)


def into_guide(cam: Cam) -> float:
    """What the guide of the follower bears, as a share of what the follower lifts. Source: statics.

    F tan of the pressure angle, at the steepest.
    """
    return tan(cam.most_pressure_rad)
