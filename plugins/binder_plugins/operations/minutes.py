"""Minutes of set-ups, routes and of all of it. Getting ready for a tool counts once a set-up.

Each line is whole minutes before it is added, so that what is printed adds up as it is printed.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_making.times import ActTime, Estimate, Work, estimate

if TYPE_CHECKING:
    from collections.abc import Iterable

    from binder.api import Workshop
    from binder_plugins.operations.facts import Act, Route, SetUp


def whole_minutes(minutes: float) -> float:
    """Minutes as a line prints them, one at the least."""
    return float(max(round(minutes), 1))


def setup_minutes(setup: SetUp, count: int = 1, pace: float = 1.0) -> float:
    """Whole minutes of a set-up for so many: mounted for each, half the run for further ones.

    A stack counts as one piece; a bar from which one after another is parted is mounted once.
    `pace` is the maker's factor at its machine.
    """
    ready = sum(act.ready for act in _tools(setup.acts))
    run = sum(act.run for act in setup.acts)
    times = 1 + 0.5 * (-(-count // setup.at_once) - 1)
    mounted = setup.minutes * (1 if setup.is_stick else times)
    return whole_minutes(pace * (ready + mounted + run * times))


def _tools(acts: Iterable[Act]) -> list[Act]:
    """One act for each kind of act and tool."""
    return list({(act.act, act.tool): act for act in acts}.values())


def route_minutes(route: Route, workshop: Workshop) -> float:
    """Minutes of all pieces of a part: its set-ups, as they are printed."""
    return sum(
        setup_minutes(setup, route.count, workshop.pace_at(setup.machine)) for setup in route.setups
    )


def route_estimate(minutes: float, alone: float = 0.0) -> Estimate:
    """Minutes as a range, with measuring and remakes."""
    return estimate([Work(ActTime("", 0.0, minutes, alone, "", ""))])


def route_text(route: Route, workshop: Workshop) -> str:
    """The time of a part as a range, as `1 to 2 h`."""
    return route_estimate(route_minutes(route, workshop)).text
