"""The two halves of a joint on a shaft: which is the hub, and how large both are."""

from __future__ import annotations

from binder.api import PlaceFact
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.seen import Seen

_CUTS = ("keywayed", "grooved")


def hub_and_shaft(seen: Seen) -> tuple[Half, Half]:
    """The half with the hole is the hub, whichever was named first."""
    first, second = seen.halves[0], seen.halves[-1]
    under = under_cut(seen, second)
    is_hole = under is not None and under.form == "hole"
    return (second, first) if is_hole else (first, second)


def under_cut(seen: Seen, half: Half) -> PlaceFact | None:
    """The step or bore of a half: where an end names a keyway or groove, what it is cut in."""
    place = half.place
    if place is None or place.kind not in _CUTS:
        return place
    return seen.design.facts.about(PlaceFact, f"{half.end.item}.{place.on}")


def diameter(seen: Seen, half: Half) -> float | None:
    """The diameter of the bore or of the shaft in mm."""
    place = under_cut(seen, half)
    return float(place.diameter) if place is not None and place.diameter is not None else None


def outside(seen: Seen, hub: Half) -> float | None:
    """The diameter of the step that the bore of a hub is in, in mm."""
    bore = under_cut(seen, hub)
    for name in (bore.on if bore is not None else "", "outside"):
        place = seen.design.facts.about(PlaceFact, f"{hub.end.item}.{name}")
        if name and place is not None and place.form == "step" and place.diameter is not None:
            return float(place.diameter)
    return None
