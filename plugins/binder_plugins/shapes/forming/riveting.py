"""Stacks of a riveted fabrication to the holes that their rivets do not get through."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Diagnostic, Fabrication
from binder_plugins.shapes import form_codes
from binder_plugins.shapes.forming.stacking import Layer, Pierced, pierced

# Holes so near in place and size, in mm, take one rivet; common practice, no source.
_NEAR = 0.2
_SAME = 0.15


def rivets_stopped(one: Fabrication, layers: tuple[Layer, ...]) -> Iterator[Diagnostic]:
    """A layer that is drilled for the rivets of its neighbour, but not where they are."""
    if "rivet" not in one.joined or not layers:
        return
    piles = pierced(layers)
    for place, layer in enumerate(layers[1:], 1):
        sizes = [one.diameter for one in layer.form.located if one.diameter]
        holes = [hole for piece in piles[place - 1] for hole in piece.holes]
        stopped = sum(
            any(piece.covers(x, y) and not _meets(piece, x, y, across) for piece in piles[place])
            for x, y, across in holes
            if any(abs(across - size) < _SAME for size in sizes)
        )
        if stopped:
            below = layers[place - 1].entry.piece
            many = "the rivet holes" if stopped > 1 else "a rivet hole"
            yield form_codes.RIVET_STOPPED.at(
                layer.entry.piece.span,
                f"'{layer.entry.piece}' lies on {many} of '{below}' without one of its own there",
                help="turn it (`stands:`), or set its `pattern:` as the holes are set",
            )


def _meets(piece: Pierced, x: float, y: float, across: float) -> bool:
    return any(
        abs(a - x) < _NEAR and abs(b - y) < _NEAR and abs(size - across) < _SAME
        for a, b, size in piece.holes
    )
