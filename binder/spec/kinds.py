"""Kinds: what a plugin adds to the language, each told by the key that opens it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from pydantic import BaseModel


class Slot(StrEnum):
    """Where in a spec a kind may be written."""

    SHAPE = "shape"
    FEATURE = "feature"
    JOINT = "joint"
    DRIVE = "drive"
    SECTION = "section"


@dataclass(frozen=True, slots=True)
class Kind:
    """One kind of shape, feature, joint, drive or section.

    `key` is what the maker writes (`reamed:`); `model` reads what stands there: for a
    feature, joint or drive the whole table, which holds the key; for a shape or section the value
    below the key. `says` is one line for `binder plugins`. `plugin` is set by the host.
    """

    slot: Slot
    key: str
    model: type[BaseModel] | object
    says: str
    plugin: str = ""


@dataclass(frozen=True, slots=True)
class Kinds:
    """All the kinds known to one run, by slot."""

    all: tuple[Kind, ...]

    def of(self, slot: Slot) -> dict[str, Kind]:
        """The kinds of a slot by their keys."""
        return {kind.key: kind for kind in self.all if kind.slot is slot}
