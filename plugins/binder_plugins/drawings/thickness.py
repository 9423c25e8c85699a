"""The thickness of a flat part that needs no view of its edge."""

from __future__ import annotations

from binder_drafting import Note
from binder_plugins.drawings.callouts import bare
from binder_solid.facts import FormFact, Told
from binder_solid.views import flat

_GRID = 12
_PLACES = 12


def thickness_note(told: Told, fact: FormFact, view: str) -> Note:
    """`3 thick` on the face, well away from all that is cut in it."""
    places = _clear_places(fact, view)
    return Note(
        f"{told.id}.{told.along}",
        view,
        places[0],
        (f"{bare(told.text)} thick",),
        tier=told.tier,
        is_on_face=True,
        others=tuple(places[1:]),
    )


def _clear_places(fact: FormFact, view: str) -> list[tuple[float, float]]:
    """Points of the face, the clearest first, one from each part of it."""
    long, wide, _ = fact.size
    spots = [flat(spot, "top") for one in fact.located for spot in one.spots]
    found: list[tuple[float, float, float]] = []
    for column in range(1, _GRID):
        for row in range(1, _GRID):
            u, v = long * column / _GRID, wide * row / _GRID
            edges = (u, long - u, v, wide - v)
            free = min(*edges, *(((u - x) ** 2 + (v - y) ** 2) ** 0.5 for x, y in spots))
            found.append((round(-free, 6), u, v))
    return [(u, v if view == "top" else -v) for _, u, v in sorted(found)[:_PLACES]]
