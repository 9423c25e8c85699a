"""The ends of a joint to its hole and its shaft: told by what they are, not by their order."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Bought, Design, End, Feature, Joint, Part, PlaceFact

_HOLE_WORDS = ("bore", "hole", "inside", "eye", "socket")
_SHAFT_WORDS = ("outside", "shaft", "diameter", "rod", "journal", "spigot", "shank")


@dataclass(frozen=True, slots=True)
class Pair:
    """The two ends of a round fit; `face` is true where the hole is still to be made there."""

    hole: End
    hole_place: PlaceFact
    shaft: End
    shaft_place: PlaceFact
    face: bool = False


def pair_of(joint: Joint, design: Design) -> Pair | None:
    """The hole and the shaft of a joint, None where it has no round fit (points, faces)."""
    known = [(end, place) for end in joint.ends if (place := place_of(end, design)) is not None]
    holes = [one for one in known if _is_hole(one[1])]
    shafts = [one for one in known if _is_shaft(one[1])]
    if holes and not shafts:
        shafts = [one for one in known if _is_round_end(one[1])]
    if holes and shafts:
        return Pair(*holes[0], *shafts[0])
    faces = [one for one in known if one[1].form == "face"]
    if shafts and faces and _is_made_here(faces[0][0], design):
        return Pair(*faces[0], *shafts[0], face=True)
    return None


def place_of(end: End, design: Design) -> PlaceFact | None:
    """What is known of the place of an end; a whole item is its bore, or the rod that it is."""
    place = design.facts.about(PlaceFact, str(end))
    if place is not None:
        return place
    if end.place:
        return _only_step(end, design)
    rod = design.facts.about(PlaceFact, f"{end.item}.outside")
    if rod is not None and rod.is_bought_rod and rod.thickness == rod.length:
        return rod
    item = design.bought.get(end.item)
    return _bore(item, design) if item is not None else None


def _only_step(end: End, design: Design) -> PlaceFact | None:
    """`middle` of a shaft of one step is that step."""
    part = design.parts.get(end.item)
    if end.place != "middle" or part is None or not isinstance(part.shape, list):
        return None
    return design.facts.about(PlaceFact, f"{end.item}.outside") if len(part.shape) == 1 else None


def _bore(item: Bought, design: Design) -> PlaceFact | None:
    for name, _ in item.sizes:
        if _worded(name, _HOLE_WORDS):
            return design.facts.about(PlaceFact, f"{item.name}.{name}")
    return None


def _is_hole(place: PlaceFact) -> bool:
    if place.thread is not None:
        return False
    if place.form == "size":
        return _worded(place.place, _HOLE_WORDS)
    return place.form == "hole" and place.kind not in ("countersunk", "spotfaced")


def _is_shaft(place: PlaceFact) -> bool:
    if place.form == "size":
        return not _worded(place.place, _HOLE_WORDS) and _worded(place.place, _SHAFT_WORDS)
    return place.form == "step" and place.is_round and place.diameter is not None


def _is_round_end(place: PlaceFact) -> bool:
    """`ends` of a round part, named where its whole length is meant."""
    return place.form == "face" and place.is_round and place.diameter is not None


def _is_made_here(end: End, design: Design) -> bool:
    return end.item in design.parts


def _worded(name: str, words: tuple[str, ...]) -> bool:
    return any(word in name for word in words)


def feature_at(end: End, design: Design) -> Feature | None:
    """The feature that an end names, None for a face, a step or a whole item."""
    owner = design.parts.get(end.item) or design.fabrications.get(end.item)
    features = owner.features if owner is not None else ()
    return next((one for one in features if one.name == end.place), None)


def holes_through(part: Part, design: Design) -> Iterator[PlaceFact]:
    """The holes along the axis of a turned part: those of a bush, or a vent."""
    for feature in part.features:
        place = design.facts.about(PlaceFact, f"{part.name}.{feature.name}")
        if place is not None and place.form == "hole" and not place.across and not feature.is_dummy:
            yield place
