"""The joints of this plugin: fits by size, and what is joined over a gap."""

from __future__ import annotations

from binder.api import Force, JointEntry, Kind, Length, Speed, Words, joint_kinds, load_data

PACKAGE = "binder_plugins.fits"


class FitEntry(JointEntry):
    """What a fit may say beside its two halves.

    `fit` is a class (`H7/g6`), how it is made (`reamed 6 mm, bar as bought`) or how it
    feels (`push`); `duty` what it has to do (`runs slow and oiled`). `size` is the nominal
    where neither half tells it, `length` how much of it bears. `speed` and `load` are those
    of a bearing; `compound` is the adhesive or alloy, `gap` that on diameter.
    """

    fit: Words | None = None
    duty: Words | None = None
    size: Length | None = None
    length: Length | None = None
    speed: Speed | None = None
    load: Force | None = None
    compound: Words | None = None
    gap: Length | None = None


def kinds() -> list[Kind]:
    """A kind for each row of the table."""
    return joint_kinds(load_data(PACKAGE, "joints.yaml")["kinds"], FitEntry)
