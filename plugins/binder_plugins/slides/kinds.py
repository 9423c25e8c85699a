"""The joints of this plugin: slides that a gib adjusts."""

from __future__ import annotations

from binder.api import Angle, JointEntry, Kind, Length, joint_kinds, load_data

PACKAGE = "binder_plugins.slides"


class DovetailEntry(JointEntry):
    """A dovetail told once: `width` across the narrow side of the tail, its depth and angle.

    `gib` is the thickness of its strip, `clearance` what the gib takes up; `pins` the
    diameter of the pins to measure over, where the maker chooses it.
    """

    width: Length | None = None
    depth: Length | None = None
    angle: Angle | None = None
    gib: Length | None = None
    clearance: Length | None = None
    pins: Length | None = None


def kinds() -> list[Kind]:
    """A kind for each row of the table."""
    return joint_kinds(load_data(PACKAGE, "joints.yaml")["kinds"], DovetailEntry)
