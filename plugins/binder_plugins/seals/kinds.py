"""The joints of this plugin: what keeps oil, water or steam where it belongs."""

from __future__ import annotations

from binder.api import Count, Flag, JointEntry, Kind, Length, Words, joint_kinds, load_data

PACKAGE = "binder_plugins.seals"


class SealEntry(JointEntry):
    """A seal. `ring`: an O-ring (`9 mm x 1.8 mm`, `AS568-012`, or its cord alone: `1.8 mm`).

    `moving` is one that slides or turns; `bore` the nominal where no half tells it. `gasket`
    is the sheet, `thickness` its own, free; `packing` the section of square packing and
    `rings` how many of it.
    """

    ring: Words | None = None
    moving: Flag = False
    bore: Length | None = None
    gasket: Words | None = None
    thickness: Length | None = None
    packing: Length | None = None
    rings: Count | None = None


def kinds() -> list[Kind]:
    """A kind for each row of the table."""
    return joint_kinds(load_data(PACKAGE, "joints.yaml")["kinds"], SealEntry)
