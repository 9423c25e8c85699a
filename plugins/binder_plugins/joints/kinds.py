"""The kinds of joint of this plugin: rows of its table."""

from __future__ import annotations

from binder.api import JointEntry, Kind, joint_kinds, load_data

PACKAGE = "binder_plugins.joints"


def kinds() -> list[Kind]:
    """A kind for each row."""
    return joint_kinds(load_data(PACKAGE, "joints.yaml")["kinds"], JointEntry)
