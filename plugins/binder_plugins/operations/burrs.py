"""Burrs of turned work that need a tool of their own."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import exact
from binder_plugins.operations.around import breaking_in
from binder_plugins.operations.facts import Act, SetUp
from binder_plugins.operations.oil_ways import oil_way_of
from binder_plugins.operations.plain import at_bench
from binder_plugins.operations.relieved import cleared
from binder_plugins.operations.rings import flange_burrs

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Located


def burr_setups(turning: Turning, _: int) -> Iterator[SetUp]:
    """Burrs that need a tool of their own: in a reamed bore the reamer once more, by hand."""
    work, form = turning.work, turning.form
    way = oil_way_of(work)
    acts = [
        _cleared(turning, one, holes)
        for one in turning.axial
        if one.kind == "reamed" and work.feature(one.name) and work.waits(one.name) is None
        if (
            holes := [
                hole
                for hole in breaking_in(one, form)
                if (way is None or hole != way.own) and not work.is_wholly_left(hole.name)
            ]
        )
    ]
    acts += flange_burrs(turning)
    acts += cleared(work, form, [one for one in turning.axial if not turning.is_first(one)])
    if acts:
        yield at_bench(work, "by hand", "", acts)


def _cleared(turning: Turning, one: Located, holes: Sequence[Located]) -> Act:
    work, bore = turning.work, one.name.replace("_", " ")
    reamer = work.design.workshop.owns_reamer(exact(one.diameter or 0.0))
    way = "pass the reamer through by hand" if reamer else "scrape it round inside"
    return work.act(
        "clear",
        f"{way}, to clear the burr that the cross hole threw into the {bore}",
        feature=one.name,
        tool=f"{reamer.name} reamer in a tap wrench" if reamer else "three-square scraper",
        size=one.diameter or 0.0,
        meets=tuple(hole.name for hole in holes),
    )
