"""What of a turned part still is bar when a grip is taken: its sketch shows what is there."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

    from binder_plugins.operations.facts import Route, SetUp


@dataclass(frozen=True, slots=True)
class Uncut:
    """Steps by their names that no grip has turned yet, and how thick the bar is there, in mm."""

    steps: frozenset[str] = frozenset()
    across: float = 0.0


WHOLE = Uncut()


def uncut_in(route: Route, setup: SetUp) -> Uncut:
    """What is left for later set-ups, at the thickness of the bar that is gripped first."""
    before = _turned(one for one in route.setups if one.number <= setup.number)
    after = _turned(one for one in route.setups if one.number > setup.number)
    lathe = (one.grip.across for one in route.setups if one.place == "lathe")
    return Uncut(frozenset(after - before), next(lathe, 0.0))


def _turned(setups: Iterable[SetUp]) -> set[str]:
    return {
        act.feature
        for one in setups
        if one.place == "lathe"
        for act in one.acts
        if "outside" in act.tags
    }
