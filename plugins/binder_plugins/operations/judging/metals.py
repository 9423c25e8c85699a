"""Joints, bends and springs to findings about metals that do not bear them."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from binder.api import (
    NOWHERE,
    Bought,
    Design,
    Diagnostic,
    MaterialFact,
    Part,
    Size,
    Span,
    load_data,
)
from binder_plugins.operations.judging import metal_codes

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from binder.api import Item

_HOT = frozenset({"soft_soldered", "silver_soldered", "brazed", "welded"})
# EN 13906-1: springs wound cold from round wire have an index of 4 to 20.
_LEAST_INDEX, _MOST_INDEX = 4.0, 20.0
_NEAR = 1e-6


@dataclass(frozen=True, slots=True)
class Heated:
    """An item in a hot joint: how it is joined, and what the joint or fabrication is called."""

    item: str
    how: str
    name: str
    at: Span = NOWHERE


def table() -> Mapping[str, Any]:
    """What materials bear."""
    found: Mapping[str, Any] = load_data("binder_plugins.operations", "metals.yaml")
    return found


def check_metals(design: Design) -> Iterator[Diagnostic]:
    """Everything that melts, balls up, cracks or fumes."""
    for one in dict.fromkeys(_heated(design)):
        yield from _in_the_heat(one, design)
    for part in design.parts.values():
        if part.shape_kind == "sheet":
            yield from _bends(part, design)
        elif part.shape_kind == "spring":
            yield from _spring(part)


def _heated(design: Design) -> Iterator[Heated]:
    for joint in design.joints.values():
        if joint.kind in _HOT:
            for item in joint.items:
                yield Heated(item, joint.kind, joint.name, joint.at)
    for whole in design.fabrications.values():
        how = whole.joined.replace("-", "_").replace(" ", "_")
        if how in _HOT:
            for piece in whole.pieces:
                yield Heated(piece.item, how, whole.name, whole.at)


def _in_the_heat(one: Heated, design: Design) -> Iterator[Diagnostic]:
    said = one.how.replace("_", " ")
    coated = _coating(design.item(one.item))
    if coated:
        yield metal_codes.PLATING_IN_FLAME.at(
            one.at,
            f"'{one.item}' is {coated}, and '{one.name}' is {said}",
            help="take the coating off first, or join it cold",
        )
    material = design.facts.about(MaterialFact, one.item)
    if material is None:
        return
    heat, bears = table()["heats"].get(one.how), _named(table()["bears"], material)
    if one.how == "welded":
        if _is_among(table()["no_weld"]["names"], material):
            yield metal_codes.METAL_DOES_NOT_WELD.at(
                one.at,
                f"'{one.item}' is {material.designation}, which does not weld, in '{one.name}'",
                help="mild steel for it; or silver solder, screw or rivet it",
            )
    elif heat is not None and bears is not None and bears < heat:
        yield metal_codes.MELTS_IN_FLAME.at(
            one.at,
            f"'{one.item}' is {material.group} and bears about {bears} °C; '{one.name}' is {said} "
            f"at about {heat} °C",
            help="screw, rivet or glue it, or take another material",
        )
    elif _is_among(table()["no_solder"]["names"], material):
        yield metal_codes.METAL_TAKES_NO_SOLDER.at(
            one.at,
            f"'{one.item}' is {material.group}, which takes no solder with the usual fluxes",
            help="screw, rivet or glue it",
        )


def _named(rows: Mapping[str, Any], material: MaterialFact) -> float | None:
    """The figure of a material by its id, else by its group."""
    found = rows.get(material.id, rows.get(material.group))
    return float(found) if found is not None else None


def _is_among(names: list[str], material: MaterialFact) -> bool:
    return material.id in names or material.group in names


def _coating(item: Item | None) -> str:
    """The word by which an item is told to be plated, as it is before it is worked."""
    if item is None:
        return ""
    texts = [item.title, item.note]
    if isinstance(item, Part):
        texts += [item.material, str(item.stock.text) if item.stock else ""]
    elif isinstance(item, Bought):
        texts.append(item.what)
    words = " ".join(re.findall(r"[a-z]+", " ".join(texts).lower()))
    return next((one for one in table()["coating"] if f" {one} " in f" {words} "), "")


def _bends(part: Part, design: Design) -> Iterator[Diagnostic]:
    material = design.facts.about(MaterialFact, part.name)
    thick = getattr(part.shape, "thickness", None)
    least = _named(table()["least_bend"], material) if material is not None else None
    if material is None or least is None or not isinstance(thick, Size):
        return
    for bend in getattr(part.shape, "bends", ()):
        if bend.inside.mm < least * thick.mm - _NEAR:
            yield metal_codes.BEND_CRACKS.at(
                bend.inside.span,
                f"'{part.name}' is {material.designation} ({material.condition}); it bends to "
                f"{least:g} times its thickness, {least * thick.mm:g} mm, and not tighter",
                help="a larger radius inside, or soften it first and say so under `because`",
            )


def _spring(part: Part) -> Iterator[Diagnostic]:
    shape = part.shape
    wire, mean = getattr(shape, "wire", None), getattr(shape, "mean", None)
    outside = getattr(shape, "outside", None)
    if not isinstance(wire, Size):
        return
    across = mean.mm if isinstance(mean, Size) else outside.mm - wire.mm if outside else 0.0
    index = across / wire.mm
    if across and not _LEAST_INDEX - _NEAR <= index <= _MOST_INDEX + _NEAR:
        yield metal_codes.SPRING_HARD_TO_WIND.at(
            part.at,
            f"'{part.name}' is wound {index:.1f} times its wire across; springs are wound to 4 "
            "to 20 times",
            help="thinner or thicker wire, or another diameter",
        )
