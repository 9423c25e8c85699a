"""Minutes of set-ups, routes and of all of it. Getting ready for a tool counts once a set-up."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_making.times import ActTime, Estimate, Work, estimate

if TYPE_CHECKING:
    from collections.abc import Iterable

    from binder_plugins.operations.facts import Act, Route, SetUp

PREPARE = 5.0


def setup_minutes(setup: SetUp, count: int = 1) -> float:
    """Minutes of a set-up for so many pieces: mounted for each, half the run for further ones.

    A stack counts as one piece; a bar from which one after another is parted is mounted once.
    """
    ready = sum(act.ready for act in _tools(setup.acts))
    run = sum(act.run for act in setup.acts)
    times = 1 + 0.5 * (-(-count // setup.at_once) - 1)
    return ready + setup.minutes * (1 if setup.is_stick else times) + run * times


def _tools(acts: Iterable[Act]) -> list[Act]:
    """One act for each kind of act and tool."""
    return list({(act.act, act.tool): act for act in acts}.values())


def route_minutes(route: Route) -> float:
    """Minutes of all pieces of a part, with reading the sheet and finding the tools."""
    return PREPARE + sum(setup_minutes(setup, route.count) for setup in route.setups)


def route_estimate(minutes: float, alone: float = 0.0) -> Estimate:
    """Minutes as a range, with measuring and remakes."""
    return estimate([Work(ActTime("", 0.0, minutes, alone, "", ""))])


def route_text(route: Route) -> str:
    """The time of a part as a range, as `1 to 2 h`."""
    return route_estimate(route_minutes(route)).text
