"""Taps that a hand turns: the wrench that goes with them, and what keeps them square."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Act, Route

_WRENCH = "tap wrench"
# What stands in line with the hole leads the tap. Common practice, no source.
_IN_LATHE = "kept square by the tail of the wrench on the tailstock centre"
_UNDER_SPINDLE = (
    "kept square: begun by hand in the chuck of the spindle over its hole, plug out, then the "
    "wrench"
)
_AT_BENCH = "kept square: tried with a square from two sides after the first two turns"
_BY_PLACE = {"lathe": _IN_LATHE, "mill": _UNDER_SPINDLE, "drill": _UNDER_SPINDLE}


def hand_tapped(route: Route) -> Route:
    """The route with the wrench in the tools of each such act, and the words that go with it."""
    setups = tuple(
        replace(one, acts=tuple(_with_wrench(act, one.place) for act in one.acts))
        for one in route.setups
    )
    return replace(route, setups=setups)


def _with_wrench(act: Act, place: str) -> Act:
    if act.act != "tap" or act.speed:
        return act
    tool = act.tool if _WRENCH in act.tool else f"{act.tool}, {_WRENCH}"
    return replace(act, what=f"{act.what}; {_BY_PLACE.get(place, _AT_BENCH)}", tool=tool)
