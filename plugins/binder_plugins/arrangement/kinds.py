"""The sections that say where parts stand: `stands` and `positions`."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.api import Angle, At, Flag, Kind, Model, Name, Ref, Slot

MOST_COPIES = 40


class CopyPosition(Model):
    """Where one copy of a part stands, as far as its joints leave that free.

    `at` is measured to the nearest side of the part, or to its own place `by`; `on` is the
    face that it lies on with its underside, or with the face `by`. `turned` is told about the
    axis of its joint, anticlockwise as seen from the front, the right or above; `reversed` puts
    it on end for end; `parallel` lays it the way another part lies.
    """

    at: At | None = None
    on: Ref | None = None
    by: Name | None = None
    turned: Angle | None = None
    reversed: Flag = False
    parallel: Name | None = None


class PositionEntry(CopyPosition):
    """Where a part stands; `copies` tells it of each copy by itself."""

    copies: Annotated[list[CopyPosition], Field(max_length=MOST_COPIES)] = Field(
        default_factory=list
    )


def section_kinds() -> list[Kind]:
    """The sections of this plugin."""
    return [
        Kind(Slot.SECTION, "stands", Name, "the part that all others are placed from"),
        Kind(
            Slot.SECTION,
            "positions",
            dict[str, PositionEntry],
            "where parts stand, as far as their joints leave it free",
        ),
    ]
