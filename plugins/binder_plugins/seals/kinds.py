"""The joints of this plugin: what keeps oil, water or steam where it belongs."""

from __future__ import annotations

from binder.api import Flag, JointEntry, Kind, Length, Words, joint_kinds, load_data

PACKAGE = "binder_plugins.seals"


class SealEntry(JointEntry):
    """A seal: `ring` the section of an O-ring or packing, `gasket` the sheet and `thickness`.

    `moving` is one that slides or turns; `bore` the nominal where no half tells it.
    """

    ring: Length | None = None
    gasket: Words | None = None
    thickness: Length | None = None
    bore: Length | None = None
    moving: Flag = False


def kinds() -> list[Kind]:
    """A kind for each row of the table."""
    return joint_kinds(load_data(PACKAGE, "joints.yaml")["kinds"], SealEntry)
