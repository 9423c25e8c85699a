"""Facts that only this plugin's own steps exchange."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import Fact


@dataclass(frozen=True, slots=True)
class TasksKnown(Fact):
    """The tasks stand on the design: `count` of them."""

    count: int
