"""A set-up from its grip and its acts, with the minutes that its holding takes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.facts import SetUp
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.facts import Act, Grip


def set_up(
    number: int,
    place: str,
    machine: str,
    grip: Grip,
    datum: str,
    acts: Sequence[Act],
    true: str = "",
) -> SetUp:
    """A set-up numbered as told, until all of its acts are done."""
    return SetUp(number, place, machine, grip, datum, tuple(acts), true, "", holding_min(grip.kind))
