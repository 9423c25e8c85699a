"""Surfaces and features to facts about every place that a joint may name."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from binder.api import (
    Bought,
    Contribution,
    Design,
    Fabrication,
    Feature,
    Part,
    PlaceFact,
    Size,
    ThreadName,
    exact,
    metal_at,
)
from binder_plugins.shapes.features import Cut, Hole, Placed, Screwed
from binder_plugins.shapes.forming.whereabouts import FROM_AXIS
from binder_plugins.shapes.surfaces import Surface, surfaces_of
from binder_trade.explained import NotDefined
from binder_trade.fastening import from_axis, read_pattern

_NOTHING = Surface("whole", None)


def place_surfaces(design: Design) -> Contribution:
    """A `PlaceFact` for each face, step and feature, and for each size of a bought item."""
    facts: list[PlaceFact] = []
    for part in design.parts.values():
        facts += _of_part(part, surfaces_of(part, design))
    for one in design.fabrications.values():
        facts += _of_part(one, _of_pieces(one, design))
    for item in design.bought.values():
        facts += _of_bought(item)
    return Contribution(facts=facts)


def _of_pieces(one: Fabrication, design: Design) -> dict[str, Surface]:
    """The surfaces of the first piece: what is joined is told by what it is made of."""
    first = next((piece.item for piece in one.pieces), "")
    part = design.parts.get(first)
    return surfaces_of(part, design) if part is not None else {}


def _of_bought(item: Bought) -> Iterator[PlaceFact]:
    for name, size in item.sizes:
        yield PlaceFact(
            f"{item.name}.{name}", item.name, name, "size", diameter=size.exact, at=size.span
        )


def _of_part(owner: Part | Fabrication, surfaces: dict[str, Surface]) -> Iterator[PlaceFact]:
    for name, surface in surfaces.items():
        yield _surface(owner, name, surface)
    for feature in owner.features:
        yield _feature(owner, feature, surfaces)


def _surface(owner: Part | Fabrication, name: str, surface: Surface) -> PlaceFact:
    return PlaceFact(
        subject=f"{owner.name}.{name}",
        item=owner.name,
        place=name,
        form=surface.form,
        diameter=surface.diameter,
        thickness=surface.thickness,
        length=surface.length,
        width=surface.width,
        is_round=surface.is_round,
        is_bought_rod=surface.is_bought_rod,
        start=surface.start,
        stack=surface.stack,
        at=owner.at,
    )


def _feature(
    owner: Part | Fabrication, feature: Feature, surfaces: dict[str, Surface]
) -> PlaceFact:
    entry = feature.entry
    value = getattr(entry, feature.kind, None)
    placed = entry if isinstance(entry, Placed) else Placed()
    under = surfaces.get(str(placed.across or placed.on or ""), surfaces.get("top", _NOTHING))
    depth = entry.depth if isinstance(entry, (Hole, Cut)) else None
    is_deep = isinstance(depth, Size)
    thread = value if isinstance(value, ThreadName) else None
    return PlaceFact(
        subject=f"{owner.name}.{feature.name}",
        item=owner.name,
        place=feature.name,
        form="thread" if feature.kind in ("tapped", "screwed") else _form(entry),
        diameter=thread.major_mm if thread else value.exact if isinstance(value, Size) else None,
        thickness=_through(owner, feature, placed, under),
        depth=depth.exact if isinstance(depth, Size) else None,
        length=_long(entry, under),
        width=under.width,
        recess=_recess(owner, feature, placed),
        is_through=not is_deep and isinstance(entry, Hole),
        is_bought_rod=under.is_bought_rod and isinstance(entry, Screwed),
        is_to_suit=value == "to suit",
        thread=thread,
        kind=feature.kind,
        on=str(placed.on or ""),
        across=str(placed.across or ""),
        count=(placed.off or 1) * (2 if placed.each_end else 1),
        pattern=str(placed.pattern or ""),
        at=feature.at,
    )


def _form(entry: object) -> str:
    return "hole" if isinstance(entry, Hole) else "feature"


def _long(entry: object, under: Surface) -> Fraction | None:
    """A thread's or slot's own length, or that of the surface it stands on."""
    own = entry.length if isinstance(entry, (Screwed, Cut)) else None
    return own.exact if own is not None else under.length


def _through(
    owner: Part | Fabrication, feature: Feature, placed: Placed, under: Surface
) -> Fraction | None:
    """The metal along a hole: across a step its diameter, else what coaxial holes leave.

    Beside the axis of turned work it is that of the steps which are wide enough.
    """
    if placed.across:
        return under.diameter or under.thickness
    thickness = under.thickness
    if thickness is None or not under.is_round:
        return thickness
    aside = _aside(placed, under)
    if aside > 0:
        return metal_at(aside, under.stack) or thickness
    taken = sum((_taken(other, feature) for other in owner.features), Fraction(0))
    return thickness - taken if taken < thickness else thickness


def _aside(placed: Placed, under: Surface) -> Fraction:
    """How far from the axis of a round face a hole stands, in mm."""
    told = [
        one.distance.exact
        for one in (placed.at.all if placed.at is not None else ())
        if one.distance is not None and one.rest in FROM_AXIS
    ]
    if told or not placed.pattern or under.diameter is None:
        return max(told, default=Fraction(0))
    try:
        pattern = read_pattern(str(placed.pattern), placed.off)
        return exact(round(from_axis(pattern, float(under.diameter)), 6))
    except NotDefined:
        return Fraction(0)


def _taken(other: Feature, feature: Feature) -> Fraction:
    """What a wider blind hole on the same axis leaves out of a hole's length."""
    entry, own = other.entry, feature.entry
    if other is feature or not isinstance(entry, Hole) or not isinstance(own, Hole):
        return Fraction(0)
    if entry.across or entry.pattern or own.pattern or not isinstance(entry.depth, Size):
        return Fraction(0)
    sizes = (getattr(entry, other.kind, None), getattr(own, feature.kind, None))
    wide, narrow = (one.exact if isinstance(one, Size) else Fraction(0) for one in sizes)
    is_wider = wide > narrow and other.kind not in ("counterbored", "countersunk")
    return entry.depth.exact if is_wider else Fraction(0)


def _recess(owner: Part | Fabrication, feature: Feature, placed: Placed) -> Fraction | None:
    """How deep a counterbore on the same place lets a head in."""
    for other in owner.features:
        entry = other.entry
        is_there = isinstance(entry, Hole) and (entry.on, entry.pattern) == (
            placed.on,
            placed.pattern,
        )
        if is_there and other.kind == "counterbored" and isinstance(entry, Hole):
            return entry.depth.exact if isinstance(entry.depth, Size) else None
    return None
