"""A place of a joint to how that half is made, or how it comes, and what that leaves."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from binder.api import Design, End, MaterialFact, PlaceFact
from binder_plugins.fits.facts import Half
from binder_trade.fits.given import Way, ways

_BY_FEATURE = {"reamed": "reamed", "drilled": "drilled", "bored": "bored"}
_STAINLESS = ("stainless",)
_SILVER = ("silver-steel",)


def half_of(end: End, place: PlaceFact, which: str, design: Design) -> Half:
    """A half before any class is chosen: its way, and whether it comes as it comes."""
    fact = design.facts.about(MaterialFact, end.item)
    material, group = (fact.id, fact.group) if fact is not None else ("", "")
    title = title_of(end, design)
    if end.item in design.bought:
        return Half(
            end,
            place,
            title,
            "bought",
            is_fixed=True,
            material=material,
            group=group,
            source="as measured",
        )
    way = way_of(place, which, material)
    return Half(
        end,
        place,
        title,
        way.way,
        is_fixed=is_fixed(way),
        material=material,
        group=group,
        cls=way.cls,
        says=way.says,
        source=way.source,
    )


def way_of(place: PlaceFact, which: str, material: str) -> Way:
    """The way of a half by what it is cut as, or by the rod that it is left as."""
    if which == "hole":
        return named_way(_BY_FEATURE.get(place.kind, "bored"))
    if not place.is_bought_rod:
        return named_way("turned")
    if material in _SILVER:
        return named_way("silver steel")
    return named_way("stainless bar" if material.startswith(_STAINLESS) else "drawn bar")


def named_way(name: str) -> Way:
    """A way by its own name."""
    return next(way for way in ways() if way.way == name)


def is_fixed(way: Way) -> bool:
    """Whether a half comes as it comes, and is not turned or bored to size."""
    return not way.least_grade


def title_of(end: End, design: Design) -> str:
    """`bore of the arm`."""
    item = design.item(end.item)
    name = item.title if item is not None else end.item
    return f"{end.place.replace('_', ' ')} of the {name}" if end.place else f"the {name}"


def reamed(hole: Half, nominal: Fraction, design: Design) -> Half:
    """A hole that is made in a face, or reamed, by the reamer that the workshop owns."""
    reamer = design.workshop.owns_reamer(nominal)
    if reamer is None or (hole.way != "reamed" and hole.place.form != "face"):
        return hole
    way = named_way("reamed")
    says = f"the workshop: {reamer.name} reamer" if reamer.gives else way.source
    return replace(
        hole, way=way.way, is_fixed=True, cls=reamer.gives or way.cls, says=way.says, source=says
    )
