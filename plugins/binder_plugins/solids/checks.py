"""Solids to findings: does the part hold together, is there anything left of it."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic
from binder_plugins.solids import codes
from binder_solid.facts import SolidFact

_NOTHING = 1e-6


def check_solids(design: Design) -> Iterator[Diagnostic]:
    """All findings about solids that were built."""
    for fact in design.facts.all(SolidFact):
        part = design.parts[fact.subject]
        if fact.volume <= _NOTHING:
            yield codes.SOLID_EMPTY.at(part.at, f"nothing is left of '{part.name}'")
        elif fact.pieces > 1:
            yield codes.SOLID_IN_PIECES.at(
                part.at,
                f"'{part.name}' falls into {fact.pieces} pieces",
                help="shorten the cut that goes right through it",
            )
