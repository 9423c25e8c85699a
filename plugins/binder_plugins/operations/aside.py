"""Holes tapped through a wall beside a joint, as for gib screws: no more thread than holds."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import AsideFact, exact
from binder_plugins.operations.bench import drill_for, place_of, vice_for
from binder_plugins.operations.facts import Act, Grip
from binder_plugins.operations.hole_tools import drill_name
from binder_plugins.operations.work import hole_volume

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.flat import Flat

# A small tap goes no deeper than this in its own diameters, and the screw passes the rest by so
# much over its outside, in mm. Common practice, no source.
_THREAD = 2.5
_OVER = (0.05, 0.4)
_MARKED = "scriber and centre punch"


def tapped_aside(flat: Flat) -> None:
    """A set-up for the holes that each joint wants through a wall of the part."""
    for fact in flat.work.design.facts.all(AsideFact):
        if fact.item == flat.work.name:
            machine = drill_for(flat.workshop, fact.major)
            acts = list(_acts(flat, fact, machine))
            place = place_of(flat.workshop, machine)
            flat.add(place, machine, _on_edge(flat), "the side, square up", acts)


def _acts(flat: Flat, fact: AsideFact, machine: str) -> Iterator[Act]:
    work, count = flat.work, len(fact.along)
    place, many = fact.place, f"{len(fact.along)} × " if len(fact.along) > 1 else ""

    def mm(size: float) -> str:
        return work.mm(round(size, 1))

    tapped = min(fact.wall, _THREAD * fact.major)
    where = f"{', '.join(mm(one) for one in fact.along)} along, {mm(fact.below)} below the face"
    words = f"{fact.how}: {place.replace('_', ' ')}, {where}"
    yield work.act("spot-through", words, feature=place, tool=_MARKED)
    yield work.act("spot", f"{many}spot at the marks", machine=machine, feature=place,
                   size=fact.major, times=count, tags=("later",))  # fmt: skip
    yield _drill(flat, fact, machine, f"{many}drill ⌀{mm(fact.drill_mm)}, through the "
                 f"{mm(fact.wall)} wall into the slot", (fact.drill_mm, fact.wall))  # fmt: skip
    if fact.wall - tapped > fact.drill_mm:
        over = _clearance(flat, fact)
        deep = fact.wall - tapped
        yield _drill(flat, fact, machine, f"{many}open it to ⌀{mm(over)}, {mm(deep)} deep: "
                     f"{mm(tapped)} is left to tap", (over, deep))  # fmt: skip
    yield work.act("tap", f"{many}tap {fact.thread}, {mm(tapped)} of it", feature=place,
                   tool=f"{fact.thread} taps: taper, then plug", times=count)  # fmt: skip


def _drill(flat: Flat, fact: AsideFact, machine: str, words: str, size: tuple[float, float]) -> Act:
    across, deep = size
    return flat.work.act(
        "drill",
        words,
        machine=machine,
        feature=fact.place,
        tool=drill_name(flat.work, across, fitted=False),
        size=across,
        deep=deep,
        amount=hole_volume(across, deep),
        times=len(fact.along),
        tags=("later",),
    )


def _on_edge(flat: Flat) -> Grip:
    thick = min(flat.form.size)
    return Grip(vice_for(flat.workshop) or "vice", "vice", "its faces, on edge", thick)


def _clearance(flat: Flat, fact: AsideFact) -> float:
    """The owned drill that the screw just passes, in mm."""
    least, most = (exact(one) for one in _OVER)
    found = flat.workshop.nearest_drill(exact(fact.major) + least, exact(0), most - least)
    return float(found.mm) if found is not None else fact.major + _OVER[0]
