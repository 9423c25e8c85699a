"""Parts as they stand to those that stand in one another."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import product

from binder.api import Design, Diagnostic, End, PlaceFact
from binder_plugins.arrangement import codes
from binder_solid.cache import own_store
from binder_solid.forms import Vector
from binder_solid.jobs import Crowd, Crowded
from binder_solid.placed import PlacedFact
from binder_solid.solid import Clash, NamedForm
from binder_solid.spread import answered

SHARING = frozenset(
    {"pressed", "shrunk", "threaded", "leads", "riveted", "glued", "meshes", "dovetailed"}
    | {"tapered", "sealed", "packed", "tied", "belted"}
)
"""Joints whose halves may share room as drawn: threads, press fits, what is filed to fit.

What a pin, a screw or a bolt holds lies beside its mate, and shares nothing with it.
"""
LEAST = 0.05
"""mm³: less than this is a corner that the file breaks."""


def collisions(design: Design, copies: Sequence[PlacedFact]) -> Iterator[Diagnostic]:
    """A finding for each pair of items that share some room without a joint that says so."""
    forms = tuple(NamedForm(one.subject, one.form, one.frame) for one in copies)
    answer = answered(Crowd(forms, _allowed(design, copies)), own_store())
    if not isinstance(answer, Crowded):
        return
    item = {one.subject: one.item for one in copies}
    told: set[frozenset[str]] = set()
    for clash in answer.clashes:
        pair = frozenset((item[clash.first], item[clash.second]))
        if clash.volume_mm3 >= LEAST and pair not in told:
            told.add(pair)
            yield _finding(clash, item, design)


def _allowed(design: Design, copies: Sequence[PlacedFact]) -> tuple[tuple[str, str], ...]:
    """Copies of items that a joint lets share room.

    A hole that a fabrication gets when it is whole is left smaller in its pieces, or out: what
    goes in it may share room with the pieces that the hole is cut in.
    """
    pairs: set[tuple[str, str]] = set()
    for joint in design.joints.values():
        has_whole = any(name in design.fabrications for name in joint.items)
        if joint.kind in SHARING or has_whole:
            sides = [_pieces(end, design) for end in joint.ends]
            for n, one in enumerate(sides):
                for other in sides[n + 1 :]:
                    pairs.update(product(one, other))
    return tuple(
        (one.subject, other.subject)
        for n, one in enumerate(copies)
        for other in copies[n + 1 :]
        if (one.item, other.item) in pairs or (other.item, one.item) in pairs
    )


def _pieces(end: End, design: Design) -> tuple[str, ...]:
    """The item, or the pieces of a fabrication that have the place; all where none has it."""
    whole = design.fabrications.get(end.item)
    if whole is None:
        return (end.item,)
    pieces = tuple(piece.item for piece in whole.pieces)
    having = (name for name in pieces if design.facts.about(PlaceFact, f"{name}.{end.place}"))
    return tuple(having) or pieces


def _finding(clash: Clash, item: dict[str, str], design: Design) -> Diagnostic:
    middle = tuple((a + b) / 2 for a, b in zip(clash.least, clash.most, strict=True))
    later = design.item(item[clash.second])
    return codes.PARTS_COLLIDE.at(
        later.at if later is not None else design.spec.resolved.document.span(()),
        f"'{clash.first}' and '{clash.second}' share {clash.volume_mm3:.1f} mm³ {_where(middle)}",
        help="move one of them, or take away where they meet",
    )


def _where(at: tuple[float, ...] | Vector) -> str:
    x, y, z = at
    return f"about {x:.0f} mm right, {y:.0f} mm back and {z:.0f} mm up in the arrangement"
