"""Leaning teeth on the leaf of their gear: the blank, how they lie, and what cuts them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Design, Facts, Inset, LeaningFact, Subheading, exact, shown_length

if TYPE_CHECKING:
    from collections.abc import Iterator


def leaning_leaves(design: Design) -> Iterator[Inset]:
    """What a drawing of a bevel, skew or worm gear states beside its views."""
    for one in design.facts.all(LeaningFact):
        if design.joints[one.joint].kind == "meshes":
            continue
        told = tuple((name, (value,)) for name, value in _rows(one, design) if value)
        yield Inset(f"part-{one.subject}", (Subheading("Teeth"), Facts(told)))


def _rows(one: LeaningFact, design: Design) -> tuple[tuple[str, str], ...]:
    def mm(size: float) -> str:
        return shown_length(exact(round(size, 3)), design.units) if size else ""

    is_bevel, is_worm = one.kind == "bevel", one.kind == "worm"
    return (
        ("Starts" if is_worm else "Teeth", str(one.count)),
        ("Pitch", f"module {one.module:.4g}, {one.pressure:g}°"),
        ("Hand", one.hand),
        ("Helix", f"{one.angle:.2f}°" if one.kind == "helical" else ""),
        ("Lead", mm(one.lead)),
        ("Lead angle", f"{one.angle:.2f}°" if one.kind.startswith("worm") else ""),
        ("Blank", " or ".join(mm(size) for size in one.outside)),
        ("Small end", f"{mm(one.inner)}, {mm(one.long)} along the axis" if is_bevel else ""),
        ("Root cone to the axis", f"{one.angle:.2f}°" if is_bevel else ""),
        ("Length" if is_worm else "Face", "" if is_bevel else mm(one.long)),
        ("Depth of cut", f"{mm(one.depth)}{', at the large end' if is_bevel else ''}"),
        ("Cutter for", f"{one.seen:.1f} teeth" if one.seen else ""),
    )
