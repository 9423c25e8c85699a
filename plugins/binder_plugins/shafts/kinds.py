"""The section of shafts: what sits on each, told once from left to right."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.api import Kind, Length, Name, Noted, RangeOf, Ref, Slot

MOST_ON_ONE = 40


class ShaftEntry(Noted):
    """A shaft by the name of its part, and what is `along` it from left to right.

    `apart` is the distance between the two faces of the outer bearings that look at each
    other; `end_float` the play to leave along the axis; `to_suit` the piece of the list
    whose length is made last, to the float that the others leave.
    """

    along: Annotated[list[Ref], Field(min_length=1, max_length=MOST_ON_ONE)]
    apart: Length | None = None
    end_float: RangeOf | None = None
    to_suit: Name | None = None


def section_kinds() -> list[Kind]:
    """The section `shafts`."""
    return [
        Kind(
            Slot.SECTION,
            "shafts",
            dict[str, ShaftEntry],
            "what sits on a shaft, left to right: order, lengths, end float",
        )
    ]
