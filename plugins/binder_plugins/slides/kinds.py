"""The joints of this plugin, and the dovetail as a feature of a part."""

from __future__ import annotations

from typing import Annotated

from binder.api import (
    Angle,
    At,
    FeatureEntry,
    Flag,
    JointEntry,
    Kind,
    Length,
    LengthOrSuit,
    Name,
    OneOf,
    Slot,
    joint_kinds,
    load_data,
)

PACKAGE = "binder_plugins.slides"
Side = Annotated[str, OneOf("a side", "back", "front", "top", "underside")]


class DovetailEntry(JointEntry):
    """A dovetail told once: `width` across the root of the tail, depth of the slot, angle.

    `gib` is the thickness of its strip, `clearance` the sideways play before it is set;
    `pins` the diameter of the pins to measure over, where the maker chooses it. The gib lies on
    the `gib_side` of the slot's part, left out at its back, or above where the slot is upright.
    """

    width: Length | None = None
    depth: Length | None = None
    angle: Angle | None = None
    gib: Length | None = None
    gib_side: Side | None = None
    clearance: Length | None = None
    pins: Length | None = None


class DovetailFeature(FeatureEntry):
    """One half of a dovetail: its narrow width, as drawn at sharp corners.

    `inside` is a slot, left out it is a tail; `on` the face that it is cut in, `at` where.
    """

    kind = "dovetailed"
    dovetailed: LengthOrSuit
    depth: Length | None = None
    angle: Angle | None = None
    on: Name | None = None
    at: At | None = None
    inside: Flag = False


def kinds() -> list[Kind]:
    """A joint for each row of the table, and the feature."""
    says = "a dovetail: its width where it is narrow"
    return [
        *joint_kinds(load_data(PACKAGE, "joints.yaml")["kinds"], DovetailEntry),
        Kind(Slot.FEATURE, "dovetailed", DovetailFeature, says),
    ]
