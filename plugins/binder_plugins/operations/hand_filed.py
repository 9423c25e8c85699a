"""What is filed square to a square that tells when it is."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Act, Route

_SQUARE = re.compile(r"(?<!out of )\bsquare\b")


def hand_filed(route: Route) -> Route:
    """The route with a square among the tools of each act that files something square."""
    setups = tuple(
        replace(one, acts=tuple(_with_square(act) for act in one.acts)) for one in route.setups
    )
    return replace(route, setups=setups)


def _with_square(act: Act) -> Act:
    if act.act != "file" or not _SQUARE.search(act.what) or _SQUARE.search(act.tool):
        return act
    return replace(act, tool=f"{act.tool}, square")
