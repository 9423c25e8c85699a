"""Tapped holes in the end of turned work, to the flat face that is left round their mouths."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from binder.api import Design, Diagnostic, Feature, Size, shown_length
from binder_plugins.threads import codes
from binder_plugins.threads.found import Found

_SAME = 1e-6


def check_mouths(found: Iterable[Found], design: Design) -> Iterator[Diagnostic]:
    """A thread whose mouth a rounded or chamfered edge of its step reaches."""
    for one in found:
        step = one.surface
        part = design.parts.get(one.feature.owner)
        on = str(_on(one.feature) or "")
        if not one.is_internal or part is None or step is None or step.diameter is None or not on:
            continue
        for edge in part.features:
            size = getattr(edge.entry, edge.kind, None)
            is_there = edge.kind in ("rounded", "chamfered") and not edge.is_dummy
            if not is_there or not isinstance(size, Size) or on != str(_on(edge)):
                continue
            left = max(step.diameter - 2 * size.exact, Fraction(0))
            if float(left) < one.thread.major_mm - _SAME:
                yield codes.THREAD_MOUTH_ROUNDED.at(
                    edge.at,
                    f"'{edge.name}' leaves {shown_length(left, design.units)} of the end of "
                    f"'{on}', and {one.thread.designation} opens there",
                    help=f"less of it, or a '{on}' of a larger diameter",
                )


def _on(edge: Feature) -> object:
    return getattr(edge.entry, "on", None)
