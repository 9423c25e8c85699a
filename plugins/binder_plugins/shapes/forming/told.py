"""Notes and sizes that a shape of the wider vocabulary tells a drawing."""

from __future__ import annotations

from collections.abc import Iterable

from binder.api import Part
from binder_solid.facts import Located, Stretch, Told
from binder_solid.forms import Frame, Vector

_UP: Vector = (0.0, 0.0, 1.0)
_X: Vector = (1.0, 0.0, 0.0)


def note_at(
    part: Part,
    name: str,
    spot: Vector,
    words: str,
    fields: Iterable[str],
    *,
    face: str = "across",
    told: tuple[Told, ...] = (),
) -> Located:
    """Words that point at a place of the shape, and the fields of the spec that they tell."""
    keys = tuple(f"{part.name}.{field}" for field in fields)
    out = _X if face == "axis" else _UP
    across = (0.0, 1.0, 0.0) if face == "axis" else _X
    return Located(
        name=name,
        kind=name,
        face=face,
        frame=Frame(spot, out, across),
        spots=(spot,),
        tools=(),
        note=words,
        told=told,
        ids=keys[:1],
        also=keys[1:],
        at=part.at,
    )


def round_step(
    part: Part,
    name: str,
    start: float,
    end: float,
    across: float,
    texts: tuple[str, str],
    fields: tuple[str, str],
) -> Stretch:
    """A round step of a shape, with its diameter and length as they are printed."""
    keys = tuple(f"{part.name}.{field}" for field in fields)
    return Stretch(name, start, end, across, across, 0, keys, texts[0], texts[1])


def figure(mm: float) -> str:
    """A reckoned size in mm, for print."""
    return f"{mm:.3f}".rstrip("0").rstrip(".")
