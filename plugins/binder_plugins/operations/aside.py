"""Holes tapped through a wall beside a joint, as for gib screws: the outer part of a thick wall."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import AsideFact
from binder_plugins.operations.bench import drill_for, place_of
from binder_plugins.operations.drilled import pecked
from binder_plugins.operations.facts import Act, Grip
from binder_plugins.operations.hole_kinds import hole_volume
from binder_plugins.operations.hole_tools import drill_name
from binder_plugins.operations.parallels import in_vice

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.flat import Flat

_MARKED = "scriber and centre punch"


def tapped_aside(flat: Flat) -> None:
    """A set-up for the holes that each joint wants through a wall of the part."""
    for fact in flat.work.design.facts.all(AsideFact):
        if fact.item == flat.work.name:
            machine = drill_for(flat.workshop, fact.major)
            acts = list(_acts(flat, fact, machine))
            place = place_of(flat.workshop, machine)
            datum = f"the {fact.side or 'side'}, square up"
            flat.add(place, machine, _on_edge(flat), datum, acts)


def _acts(flat: Flat, fact: AsideFact, machine: str) -> Iterator[Act]:
    work, count = flat.work, len(fact.along)
    place, many = fact.place, f"{len(fact.along)} × " if len(fact.along) > 1 else ""

    def mm(size: float) -> str:
        return work.mm(round(size, 1))

    along = ", ".join(mm(one) for one in fact.along)
    where = f"{along} from the gib's end, {mm(fact.below)} below the face"
    words = f"{fact.how}: {place.replace('_', ' ')}, {where}"
    yield work.act("spot-through", words, feature=place, tool=_MARKED)
    yield work.act("spot", f"{many}spot at the marks", machine=machine, feature=place,
                   size=fact.major, times=count, tags=("later",))  # fmt: skip
    deep = fact.wall + fact.leans
    in_pecks = pecked(fact.drill_mm, deep)
    plugged = "; a scrap filed to the slot is clamped in it, or the drill runs off down the flank"
    yield _drill(flat, fact, machine, f"{many}drill ⌀{mm(fact.drill_mm)}, through the "
                 f"{mm(fact.wall)} wall into the slot{', ' if in_pecks else ''}{in_pecks}"
                 f"{plugged if fact.leans else ''}", (fact.drill_mm, deep))  # fmt: skip
    outer = f"the outer {mm(fact.tapped)} of it; the rest stays ⌀{mm(fact.drill_mm)}"
    tap = "through" if fact.tapped >= fact.wall else f"{outer} for the screw's end"
    yield work.act("tap", f"{many}tap {fact.thread}, {tap}", feature=place,
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
    thick, high, _ = sorted(flat.form.size)
    return Grip(in_vice(flat.workshop, high) or "vice", "vice", "its faces, on edge", thick)
